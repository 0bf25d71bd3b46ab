package porebench.store;

import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import org.jdbi.v3.core.statement.Update;
import porebench.record.RecordKind;
import porebench.record.chain.Head;

/** The table {@code entry}: the append-only history of a lab book. */
final class History {
    private static final String APPEND = """
            INSERT INTO entry
                (entry_no, kind, record_id, version, who, at_utc, why, content_hash, previous_hash, hash)
            VALUES
                (:number, :kind, :record_id, :version, :who, :at_utc, :why, :content_hash, :previous_hash, :hash)
            """;

    private final Handle handle;

    History(Handle handle) {
        this.handle = handle;
    }

    /** Returns the last entry, or the one before the first. */
    Entry last() {
        try (Query query = handle.createQuery("SELECT * FROM entry ORDER BY entry_no DESC LIMIT 1")) {
            return query.map((row, context) -> Entry.of(row)).findFirst().orElse(Entry.BEFORE_THE_FIRST);
        }
    }

    /** Returns all entries, the oldest first. */
    List<Entry> all() {
        try (Query query = handle.createQuery("SELECT * FROM entry ORDER BY entry_no")) {
            return query.map((row, context) -> Entry.of(row)).list();
        }
    }

    /** Returns the newest entries, the oldest of them first. */
    List<Entry> newest(int count) {
        try (Query query = handle.createQuery(
                "SELECT * FROM (SELECT * FROM entry ORDER BY entry_no DESC LIMIT :count) ORDER BY entry_no")) {
            return query.bind("count", count)
                    .map((row, context) -> Entry.of(row))
                    .list();
        }
    }

    /** Returns one entry, if it is there. */
    Optional<Entry> at(long number) {
        try (Query query = handle.createQuery("SELECT * FROM entry WHERE entry_no = :number")) {
            return query.bind("number", number)
                    .map((row, context) -> Entry.of(row))
                    .findFirst();
        }
    }

    /** Returns the number of the last entry, 0 when there is none. */
    long lastNumber() {
        try (Query query = handle.createQuery("SELECT coalesce(max(entry_no), 0) FROM entry")) {
            return query.mapTo(Long.class).one();
        }
    }

    /** Returns how far the history reaches, by the hash the newest entry must have: the stored one may be no hash at all. */
    Head head() {
        Entry last = last();
        if (last.equals(Entry.BEFORE_THE_FIRST)) {
            return Head.EMPTY;
        }
        try (Query query = handle.createQuery("SELECT count(*) FROM entry")) {
            return Head.of(last.computedHash(), query.mapTo(Long.class).one());
        }
    }

    /** Returns the newest version of a record, 0 when there is no such record. */
    int newestVersion(RecordKind kind, String recordId) {
        try (Query query = handle.createQuery(
                "SELECT coalesce(max(version), 0) FROM entry WHERE kind = :kind AND record_id = :record_id")) {
            return query.bind("kind", kind.symbol())
                    .bind("record_id", recordId)
                    .mapTo(Integer.class)
                    .one();
        }
    }

    /** Returns the names of all records of a kind. */
    List<String> ids(RecordKind kind) {
        try (Query query = handle.createQuery(
                "SELECT record_id FROM entry WHERE kind = :kind AND version = 1 ORDER BY record_id")) {
            return query.bind("kind", kind.symbol()).mapTo(String.class).list();
        }
    }

    /** Returns whether there is any record of a kind. */
    boolean holdsAny(RecordKind kind) {
        try (Query query = handle.createQuery("SELECT count(*) FROM entry WHERE kind = :kind")) {
            return query.bind("kind", kind.symbol()).mapTo(Long.class).one() > 0;
        }
    }

    void append(Entry entry) {
        try (Update insertion = handle.createUpdate(APPEND)) {
            insertion
                    .bind("number", entry.number())
                    .bind("kind", entry.kind())
                    .bind("record_id", entry.recordId())
                    .bind("version", entry.version())
                    .bind("who", entry.who())
                    .bind("at_utc", entry.atUtc())
                    .bind("why", entry.why())
                    .bind("content_hash", entry.contentHash())
                    .bind("previous_hash", entry.previousHash())
                    .bind("hash", entry.hash())
                    .execute();
        }
    }
}
