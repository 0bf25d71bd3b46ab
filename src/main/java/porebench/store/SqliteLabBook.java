package porebench.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.JdbiException;
import porebench.method.Problem;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.BookCheck;
import porebench.record.book.Draft;
import porebench.record.book.KeptSince;
import porebench.record.book.LabBook;
import porebench.record.book.MixSummary;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Summaries;
import porebench.record.book.Version;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.chain.Entry;
import porebench.store.chain.EntryTable;
import porebench.store.chain.Unrolling;
import porebench.store.check.ChainCheck;
import porebench.store.check.Inspection;
import porebench.store.file.Reason;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.StoreException;
import porebench.store.file.StoreException.Task;
import porebench.store.records.Keeping;
import porebench.store.records.NameLooks;
import porebench.store.records.StoredRecords;
import porebench.store.records.SummaryTables;
import porebench.store.records.TouchedSince;

/** A lab book in one SQLite file. */
final class SqliteLabBook implements LabBook {
    private static final Logger LOG = Logger.getLogger(SqliteLabBook.class.getName());

    private final OpenFile file;
    private final String name;
    private final Session session;
    private final Clock clock;
    private Optional<Problem> clockIsBack = Optional.empty();

    SqliteLabBook(OpenFile file, Session session, Clock clock) {
        this.file = file;
        this.name = file.name();
        this.session = session;
        this.clock = clock;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public List<Problem> warnings() {
        return Stream.concat(file.warnings().stream(), clockIsBack.stream()).toList();
    }

    @Override
    public Optional<Problem> notWritable() {
        return file.notWritable();
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return read(records -> records.latest(kind));
    }

    @Override
    public <T extends Kept> void each(Class<T> kind, Consumer<Version<T>> taker) {
        read(records -> {
            records.each(kind, taker);
            return true;
        });
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return read(records -> records.latest(kind, recordId));
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return read(records -> records.history(kind, recordId));
    }

    @Override
    public <T extends Kept> Optional<Version<T>> version(Class<T> kind, String recordId, int number) {
        return read(records -> records.version(kind, recordId, number));
    }

    @Override
    public <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, String ownerId) {
        return read(records -> records.latestOf(belonging, ownerId));
    }

    @Override
    public <T extends Kept> Map<String, Version<T>> latest(Class<T> kind, Collection<String> recordIds) {
        return read(records -> records.latest(kind, recordIds));
    }

    @Override
    public <T extends Kept> List<Version<T>> latestOf(Belonging<T> belonging, Collection<String> ownerIds) {
        return read(records -> records.latestOf(belonging, ownerIds));
    }

    @Override
    public <T extends Kept> Map<String, List<Version<T>>> histories(Class<T> kind, Collection<String> recordIds) {
        return read(records -> records.histories(kind, recordIds));
    }

    @Override
    public List<Version<FieldReading>> readingsBetween(LocalDateTime from, LocalDateTime until) {
        return read(records -> records.readingsBetween(from, until));
    }

    @Override
    public Optional<PhotoFile> withBytes(PhotoFile stated) {
        return read(records -> records.withBytes(stated));
    }

    @Override
    public List<String> ids(RecordKind kind) {
        return read(records -> records.ids(kind));
    }

    @Override
    public Map<String, String> alike(RecordKind kind, Collection<String> names) {
        return read(records -> records.alike(kind, names));
    }

    @Override
    public List<MixId> mixesOn(MeterId meter) {
        return read(records -> records.mixesOn(meter));
    }

    private <R> R read(Function<Records, R> reading) {
        return ask(handle -> reading.apply(new StoredRecords(handle, name)));
    }

    private <R> R ask(Function<Handle, R> question) {
        return doing(Task.READ, () -> session.read(question::apply));
    }

    @Override
    public List<Problem> keep(List<Draft> drafts, String who, String why, Progress progress) {
        Stamp stamp = new Stamp(who, clock.instant().truncatedTo(ChronoUnit.MILLIS), why);
        if (drafts.isEmpty() || file.notWritable().isPresent()) {
            return drafts.isEmpty() ? List.of() : file.notWritable().stream().toList();
        }
        List<Optional<Entry>> ends = new ArrayList<>();
        try {
            List<Problem> problems = write(drafts, stamp, ends, progress);
            if (!ends.isEmpty()) {
                kept(ends.get(0), ends.get(1).orElseThrow());
            }
            return problems;
        } catch (StoreException failure) {
            foldInWhenMoved();
            checkDamage(failure);
            throw failure;
        }
    }

    /** What SQLite takes for damage is another file where the log and the pages it remembers do not belong to this one. */
    private void checkDamage(StoreException failure) {
        if (Reason.of(failure) == Reason.DAMAGED
                && file.identity().filter(identity -> !identity.isUntouched()).isPresent()) {
            StoreException replaced = new StoreException(Task.REPLACED, name, null);
            replaced.addSuppressed(failure);
            throw replaced;
        }
    }

    /** All that takes long, looking and hashing, is done before anybody else must wait. */
    private List<Problem> write(List<Draft> drafts, Stamp stamp, List<Optional<Entry>> ends, Progress progress) {
        Keeping.Checked looked = ask(handle -> check(new Keeping(handle), drafts, stamp, Optional.empty()));
        if (!looked.problems().isEmpty()) {
            return looked.problems();
        }
        List<String> hashes = Keeping.hashes(drafts);
        return doing(
                Task.KEEP,
                () -> session.write(handle -> {
                    requireSameFile(FileIdentity::isUntouched);
                    Keeping keeping = new Keeping(handle);
                    Keeping.Checked checked = check(keeping, drafts, stamp, Optional.of(looked));
                    if (checked.problems().isEmpty()) {
                        ends.addAll(
                                List.of(checked.on(), keeping.append(drafts, hashes, stamp, checked.on(), progress)));
                        requireSameFile(FileIdentity::isThere);
                    }
                    return checked.problems();
                }));
    }

    private Keeping.Checked check(Keeping keeping, List<Draft> drafts, Stamp stamp, Optional<Keeping.Checked> before) {
        return keeping.check(drafts, stamp, name, file.steps().newest(), before);
    }

    /**
     * Brings what stands in the log into the file when the path no longer leads to it: SQLite leaves the log behind then, and a
     * file that was moved would be without its newest records.
     */
    private void foldInWhenMoved() {
        if (file.identity().filter(identity -> !identity.isThere()).isEmpty()) {
            return;
        }
        try {
            SqliteFile.foldIn(session.connection());
        } catch (SQLException failure) {
            LOG.log(Level.WARNING, failure, () -> "what was kept in " + name + " stands in its log only");
        }
    }

    /** Refuses to go on when the path no longer leads to the file that was opened: what is written then is in no lab book. */
    private void requireSameFile(Predicate<FileIdentity> isSame) {
        if (file.identity().filter(isSame.negate()).isPresent()) {
            throw new StoreException(Task.REPLACED, name, null);
        }
    }

    private void kept(Optional<Entry> before, Entry last) {
        requireSameFile(FileIdentity::isThere);
        try {
            if (file.identity().isPresent()) {
                file.identity().get().remember(Head.of(last.hash(), last.number()));
            }
        } catch (IOException gone) {
            throw new StoreException(Task.REPLACED, name, gone);
        }
        before.filter(one -> ChainCheck.wentBack(Instant.parse(one.atUtc()), Instant.parse(last.atUtc())))
                .ifPresent(one -> clockIsBack = Optional.of(Problem.warning(
                        "clock",
                        "book.clock-is-back",
                        Instant.parse(last.atUtc()),
                        one.number(),
                        Instant.parse(one.atUtc()))));
    }

    @Override
    public KeptSince touchedSince(long entryNo) {
        return ask(handle -> new TouchedSince(handle, entryNo).read());
    }

    @Override
    public Summaries summaries() {
        return new Summaries() {
            @Override
            public long upTo(int edition) {
                return asked(tables -> tables.upTo(), edition, 0L);
            }

            @Override
            public Map<MixId, String> registerLines() {
                return asked(tables -> tables.said(SummaryTables.REGISTER), 0, Map.of());
            }

            @Override
            public Map<MixId, String> trials() {
                return asked(tables -> tables.said(SummaryTables.TRIALS), 0, Map.of());
            }

            @Override
            public boolean renew(int edition, long before, long upTo, List<MixSummary> renewed) {
                return written(handle -> new SummaryTables(handle, edition).renew(before, upTo, renewed));
            }

            @Override
            public void forget() {
                written(handle -> {
                    new SummaryTables(handle, 0).forget();
                    new NameLooks(handle).makeAnew();
                    return true;
                });
            }

            /** Asks for some; where they cannot be read none are there, and the entries are asked. */
            private <R> R asked(Function<SummaryTables, R> question, int edition, R none) {
                try {
                    return ask(handle -> question.apply(new SummaryTables(handle, edition)));
                } catch (StoreException failure) {
                    LOG.log(Level.WARNING, failure, () -> "summaries could not be read in " + name);
                    return none;
                }
            }

            /** Writes some; that they could not be kept does not stop a reading, for which they were worked out all the same. */
            private boolean written(Function<Handle, Boolean> writing) {
                try {
                    return notWritable().isEmpty()
                            && doing(
                                    Task.KEEP,
                                    () -> session.write(handle -> {
                                        requireSameFile(FileIdentity::isUntouched);
                                        return writing.apply(handle);
                                    }));
                } catch (StoreException failure) {
                    LOG.log(Level.WARNING, failure, () -> "summaries were not kept in " + name);
                    return false;
                }
            }
        };
    }

    @Override
    public long changeNumber() {
        return ask(handle -> new EntryTable(handle).lastNumber());
    }

    @Override
    public Head head() {
        return ask(handle -> new EntryTable(handle).head());
    }

    @Override
    public Optional<String> firstHash(RecordKind kind, String recordId) {
        return ask(handle -> new EntryTable(handle).firstHash(kind, recordId));
    }

    @Override
    public BookCheck check(Optional<Head> noted, Progress progress) {
        return ask(handle -> Inspection.full(handle, file.steps(), noted, progress));
    }

    @Override
    public void unroll(ChainTaker taker) {
        ask(handle -> {
            new Unrolling(handle).into(taker);
            return true;
        });
    }

    @Override
    public void saveCopy(Path copy) {
        SqliteShelf.refuseTaken(copy);
        requireOpen();
        try {
            SqliteFile.copy(session.connection(), copy);
        } catch (SQLException | IOException failure) {
            throw new StoreException(Task.COPY, name, copy.toString(), failure);
        }
    }

    @Override
    public void close() {
        if (!session.isClosed()) {
            foldInWhenMoved();
        }
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
