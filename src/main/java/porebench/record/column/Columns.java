package porebench.record.column;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import porebench.method.Problem;

/**
 * All columns of one kind of record, in the order in which people meet them.
 *
 * @param table the name of the lab book's table
 * @param all the columns
 * @param make makes a record of what its columns state
 * @param sinceStep the schema step since which the lab book has the table
 * @param check what is wrong with a record that comes in, under the fields of its columns
 * @param <R> the records
 */
public record Columns<R>(
        String table,
        List<Column<R, ?>> all,
        Function<Cells, R> make,
        int sinceStep,
        Function<R, List<Problem>> check) {
    public Columns {
        all = List.copyOf(all);
    }

    /** Returns the columns of a kind of record. */
    @SafeVarargs
    public static <R> Columns<R> of(String table, Function<Cells, R> make, Column<R, ?>... all) {
        return new Columns<>(table, List.of(all), make, 1, any -> List.of());
    }

    /** Returns the same columns, in the lab book since a schema step. */
    public Columns<R> since(int step) {
        return new Columns<>(table, all, make, step, check);
    }

    /** Returns the same columns, a record that comes in being looked at as a whole. */
    public Columns<R> checked(Function<R, List<Problem>> wrong) {
        return new Columns<>(table, all, make, sinceStep, wrong);
    }

    /** Puts what a record states into its cells. */
    public void write(R record, CellWriter to) {
        all.forEach(column -> column.write(record, to));
    }

    /** Reads a record; empty when a column that every record states is empty or refused. */
    public Optional<R> read(CellReader from) {
        Cells cells = new Cells(all.size());
        boolean isWhole = true;
        for (Column<R, ?> column : all) {
            read(column, from, cells);
            isWhole &= !column.isNeeded() || cells.has(column);
        }
        return isWhole ? Optional.of(make.apply(cells)) : Optional.empty();
    }

    private static <V> void read(Column<?, V> column, CellReader from, Cells cells) {
        column.read(from).ifPresent(value -> cells.put(column, value));
    }

    /** Returns what records of this kind have several of, each in a table of its own. */
    public List<Part<?>> parts() {
        return all.stream().flatMap(column -> column.type().partOf().stream()).toList();
    }

    /** Returns the column of the field that a problem is about; empty when it is about none of them. */
    public Optional<Column<R, ?>> ofField(String field) {
        return all.stream().filter(column -> column.field().equals(field)).findFirst();
    }

    /**
     * Returns the headings that a file must have, in the order in which they are written. The unit of a number stands behind
     * the last column that uses it.
     */
    public List<String> neededHeadings() {
        List<String> headings = new ArrayList<>();
        List<Column<R, ?>> needed =
                all.stream().filter(column -> !column.isExtra()).toList();
        for (int i = 0; i < needed.size(); i++) {
            headings.add(needed.get(i).heading());
            List<String> units = needed.get(i).unitHeadings();
            if (!units.isEmpty()) {
                String unit = units.get(units.size() - 1);
                boolean isUsedLater = needed.stream()
                        .skip(i + 1L)
                        .anyMatch(later -> later.unitHeadings().contains(unit));
                if (!isUsedLater) {
                    headings.add(unit);
                }
            }
        }
        return List.copyOf(headings);
    }

    /** Returns the headings that a file may have, in the order in which they are written: columns, units, marks. */
    public List<String> extraHeadings() {
        Set<String> headings = new LinkedHashSet<>();
        Set<String> marks = new LinkedHashSet<>();
        Set<String> units = new LinkedHashSet<>();
        for (Column<R, ?> column : all) {
            List<String> own = column.unitHeadings();
            if (column.isMark()) {
                marks.add(column.heading());
            } else if (column.isExtra()) {
                headings.add(column.heading());
                headings.addAll(own);
            } else if (!own.isEmpty()) {
                units.addAll(own.subList(0, own.size() - 1));
            }
        }
        headings.addAll(units);
        return Stream.concat(headings.stream(), marks.stream()).toList();
    }
}
