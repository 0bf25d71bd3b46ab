package porebench.store.rows;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import org.jdbi.v3.core.Handle;
import porebench.record.chain.ChainEntry;

/** The rows of one table in the order of their entries, of which one is held at a time. */
public final class RowCursor implements AutoCloseable {
    /** Stands behind the last row. */
    public static final long END = Long.MAX_VALUE;

    private final String table;
    private final PreparedStatement query;
    private final ResultSet rows;
    private final RowReader reader;
    private long entryNo;

    /**
     * Begins at the first row.
     *
     * @param order the columns by which the rows are ordered, that of the entry first; no index is asked, which may be damaged
     */
    public RowCursor(Handle handle, String table, String order) {
        this.table = table;
        try {
            query = handle.getConnection()
                    .prepareStatement("SELECT * FROM " + table + " NOT INDEXED ORDER BY " + order);
            rows = query.executeQuery();
            reader = new RowReader(table, rows);
        } catch (SQLException failure) {
            throw new StatementFailed(table, failure);
        }
        advance();
    }

    String table() {
        return table;
    }

    /** Returns the entry of the row it stands on; {@link #END} behind the last one. */
    public long entryNo() {
        return entryNo;
    }

    /** Returns the row it stands on and goes to the next. */
    public StoredRow take() {
        try {
            StoredRow row = reader.row();
            advance();
            return row;
        } catch (SQLException failure) {
            throw new StatementFailed(table, failure);
        }
    }

    /** Goes to the next row. */
    public void advance() {
        try {
            entryNo = rows.next() ? rows.getLong(ChainEntry.NUMBER) : END;
        } catch (SQLException failure) {
            throw new StatementFailed(table, failure);
        }
    }

    @Override
    public void close() {
        try {
            query.close();
        } catch (SQLException failure) {
            throw new StatementFailed(table, failure);
        }
    }
}
