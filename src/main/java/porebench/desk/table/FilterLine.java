package porebench.desk.table;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.Locale;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Focusing;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Typing;
import porebench.method.Texts;

/** A line over a table: rows stay in which every word typed occurs somewhere. Enter goes into the table, Escape shows all again. */
public final class FilterLine {
    /** As many rows as are seen at one look. */
    private static final int FEW = 10;

    private final MigLayout layout = new MigLayout("insets 0 0 6 0, fillx", "[grow,fill,0:260:320]10[grow,0::]");
    private final JPanel panel = new JPanel(layout);
    private final JTextField field = new JTextField();
    private final JLabel count = Form.heading("", "quiet");
    private final RowTable<?> table;
    private final Texts texts;

    public FilterLine(RowTable<?> table, Locale locale) {
        this.table = table;
        this.texts = Texts.of("porebench.desk.table.table", locale);
        String words = texts.get("filter");
        field.setName(table.getName() + ".filter");
        field.putClientProperty(Focusing.SEEKS, true);
        count.setName(table.getName() + ".count");
        field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, words);
        field.putClientProperty(FlatClientProperties.TEXT_FIELD_SHOW_CLEAR_BUTTON, true);
        field.getAccessibleContext().setAccessibleName(words);
        Typing.follow(field, this::filter);
        on("ENTER", this::enter);
        on("DOWN", this::enter);
        on("ESCAPE", () -> field.setText(""));
        table.getModel().addTableModelListener(event -> say());
        panel.setOpaque(false);
        panel.add(field);
        panel.add(count, "wmin 0");
    }

    /** Returns a line over a table that is there only while the table has more rows than are seen at one look; no gap is below it. */
    public static JComponent overMany(RowTable<?> table, Locale locale) {
        FilterLine line = new FilterLine(table, locale);
        line.layout.setLayoutConstraints("insets 0, fillx");
        Runnable follow = () ->
                line.panel.setVisible(isLong(table) || !line.field.getText().isBlank());
        table.getModel().addTableModelListener(event -> follow.run());
        follow.run();
        return line.panel;
    }

    /** Returns whether a table has more rows than are seen at one look, whatever the filter leaves of them. */
    public static boolean isLong(RowTable<?> table) {
        return table.getModel().getRowCount() > FEW;
    }

    private void on(String key, Runnable what) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, Commands.of("", what));
    }

    private void filter(String sought) {
        table.filter(sought);
        say();
    }

    private void say() {
        count.setText(
                field.getText().isBlank()
                        ? ""
                        : texts.get(
                                "filter.count",
                                Integer.toString(table.getRowCount()),
                                Integer.toString(table.getModel().getRowCount())));
    }

    /** Takes the keyboard into the table, and the only row that is left with it. */
    private void enter() {
        if (table.getRowCount() > 0) {
            if (table.getSelectedRow() < 0) {
                table.changeSelection(0, 0, false, false);
            }
            table.requestFocusInWindow();
        }
    }

    public JComponent component() {
        return panel;
    }
}
