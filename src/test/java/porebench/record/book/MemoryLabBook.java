package porebench.record.book;

import java.nio.file.Path;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import porebench.evidence.issue.DecidedOn;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.PhotoFile;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.Trial;
import porebench.record.chain.ChainTaker;
import porebench.record.chain.Head;
import porebench.record.production.Spells;

/** A lab book in memory, for tests of what stands above the store. */
public final class MemoryLabBook implements LabBook {
    private final Map<RecordKind, Map<String, List<Version<Kept>>>> pages = new EnumMap<>(RecordKind.class);
    private final Clock clock;
    private long changes;
    private boolean closed;

    public MemoryLabBook(Clock clock) {
        this.clock = clock;
    }

    @Override
    public String name() {
        return "in memory";
    }

    @Override
    public <T extends Kept> List<Version<T>> latest(Class<T> kind) {
        return page(kindOf(kind)).values().stream()
                .map(all -> all.get(all.size() - 1))
                .map(version -> typed(kind, version))
                .toList();
    }

    @Override
    public <T extends Kept> Optional<Version<T>> latest(Class<T> kind, String recordId) {
        return history(kind, recordId).stream().max(Comparator.comparingInt(Version::number));
    }

    @Override
    public <T extends Kept> List<Version<T>> history(Class<T> kind, String recordId) {
        return page(kindOf(kind)).getOrDefault(recordId, List.of()).stream()
                .map(version -> typed(kind, version))
                .toList();
    }

    @Override
    public Optional<PhotoFile> withBytes(PhotoFile stated) {
        return page(RecordKind.SHEET_PHOTO).values().stream()
                .flatMap(List::stream)
                .map(version -> ((SheetPhoto) version.value()).file())
                .filter(file -> file.hasBytes() && file.equals(stated))
                .findFirst();
    }

    @Override
    public List<Problem> keep(List<Draft> drafts, String who, String why, Progress progress) {
        List<Problem> problems = new ArrayList<>();
        Map<RecordKind, Set<String>> seen = new HashMap<>();
        for (Draft draft : drafts) {
            Kept value = draft.value();
            boolean again =
                    !seen.computeIfAbsent(value.kind(), any -> new HashSet<>()).add(value.recordId());
            int newest =
                    page(value.kind()).getOrDefault(value.recordId(), List.of()).size();
            if (again || draft.basedOn() == 0 && newest > 0) {
                problems.add(
                        Problem.error("id", "book.already-there", value.kind().word(), value.recordId()));
            } else if (newest == 0 && draft.basedOn() > 0) {
                problems.add(Problem.error("id", "book.not-there", value.kind().word(), value.recordId()));
            } else if (newest != draft.basedOn()) {
                problems.add(Problem.error(
                        "id",
                        "book.changed-meanwhile",
                        value.kind().word(),
                        value.recordId(),
                        newest,
                        draft.basedOn()));
            }
        }
        if (problems.isEmpty()) {
            problems.addAll(Training.conflicts(
                    drafts,
                    latest(Laboratory.class, Laboratory.ID).map(Version::value),
                    !latest(Trial.class).isEmpty()));
        }
        problems.addAll(Wording.refusals(this, drafts, who, why));
        problems.addAll(Photos.refusals(this, drafts));
        if (problems.isEmpty()) {
            problems.addAll(Spells.refusals(this, drafts));
        }
        if (problems.isEmpty()) {
            problems.addAll(DecidedOn.conflicts(drafts, this));
        }
        if (problems.isEmpty()) {
            Stamp stamp = new Stamp(who, clock.instant().truncatedTo(ChronoUnit.MILLIS), why);
            drafts.forEach(draft -> write(draft.value(), stamp));
        }
        return problems;
    }

    /** Keeps a record as a book of an earlier program may hold it, past the rules about names and texts. */
    public void holdAsBefore(Kept value) {
        write(value, new Stamp("A", clock.instant(), "B"));
    }

    private void write(Kept value, Stamp stamp) {
        List<Version<Kept>> versions = page(value.kind()).computeIfAbsent(value.recordId(), any -> new ArrayList<>());
        versions.add(new Version<>(value, versions.size() + 1, stamp));
        changes++;
    }

    @Override
    public long changeNumber() {
        return changes;
    }

    /** {@inheritDoc} There is no chain in memory: the digits are the count. */
    @Override
    public Head head() {
        return new Head(String.format(Locale.ROOT, "%016x", changes), changes);
    }

    /** A lab book in memory has no hashes; what stands here is no secret, and as long as one. */
    @Override
    public Optional<String> firstHash(RecordKind kind, String recordId) {
        return page(kind).containsKey(recordId)
                ? Optional.of(String.format(Locale.ROOT, "%064x", (kind + recordId).hashCode() & 0xFFFFFFFFL))
                : Optional.empty();
    }

    @Override
    public BookCheck check(Optional<Head> noted, Progress progress) {
        return new BookCheck(true, true, head(), Map.of(), List.of(), List.of());
    }

    @Override
    public void unroll(ChainTaker taker) {
        throw new UnsupportedOperationException("a lab book in memory has no tables");
    }

    @Override
    public void saveCopy(Path file) {
        throw new UnsupportedOperationException("a lab book in memory has no file");
    }

    @Override
    public void close() {
        closed = true;
    }

    /** Returns whether somebody closed it. */
    public boolean isClosed() {
        return closed;
    }

    private Map<String, List<Version<Kept>>> page(RecordKind kind) {
        return pages.computeIfAbsent(kind, any -> new TreeMap<>());
    }

    private static RecordKind kindOf(Class<? extends Kept> type) {
        return List.of(RecordKind.values()).stream()
                .filter(kind -> kind.type().equals(type))
                .findFirst()
                .orElseThrow();
    }

    private static <T extends Kept> Version<T> typed(Class<T> kind, Version<Kept> version) {
        return new Version<>(kind.cast(version.value()), version.number(), version.stamp());
    }
}
