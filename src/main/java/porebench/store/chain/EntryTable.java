package porebench.store.chain;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.record.RecordKind;
import porebench.record.chain.Head;
import porebench.store.rows.Selection;

/** The table {@code entry}: the append-only history of a lab book. */
public final class EntryTable {
    private final Handle handle;

    public EntryTable(Handle handle) {
        this.handle = handle;
    }

    /** Returns the last entry; empty when there is none. */
    public Optional<Entry> last() {
        try (Query query = handle.createQuery("SELECT * FROM entry ORDER BY entry_no DESC LIMIT 1")) {
            return query.map((row, context) -> Entry.of(row)).findFirst();
        }
    }

    /** Returns where the history ends. */
    public ChainEnd end() {
        return ChainEnd.of(last());
    }

    /** Hands out all entries, the oldest first, one after the other. */
    public void each(Consumer<Entry> taker) {
        try (Query query = handle.createQuery("SELECT * FROM entry ORDER BY entry_no")) {
            query.map((row, context) -> Entry.of(row)).forEach(taker);
        }
    }

    /** Returns how many entries there are. */
    long count() {
        try (Query query = handle.createQuery("SELECT count(*) FROM entry")) {
            return query.mapTo(Long.class).one();
        }
    }

    /** Returns the newest entries, the oldest of them first. */
    public List<Entry> newest(int count) {
        try (Query query = handle.createQuery(
                "SELECT * FROM (SELECT * FROM entry ORDER BY entry_no DESC LIMIT :count) ORDER BY entry_no")) {
            return query.bind("count", count)
                    .map((row, context) -> Entry.of(row))
                    .list();
        }
    }

    /** Returns one entry, if it is there. */
    public Optional<Entry> at(long number) {
        try (Query query = handle.createQuery("SELECT * FROM entry WHERE entry_no = :number")) {
            return query.bind("number", number)
                    .map((row, context) -> Entry.of(row))
                    .findFirst();
        }
    }

    /** Returns the number of the last entry, 0 when there is none. */
    public long lastNumber() {
        try (Query query = handle.createQuery("SELECT coalesce(max(entry_no), 0) FROM entry")) {
            return query.mapTo(Long.class).one();
        }
    }

    /** Returns how far the history reaches, by the hash the newest entry must have: the stored one may be no hash at all. */
    public Head head() {
        return last().map(last -> Head.of(last.computedHash(), count())).orElse(Head.EMPTY);
    }

    /** Returns the hash of the entry by which a record was first kept; empty when there is no such record. */
    public Optional<String> firstHash(RecordKind kind, String recordId) {
        try (Query query = handle.createQuery(
                "SELECT hash FROM entry WHERE kind = :kind AND record_id = :record_id AND version = 1")) {
            return query.bind("kind", kind.symbol())
                    .bind("record_id", recordId)
                    .mapTo(String.class)
                    .findFirst();
        }
    }

    /** Returns the newest version that a record had before an entry, 0 when there was none. */
    public int versionBefore(Entry entry) {
        try (Query query = handle.createQuery("SELECT coalesce(max(version), 0) FROM entry"
                + " WHERE kind = :kind AND record_id = :record_id AND entry_no < :entry_no")) {
            return query.bind("kind", entry.kind())
                    .bind("record_id", entry.recordId())
                    .bind("entry_no", entry.number())
                    .mapTo(Integer.class)
                    .one();
        }
    }

    /** Returns the newest version of each of some records of a kind; one that is not there is left out. */
    public Map<String, Integer> newestVersions(RecordKind kind, Collection<String> recordIds) {
        Map<String, Integer> newest = new HashMap<>();
        for (List<String> part : Selection.parts(recordIds)) {
            Selection records = Selection.newest(kind, part);
            try (Query query = handle.createQuery("SELECT record_id, version " + records.from())
                    .bindMap(records.names())) {
                query.map((row, context) -> Map.entry(row.getString("record_id"), row.getInt("version")))
                        .forEach(one -> newest.put(one.getKey(), one.getValue()));
            }
        }
        return newest;
    }

    /** Returns the names of all records of a kind. */
    public List<String> ids(RecordKind kind) {
        try (Query query = handle.createQuery(
                "SELECT record_id FROM entry WHERE kind = :kind AND version = 1 ORDER BY record_id")) {
            return query.bind("kind", kind.symbol()).mapTo(String.class).list();
        }
    }

    /** Returns the next names of records of a kind behind one, in the lab book's own order of names. */
    public List<String> idsBehind(RecordKind kind, String recordId, int most) {
        try (Query query = handle.createQuery("SELECT DISTINCT record_id FROM entry"
                + " WHERE kind = :kind AND record_id > :record_id ORDER BY record_id LIMIT :most")) {
            return query.bind("kind", kind.symbol())
                    .bind("record_id", recordId)
                    .bind("most", most)
                    .mapTo(String.class)
                    .list();
        }
    }

    /** Returns whether there is any record of a kind. */
    public boolean holdsAny(RecordKind kind) {
        try (Query query = handle.createQuery("SELECT EXISTS (SELECT 1 FROM entry WHERE kind = :kind)")) {
            return query.bind("kind", kind.symbol()).mapTo(Integer.class).one() == 1;
        }
    }
}
