package porebench.store;

import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.Stamp;

/**
 * Follows the chain of entries from the first to the last and compares each with what is stored.
 *
 * <p>It finds whatever was changed, put in or taken out by another program. It cannot find that the last entries are missing
 * together with their rows, nor that somebody computed the whole chain anew: only a head noted elsewhere shows that. An entry
 * or a row that cannot be read is told and passed over.
 */
final class ChainCheck {
    /** What a clock may be put right by without a word. */
    private static final Duration SMALL = Duration.ofMinutes(2);

    private final Handle handle;
    private final Faults faults;
    private final Map<String, RecordTable<?>> tables = new HashMap<>();
    private final Map<String, StoredRows> rowsByKind = new HashMap<>();
    private final SortedSet<Long> withoutEntry = new TreeSet<>();
    private final Map<List<String>, Integer> versions = new HashMap<>();
    private final List<Problem> doubts = new ArrayList<>();

    private ChainCheck(Handle handle, Faults faults) {
        this.handle = handle;
        this.faults = faults;
        RecordTable.all().forEach(table -> tables.put(table.kind().symbol(), table));
    }

    /**
     * What else was seen on the way.
     *
     * @param counts how many records of each kind there are
     * @param doubts what is no fault but should be known
     */
    record Seen(Map<RecordKind, Integer> counts, List<Problem> doubts) {}

    /** Adds every contradiction, the oldest first. */
    static Seen run(Handle handle, Faults faults) {
        ChainCheck check = new ChainCheck(handle, faults);
        RecordTable.all().forEach(check::read);
        check.follow(check.entries(), Entry.BEFORE_THE_FIRST);
        check.withoutEntry.stream()
                .filter(number -> !faults.hasEntry(number))
                .forEach(number -> faults.ofEntry(number, "book.chain-gap", number));
        return new Seen(check.counts(), check.doubts);
    }

    /** Adds the contradictions among the newest entries, row by row. */
    static void tail(Handle handle, int count, Faults faults) {
        ChainCheck check = new ChainCheck(handle, faults);
        List<Entry> newest = new History(handle).newest(count);
        if (newest.isEmpty()) {
            return;
        }
        Entry first = newest.get(0);
        Entry before = first.number() == 1
                ? Entry.BEFORE_THE_FIRST
                : new History(handle).at(first.number() - 1).orElse(Entry.BEFORE_THE_FIRST);
        check.follow(newest, before);
    }

    /** Adds the entries that do not follow on the one before; what they hold is not looked at. */
    static void links(Handle handle, Faults faults) {
        Entry before = Entry.BEFORE_THE_FIRST;
        for (Entry entry : new History(handle).all()) {
            if (!entry.follows(before)) {
                faults.ofEntry(entry.number(), "book.chain-gap", entry.number());
            }
            before = entry;
        }
    }

    private void read(RecordTable<?> table) {
        try {
            StoredRows rows = StoredRows.readAll(handle, table);
            rowsByKind.put(table.kind().symbol(), rows);
            withoutEntry.addAll(rows.entries());
        } catch (JdbiException damaged) {
            // Row by row, when the entry is reached: what can still be read is then compared.
            rowsByKind.remove(table.kind().symbol());
        }
    }

    private List<Entry> entries() {
        History history = new History(handle);
        try {
            return history.all();
        } catch (JdbiException damaged) {
            return oneByOne(history);
        }
    }

    private List<Entry> oneByOne(History history) {
        List<Entry> readable = new ArrayList<>();
        long last = Math.max(lastNumber(history), withoutEntry.isEmpty() ? 0 : withoutEntry.last());
        for (long number = 1; number <= last; number++) {
            try {
                history.at(number).ifPresent(readable::add);
            } catch (JdbiException damaged) {
                faults.ofEntry(number, "book.unreadable-entry", number);
            }
        }
        return readable;
    }

    private static long lastNumber(History history) {
        try {
            return history.lastNumber();
        } catch (JdbiException damaged) {
            return 0;
        }
    }

    private void follow(List<Entry> entries, Entry first) {
        Entry before = first;
        for (Entry entry : entries) {
            follow(before, entry);
            before = entry;
        }
    }

    private void follow(Entry before, Entry entry) {
        withoutEntry.remove(entry.number());
        boolean isNextVersion = isNextVersion(entry);
        if (!entry.follows(before)) {
            faults.ofEntry(entry.number(), "book.chain-gap", entry.number());
        }
        Optional<StoredRecord> stored;
        try {
            stored = stored(entry);
        } catch (JdbiException damaged) {
            faults.ofEntry(entry.number(), "book.unreadable-entry", entry.number());
            return;
        }
        String contentHash =
                stored.map(rows -> Canonical.hash(Canonical.text(rows))).orElse("");
        if (!entry.hash().equals(entry.computedHash()) || !entry.contentHash().equals(contentHash)) {
            faults.ofEntry(entry.number(), "book.chain-broken", entry.number(), wordOf(entry.kind()), entry.recordId());
        } else if (!isReadable(entry, stored.orElseThrow())) {
            faults.ofEntry(entry.number(), "book.unreadable-entry", entry.number());
        } else if (!isNextVersion) {
            faults.ofEntry(entry.number(), "book.version-gap", entry.number(), wordOf(entry.kind()), entry.recordId());
        }
        clock(before, entry);
    }

    private Optional<StoredRecord> stored(Entry entry) {
        StoredRows all = rowsByKind.get(entry.kind());
        if (all != null) {
            return all.of(entry.number());
        }
        RecordTable<?> table = tables.get(entry.kind());
        return table == null
                ? Optional.empty()
                : StoredRows.readOne(handle, table, entry.number()).of(entry.number());
    }

    /** Returns whether the rows are a record, and the one that the entry names. */
    private boolean isReadable(Entry entry, StoredRecord stored) {
        try {
            RecordTable<?> table = tables.get(entry.kind());
            Kept value = table == null ? null : table.value(stored);
            new Stamp(entry.who(), Instant.parse(entry.atUtc()), entry.why());
            return value != null && value.recordId().equals(entry.recordId());
        } catch (RuntimeException noRecord) {
            return false;
        }
    }

    private boolean isNextVersion(Entry entry) {
        Integer before = versions.put(List.of(entry.kind(), entry.recordId()), entry.version());
        // The tail begins in the middle of a record's versions.
        return before == null ? rowsByKind.isEmpty() || entry.version() == 1 : entry.version() == before + 1;
    }

    private void clock(Entry before, Entry entry) {
        try {
            if (before.number() > 0 && wentBack(Instant.parse(before.atUtc()), Instant.parse(entry.atUtc()))) {
                doubts.add(Problem.warning(
                        "clock",
                        "book.clock-was-back",
                        entry.number(),
                        Instant.parse(entry.atUtc()),
                        before.number(),
                        Instant.parse(before.atUtc())));
            }
        } catch (DateTimeParseException toldAlready) {
            return;
        }
    }

    /** Returns whether a moment lies before one that is known to be earlier, by more than a clock is put right by daily. */
    static boolean wentBack(Instant earlier, Instant now) {
        return now.isBefore(earlier.minus(SMALL));
    }

    /** Returns the warning that a clock shows a time before the newest entry, if it does. */
    static Optional<Problem> clockBehind(Entry newest, Instant now) {
        try {
            return wentBack(Instant.parse(newest.atUtc()), now)
                    ? Optional.of(Problem.warning(
                            "clock", "book.clock-is-behind", now, newest.number(), Instant.parse(newest.atUtc())))
                    : Optional.empty();
        } catch (DateTimeParseException noTime) {
            // The look at the newest entries has told it.
            return Optional.empty();
        }
    }

    /** Returns the kind in the language of the message; as it stands there when it was changed into no kind at all. */
    private static Object wordOf(String kind) {
        return Stream.of(RecordKind.values())
                .filter(each -> each.symbol().equals(kind))
                .findFirst()
                .<Object>map(RecordKind::word)
                .orElse(kind);
    }

    private Map<RecordKind, Integer> counts() {
        Map<RecordKind, Integer> counts = new HashMap<>();
        for (RecordKind kind : RecordKind.values()) {
            counts.put(kind, (int) versions.keySet().stream()
                    .filter(record -> record.get(0).equals(kind.symbol()))
                    .count());
        }
        return counts;
    }
}
