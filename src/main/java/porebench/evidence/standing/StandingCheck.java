package porebench.evidence.standing;

import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import porebench.evidence.EvidenceReader;
import porebench.record.RecordKind;
import porebench.record.book.MixSummary;
import porebench.record.book.Progress;
import porebench.record.book.Records;
import porebench.record.id.MixId;

/** Compares what is kept of every mix beside the entries with what the entries say. */
public final class StandingCheck {
    private StandingCheck() {}

    /**
     * Returns the mixes of which something else is kept than follows from the entries; none where all is right.
     *
     * @param book the entries
     * @param lines what is kept of each mix's line in the register
     * @param trials what is kept of each mix's trials
     * @param touched the mixes that something touched since, of which what is kept no longer counts
     * @param progress hears how far it is
     */
    public static SortedSet<MixId> differences(
            Records book, Map<MixId, String> lines, Map<MixId, String> trials, Set<MixId> touched, Progress progress) {
        SortedSet<MixId> mixes = new TreeSet<>(lines.keySet());
        mixes.addAll(trials.keySet());
        book.ids(RecordKind.MIX).forEach(id -> mixes.add(new MixId(id)));
        mixes.removeAll(touched);
        SortedSet<MixId> different = new TreeSet<>(mixes);
        EvidenceReader.asking(book).readEach(mixes, progress, evidence -> {
            MixSummary wanted = MixStanding.of(evidence).summary();
            if (wanted.registerLine().equals(lines.get(wanted.mixId()))
                    && wanted.trials().equals(trials.get(wanted.mixId()))) {
                different.remove(wanted.mixId());
            }
        });
        return different;
    }
}
