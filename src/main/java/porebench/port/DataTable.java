package porebench.port;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import porebench.quantity.Require;

/**
 * Figures under a heading, to be written as CSV.
 *
 * @param heading the names of the columns, each with its unit where it has one, such as {@code factor_pct_air}
 * @param rows the rows, each with as many cells as the heading; numbers with a decimal point, nothing is an empty cell
 */
public record DataTable(List<String> heading, List<List<String>> rows) {
    private static final String SIMULATED = "simulated";

    public DataTable {
        heading = List.copyOf(heading);
        Require.atLeast("count of columns", heading.size(), 1);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != heading.size()) {
                throw new IllegalArgumentException(
                        "count of cells must be " + heading.size() + ", but is " + row.size());
            }
        }
    }

    /** Returns these figures with a column that says of every row that it was simulated, for training. */
    public DataTable simulated() {
        int there = heading.indexOf(SIMULATED);
        if (there >= 0) {
            return new DataTable(
                    heading, rows.stream().map(row -> marked(row, there)).toList());
        }
        return new DataTable(
                with(heading, SIMULATED),
                rows.stream().map(row -> with(row, "yes")).toList());
    }

    private static List<String> marked(List<String> row, int column) {
        List<String> cells = new ArrayList<>(row);
        cells.set(column, "yes");
        return cells;
    }

    private static List<String> with(List<String> cells, String another) {
        return Stream.concat(cells.stream(), Stream.of(another)).toList();
    }
}
