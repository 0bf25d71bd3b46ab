package porebench.store.rows;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.column.Columns;
import porebench.record.column.Part;
import porebench.record.column.RecordColumns;

/**
 * The table of one kind of record: how a record becomes rows and rows become the record again, by its columns.
 *
 * @param kind the kind of record
 * @param columns its columns
 * @param <T> the records
 */
public record RecordTable<T extends Kept>(RecordKind kind, Columns<T> columns) {
    private static final List<RecordTable<? extends Kept>> ALL = Arrays.stream(RecordKind.values())
            .<RecordTable<? extends Kept>>map(RecordTable::ofKind)
            .toList();

    private static RecordTable<? extends Kept> ofKind(RecordKind kind) {
        return new RecordTable<>(kind, RecordColumns.of(kind));
    }

    /** Returns the name of the table. */
    public String name() {
        return columns.table();
    }

    /** Returns the names of the tables that hold the parts of a record, if it has any. */
    public List<String> partTables() {
        return columns.parts().stream().map(Part::table).toList();
    }

    /** Returns the name of the table, this one or that of a part, which has a column. */
    String holding(String column) {
        return Stream.concat(Stream.of(columns), columns.parts().stream().map(Part::columns))
                .filter(one -> one.all().stream().anyMatch(own -> own.name().equals(column)))
                .map(Columns::table)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "column must be one of " + columns.table() + " or its parts, but is " + column));
    }

    /** Returns the rows of a record. */
    public StoredRecord rows(T value) {
        WrittenCells cells = new WrittenCells(name());
        columns.write(value, cells);
        return cells.record();
    }

    /**
     * Returns the record of some rows.
     *
     * @throws RuntimeException if they are no such record
     */
    public T value(StoredRecord rows) {
        return columns.read(new ReadCells(rows.row(), rows.parts())).orElseThrow();
    }

    /** Returns the tables of all kinds, in the order of the kinds. */
    public static List<RecordTable<? extends Kept>> all() {
        return ALL;
    }

    /** Returns the table of the records of a class. */
    @SuppressWarnings("unchecked") // each table is listed under the class of its own records
    public static <T extends Kept> RecordTable<T> of(Class<T> kind) {
        return all().stream()
                .filter(table -> table.kind().type().equals(kind))
                .map(table -> (RecordTable<T>) table)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("kind must be a kind of record, but is " + kind.getName()));
    }

    /** Returns the table of a record's kind. */
    @SuppressWarnings("unchecked") // a record's class is its own
    public static <T extends Kept> RecordTable<T> ofValue(T value) {
        return of((Class<T>) value.kind().type());
    }
}
