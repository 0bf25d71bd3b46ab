package porebench.store.chain;

import java.util.Optional;
import porebench.record.book.Stamp;

/**
 * Where a chain of entries ends, and the next one is joined on.
 *
 * @param number how many entries there are
 * @param hash the hash of the last one; of a chain without entries, zeros
 */
public record ChainEnd(long number, String hash) {
    /** The end of a chain that has no entry yet. */
    public static final ChainEnd OF_NONE = new ChainEnd(0, "0".repeat(64));

    /** Returns where a chain ends whose last entry is given. */
    public static ChainEnd of(Optional<Entry> last) {
        return last.map(Entry::end).orElse(OF_NONE);
    }

    /** Returns the entry that comes next. */
    public Entry next(String nextKind, String nextRecordId, int nextVersion, Stamp stamp, String nextContentHash) {
        Entry open = new Entry(
                number + 1,
                nextKind,
                nextRecordId,
                nextVersion,
                stamp.who(),
                stamp.at().toString(),
                stamp.why(),
                nextContentHash,
                hash,
                "");
        return open.sealed();
    }
}
