package porebench.store.check;

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
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.Query;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.book.Progress;
import porebench.record.book.Stamp;
import porebench.record.chain.ChainEntry;
import porebench.store.chain.Canonical;
import porebench.store.chain.ChainEnd;
import porebench.store.chain.Entry;
import porebench.store.chain.EntryRows;
import porebench.store.chain.EntryTable;
import porebench.store.rows.RecordTable;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRows;

/**
 * Follows the chain of entries from the first to the last and compares each with what is stored.
 *
 * <p>It finds whatever was changed, put in or taken out by another program. It cannot find that the last entries are missing
 * together with their rows, nor that somebody computed the whole chain anew: only a head noted elsewhere shows that. An entry
 * or a row that cannot be read is told and passed over.
 */
public final class ChainCheck {
    /** What a clock may be put right by without a word. */
    private static final Duration SMALL = Duration.ofMinutes(2);

    private final Handle handle;
    private final Faults faults;
    private final Map<String, RecordTable<?>> tables = new HashMap<>();
    private final EntryTable history;
    private final SortedSet<Long> withoutEntry = new TreeSet<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final List<Problem> doubts = new ArrayList<>();
    private final Progress progress;

    /** The bytes of photos, which only a full check reads. */
    private Optional<PhotoCheck> photos = Optional.empty();

    private long entries;

    /** The entry that was looked at last. */
    private Optional<Entry> before = Optional.empty();

    private ChainCheck(Handle handle, Faults faults, Progress progress) {
        this.handle = handle;
        this.faults = faults;
        this.progress = progress;
        this.history = new EntryTable(handle);
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
    static Seen run(Handle handle, Faults faults, Progress progress) {
        ChainCheck check = new ChainCheck(handle, faults, progress);
        check.entries = check.lastNumber(ChainEntry.TABLE);
        PhotoCheck photos = new PhotoCheck(handle);
        check.photos = Optional.of(photos);
        try (EntryRows rows = new EntryRows(handle, any -> ChainEntry.NUMBER, (table, damaged) -> {})) {
            check.followAll(rows);
        }
        photos.strays(faults);
        check.withoutEntry.stream()
                .filter(number -> !faults.hasEntry(number))
                .forEach(number -> faults.ofEntry(number, "book.chain-gap", number));
        return new Seen(check.counts(), check.doubts);
    }

    private void followAll(EntryRows rows) {
        Function<Entry, Optional<StoredRecord>> stored = entry -> {
            Optional<StoredRecord> found = rows.of(entry, withoutEntry::add);
            // A kind that cannot be read on is read row by row: what can still be read is then compared.
            return rows.has(entry.kind()) ? found : alone(entry);
        };
        try {
            history.each(entry -> follow(entry, stored));
        } catch (JdbiException damaged) {
            oneByOne(stored);
        }
        rows.rest(withoutEntry::add);
    }

    /** Adds the contradictions among the newest entries, row by row. */
    static void tail(Handle handle, int count, Faults faults) {
        ChainCheck check = new ChainCheck(handle, faults, Progress.UNHEARD);
        List<Entry> newest = check.history.newest(count);
        if (newest.isEmpty()) {
            return;
        }
        check.before = check.history.at(newest.get(0).number() - 1);
        for (Entry entry : newest) {
            check.follow(entry, check::alone);
        }
    }

    /** Adds the entries that do not follow on the one before; what they hold is not looked at. */
    public static void links(Handle handle, Faults faults) {
        ChainEnd[] before = {ChainEnd.OF_NONE};
        new EntryTable(handle).each(entry -> {
            if (!entry.follows(before[0])) {
                faults.ofEntry(entry.number(), "book.chain-gap", entry.number());
            }
            before[0] = entry.end();
        });
    }

    private void oneByOne(Function<Entry, Optional<StoredRecord>> stored) {
        long last = lastNumber();
        for (long number = ChainEnd.of(before).number() + 1; number <= last; number++) {
            try {
                history.at(number).ifPresent(entry -> follow(entry, stored));
            } catch (JdbiException damaged) {
                faults.ofEntry(number, "book.unreadable-entry", number);
            }
        }
    }

    /** Returns the number of the last entry that any table tells of, as far as it can be read. */
    private long lastNumber() {
        return Stream.concat(
                        Stream.of(ChainEntry.TABLE), tables.values().stream().map(RecordTable::name))
                .mapToLong(this::lastNumber)
                .max()
                .orElse(0);
    }

    private long lastNumber(String table) {
        try (Query query = handle.createQuery("SELECT coalesce(max(entry_no), 0) FROM " + table)) {
            return query.mapTo(Long.class).one();
        } catch (JdbiException damaged) {
            return 0;
        }
    }

    private void follow(Entry entry, Function<Entry, Optional<StoredRecord>> records) {
        look(entry, records);
        before = Optional.of(entry);
        progress.at(Progress.Stage.CHECKING, entry.number(), entries);
    }

    private void look(Entry entry, Function<Entry, Optional<StoredRecord>> records) {
        if (entry.version() == 1) {
            counts.merge(entry.kind(), 1, Integer::sum);
        }
        if (!entry.follows(ChainEnd.of(before))) {
            faults.ofEntry(entry.number(), "book.chain-gap", entry.number());
        }
        Optional<StoredRecord> stored;
        try {
            stored = records.apply(entry);
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
        } else if (!isNextVersion(entry)) {
            faults.ofEntry(entry.number(), "book.version-gap", entry.number(), wordOf(entry.kind()), entry.recordId());
        } else if (entry.kind().equals(RecordKind.SHEET_PHOTO.symbol())) {
            SheetPhoto photo = RecordTable.of(SheetPhoto.class).value(stored.orElseThrow());
            photos.ifPresent(check -> check.look(entry.number(), photo, faults));
        }
        before.ifPresent(last -> clock(last, entry));
    }

    /** Reads the record of one entry by itself. */
    private Optional<StoredRecord> alone(Entry entry) {
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

    /** Returns whether the version before was kept before; that no version is there twice is for the index of the table. */
    private boolean isNextVersion(Entry entry) {
        try {
            return entry.version() == 1 || entry.version() == history.versionBefore(entry) + 1;
        } catch (JdbiException toldElsewhere) {
            return true;
        }
    }

    private void clock(Entry before, Entry entry) {
        try {
            if (wentBack(Instant.parse(before.atUtc()), Instant.parse(entry.atUtc()))) {
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
    public static boolean wentBack(Instant earlier, Instant now) {
        return now.isBefore(earlier.minus(SMALL));
    }

    /** Returns the warning that a clock shows a time before the newest entry, if it does. */
    public static Optional<Problem> clockBehind(Entry newest, Instant now) {
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
        return Stream.of(RecordKind.values())
                .collect(Collectors.toMap(Function.identity(), kind -> counts.getOrDefault(kind.symbol(), 0)));
    }
}
