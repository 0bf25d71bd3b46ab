package porebench.store;

import java.util.List;

/**
 * One version of a record as it stands in the file: its row, and the rows of its parts.
 *
 * @param row the row in the table of its kind
 * @param parts the rows in the tables of its parts, in no particular order
 */
record StoredRecord(StoredRow row, List<StoredRow> parts) {
    StoredRecord {
        parts = List.copyOf(parts);
    }

    /** Returns a record that has no parts. */
    static StoredRecord of(StoredRow row) {
        return new StoredRecord(row, List.of());
    }
}
