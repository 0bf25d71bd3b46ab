package porebench.record.book;

import java.util.Set;
import porebench.record.RecordKind;
import porebench.record.id.MixId;

/**
 * What was kept since some entry.
 *
 * @param kinds the kinds of record of which any was kept
 * @param mixes the mixes that may stand otherwise now: of themselves, or by a source, a meter or a profile
 */
public record KeptSince(Set<RecordKind> kinds, Set<MixId> mixes) {
    public KeptSince {
        kinds = Set.copyOf(kinds);
        mixes = Set.copyOf(mixes);
    }
}
