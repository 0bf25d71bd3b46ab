package porebench.desk.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import porebench.method.Problem;
import porebench.method.ProblemText;

/**
 * One row of a form, {@code label | field | unit}, with the field's problems in words under it.
 *
 * <p>Stands in a panel of MigLayout with three columns, see {@link Form}.
 */
public final class Row {
    /** In pixels at 100 %; a longer label, as with the names that people give, ends in dots and says all when pointed at. */
    private static final int WIDEST_LABEL = 340;

    private final JComponent field;
    private final WrappedText message;
    private final ProblemText problemText;
    private final List<Component> besides = new ArrayList<>();
    private boolean visible = true;

    Row(JComponent field, ProblemText problemText) {
        this.field = field;
        this.problemText = problemText;
        message = new WrappedText(field.getName() + ".message", "fieldError");
        message.setVisible(false);
    }

    void addTo(JPanel panel, JLabel label, Component unit) {
        besides.addAll(List.of(label, unit));
        panel.add(label, "wmin 0, wmax " + WIDEST_LABEL);
        if (label.getPreferredSize().width > UIScale.scale(WIDEST_LABEL)) {
            label.setToolTipText(label.getText());
        }
        panel.add(field, "growx");
        panel.add(unit, "wrap");
        panel.add(message, "skip 1, span 2, growx, wmin 0, hidemode 3, wrap");
    }

    /** Shows or hides the whole row. */
    public void setVisible(boolean shown) {
        visible = shown;
        field.setVisible(shown);
        besides.forEach(each -> each.setVisible(shown));
        message.setVisible(shown && !message.getText().isEmpty());
    }

    /** Shows the problems of this field by outline and words; none takes both away. */
    public void show(List<Problem> problems) {
        boolean error = Problem.anyError(problems);
        field.putClientProperty("JComponent.outline", error ? "error" : problems.isEmpty() ? null : "warning");
        message.putClientProperty("FlatLaf.styleClass", error ? "fieldError" : "fieldWarning");
        message.setText(
                String.join("\n", problems.stream().map(problemText::say).toList()));
        message.setVisible(visible && !problems.isEmpty());
        field.repaint();
    }
}
