package porebench.port;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.record.column.CellShape;
import porebench.record.column.StatedColumn;

/**
 * The columns of a list that is written as CSV, each with what stands in it: its heading, its schema and its cells come from here.
 *
 * @param <T> what a line of the list is about
 */
final class ListColumns<T> {
    private static final String BETWEEN = "; ";

    private final List<StatedColumn> stated = new ArrayList<>();
    private final List<Function<T, String>> cells = new ArrayList<>();

    /** Adds a column. */
    ListColumns<T> column(StatedColumn column, Function<T, String> cell) {
        stated.add(column);
        cells.add(cell);
        return this;
    }

    /** Adds a column of text that may be empty. */
    ListColumns<T> text(String name, Function<T, String> cell) {
        return column(StatedColumn.any(CellShape.Kind.TEXT, name), cell);
    }

    /** Adds a column of text that is never empty. */
    ListColumns<T> filled(String name, Function<T, String> cell) {
        return column(StatedColumn.filled(CellShape.Kind.TEXT, name), cell);
    }

    /** Adds a column of counts. */
    ListColumns<T> count(String name, Function<T, Integer> cell) {
        return column(
                StatedColumn.filled(CellShape.Kind.WHOLE, name),
                line -> cell.apply(line).toString());
    }

    /** Adds a column of something that is not there in every line. */
    ListColumns<T> any(CellShape.Kind kind, String name, Function<T, ? extends Optional<?>> cell) {
        return column(
                StatedColumn.any(kind, name),
                line -> cell.apply(line).map(Object::toString).orElse(""));
    }

    /** Adds a column of numbers that are not there in every line. */
    ListColumns<T> number(StatedColumn column, Function<T, Optional<BigDecimal>> cell) {
        return column(
                column, line -> cell.apply(line).map(BigDecimal::toPlainString).orElse(""));
    }

    /** Adds a column of percentages that are not there in every line. */
    ListColumns<T> percent(String name, Function<T, Optional<BigDecimal>> cell) {
        return number(StatedColumn.any(CellShape.Kind.NUMBER, name).in("%"), cell);
    }

    /** Adds a column of several things with semicolons between. */
    ListColumns<T> several(String name, Function<T, List<String>> cell) {
        return column(StatedColumn.any(CellShape.Kind.SEVERAL, name), line -> String.join(BETWEEN, cell.apply(line)));
    }

    /** Returns the columns in their order. */
    List<StatedColumn> stated() {
        return List.copyOf(stated);
    }

    /** Returns the table of some lines. */
    DataTable table(List<T> lines) {
        return new DataTable(
                stated.stream().map(StatedColumn::name).toList(),
                lines.stream()
                        .map(line ->
                                cells.stream().map(cell -> cell.apply(line)).toList())
                        .toList());
    }
}
