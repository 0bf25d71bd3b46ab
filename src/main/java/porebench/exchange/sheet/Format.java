package porebench.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.exchange.text.Table;
import porebench.record.Kept;
import porebench.record.column.Column;
import porebench.record.column.Columns;

/**
 * How one kind of record stands in a CSV file.
 *
 * @param <T> the kind of record
 */
public interface Format<T extends Kept> {
    /** Returns the class of the records. */
    Class<T> type();

    /** Returns the usual name of a file of this kind. */
    String fileName();

    /** Returns the columns, in the order in which they are written. */
    Headings columns();

    /** Returns the columns of the records, which say what may stand under each heading. */
    Stated stated();

    /** Returns the headings that together name a record, no two rows of a file having the same; none where rows share them. */
    default List<String> key() {
        return List.of();
    }

    /**
     * What the rows of a file state.
     *
     * @param ofRow the columns that every row states
     * @param ofFirst the columns that the first row of a record states, and its further rows may leave empty
     * @param kinds whether rows are of several kinds, each with columns of its own, which are empty in the others
     */
    record Stated(List<Column<?, ?>> ofRow, List<Column<?, ?>> ofFirst, boolean kinds) {
        public Stated {
            ofRow = List.copyOf(ofRow);
            ofFirst = List.copyOf(ofFirst);
        }

        /** What rows state that each state one record. */
        static Stated of(Columns<?> columns) {
            return new Stated(List.copyOf(columns.all()), List.of(), false);
        }

        /** What rows state of which the first states the whole, and each one of the several things it has. */
        static Stated of(Column<?, ?> id, Columns<?> whole, Columns<?> part) {
            List<Column<?, ?>> ofRow = new ArrayList<>(part.all());
            ofRow.add(id);
            List<Column<?, ?>> ofFirst = whole.all().stream()
                    .filter(column -> column != id && column.type().partOf().isEmpty())
                    .<Column<?, ?>>map(column -> column)
                    .toList();
            return new Stated(ofRow, ofFirst, false);
        }
    }

    /** Reads all records under a heading; what is wrong is noted in the table's findings. */
    List<Sheet.Row<T>> read(Table table);

    /** Returns the rows that state a record, their cells in the order of the columns. */
    List<List<String>> write(T value);

    /**
     * A format in which each row states one record.
     *
     * @param <T> the kind of record
     */
    interface RowByRow<T extends Kept> extends Format<T> {
        /** Returns the columns that together name a record; none when a file can hold only one record. */
        @Override
        List<String> key();

        /** Reads one record; empty, with the problems noted, when the row states none. */
        Optional<T> read(HeadedRow entry);

        /** Returns the cells of a record in the order of the columns. */
        List<String> row(T value);

        @Override
        default List<List<String>> write(T value) {
            return List.of(row(value));
        }

        @Override
        default List<Sheet.Row<T>> read(Table table) {
            List<Sheet.Row<T>> good = new ArrayList<>();
            Map<List<String>, Integer> seen = new HashMap<>();
            for (Optional<HeadedRow> next = table.next(); next.isPresent(); next = table.next()) {
                HeadedRow entry = next.get();
                List<String> name =
                        key().stream().map(column -> entry.text(column).strip()).toList();
                Optional<T> value = read(entry);
                Integer twin = name.contains("") ? null : seen.putIfAbsent(name, entry.line());
                if (twin != null) {
                    String column = key().isEmpty() ? columns().needed().get(0) : key().get(0);
                    entry.error(column, "csv.duplicate", String.join(" ", name), twin);
                }
                if (entry.isGood() && table.isWhole()) {
                    value.ifPresent(record -> good.add(new Sheet.Row<>(entry.line(), record)));
                }
            }
            return good;
        }
    }
}
