package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import org.jdbi.v3.core.statement.Query;
import porebench.method.Problem;
import porebench.record.ChainTaker;
import porebench.record.Draft;
import porebench.record.Head;
import porebench.record.Kept;
import porebench.record.LabBook;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.Stamp;
import porebench.record.Training;
import porebench.record.Version;
import porebench.record.port.OpeningRefused;
import porebench.store.StoreException.Task;

/** A lab book in one SQLite file. */
final class SqliteLabBook implements LabBook {
    private final String name;
    private final Session session;
    private final Clock clock;
    private final int knownVersion;
    private final Map<Class<?>, RecordTable<?>> tables = new HashMap<>();

    SqliteLabBook(String name, Session session, Clock clock, int knownVersion) {
        this.name = name;
        this.session = session;
        this.clock = clock;
        this.knownVersion = knownVersion;
        RecordTable.all().forEach(table -> tables.put(table.kind().type(), table));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        RecordTable<T> table = table(kind);
        return read(table, Selection.newest(table.kind())).stream()
                .sorted(Comparator.comparing(version -> version.value().recordId()))
                .toList();
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        RecordTable<T> table = table(kind);
        return read(table, Selection.newest(table.kind(), recordId)).stream().findFirst();
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        RecordTable<T> table = table(kind);
        return read(table, Selection.versions(table.kind(), recordId));
    }

    @SuppressWarnings("unchecked") // the map was filled with each table under the class of its own records
    private <T extends Kept> RecordTable<T> table(Class<T> kind) {
        RecordTable<?> table = tables.get(kind);
        if (table == null) {
            throw new IllegalArgumentException("kind must be a kind of record, but is " + kind.getName());
        }
        return (RecordTable<T>) table;
    }

    private <T extends Kept> List<Version<T>> read(RecordTable<T> table, Selection selection) {
        return doing(
                Task.READ,
                () -> session.read(handle -> {
                    StoredRows rows = StoredRows.read(handle, table, selection);
                    try (Query entries = selection.entries(handle)) {
                        return entries.map((row, context) -> version(
                                        table,
                                        rows,
                                        row.getLong("entry_no"),
                                        row.getInt("version"),
                                        row.getString("who"),
                                        row.getString("at_utc"),
                                        row.getString("why")))
                                .list();
                    }
                }));
    }

    private <T extends Kept> Version<T> version(
            RecordTable<T> table, StoredRows rows, long entryNo, int number, String who, String atUtc, String why) {
        try {
            T value = table.value(rows.of(entryNo).orElseThrow());
            return new Version<>(value, number, new Stamp(who, Instant.parse(atUtc), why));
        } catch (RuntimeException tampered) {
            throw new StoreException(Task.READ_ENTRY, name, Long.toString(entryNo), tampered);
        }
    }

    @Override
    public List<Problem> keep(List<Draft> drafts, String who, String why) {
        Stamp stamp = new Stamp(who, clock.instant().truncatedTo(ChronoUnit.MILLIS), why);
        if (drafts.isEmpty()) {
            return List.of();
        }
        return doing(
                Task.KEEP,
                () -> session.write(handle -> {
                    List<Problem> conflicts = conflicts(handle, drafts);
                    List<Problem> problems = conflicts.isEmpty() ? mixing(handle, drafts) : conflicts;
                    if (problems.isEmpty()) {
                        append(handle, drafts, stamp);
                    }
                    return problems;
                }));
    }

    private List<Problem> mixing(Handle handle, List<Draft> drafts) {
        RecordTable<Laboratory> laboratories = table(Laboratory.class);
        StoredRows rows = StoredRows.read(handle, laboratories, Selection.newest(laboratories.kind()));
        Optional<Laboratory> laboratory = rows.entries().stream()
                .flatMap(entry -> rows.of(entry).stream())
                .map(laboratories::value)
                .findFirst();
        return Training.conflicts(drafts, laboratory, new History(handle).holdsAny(RecordKind.TRIAL));
    }

    private List<Problem> conflicts(Handle handle, List<Draft> drafts) {
        int version = versionOf(handle);
        if (version > knownVersion) {
            return List.of(Problem.error("file", "book.newer", name, version, knownVersion));
        }
        History history = new History(handle);
        Map<RecordKind, Map<String, Integer>> newest = new HashMap<>();
        List<Problem> problems = new ArrayList<>();
        for (Draft draft : drafts) {
            RecordKind kind = draft.value().kind();
            String recordId = draft.value().recordId();
            Map<String, Integer> ofKind = newest.computeIfAbsent(kind, any -> new HashMap<>());
            int there = ofKind.computeIfAbsent(recordId, any -> history.newestVersion(kind, recordId));
            conflict(draft, there).ifPresent(problems::add);
            ofKind.put(recordId, draft.basedOn() + 1);
        }
        return problems;
    }

    private static Optional<Problem> conflict(Draft draft, int there) {
        if (draft.basedOn() == there) {
            return Optional.empty();
        }
        Problem.Word kind = draft.value().kind().word();
        String recordId = draft.value().recordId();
        if (there == 0) {
            return Optional.of(Problem.error("id", "book.not-there", kind, recordId));
        }
        return Optional.of(
                draft.basedOn() == 0
                        ? Problem.error("id", "book.already-there", kind, recordId)
                        : Problem.error("id", "book.changed-meanwhile", kind, recordId, there, draft.basedOn()));
    }

    private void append(Handle handle, List<Draft> drafts, Stamp stamp) {
        History history = new History(handle);
        Entry last = history.last();
        for (Draft draft : drafts) {
            StoredRecord stored = rows(draft.value());
            last = last.next(
                    draft.value().kind().symbol(),
                    draft.value().recordId(),
                    draft.basedOn() + 1,
                    stamp,
                    Canonical.hash(Canonical.text(stored)));
            history.append(last);
            StoredRows.insert(handle, last.number(), stored);
        }
    }

    @SuppressWarnings("unchecked") // a record's class is its own
    private <T extends Kept> StoredRecord rows(T value) {
        return table((Class<T>) value.kind().type()).rows(value);
    }

    private static int versionOf(Handle handle) {
        try (Query query = handle.createQuery("PRAGMA user_version")) {
            return query.mapTo(Integer.class).one();
        }
    }

    @Override
    public long changeNumber() {
        return doing(Task.READ, () -> session.read(handle -> new History(handle).lastNumber()));
    }

    @Override
    public Head head() {
        return doing(Task.READ, () -> session.read(handle -> new History(handle).head()));
    }

    @Override
    public List<Problem> verify() {
        return doing(Task.READ, () -> session.read(ChainCheck::run));
    }

    @Override
    public void unroll(ChainTaker taker) {
        doing(
                Task.READ,
                () -> session.read(handle -> {
                    new Unrolling(handle).into(taker);
                    return true;
                }));
    }

    @Override
    public void saveCopy(Path file) {
        if (Files.exists(file)) {
            throw new OpeningRefused(Problem.error("file", "book.file-exists", file.toString()));
        }
        requireOpen();
        try {
            SqliteFile.copy(session.connection(), file);
        } catch (SQLException | IOException failure) {
            throw new StoreException(Task.COPY, name, file.toString(), failure);
        }
    }

    @Override
    public void close() {
        try {
            session.close();
        } catch (JdbiException failure) {
            throw new StoreException(Task.CLOSE, name, failure);
        }
    }

    private <R> R doing(Task task, Supplier<R> work) {
        requireOpen();
        try {
            return work.get();
        } catch (JdbiException failure) {
            throw new StoreException(task, name, failure);
        }
    }

    private void requireOpen() {
        if (session.isClosed()) {
            throw new IllegalStateException("lab book " + name + " must be open, but is closed");
        }
    }
}
