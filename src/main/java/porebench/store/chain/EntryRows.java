package porebench.store.chain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.LongConsumer;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import porebench.store.rows.RecordTable;
import porebench.store.rows.RowCursor;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRow;

/**
 * The rows of all records in the order of their entries: one query a table, its rows read as their entries come and none of them
 * held, however many there are.
 */
public final class EntryRows implements AutoCloseable {
    private final Map<String, List<RowCursor>> byKind = new HashMap<>();
    private final BiConsumer<RecordTable<?>, JdbiException> damaged;

    /**
     * Begins before the first entry.
     *
     * @param order the columns by which the rows of a table are ordered, that of the entry first
     * @param damaged is told of a kind whose rows cannot be read on; it has none from then on
     */
    public EntryRows(Handle handle, Function<String, String> order, BiConsumer<RecordTable<?>, JdbiException> damaged) {
        this.damaged = damaged;
        for (RecordTable<?> table : RecordTable.all()) {
            List<RowCursor> cursors = new ArrayList<>();
            byKind.put(table.kind().symbol(), cursors);
            try {
                Stream.concat(Stream.of(table.name()), table.partTables().stream())
                        .forEach(name -> cursors.add(new RowCursor(handle, name, order.apply(name))));
            } catch (JdbiException failure) {
                give(table, failure);
            }
        }
    }

    private void give(RecordTable<?> table, JdbiException failure) {
        Optional.ofNullable(byKind.remove(table.kind().symbol()))
                .ifPresent(cursors -> cursors.forEach(RowCursor::close));
        damaged.accept(table, failure);
    }

    /** Returns whether the rows of a kind are to be had here. */
    public boolean has(String kind) {
        return byKind.containsKey(kind);
    }

    /**
     * Returns the record of the next entry; empty when its row is missing, or its kind is not to be had.
     *
     * @param stray gets the number of each row before that entry which no entry took
     */
    public Optional<StoredRecord> of(Entry entry, LongConsumer stray) {
        return upTo(entry.number(), entry.kind(), stray);
    }

    /** Hands out the number of each row behind the last entry, which no entry took. */
    public void rest(LongConsumer stray) {
        upTo(RowCursor.END - 1, "", stray);
    }

    private Optional<StoredRecord> upTo(long number, String kind, LongConsumer stray) {
        Optional<StoredRecord> found = Optional.empty();
        for (RecordTable<?> table : RecordTable.all()) {
            List<RowCursor> cursors = byKind.get(table.kind().symbol());
            if (cursors == null) {
                continue;
            }
            try {
                List<StoredRow> own = take(cursors, number, stray);
                if (table.kind().symbol().equals(kind)) {
                    found = record(table, own);
                }
            } catch (JdbiException failure) {
                give(table, failure);
            }
        }
        return found;
    }

    private static List<StoredRow> take(List<RowCursor> cursors, long number, LongConsumer stray) {
        List<StoredRow> own = List.of();
        for (RowCursor cursor : cursors) {
            while (cursor.entryNo() < number) {
                stray.accept(cursor.entryNo());
                cursor.advance();
            }
            while (cursor.entryNo() == number) {
                own = own.isEmpty() ? new ArrayList<>() : own;
                own.add(cursor.take());
            }
        }
        return own;
    }

    private static Optional<StoredRecord> record(RecordTable<?> table, List<StoredRow> rows) {
        return rows.stream()
                .findFirst()
                .filter(first -> first.table().equals(table.name()))
                .map(first -> new StoredRecord(first, rows.subList(1, rows.size())));
    }

    @Override
    public void close() {
        byKind.values().forEach(cursors -> cursors.forEach(RowCursor::close));
    }
}
