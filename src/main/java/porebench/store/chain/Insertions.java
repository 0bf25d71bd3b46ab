package porebench.store.chain;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import porebench.record.chain.ChainEntry;
import porebench.store.rows.StatementFailed;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRow;

/** Puts entries and their rows into a lab book; rows that have the same columns share one prepared statement. */
public final class Insertions implements AutoCloseable {
    private final Connection connection;
    private final Map<String, Map<List<String>, PreparedStatement>> prepared = new HashMap<>();

    public Insertions(Handle handle) {
        this.connection = handle.getConnection();
    }

    /** Puts an entry behind the last one, with the rows of its record. */
    public void append(Entry entry, StoredRecord stored) {
        insert(entry.number(), entry.stored());
        insert(entry.number(), stored.row());
        stored.parts().forEach(part -> insert(entry.number(), part));
    }

    private void insert(long entryNo, StoredRow row) {
        try {
            PreparedStatement insertion = prepared(row);
            insertion.setLong(1, entryNo);
            for (int i = 0; i < row.size(); i++) {
                insertion.setObject(i + 2, row.content(i));
            }
            insertion.executeUpdate();
        } catch (SQLException failure) {
            throw new StatementFailed(row.table(), failure);
        }
    }

    private PreparedStatement prepared(StoredRow row) throws SQLException {
        Map<List<String>, PreparedStatement> ofTable = prepared.computeIfAbsent(row.table(), any -> new HashMap<>());
        PreparedStatement known = ofTable.get(row.columns());
        if (known != null) {
            return known;
        }
        PreparedStatement fresh = connection.prepareStatement(insertion(row));
        ofTable.put(row.columns(), fresh);
        return fresh;
    }

    private static String insertion(StoredRow row) {
        return "INSERT INTO " + row.table() + " (" + ChainEntry.NUMBER + ", "
                + String.join(", ", row.columns()) + ") VALUES (?"
                + ", ?".repeat(row.size()) + ")";
    }

    @Override
    public void close() {
        for (Map<List<String>, PreparedStatement> ofTable : prepared.values()) {
            for (PreparedStatement each : ofTable.values()) {
                try {
                    each.close();
                } catch (SQLException failure) {
                    throw new StatementFailed("any", failure);
                }
            }
        }
    }
}
