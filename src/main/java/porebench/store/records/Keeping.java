package porebench.store.records;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.evidence.issue.DecidedOn;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.SheetPhoto;
import porebench.record.book.Draft;
import porebench.record.book.Photos;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.book.Training;
import porebench.record.book.Wording;
import porebench.record.production.Spells;
import porebench.store.chain.Canonical;
import porebench.store.chain.ChainEnd;
import porebench.store.chain.Entry;
import porebench.store.chain.EntryTable;
import porebench.store.chain.Insertions;
import porebench.store.rows.PhotoTable;
import porebench.store.rows.RecordTable;
import porebench.store.rows.Selection;
import porebench.store.rows.StoredRecord;
import porebench.store.rows.StoredRows;

/** Keeps drafts in a lab book within one transaction: why not, and else how. */
public final class Keeping {
    private final Handle handle;
    private final EntryTable history;

    public Keeping(Handle handle) {
        this.handle = handle;
        this.history = new EntryTable(handle);
    }

    /**
     * Why some drafts cannot be kept.
     *
     * @param on the last entry of the lab book that was looked at; empty when it had none
     * @param problems why not; empty when they can
     */
    public record Checked(Optional<Entry> on, List<Problem> problems) {}

    /**
     * Looks whether some drafts can be kept on top of what is there.
     *
     * @param before what a look before found; it holds as long as nothing was kept in between
     */
    public Checked check(List<Draft> drafts, Stamp stamp, String name, int knownVersion, Optional<Checked> before) {
        Optional<Entry> last = history.last();
        int version = versionOf(handle);
        if (version > knownVersion) {
            return new Checked(last, List.of(Problem.error("file", "book.newer", name, version, knownVersion)));
        }
        return before.filter(looked -> looked.on.equals(last))
                .orElseGet(() -> new Checked(last, conflicts(drafts, stamp, name)));
    }

    private List<Problem> conflicts(List<Draft> drafts, Stamp stamp, String name) {
        Map<RecordKind, Map<String, Integer>> newest = newest(drafts);
        Records records = new StoredRecords(handle, name);
        List<Problem> problems = new ArrayList<>(Wording.refusals(records, drafts, stamp.who(), stamp.why()));
        for (Draft draft : drafts) {
            String recordId = draft.value().recordId();
            Map<String, Integer> ofKind =
                    Objects.requireNonNull(newest.get(draft.value().kind()));
            conflict(draft, ofKind.getOrDefault(recordId, 0)).ifPresent(problems::add);
            ofKind.put(recordId, draft.number());
        }
        if (problems.isEmpty()) {
            problems.addAll(mixing(drafts));
            problems.addAll(Photos.refusals(records, drafts));
            problems.addAll(Spells.refusals(records, drafts));
        }
        return problems.isEmpty() ? DecidedOn.conflicts(drafts, records) : problems;
    }

    private Map<RecordKind, Map<String, Integer>> newest(List<Draft> drafts) {
        Map<RecordKind, List<String>> ids = drafts.stream()
                .map(Draft::value)
                .collect(Collectors.groupingBy(Kept::kind, Collectors.mapping(Kept::recordId, Collectors.toList())));
        Map<RecordKind, Map<String, Integer>> newest = new EnumMap<>(RecordKind.class);
        ids.forEach((kind, names) -> newest.put(kind, history.newestVersions(kind, names)));
        return newest;
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
                draft.isNew()
                        ? Problem.error("id", "book.already-there", kind, recordId)
                        : Problem.error("id", "book.changed-meanwhile", kind, recordId, there, draft.basedOn()));
    }

    private List<Problem> mixing(List<Draft> drafts) {
        RecordTable<Laboratory> laboratories = RecordTable.of(Laboratory.class);
        StoredRows rows = StoredRows.read(handle, laboratories, Selection.newest(laboratories.kind()));
        Optional<Laboratory> laboratory = rows.entries().stream()
                .flatMap(entry -> rows.of(entry).stream())
                .map(laboratories::value)
                .findFirst();
        return Training.conflicts(drafts, laboratory, history.holdsAny(RecordKind.TRIAL));
    }

    private static int versionOf(Handle handle) {
        try (Query query = handle.createQuery("PRAGMA user_version")) {
            return query.mapTo(Integer.class).one();
        }
    }

    /** Returns the hash of each draft as it is stored; it takes most of the time, and no lab book is needed for it. */
    public static List<String> hashes(List<Draft> drafts) {
        return drafts.stream()
                .map(draft -> Canonical.hash(Canonical.text(rows(draft.value()))))
                .toList();
    }

    /** Writes the drafts behind the last entry, and returns the new last one. */
    public Optional<Entry> append(
            List<Draft> drafts, List<String> hashes, Stamp stamp, Optional<Entry> before, Progress progress) {
        Optional<Entry> last = before;
        NameLooks looks = new NameLooks(handle);
        looks.catchUp(ChainEnd.of(before).number());
        PhotoTable photos = new PhotoTable(handle);
        try (Insertions insertions = new Insertions(handle)) {
            for (int i = 0; i < hashes.size(); i++) {
                Draft draft = drafts.get(i);
                Entry next = ChainEnd.of(last)
                        .next(
                                draft.value().kind().symbol(),
                                draft.value().recordId(),
                                draft.number(),
                                stamp,
                                hashes.get(i));
                if (draft.value() instanceof SheetPhoto photo) {
                    photos.keep(photo.file());
                }
                insertions.append(next, rows(draft.value()));
                last = Optional.of(next);
                progress.at(Progress.Stage.KEEPING, i + 1L, hashes.size());
            }
        }
        looks.catchUp(ChainEnd.of(last).number());
        return last;
    }

    private static <T extends Kept> StoredRecord rows(T value) {
        return RecordTable.ofValue(value).rows(value);
    }
}
