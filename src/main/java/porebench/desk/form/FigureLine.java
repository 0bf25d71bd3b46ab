package porebench.desk.form;

import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;

/**
 * One computed figure, {@code name | number | unit}, in a panel of MigLayout that wraps after three columns.
 *
 * <p>While the figure is not known, words stand in place of its number and the unit is left out.
 */
public final class FigureLine {
    private final JLabel name = new JLabel();
    private final JLabel value = new JLabel();
    private final JLabel unit = new JLabel();
    private final Numbers numbers;
    private final String unknown;

    /**
     * Makes a line and adds it to a panel.
     *
     * @param key the name of the label with the number
     * @param unknown the words while the figure is not known
     */
    public FigureLine(JPanel panel, String key, String words, Numbers numbers, String unknown) {
        this.numbers = numbers;
        this.unknown = unknown;
        value.setName(key);
        name.setText(words);
        name.setLabelFor(value);
        panel.add(name);
        panel.add(value);
        panel.add(unit);
    }

    /** Changes what the figure is called. */
    public void call(String words) {
        name.setText(words);
    }

    /**
     * Shows the figure.
     *
     * @param number the figure in its unit; empty while it is not known
     * @param decimals digits after the decimal sign
     * @param symbol the unit, empty for a plain number
     */
    public void show(OptionalDouble number, int decimals, String symbol) {
        boolean known = number.isPresent();
        value.setText(known ? numbers.show(number.getAsDouble(), decimals) : unknown);
        value.putClientProperty("FlatLaf.styleClass", known ? null : "quiet");
        unit.setText(known ? symbol : "");
    }

    /** Shows a name that says all, without a figure. */
    public void showNone() {
        value.setText("");
        unit.setText("");
    }

    /** Shows or hides the whole line. */
    public void setVisible(boolean shown) {
        name.setVisible(shown);
        value.setVisible(shown);
        unit.setVisible(shown);
    }
}
