package porebench.desk.table;

import java.awt.Component;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/** How wide the columns of a table have to be. */
final class ColumnWidths {
    private static final String LEAST = "columns.least";
    private static final String WATCHED = "columns.watched";
    /** More rows than are seen at one look; all of many would take long each time the window changes. */
    private static final int LOOKED_AT = 40;

    private ColumnWidths() {}

    /** Returns how wide the heading of a column is. */
    static int heading(JTable table, TableColumn place) {
        return place.getHeaderRenderer()
                .getTableCellRendererComponent(table, place.getHeaderValue(), false, false, -1, place.getModelIndex())
                .getPreferredSize()
                .width;
    }

    /** Makes a column just as wide as what stands in it. */
    static void fit(JTable table, int at) {
        TableColumn place = table.getColumnModel().getColumn(at);
        int wide = content(table, at, table.getRowCount()) + table.getRowHeight();
        place.setPreferredWidth(wide);
        place.setWidth(wide);
    }

    /** Returns how wide the heading and what stands in the first rows of a column are. */
    private static int content(JTable table, int at, int rows) {
        int widest = heading(table, table.getColumnModel().getColumn(at));
        for (int row = 0; row < Math.min(rows, table.getRowCount()); row++) {
            Component cell = table.prepareRenderer(table.getCellRenderer(row, at), row, at);
            widest = Math.max(widest, cell.getPreferredSize().width);
        }
        return widest;
    }

    /**
     * Returns how wide each column has to be to show what stands in it, and never wider than it is wanted. Layouts ask it again and again:
     * it is measured once for the rows, headings and wanted widths there are.
     */
    private static int[] least(JTable table) {
        List<Object> of = new ArrayList<>(List.of(table.getFont(), table.getRowCount(), sorted(table)));
        for (TableColumn column : Collections.list(table.getColumnModel().getColumns())) {
            of.add(column.getPreferredWidth());
            of.add(String.valueOf(column.getHeaderValue()));
        }
        if (table.getClientProperty(LEAST) instanceof Least known && known.of().equals(of)) {
            return known.widths();
        }
        if (table.getClientProperty(WATCHED) == null) {
            table.putClientProperty(WATCHED, true);
            table.getModel().addTableModelListener(event -> table.putClientProperty(LEAST, null));
            table.addPropertyChangeListener("UI", event -> table.putClientProperty(LEAST, null));
        }
        int[] measured = measured(table);
        table.putClientProperty(LEAST, new Least(of, measured));
        return measured;
    }

    private static List<?> sorted(JTable table) {
        return table.getRowSorter() == null ? List.of() : table.getRowSorter().getSortKeys();
    }

    /**
     * Widths that were measured.
     *
     * @param of what they were measured of
     * @param widths the widths, not to be changed
     */
    private record Least(List<Object> of, int[] widths) {}

    private static int[] measured(JTable table) {
        return IntStream.range(0, table.getColumnCount())
                .map(at -> {
                    TableColumn place = table.getColumnModel().getColumn(at);
                    int wanted = place.getPreferredWidth();
                    // Words that break their lines take what they get.
                    int shown = RowHeights.isWrapped(table, at)
                            ? Math.max(heading(table, place), wanted / 2)
                            : content(table, at, LOOKED_AT) + table.getIntercellSpacing().width;
                    return Math.min(shown, wanted);
                })
                .toArray();
    }

    /** Returns whether columns that are wanted wider than there is room still show what stands in them. */
    static boolean canNarrow(JTable table, int room) {
        return IntStream.of(least(table)).sum() <= room;
    }

    /** Takes from columns what they have more than stands in them, so that the table is no wider than it is. */
    static void narrow(JTable table) {
        int[] least = least(table);
        int over = table.getWidth() - IntStream.of(least).sum();
        int spare = table.getPreferredSize().width - IntStream.of(least).sum();
        int left = table.getWidth();
        for (int at = 0; at < least.length; at++) {
            TableColumn place = table.getColumnModel().getColumn(at);
            int more = spare <= 0 ? 0 : (int) ((long) (place.getPreferredWidth() - least[at]) * over / spare);
            int wide = at == least.length - 1 ? left : least[at] + more;
            place.setWidth(wide);
            left -= wide;
        }
    }
}
