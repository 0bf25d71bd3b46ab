package porebench.desk.frame.dialog;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dialog;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.WindowConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.method.Texts;

/** A dialog with a content and a row of buttons, each named for what it does; Escape takes the last one. */
public final class AskDialog {
    private static final int TEXT_COLUMNS = 46;
    private static final int MOST_HEIGHT = 420;

    private final JDialog dialog;
    private final JPanel buttonRow = new JPanel(new MigLayout("insets 0, gap 10, alignx trailing"));
    private final List<JButton> buttons = new ArrayList<>();
    private final List<BooleanSupplier> mayClose = new ArrayList<>();
    private int chosen = -1;

    public AskDialog(@Nullable Component over, String title, JComponent content) {
        Window owner =
                over == null ? null : over instanceof Window window ? window : SwingUtilities.getWindowAncestor(over);
        dialog = new JDialog(owner, title, Dialog.ModalityType.APPLICATION_MODAL);
        if (TrainingBand.isOver(over)) {
            Texts texts = FrameTexts.in(JComponent.getDefaultLocale());
            dialog.setTitle(TrainingBand.title(over, title, texts));
            dialog.add(TrainingBand.ofTraining(texts), BorderLayout.NORTH);
        }
        dialog.setName("ask");
        dialog.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        JPanel pane = new JPanel(new MigLayout("insets 20, wrap 1", "[grow,fill]", "[grow,fill]18[]"));
        pane.add(content);
        pane.add(buttonRow, "growx");
        dialog.add(pane, BorderLayout.CENTER);
    }

    /** Shows something to read until it is closed. */
    static void read(@Nullable Component over, String title, JComponent content, Texts texts) {
        AskDialog dialog = new AskDialog(over, title, content);
        dialog.button("close", texts.get("ask.close"));
        dialog.ask();
    }

    /** Adds a button that closes the dialog; the first one is the default unless asked safely. */
    public JButton button(String name, String text) {
        JButton button = new JButton(text);
        button.setName(name);
        int index = buttons.size();
        mayClose.add(() -> true);
        button.addActionListener(event -> {
            if (mayClose.get(index).getAsBoolean()) {
                chosen = index;
                dialog.dispose();
            }
        });
        // Where the keyboard is on a button, Enter means that one, whichever is the default.
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, false), "pressed");
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
        buttons.add(button);
        buttonRow.add(button);
        return button;
    }

    /** Lets a button close the dialog only when something is so, such as a form without problems. */
    public void closesOnlyIf(JButton button, BooleanSupplier question) {
        mayClose.set(buttons.indexOf(button), () -> {
            boolean closes = question.getAsBoolean();
            if (!closes) {
                dialog.pack();
            }
            return closes;
        });
    }

    JDialog window() {
        return dialog;
    }

    /** Shows the dialog and waits; returns which button was chosen, or the last one when it was just closed. */
    public int ask() {
        return ask(0, false);
    }

    /** Shows the dialog with the last button as the default, because another one does what should not happen by mistake. */
    int askSafely() {
        return ask(buttons.size() - 1, true);
    }

    /**
     * Shows the dialog with the last button as the default, and the keyboard where it is to be typed. Ctrl and Enter, which saves on a
     * page, does what the first button does: as the default it would drop the words.
     */
    int askForWords() {
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> buttons.get(0).doClick(),
                        KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, InputEvent.CTRL_DOWN_MASK),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        return ask(buttons.size() - 1, false);
    }

    /** Gives the keyboard back to where it was, also where no window manager sees to it. */
    private void giveKeyboardBack() {
        Optional.ofNullable(dialog.getOwner())
                .map(Window::getMostRecentFocusOwner)
                .ifPresent(Component::requestFocus);
    }

    private int ask(int byDefault, boolean takesKeyboard) {
        JButton quick = buttons.get(byDefault);
        dialog.getRootPane().setDefaultButton(quick);
        if (takesKeyboard) {
            dialog.addWindowListener(new WindowAdapter() {
                @Override
                public void windowOpened(WindowEvent event) {
                    quick.requestFocusInWindow();
                }
            });
        }
        int last = buttons.size() - 1;
        dialog.getRootPane()
                .registerKeyboardAction(
                        event -> buttons.get(last).doClick(),
                        KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
                        JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                buttons.get(last).doClick();
            }
        });
        SpokenDialog.tell(dialog);
        dialog.pack();
        // Where a table has more to show than the screen, the table gives way and not the buttons.
        Rectangle screen = dialog.getGraphicsConfiguration().getBounds();
        dialog.setSize(Math.min(dialog.getWidth(), screen.width), Math.min(dialog.getHeight(), screen.height));
        dialog.setLocationRelativeTo(dialog.getOwner());
        dialog.setVisible(true);
        giveKeyboardBack();
        return chosen < 0 ? last : chosen;
    }

    /** Returns a text to read, wrapped, that can be selected and copied. */
    public static JTextArea text(String words) {
        JTextArea area = new JTextArea(words);
        area.setColumns(TEXT_COLUMNS);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setEditable(false);
        area.setFocusable(false);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        area.setFont(UIManager.getFont("Label.font"));
        // A text area knows its height only once it knows its width.
        area.setSize(area.getPreferredSize().width, Short.MAX_VALUE);
        return area;
    }

    /** Returns a text as it is, or to be scrolled when it is too long for a window. */
    static JComponent scrolled(JTextArea text) {
        int most = UIScale.scale(MOST_HEIGHT);
        if (text.getPreferredSize().height <= most) {
            return text;
        }
        text.setFocusable(true);
        SpokenDialog.byItsDialog(text);
        text.setCaretPosition(0);
        JScrollPane scroll = new JScrollPane(text);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setPreferredSize(new Dimension(text.getPreferredSize().width + UIScale.scale(20), most));
        return scroll;
    }

    static Optional<String> filled(String text) {
        return Optional.of(text.strip()).filter(words -> !words.isEmpty());
    }
}
