package porebench.desk.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import porebench.method.Problem;
import porebench.method.ProblemText;

/**
 * A panel of form rows, {@code label | field | unit}, each with a line under it that is kept for its problems: no field moves when
 * they come or go.
 *
 * <p>The label text carries its mnemonic as an ampersand before the letter, as in {@code &Batch volume}.
 */
public final class Form {
    /** In pixels at 100 %; a longer label, as with the names that people give, ends in dots and says all when pointed at. */
    private static final int WIDEST_LABEL = 340;

    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, hidemode 3, gapy 0", "[pref!][96:pref:,grow,fill][pref!]", ""));
    private final Map<String, Row> rows = new LinkedHashMap<>();
    private final ProblemText problemText;

    public Form(ProblemText problemText) {
        this.problemText = problemText;
    }

    /** Returns the panel with all rows. */
    public JPanel panel() {
        return panel;
    }

    /**
     * Adds a row.
     *
     * @param fieldName the field in a {@link Problem}, also the component's name
     * @param label the label, its mnemonic after an ampersand
     * @param field the component to type in
     * @param unit the unit, or another small component after the field
     */
    public void add(String fieldName, String label, JComponent field, JComponent unit) {
        field.setName(fieldName);
        Row row = new Row(field, problemText);
        row.addTo(panel, label(label, field), unit);
        rows.put(fieldName, row);
    }

    /** Adds a row whose unit is a plain text, which may be empty. */
    public void add(String fieldName, String label, JComponent field, String unit) {
        add(fieldName, label, field, new JLabel(unit));
        SpokenField.of(field).ofUnit(unit);
    }

    /**
     * Makes words that stand above or beside something.
     *
     * @param styleClass how they look, such as {@code h2}
     */
    public static JLabel heading(String words, String styleClass) {
        JLabel heading = new JLabel(words);
        heading.putClientProperty("FlatLaf.styleClass", styleClass);
        return heading;
    }

    /** Makes a label for a component, with the mnemonic after an ampersand. */
    public static JLabel label(String text, JComponent field) {
        int ampersand = text.indexOf('&');
        JLabel label = new JLabel(text.replaceFirst("&", ""));
        label.setLabelFor(field);
        if (ampersand >= 0 && ampersand + 1 < text.length()) {
            label.setDisplayedMnemonic(Character.toUpperCase(text.charAt(ampersand + 1)));
            label.setDisplayedMnemonicIndex(ampersand);
            // Swing gives the caret to the label first, and to the field when the key is let go: a quick stroke is lost
            // there.
            label.getActionMap().put("press", Commands.of("", field::requestFocusInWindow));
        }
        return label;
    }

    /**
     * Shows each problem under its field.
     *
     * @return the problems whose field is not in this form, for a place of their own
     */
    public List<Problem> show(List<Problem> problems) {
        rows.forEach((field, row) ->
                row.show(problems.stream().filter(p -> p.field().equals(field)).toList()));
        List<Problem> others = new ArrayList<>(problems);
        others.removeIf(problem -> rows.containsKey(problem.field()));
        return others;
    }

    /** Shows or hides the row of a field. */
    void setVisible(String fieldName, boolean shown) {
        Objects.requireNonNull(rows.get(fieldName), fieldName).setVisible(shown);
    }

    /** One row, with the field's problems in words under it. */
    private static final class Row {
        private final JComponent field;
        private final MessageLine message;
        private final ProblemText problemText;
        private final List<Component> besides = new ArrayList<>();

        Row(JComponent field, ProblemText problemText) {
            this.field = field;
            this.problemText = problemText;
            message = new MessageLine(field);
        }

        void addTo(JPanel panel, JLabel label, Component unit) {
            besides.addAll(List.of(label, unit, message.room()));
            panel.add(label, "wmin 0, wmax " + WIDEST_LABEL);
            if (label.getPreferredSize().width > UIScale.scale(WIDEST_LABEL)) {
                label.setToolTipText(label.getText());
            }
            // What is chosen has long words: it goes on where no unit stands. No longer than that; it would be cut off.
            boolean isWide = !(field instanceof JTextComponent)
                    && unit instanceof JLabel words
                    && words.getText().isEmpty();
            panel.add(field, isWide ? "spanx 2, split 2, growx, pushx, wmin 0" : "growx, wmin 0");
            panel.add(unit, "wrap");
            panel.add(message.room(), "span 3, growx, wmin 0, wrap");
        }

        /** Shows or hides the whole row. */
        void setVisible(boolean shown) {
            field.setVisible(shown);
            besides.forEach(each -> each.setVisible(shown));
        }

        /** Shows the problems of this field by outline and words; none takes both away. */
        void show(List<Problem> problems) {
            boolean error = Problem.anyError(problems);
            field.putClientProperty("JComponent.outline", error ? "error" : problems.isEmpty() ? null : "warning");
            String words =
                    String.join("\n", problems.stream().map(problemText::say).toList());
            message.say(words, error);
            SpokenField.of(field).ofProblems(words);
            field.repaint();
        }
    }
}
