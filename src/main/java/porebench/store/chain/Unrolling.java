package porebench.store.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.Query;
import porebench.method.Place;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;
import porebench.record.chain.ChainRow;
import porebench.record.chain.ChainTaker;
import porebench.store.rows.RecordTable;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRows;

/** Hands out a whole lab book: every entry with its rows, as text. */
public final class Unrolling {
    private final Handle handle;

    public Unrolling(Handle handle) {
        this.handle = handle;
    }

    public void into(ChainTaker taker) {
        EntryTable history = new EntryTable(handle);
        taker.begins(
                new ChainOutline(step(), history.count(), history.end().hash(), tables(), Place.of(ChainEntry.TABLE)));
        try (EntryRows rows = new EntryRows(handle, this::keys, Unrolling::fail)) {
            history.each(entry -> taker.takes(new ChainEntry(
                    entry.number(),
                    entry.row(),
                    rows.of(entry, stray -> {}).map(Unrolling::rows).orElse(List.of()))));
        }
    }

    private static void fail(RecordTable<?> table, JdbiException damaged) {
        throw damaged;
    }

    private int step() {
        try (Query query = handle.createQuery("PRAGMA user_version")) {
            return query.mapTo(Integer.class).one();
        }
    }

    /** Returns all tables that hold what a lab book keeps. */
    List<ChainOutline.TableOutline> tables() {
        Stream<String> ofRecords = RecordTable.all().stream()
                .flatMap(table -> Stream.concat(Stream.of(table.name()), table.partTables().stream()));
        return Stream.concat(Stream.of(ChainEntry.TABLE), ofRecords)
                .map(name -> new ChainOutline.TableOutline(name, columns(name, "cid", 0), Place.of(name)))
                .toList();
    }

    /** Returns the columns that make up the key of a table. */
    private String keys(String table) {
        return String.join(", ", columns(table, "pk", 1));
    }

    /** Returns the columns of a table whose number of some kind is at least a bound, in the order of those numbers. */
    private List<String> columns(String table, String number, int lowInclusive) {
        try (Query query = handle.createQuery(
                "SELECT name FROM pragma_table_info(:table) WHERE " + number + " >= :low ORDER BY " + number)) {
            return query.bind("table", table)
                    .bind("low", lowInclusive)
                    .mapTo(String.class)
                    .list();
        }
    }

    /** Returns the rows that are stored for one entry of a kind, each table's in the order of its keys. */
    List<ChainRow> rows(RecordTable<?> table, long entryNo) {
        Function<String, Query> query = name -> handle.createQuery(
                        "SELECT * FROM " + name + " WHERE " + ChainEntry.NUMBER + " = :entry_no ORDER BY " + keys(name))
                .bind(ChainEntry.NUMBER, entryNo);
        return StoredRows.readBy(table, query).of(entryNo).map(Unrolling::rows).orElse(List.of());
    }

    private static List<ChainRow> rows(StoredRecord stored) {
        List<ChainRow> rows = new ArrayList<>();
        rows.add(stored.row().chained());
        stored.parts().forEach(part -> rows.add(part.chained()));
        return rows;
    }
}
