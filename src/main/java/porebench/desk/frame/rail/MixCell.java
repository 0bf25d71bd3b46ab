package porebench.desk.frame.rail;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.desk.MixNote;
import porebench.desk.StateMark;
import porebench.desk.form.Numbers;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.method.ProblemText;
import porebench.method.Texts;

/**
 * One mix in the list: its state as a shape and in words, its name, the factor in force, what it is to be checked
 * again for, and what else is said of it.
 */
final class MixCell extends JPanel implements ListCellRenderer<RegisterRow> {
    private static final long serialVersionUID = 1L;
    private static final int ARC = 8;

    private final JLabel mark = new JLabel();
    private final JLabel name = new JLabel();
    private final JLabel state = new JLabel();
    private final JLabel said = new JLabel();
    private final JLabel factor = new AsHighAsLarge();
    private final transient Texts texts;
    private final transient Numbers numbers;
    private final transient ProblemText problems;
    private transient MixNote note = MixNote.NONE;
    private boolean chosen;
    private boolean focused;

    /** As high with a small factor as with a large one, whatever the theme, so that the list is even. */
    private static final class AsHighAsLarge extends JLabel {
        private static final long serialVersionUID = 1L;

        @Override
        public Dimension getPreferredSize() {
            Dimension size = super.getPreferredSize();
            Font large = UIManager.getFont("h3.font");
            int least = large == null ? 0 : getFontMetrics(large).getHeight();
            return new Dimension(size.width, Math.max(size.height, least));
        }
    }

    MixCell(Texts texts, Numbers numbers, ProblemText problems) {
        super(new MigLayout("insets 3 10 3 10, fillx, wrap 2, novisualpadding", "[]8[grow,fill,0::]", "[]0[]"));
        this.texts = texts;
        this.numbers = numbers;
        this.problems = problems;
        setOpaque(false);
        add(mark, "spany 2");
        JPanel first = line("[grow,fill,0::]8[]");
        first.add(name, "wmin 0");
        first.add(factor);
        JPanel second = line("[]4[grow,fill,0::]");
        second.add(state);
        second.add(said, "wmin 0");
        add(first, "wmin 0");
        add(second, "wmin 0");
    }

    private static JPanel line(String columns) {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx, hidemode 3, novisualpadding", columns, "[]"));
        line.setOpaque(false);
        return line;
    }

    /** From now on also says something else of each mix, beside its state. */
    void add(MixNote another) {
        note = note.and(another);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends RegisterRow> list, RegisterRow row, int index, boolean isSelected, boolean hasFocus) {
        chosen = isSelected;
        focused = hasFocus;
        name.setFont(UIManager.getFont("semibold.font"));
        factor.setFont(UIManager.getFont("h3.font"));
        mark.setIcon(new StateMark(row.state(), 14));
        name.setText(texts.get("rail.mix", row.mixId().text(), row.title()));
        state.setText(stateWords(texts, row.state()));
        state.setForeground(StateMark.colour(row.state()));
        Optional<String> words = Optional.of(Stream.concat(
                                note.apply(row.mixId()).stream(),
                                row.due().stream().limit(1).map(problems::say))
                        .collect(Collectors.joining(" · ")))
                .filter(any -> !any.isEmpty());
        said.setText(words.map(each -> "· " + each).orElse(""));
        said.setVisible(words.isPresent());
        String inForce = row.factorPercent()
                .map(percent -> texts.get("percent", numbers.show(percent)))
                .orElse(texts.get("no-factor"));
        factor.setText(inForce);
        // A factor that nobody may subtract any more never stands out like one that holds.
        boolean isDoubtful = row.factorPercent().isPresent() && !row.state().isUsable();
        factor.setFont(UIManager.getFont(isDoubtful ? "Label.font" : "h3.font"));
        factor.setForeground(UIManager.getColor(isDoubtful ? "Porebench.quiet" : "Label.foreground"));
        getAccessibleContext()
                .setAccessibleName(texts.get(
                        "rail.spoken",
                        name.getText(),
                        (state.getText() + " " + said.getText()).strip(),
                        factor.getText()));
        setToolTipText((name.getText() + "  " + said.getText()).strip());
        return this;
    }

    static String stateWords(Texts texts, FactorState state) {
        return texts.get("state." + state.symbol().replace(' ', '-'));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (!chosen && !focused) {
            return;
        }
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        int arc = UIScale.scale(ARC) * 2;
        int gap = UIScale.scale(1);
        if (chosen) {
            pen.setColor(UIManager.getColor("Porebench.step.selected"));
            pen.fillRoundRect(gap, gap, getWidth() - 2 * gap, getHeight() - 2 * gap, arc, arc);
        }
        if (focused) {
            pen.setColor(UIManager.getColor("Component.focusedBorderColor"));
            pen.drawRoundRect(gap, gap, getWidth() - 2 * gap - 1, getHeight() - 2 * gap - 1, arc, arc);
        }
        pen.dispose();
    }
}
