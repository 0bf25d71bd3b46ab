package porebench.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;
import porebench.method.Problem;
import porebench.record.RecordKind;

/**
 * Follows the chain of entries from the first to the last and compares each with what is stored.
 *
 * <p>It finds whatever was changed, put in or taken out by another program. It cannot find that the last entries are
 * missing together with their rows, nor that somebody computed the whole chain anew: only a copy kept elsewhere shows that.
 */
final class ChainCheck {
    private final Map<String, StoredRows> rowsByKind = new HashMap<>();
    private final SortedSet<Long> withoutEntry = new TreeSet<>();
    private final List<Problem> problems = new ArrayList<>();

    private ChainCheck() {}

    /** Returns every contradiction, the oldest first. */
    static List<Problem> run(Handle handle) {
        ChainCheck check = new ChainCheck();
        for (RecordTable<?> table : RecordTable.all()) {
            StoredRows rows = StoredRows.readAll(handle, table);
            check.rowsByKind.put(table.kind().symbol(), rows);
            check.withoutEntry.addAll(rows.entries());
        }
        Entry before = Entry.BEFORE_THE_FIRST;
        for (Entry entry : new History(handle).all()) {
            check.follow(before, entry);
            before = entry;
        }
        check.withoutEntry.forEach(check::gap);
        return check.problems;
    }

    private void follow(Entry before, Entry entry) {
        withoutEntry.remove(entry.number());
        if (!entry.follows(before)) {
            gap(entry.number());
        }
        if (!entry.hash().equals(entry.computedHash()) || !entry.contentHash().equals(contentHash(entry))) {
            problems.add(Problem.error(
                    "entry", "book.chain-broken", entry.number(), wordOf(entry.kind()), entry.recordId()));
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

    private void gap(long entryNo) {
        problems.add(Problem.error("entry", "book.chain-gap", entryNo));
    }

    private String contentHash(Entry entry) {
        return Optional.ofNullable(rowsByKind.get(entry.kind()))
                .flatMap(rows -> rows.of(entry.number()))
                .map(stored -> Canonical.hash(Canonical.text(stored)))
                .orElse("");
    }
}
