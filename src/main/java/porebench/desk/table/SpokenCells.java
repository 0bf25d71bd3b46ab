package porebench.desk.table;

import java.awt.Component;
import java.util.Locale;
import javax.accessibility.AccessibleContext;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import porebench.method.Texts;

/** What tables say to those who hear them read: a cell its words, its heading and what is wrong with it. */
final class SpokenCells {
    private static final String BUNDLE = "porebench.desk.table.table";

    private SpokenCells() {}

    /** Gives a table and its headings their name. */
    static void name(JTable table, String title) {
        table.getAccessibleContext().setAccessibleName(title);
        AccessibleContext headings = table.getTableHeader().getAccessibleContext();
        headings.setAccessibleName(Texts.of(BUNDLE, table.getLocale()).get("headings", title));
    }

    /** Returns what a cell says; an empty one says that it is. */
    static String words(String text, Locale locale) {
        return text == null || text.isBlank() ? Texts.of(BUNDLE, locale).get("empty") : text;
    }

    /**
     * Returns what is said of a cell.
     *
     * @param problem what is wrong with it; blank where nothing is
     */
    static String about(String heading, String problem) {
        return problem.isBlank() ? heading : heading + ". " + problem;
    }

    /** Makes what a cell is typed in ready, and gives it the heading of its column for a name. */
    static Component typed(JTable table, Component field, String heading) {
        field.getAccessibleContext().setAccessibleName(heading);
        if (field instanceof JComboBox<?> box && box.isEditable()) {
            box.getEditor().getEditorComponent().getAccessibleContext().setAccessibleName(heading);
        }
        if (field instanceof JComponent part && part.getToolTipText() != null) {
            field.getAccessibleContext().setAccessibleDescription(part.getToolTipText());
        }
        if (field instanceof JTextComponent text) {
            CellTyping.begin(table, text);
        }
        return field;
    }
}
