package porebench.desk.variability;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;

/** The numbers below one another: what it is, the number with its unit, what it rests on. */
final class FiguresPanel {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 3, hidemode 3, gapy 7", "[]18[]18[grow,fill]", "[top]"));
    private List<Figures.Line> shown = List.of();

    FiguresPanel() {
        panel.setName("figures");
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    void show(List<Figures.Line> lines) {
        if (lines.equals(shown)) {
            return;
        }
        shown = List.copyOf(lines);
        panel.removeAll();
        for (int i = 0; i < lines.size(); i++) {
            Figures.Line line = lines.get(i);
            JLabel value = Form.heading(line.value(), "h4");
            value.setName("figure." + i);
            panel.add(new JLabel(line.name()));
            panel.add(value);
            panel.add(new WrappedText("note." + i, "quiet", line.note()), "wmin 0");
        }
        panel.revalidate();
    }
}
