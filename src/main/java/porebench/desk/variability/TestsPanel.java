package porebench.desk.variability;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.Form;
import porebench.desk.form.WrappedText;

/** The tests behind the answers, a line each under the question they were made for. */
final class TestsPanel {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, wrap 3, gapy 3", "[]18[right]18[grow,fill]", "[top]"));
    private List<Finding> shown = List.of();

    TestsPanel() {
        panel.setName("tests");
        panel.setOpaque(false);
    }

    JComponent component() {
        return panel;
    }

    void show(List<Finding> questions) {
        if (questions.equals(shown)) {
            return;
        }
        shown = List.copyOf(questions);
        panel.removeAll();
        questions.stream().filter(question -> !question.tests().isEmpty()).forEach(this::add);
        panel.revalidate();
    }

    private void add(Finding question) {
        panel.add(Form.heading(question.title(), "h4"), "span 3, gaptop 6");
        for (int i = 0; i < question.tests().size(); i++) {
            Finding.TestLine line = question.tests().get(i);
            panel.add(new JLabel(line.test()));
            panel.add(new JLabel(line.statistic()));
            panel.add(new WrappedText("test." + question.name() + "." + i, "quiet", line.finding()), "wmin 0");
        }
    }
}
