package porebench.store.rows;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.chain.ChainEntry;

/** The rows of one kind of record by their entry, read in bulk: one query a table, however many records there are. */
public final class StoredRows {
    private final Map<Long, List<StoredRow>> rows;
    private final Map<Long, List<StoredRow>> parts;

    private StoredRows(Map<Long, List<StoredRow>> rows, Map<Long, List<StoredRow>> parts) {
        this.rows = rows;
        this.parts = parts;
    }

    /** Reads the rows of some entries. */
    public static StoredRows read(Handle handle, RecordTable<?> table, Selection selection) {
        return read(table, name -> selection.rows(handle, name));
    }

    /** Reads the rows that a query gives of each table, in its order. */
    public static StoredRows readBy(RecordTable<?> table, Function<String, Query> query) {
        return read(table, query);
    }

    /** Reads the rows of one entry. */
    public static StoredRows readOne(Handle handle, RecordTable<?> table, long entryNo) {
        return read(
                table,
                name -> handle.createQuery("SELECT * FROM " + name + " WHERE entry_no = :one")
                        .bind("one", entryNo));
    }

    private static StoredRows read(RecordTable<?> table, Function<String, Query> query) {
        Map<Long, List<StoredRow>> parts = new HashMap<>();
        for (String name : table.partTables()) {
            byEntry(name, query)
                    .forEach((entry, rows) -> parts.computeIfAbsent(entry, any -> new ArrayList<>())
                            .addAll(rows));
        }
        return new StoredRows(byEntry(table.name(), query), parts);
    }

    private static Map<Long, List<StoredRow>> byEntry(String table, Function<String, Query> query) {
        try (Query rows = query.apply(table)) {
            return rows.scanResultSet((result, context) -> byEntry(table, result.get()));
        }
    }

    private static Map<Long, List<StoredRow>> byEntry(String table, ResultSet rows) throws SQLException {
        RowReader reader = new RowReader(table, rows);
        Map<Long, List<StoredRow>> byEntry = new HashMap<>();
        while (rows.next()) {
            byEntry.computeIfAbsent(rows.getLong(ChainEntry.NUMBER), entry -> new ArrayList<>(1))
                    .add(reader.row());
        }
        return byEntry;
    }

    /** Returns the entries to which the rows belong. */
    public Set<Long> entries() {
        Set<Long> entries = new TreeSet<>(rows.keySet());
        entries.addAll(parts.keySet());
        return entries;
    }

    /** Returns the record of an entry; empty when its row is missing. */
    public Optional<StoredRecord> of(long entryNo) {
        return Optional.ofNullable(rows.get(entryNo))
                .map(own -> new StoredRecord(own.get(0), parts.getOrDefault(entryNo, List.of())));
    }
}
