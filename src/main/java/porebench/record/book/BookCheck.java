package porebench.record.book;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.RecordKind;
import porebench.record.chain.Head;

/**
 * What a full check of a lab book found.
 *
 * <p>What is checked: that the file's pages and indexes fit together and rows refer to rows that are there; that tables,
 * indexes, views and triggers are those of this version; that the entries are numbered without a gap, each carries the hash of
 * the one before and fits what is stored, and each can be read as the record it names; that what is kept of every
 * mix and name beside the entries follows from them. What cannot be checked without a
 * {@link Head} noted elsewhere: that the newest entries were cut off, or all written anew from some entry on.
 *
 * @param integrity whether pages, indexes and references are whole
 * @param schema whether tables, indexes, views and triggers are what they must be
 * @param head how far the lab book reaches
 * @param counts how many records of each kind there are
 * @param faults everything that is not as it must be, with its place
 * @param doubts what is no fault but should be known, such as an entry stamped earlier than the one before
 */
public record BookCheck(
        boolean integrity,
        boolean schema,
        Head head,
        Map<RecordKind, Integer> counts,
        List<Fault> faults,
        List<Problem> doubts) {
    public BookCheck {
        Map<RecordKind, Integer> all = new EnumMap<>(RecordKind.class);
        all.putAll(counts);
        counts = Collections.unmodifiableMap(all);
        faults = List.copyOf(faults);
        doubts = List.copyOf(doubts);
    }

    /**
     * Something that is not as it must be.
     *
     * @param entry the number of the entry it belongs to, 0 when it belongs to none
     * @param place where in the file, in words that no language changes, such as {@code entry 7}, {@code page 12},
     *     {@code index sqlite_autoindex_entry_1}, {@code view newest_entry}
     * @param problem what is wrong
     */
    public record Fault(long entry, String place, Problem problem) {
        /** Returns what kind of fault it is. */
        public String code() {
            return problem.code();
        }
    }

    /** Returns whether nothing that is checked contradicts. */
    public boolean isIntact() {
        return faults.isEmpty();
    }

    /** Returns the faults, then the doubts, to be said. */
    public List<Problem> problems() {
        return Stream.concat(faults.stream().map(Fault::problem), doubts.stream())
                .toList();
    }
}
