package porebench.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;
import porebench.evidence.issue.DecidedOn;
import porebench.method.Problem;
import porebench.record.Draft;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.RecordKind;
import porebench.record.Records;
import porebench.record.Stamp;
import porebench.record.Training;
import porebench.record.Wording;

/** Keeps drafts in a lab book within one transaction: why not, and else how. */
final class Keeping {
    private final Handle handle;
    private final History history;

    Keeping(Handle handle) {
        this.handle = handle;
        this.history = new History(handle);
    }

    /** Returns why some drafts cannot be kept on top of what is there; empty when they can. */
    List<Problem> conflicts(List<Draft> drafts, Stamp stamp, String name, int knownVersion) {
        int version = versionOf(handle);
        if (version > knownVersion) {
            return List.of(Problem.error("file", "book.newer", name, version, knownVersion));
        }
        Map<RecordKind, Map<String, Integer>> newest = new HashMap<>();
        Records records = new StoredRecords(handle, name);
        List<Problem> problems = new ArrayList<>(Wording.refusals(records, drafts, stamp.who(), stamp.why()));
        for (Draft draft : drafts) {
            RecordKind kind = draft.value().kind();
            String recordId = draft.value().recordId();
            Map<String, Integer> ofKind = newest.computeIfAbsent(kind, any -> new HashMap<>());
            int there = ofKind.computeIfAbsent(recordId, any -> history.newestVersion(kind, recordId));
            conflict(draft, there).ifPresent(problems::add);
            ofKind.put(recordId, draft.basedOn() + 1);
        }
        if (problems.isEmpty()) {
            problems.addAll(mixing(drafts));
        }
        return problems.isEmpty() ? DecidedOn.conflicts(drafts, records) : problems;
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

    /** Writes the drafts behind the last entry and returns the entry before and the new last one. */
    List<Entry> append(List<Draft> drafts, Stamp stamp) {
        Entry before = history.last();
        Entry last = before;
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
        return List.of(before, last);
    }

    private static <T extends Kept> StoredRecord rows(T value) {
        return RecordTable.ofValue(value).rows(value);
    }
}
