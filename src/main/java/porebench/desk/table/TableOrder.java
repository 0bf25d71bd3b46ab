package porebench.desk.table;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.RowSorter;
import javax.swing.RowSorter.SortKey;
import javax.swing.SortOrder;

/** By which columns a table is sorted, as a text, and its rows as they are on view. */
public final class TableOrder {
    private static final String DOWN = "-";

    private TableOrder() {}

    /** Returns the numbers of the columns by which a table is sorted, the first one first, each with a minus where it falls. */
    public static String of(RowTable<?> table) {
        RowSorter<?> sorter = table.getRowSorter();
        return sorter == null
                ? ""
                : sorter.getSortKeys().stream()
                        .filter(key -> key.getSortOrder() != SortOrder.UNSORTED)
                        .map(key -> (key.getSortOrder() == SortOrder.DESCENDING ? DOWN : "") + key.getColumn())
                        .collect(Collectors.joining(","));
    }

    /** Sorts a table as a text says; what names no column of it is left out. */
    public static void put(RowTable<?> table, String order) {
        RowSorter<?> sorter = table.getRowSorter();
        if (sorter == null) {
            return;
        }
        List<SortKey> keys = new ArrayList<>();
        for (String one : order.split(",", -1)) {
            boolean falls = one.startsWith(DOWN);
            String number = falls ? one.substring(1) : one;
            if (number.matches("\\d{1,3}")
                    && Integer.parseInt(number) < table.getModel().getColumnCount()) {
                keys.add(new SortKey(Integer.parseInt(number), falls ? SortOrder.DESCENDING : SortOrder.ASCENDING));
            }
        }
        sorter.setSortKeys(keys);
    }

    /** Returns the rows of a table that are on view, in their order there. */
    public static <R> List<R> rows(RowTable<R> table) {
        return IntStream.range(0, table.getRowCount()).mapToObj(table::rowAt).toList();
    }
}
