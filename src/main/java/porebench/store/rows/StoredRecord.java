package porebench.store.rows;

import java.util.List;

/**
 * One version of a record as it stands in the file: its row, and the rows of its parts.
 *
 * @param row the row in the table of its kind
 * @param parts the rows in the tables of its parts, in no particular order
 */
public record StoredRecord(StoredRow row, List<StoredRow> parts) {
    public StoredRecord {
        parts = List.copyOf(parts);
    }

    /** Returns a record that has no parts. */
    static StoredRecord of(StoredRow row) {
        return new StoredRecord(row, List.of());
    }
}
