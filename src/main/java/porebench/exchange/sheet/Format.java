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
