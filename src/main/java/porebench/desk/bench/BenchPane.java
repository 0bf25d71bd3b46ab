package porebench.desk.bench;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.accessibility.AccessibleContext;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.UIManager;
import javax.swing.text.View;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.WrappedText;

/** What is seen of the bench view: the bowls on top, the step with its number, and buttons for gloved hands. */
final class BenchPane {
    /** A target that a gloved hand meets. */
    private static final double TARGET = 20;

    private static final double DIGITS = 40;
    private static final double TITLE = 8;
    private static final double LIMITS = 6;
    private static final double WORDS = 4.2;
    private static final double SMALL = 3.4;
    private static final double GAP = 1.5;

    /** How large the words are beside their usual size, from where there is room for all to where there is little. */
    private static final double[] SHARES = {1, 0.85, 0.7, 0.6};

    private final JPanel panel = new JPanel();
    private final JPanel chips = new JPanel();
    private final JLabel place = new JLabel();
    private final JLabel title = new JLabel();
    private final JLabel label = new JLabel();
    private final BigDigits digits = new BigDigits();
    private final WrappedText limits = new WrappedText("benchLimits", "");
    private final WrappedText how = new WrappedText("benchHow", "");
    private final WrappedText caution = new WrappedText("benchCaution", "cautionText");
    private final WrappedText message = new WrappedText("benchMessage", "");
    private final WrappedText before = new WrappedText("benchBefore", "quiet");
    private final WrappedText keys = new WrappedText("benchKeys", "quiet");
    private final WrappedText invented = new WrappedText("benchInvented", "trainingText");
    private final JPanel inventedBox = new JPanel();
    private final JPanel cautionBox = new JPanel();
    private final JPanel middle = new JPanel();
    private final JPanel pad = new JPanel();
    private final List<JButton> buttons = new ArrayList<>();
    private final Consumer<Integer> turnTo;
    private List<BenchScreen.Chip> shownChips = List.of();
    private Millimetres scale = new Millimetres(1);
    private Dimension sized = new Dimension();
    private double share = 1;
    private List<String> fitted = List.of();

    /**
     * Makes it.
     *
     * @param turnTo looks at the bowl of a number
     */
    BenchPane(Consumer<Integer> turnTo) {
        this.turnTo = turnTo;
        panel.setName("bench");
        panel.setFocusable(true);
        panel.setFocusTraversalKeysEnabled(false);
        title.setName("benchTitle");
        label.setName("benchLabel");
        digits.setName("benchDigits");
        place.setName("benchPlace");
        place.putClientProperty("FlatLaf.styleClass", "quiet");
        cautionBox.putClientProperty("FlatLaf.styleClass", "caution");
        cautionBox.add(caution);
        inventedBox.putClientProperty("FlatLaf.styleClass", "training");
        inventedBox.add(invented);
        inventedBox.setVisible(false);
        List.of(chips, middle, pad).forEach(part -> part.setOpaque(false));
        panel.add(chips);
        panel.add(middle);
        panel.add(pad);
        List.of(inventedBox, place, title, label, digits, limits, how, cautionBox, message, before, keys)
                .forEach(middle::add);
    }

    /** Says that nothing on the bench was measured, as of a training book or the demo; empty text where it is real. */
    void sayInvented(String words) {
        invented.setText(words);
        inventedBox.setVisible(!words.isEmpty());
    }

    JPanel component() {
        return panel;
    }

    BigDigits digits() {
        return digits;
    }

    /** Adds a button to those on the right; they stand in the order in which they come, three in a row. */
    void button(String name, String words, Runnable what) {
        JButton button = target(name, words, what);
        buttons.add(button);
        pad.add(button);
    }

    /** A button never takes the keyboard: the keys are the bench's. */
    private static JButton target(String name, String words, Runnable what) {
        JButton button = new JButton(
                words.contains("\n") ? "<html><center>" + words.replace("\n", "<br>") + "</center></html>" : words);
        button.setName(name);
        button.setFocusable(false);
        button.getAccessibleContext().setAccessibleName(words.replace('\n', ' '));
        button.addActionListener(event -> what.run());
        return button;
    }

    /** Says the screen to those who hear it read: what is asked as the name of what has the keyboard, all else as said of it. */
    private void speak(BenchScreen screen) {
        AccessibleContext spoken = panel.getAccessibleContext();
        spoken.setAccessibleName((screen.title() + " " + screen.label()).strip());
        String figure = (screen.digits() + " " + screen.unit()).strip();
        List<String> said = Stream.of(
                        screen.message(),
                        figure,
                        screen.limits(),
                        screen.how(),
                        screen.caution(),
                        screen.before(),
                        screen.keys())
                .filter(words -> !words.isBlank())
                .toList();
        spoken.setAccessibleDescription(String.join("\n", said));
    }

    /** Shows a screen, everything in the size that fits the window. */
    void show(BenchScreen screen, boolean isFlashOn) {
        layOut();
        place.setText(screen.step());
        title.setText(screen.title());
        label.setText(screen.label());
        digits.show(screen.digits(), screen.unit(), screen.isTyped());
        digits.setVisible(!screen.digits().isEmpty());
        label.setVisible(!screen.digits().isEmpty());
        limits.say(screen.limits());
        how.say(screen.how());
        caution.setText(screen.caution());
        cautionBox.setVisible(!screen.caution().isEmpty());
        message.say(screen.message());
        message.setForeground(UIManager.getColor(screen.isAlarm() ? "Porebench.error" : "Label.foreground"));
        before.say(screen.before());
        keys.say(screen.keys());
        speak(screen);
        fit(screen);
        showChips(screen.bowls(), isFlashOn);
        Color alarm = UIManager.getColor("Porebench.caution.background");
        panel.setBackground(isFlashOn && screen.rings() ? alarm : UIManager.getColor("Panel.background"));
    }

    /** Makes the words as large as the room lets them: the digits do not give way to them. */
    private void fit(BenchScreen screen) {
        List<String> said = List.of(
                screen.limits(), screen.how(), screen.caution(), screen.message(), screen.before(), screen.keys());
        if (said.equals(fitted) || middle.getHeight() == 0) {
            return;
        }
        fitted = said;
        for (double one : SHARES) {
            share = one;
            sizeWords(screen.digits().isEmpty());
            if (needed() <= middle.getHeight()) {
                break;
            }
        }
    }

    /** Sizes the words; what is done is the largest thing where there is no number. */
    private void sizeWords(boolean isWithoutNumber) {
        sized(place, SMALL, share);
        sized(title, TITLE, share);
        sized(label, WORDS, share);
        sized(limits, LIMITS, share);
        sized(how, isWithoutNumber ? LIMITS : WORDS, share);
        sized(caution, WORDS, share);
        sized(message, WORDS, share);
        sized(before, LIMITS, share);
        sized(keys, SMALL, share);
        sized(invented, SMALL, share);
    }

    /** Returns how high everything in the middle is together. */
    private int needed() {
        int gap = scale.of(GAP);
        int sum = 0;
        for (Component part : middle.getComponents()) {
            if (part.isVisible()) {
                sum += gap + height(part, middle.getWidth());
            }
        }
        return sum;
    }

    private static int height(Component part, int width) {
        if (part instanceof WrappedText text) {
            View lines = text.getUI().getRootView(text);
            lines.setSize(width, Integer.MAX_VALUE);
            return (int) Math.ceil(lines.getPreferredSpan(View.Y_AXIS));
        }
        if (part instanceof JPanel box && box.getComponentCount() == 1) {
            Insets around = box.getInsets();
            return around.top + around.bottom + height(box.getComponent(0), width - around.left - around.right);
        }
        return part.getPreferredSize().height;
    }

    private void showChips(List<BenchScreen.Chip> bowls, boolean isFlashOn) {
        if (!bowls.stream()
                .map(BenchScreen.Chip::number)
                .toList()
                .equals(shownChips.stream().map(BenchScreen.Chip::number).toList())) {
            chips.removeAll();
            bowls.forEach(chip -> chips.add(
                    sized(target("bowl." + chip.number(), "", () -> turnTo.accept(chip.number())), WORDS),
                    "h " + scale.of(TARGET) + "!, wmin " + scale.of(TARGET) + ", growx"));
            chips.revalidate();
            chips.repaint();
        }
        shownChips = bowls;
        for (int i = 0; i < bowls.size(); i++) {
            BenchScreen.Chip chip = bowls.get(i);
            JButton button = (JButton) chips.getComponent(i);
            button.setText(chip.words());
            button.setSelected(chip.isShown());
            boolean lit = chip.rings() ? isFlashOn : chip.isShown();
            String colour = chip.rings() ? "Porebench.caution.border" : "Porebench.step.selected";
            button.setBackground(UIManager.getColor(lit ? colour : "Button.background"));
        }
    }

    private JComponent sized(JComponent part, double millimetres) {
        return sized(part, millimetres, 1);
    }

    private JComponent sized(JComponent part, double millimetres, double ofIt) {
        Font font = UIManager.getFont(millimetres >= LIMITS ? "semibold.font" : "Label.font");
        part.setFont(scale.digits(font, millimetres * ofIt));
        return part;
    }

    /** Lays out anew for another size of the window. */
    private void layOut() {
        Dimension size = panel.getSize();
        if (size.equals(sized) || size.width == 0) {
            return;
        }
        sized = size;
        scale = Millimetres.on(panel, size);
        int gap = scale.of(GAP);
        int target = scale.of(TARGET);
        panel.setLayout(new MigLayout(
                "fill, insets " + gap * 2 + ", gap " + gap * 2, "[grow,fill][]", "[]" + gap + "[grow,fill]"));
        constrain(panel, chips, "spanx 2, growx, wrap, h " + target + "!");
        constrain(panel, middle, "wmin 0, grow");
        constrain(panel, pad, "top");
        chips.setLayout(new MigLayout("insets 0, fillx, gap " + gap));
        chips.removeAll();
        shownChips = List.of();
        layOutMiddle(gap);
        layOutPad(gap, target);
        panel.validate();
    }

    private void layOutMiddle(int gap) {
        middle.setLayout(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy " + gap, "[grow,fill,0::]", ""));
        for (Component part : middle.getComponents()) {
            constrain(middle, (JComponent) part, part == keys ? "wmin 0, pushy, bottom" : "wmin 0");
        }
        cautionBox.setLayout(new MigLayout("insets 0, fillx", "[grow,fill]"));
        constrain(cautionBox, caution, "wmin 0");
        inventedBox.setLayout(new MigLayout("insets " + gap + ", fillx", "[grow,fill]"));
        constrain(inventedBox, invented, "wmin 0");
        sizeWords(false);
        fitted = List.of();
        digits.setFont(scale.digits(UIManager.getFont("semibold.font"), DIGITS));
    }

    private void layOutPad(int gap, int target) {
        pad.setLayout(new MigLayout("insets 0, gap " + gap));
        int inRow = 0;
        for (JButton button : buttons) {
            boolean isWide = button.getName().equals("key.enter");
            int span = isWide ? 3 : 1;
            inRow += span;
            int width = span * target + (span - 1) * gap;
            constrain(
                    pad,
                    button,
                    "w " + width + "!, h " + target + "!, aligny top, span " + span + (inRow % 3 == 0 ? ", wrap" : ""));
            sized(button, button.getText().length() == 1 ? LIMITS : SMALL);
            button.setMargin(new Insets(0, 0, 0, 0));
        }
    }

    private static void constrain(Container parent, JComponent part, String constraints) {
        // Added anew in its turn, which leaves the order as it was.
        parent.add(part, constraints);
    }
}
