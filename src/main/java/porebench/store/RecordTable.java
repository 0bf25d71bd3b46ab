package porebench.store;

import java.util.List;
import porebench.record.Kept;
import porebench.record.RecordKind;

/**
 * The table of one kind of record, and how a record becomes rows and rows become the record again.
 *
 * @param <T> the kind of record
 */
interface RecordTable<T extends Kept> {
    RecordKind kind();

    /** Returns the name of the table. */
    String name();

    /** Returns the names of the tables that hold the parts of a record, if it has any. */
    default List<String> partTables() {
        return List.of();
    }

    /** Returns the rows of a record. */
    StoredRecord rows(T value);

    /**
     * Returns the record of some rows.
     *
     * @throws RuntimeException if they are no such record
     */
    T value(StoredRecord rows);

    /** Returns the tables of all kinds, in the order of the kinds. */
    static List<RecordTable<? extends Kept>> all() {
        return List.of(
                new LaboratoryTable(),
                new ProfileTable(),
                new SourceTable(),
                new EquipmentTable(),
                new MeterTable(),
                new MeterCalibrationTable(),
                new MixTable(),
                new DeterminationTable(),
                new TrialTable(),
                new FactorIssueTable(),
                new CardPrintTable(),
                new StudyTable());
    }

    /** Returns the table of the records of a class. */
    @SuppressWarnings("unchecked") // each table is listed under the class of its own records
    static <T extends Kept> RecordTable<T> of(Class<T> kind) {
        return all().stream()
                .filter(table -> table.kind().type().equals(kind))
                .map(table -> (RecordTable<T>) table)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("kind must be a kind of record, but is " + kind.getName()));
    }

    /** Returns the table of a record's kind. */
    @SuppressWarnings("unchecked") // a record's class is its own
    static <T extends Kept> RecordTable<T> ofValue(T value) {
        return of((Class<T>) value.kind().type());
    }
}
