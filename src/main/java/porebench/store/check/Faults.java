package porebench.store.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import porebench.method.Problem;
import porebench.record.book.BookCheck.Fault;

/** The faults of a lab book as they are found. */
public final class Faults {
    private final List<Fault> found = new ArrayList<>();
    private final Set<Long> entries = new HashSet<>();

    /** Adds a fault of an entry. */
    void ofEntry(long entryNo, String code, Object... values) {
        entries.add(entryNo);
        found.add(new Fault(entryNo, "entry " + entryNo, Problem.error("entry", code, values)));
    }

    /** Adds a fault of a place in the file that is no entry. */
    void at(String place, String code, Object... values) {
        found.add(new Fault(0, place, Problem.error("file", code, values)));
    }

    /** Returns whether a fault of an entry was found already. */
    boolean hasEntry(long entryNo) {
        return entries.contains(entryNo);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    int count() {
        return found.size();
    }

    public List<Fault> found() {
        return List.copyOf(found);
    }

    List<Problem> problems() {
        return found.stream().map(Fault::problem).toList();
    }
}
