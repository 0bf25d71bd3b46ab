package porebench.store.records;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jdbi.v3.core.statement.Query;
import porebench.method.Glyphs;
import porebench.record.RecordKind;
import porebench.record.book.Namesakes;
import porebench.store.chain.EntryTable;
import porebench.store.rows.Selection;

/** The table of how the names of records look, kept beside the entries: a new name is held against those that look alike. */
public final class NameLooks {
    public static final String TABLE = "name_look";

    /** Counted up when {@link Glyphs#lookWithoutCase} finds other looks; those of another edition are made anew. */
    private static final int EDITION = 1;

    private static final Set<String> NAMED = Arrays.stream(RecordKind.values())
            .filter(Namesakes::isNamed)
            .map(RecordKind::symbol)
            .collect(Collectors.toUnmodifiableSet());

    private final Handle handle;
    private final UpTo upTo;

    public NameLooks(Handle handle) {
        this.handle = handle;
        this.upTo = new UpTo(handle, "name_look_state", EDITION);
    }

    /** A record's name as its first entry states it. */
    private record Named(String kind, String recordId) {}

    /** Returns the names of records of a kind that look like some names: by their look the first in order. */
    Map<String, String> alike(RecordKind kind, Collection<String> names) {
        Set<String> looks = names.stream().map(Glyphs::lookWithoutCase).collect(Collectors.toSet());
        Map<String, String> alike = new HashMap<>();
        long before = upTo.entry();
        if (before > 0) {
            Selection.parts(looks).forEach(part -> known(kind, part, alike));
        }
        for (Named named : named(before)) {
            String look = Glyphs.lookWithoutCase(named.recordId());
            if (named.kind().equals(kind.symbol()) && looks.contains(look)) {
                alike.merge(look, named.recordId(), (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        }
        return alike;
    }

    private void known(RecordKind kind, List<String> looks, Map<String, String> alike) {
        try (Query query = handle.createQuery("SELECT look, min(record_id) FROM name_look"
                + " WHERE kind = :kind AND look IN (<looks>) GROUP BY look")) {
            query.bind("kind", kind.symbol())
                    .bindList("looks", looks)
                    .map((row, context) -> Map.entry(row.getString(1), row.getString(2)))
                    .forEach(one -> alike.put(one.getKey(), one.getValue()));
        }
    }

    /** Adds the names that entries up to a number have, since those that are there. */
    void catchUp(long last) {
        long before = upTo.entry();
        if (before >= last || !upTo.isThere()) {
            return;
        }
        if (before == 0) {
            handle.execute("DELETE FROM name_look");
        }
        write(named(before));
        upTo.move(last);
    }

    /** Makes them all anew. */
    public void makeAnew() {
        upTo.forget();
        catchUp(new EntryTable(handle).lastNumber());
    }

    private void write(List<Named> names) {
        if (names.isEmpty()) {
            return;
        }
        try (PreparedBatch batch = handle.prepareBatch(
                "INSERT OR IGNORE INTO name_look (kind, look, record_id) VALUES (:kind, :look, :record_id)")) {
            names.forEach(named -> batch.bind("kind", named.kind())
                    .bind("look", Glyphs.lookWithoutCase(named.recordId()))
                    .bind("record_id", named.recordId())
                    .add());
            batch.execute();
        }
    }

    /** Returns the names that people gave in entries behind one. */
    private List<Named> named(long behind) {
        try (Query query =
                handle.createQuery("SELECT kind, record_id FROM entry WHERE entry_no > :behind AND version = 1")) {
            return query.bind("behind", behind)
                    .map((row, context) -> new Named(row.getString(1), row.getString(2)))
                    .filter(named -> NAMED.contains(named.kind()))
                    .list();
        }
    }

    /** Returns whether the names that are there are those of the entries, and each looks as it says. */
    public boolean isRight() {
        long last = upTo.entry();
        if (last == 0) {
            return true;
        }
        try (Query there = handle.createQuery("SELECT look, record_id, kind FROM name_look");
                Query strangers = handle.createQuery(
                        "SELECT count(*) FROM name_look l WHERE NOT EXISTS (SELECT 1 FROM entry e"
                                + " WHERE e.kind = l.kind AND e.record_id = l.record_id AND e.version = 1 AND e.entry_no <= :up_to)");
                Query wanted = handle.createQuery("SELECT kind, count(*) FROM entry"
                        + " WHERE version = 1 AND entry_no <= :up_to GROUP BY kind")) {
            long[] counted = new long[1];
            boolean looksRight = there
                    .map((row, context) -> {
                        counted[0]++;
                        return Glyphs.lookWithoutCase(row.getString(2)).equals(row.getString(1));
                    })
                    .stream()
                    .allMatch(right -> right);
            long expected = wanted
                    .bind("up_to", last)
                    .map((row, context) -> NAMED.contains(row.getString(1)) ? row.getLong(2) : 0L)
                    .stream()
                    .mapToLong(Long::longValue)
                    .sum();
            long unknown = strangers.bind("up_to", last).mapTo(Long.class).one();
            return looksRight && counted[0] == expected && unknown == 0;
        }
    }
}
