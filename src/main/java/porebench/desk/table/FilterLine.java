package porebench.desk.table;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.event.ActionEvent;
import java.util.Locale;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;
import net.miginfocom.swing.MigLayout;
import porebench.desk.Focusing;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.form.Typing;
import porebench.method.Texts;

/**
 * A line over a table: rows stay in which every word typed occurs somewhere. Ctrl and F in the table, or the table's own menu, leads
 * into it; Enter goes into the table, Escape shows all again.
 */
public final class FilterLine {
    /** As many rows as are seen at one look. */
    private static final int FEW = 10;

    private static final String CALL = "ctrl F";
    private static final String COPY = "ctrl C";
    private static final String OVER = "porebench.filter";

    private final MigLayout layout = new MigLayout("insets 0 0 6 0, fillx", "[grow,fill,0:260:320]10[grow,0::]");
    private final JPanel panel = new JPanel(layout);
    private final JTextField field = new JTextField();
    private final JLabel count = Form.heading("", "quiet");
    private final RowTable<?> table;
    private final Texts texts;
    private final Action all = Commands.of("", this::showAll);
    private boolean isAlways = true;
    private boolean isCalled;

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
        on("ENTER", Commands.of("", this::enter));
        on("DOWN", Commands.of("", this::enter));
        on("ESCAPE", all);
        table.getModel().addTableModelListener(event -> follow());
        panel.setOpaque(false);
        panel.add(field);
        panel.add(count, "wmin 0");
        callByTable();
        follow();
    }

    /** Returns a line that is there only while the table has more rows than are seen at one look, or while it is called. */
    public static JComponent overMany(RowTable<?> table, Locale locale) {
        FilterLine line = new FilterLine(table, locale);
        line.layout.setLayoutConstraints("insets 0, fillx");
        line.isAlways = false;
        line.follow();
        return line.panel;
    }

    /** Returns the same for within the scroll pane of the table. */
    static JComponent within(RowTable<?> table) {
        JComponent line = overMany(table, table.getLocale());
        line.setBorder(BorderFactory.createEmptyBorder(4, 4, 4, 4));
        return line;
    }

    /** Returns whether a table has its line already. */
    static boolean isOver(RowTable<?> table) {
        return table.getClientProperty(OVER) != null;
    }

    /** Returns whether a table has more rows than are seen at one look, whatever the filter leaves of them. */
    private static boolean isLong(RowTable<?> table) {
        return table.getModel().getRowCount() > FEW;
    }

    private void on(String key, Action action) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, action);
    }

    /** Lets the table lead here: by a key, and by a menu of its own. */
    private void callByTable() {
        Action call = Commands.of(texts.get("menu.filter"), CALL, this::call);
        Action copy = Commands.of(texts.get("menu.copy"), COPY, this::copy);
        table.putClientProperty(OVER, true);
        table.on(CALL, call);
        JPopupMenu menu = new JPopupMenu();
        menu.add(call).setName("table.filter");
        menu.add(copy).setName("table.copy");
        table.setComponentPopupMenu(menu);
    }

    private void copy() {
        if (table.getSelectedRow() < 0) {
            table.selectAll();
        }
        TransferHandler.getCopyAction().actionPerformed(new ActionEvent(table, ActionEvent.ACTION_PERFORMED, COPY));
    }

    private void call() {
        table.finishTyping();
        isCalled = true;
        follow();
        field.requestFocusInWindow();
        field.selectAll();
    }

    private void filter(String sought) {
        table.filter(sought);
        follow();
    }

    /** Shows all rows again; a line that was called goes, and the keyboard goes back into the table. */
    private void showAll() {
        boolean goes = isCalled && !isAlways && !isLong(table);
        isCalled = false;
        field.setText("");
        follow();
        if (goes) {
            table.requestFocusInWindow();
        }
    }

    private void follow() {
        boolean isBlank = field.getText().isBlank();
        boolean shows = isAlways || isCalled || isLong(table) || !isBlank;
        // Where there is nothing to take back, Escape is the dialog's.
        all.setEnabled(isCalled || !isBlank);
        if (shows != panel.isVisible()) {
            panel.setVisible(shows);
            // The page around the scroll pane, which ends what is laid out anew, has to give it more room.
            Optional.ofNullable(SwingUtilities.getAncestorOfClass(JScrollPane.class, panel))
                    .map(Component::getParent)
                    .filter(JComponent.class::isInstance)
                    .map(JComponent.class::cast)
                    .ifPresent(JComponent::revalidate);
        }
        count.setText(
                isBlank
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

    /** Returns the words typed. */
    public String sought() {
        return field.getText();
    }

    /** Types other words. */
    public void seek(String sought) {
        field.setText(sought);
    }

    public JComponent component() {
        return panel;
    }
}
