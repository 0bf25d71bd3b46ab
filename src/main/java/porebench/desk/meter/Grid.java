package porebench.desk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The cells of a table to type in, letter by letter; below its rows stands an empty one to go on in.
 *
 * @param rows the rows, each with the same number of cells
 * @param empty the cells of an empty row
 */
record Grid(List<List<String>> rows, List<String> empty) {
    Grid {
        rows = rows.stream().map(List::copyOf).toList();
        empty = List.copyOf(empty);
    }

    /** Returns a table without rows. */
    static Grid of(String... empty) {
        return new Grid(List.of(), List.of(empty));
    }

    /** Returns a cell; beyond the rows that of an empty row. */
    String cell(int row, int column) {
        return row < rows.size() ? rows.get(row).get(column) : empty.get(column);
    }

    /**
     * Returns this table with other text in a cell, which may be one of the empty row; empty rows at the end go. What was
     * chosen in a cell that is never empty, such as a unit, is offered in the empty row from then on.
     */
    Grid with(int row, int column, String text) {
        List<List<String>> changed = new ArrayList<>(rows);
        while (changed.size() <= row) {
            changed.add(empty);
        }
        List<String> cells = new ArrayList<>(changed.get(row));
        cells.set(column, text);
        changed.set(row, cells);
        List<String> next = new ArrayList<>(empty);
        if (!empty.get(column).isEmpty()) {
            next.set(column, text);
        }
        while (!changed.isEmpty() && !isTyped(changed.get(changed.size() - 1))) {
            changed.remove(changed.size() - 1);
        }
        return new Grid(changed, next);
    }

    private boolean isTyped(List<String> cells) {
        return IntStream.range(0, cells.size())
                .anyMatch(column ->
                        empty.get(column).isEmpty() && !cells.get(column).isBlank());
    }

    /** Returns this table with a row added. */
    Grid plus(List<String> row) {
        List<List<String>> more = new ArrayList<>(rows);
        more.add(row);
        return new Grid(more, empty);
    }

    /** Returns this table without a row. */
    Grid without(int row) {
        List<List<String>> fewer = new ArrayList<>(rows);
        fewer.remove(row);
        return new Grid(fewer, empty);
    }

    /** Returns the indices of the rows in which something is typed. */
    List<Integer> typedRows() {
        return IntStream.range(0, rows.size())
                .filter(row -> isTyped(rows.get(row)))
                .boxed()
                .toList();
    }
}
