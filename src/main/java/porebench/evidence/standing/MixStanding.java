package porebench.evidence.standing;

import java.util.List;
import porebench.evidence.CountedTrials;
import porebench.evidence.Evidence;
import porebench.evidence.MixScatter;
import porebench.record.book.MixSummary;
import porebench.record.id.MixId;

/**
 * How one mix stands.
 *
 * @param mixId the mix
 * @param line its line in the register
 * @param trials its trials that count, by determination
 */
record MixStanding(MixId mixId, RegisterLine line, List<CountedTrials> trials) {
    /** Works it out of the evidence. */
    static MixStanding of(Evidence evidence) {
        return new MixStanding(evidence.mix().value().id(), RegisterLine.of(evidence), evidence.counted());
    }

    /** Returns what every reading of the laboratory asks of it. */
    ShortStanding inShort() {
        return new ShortStanding(line, MixScatter.of(trials));
    }

    /** Returns it as it is kept. */
    MixSummary summary() {
        return new MixSummary(mixId, inShort().text(), WrittenTrials.of(trials));
    }
}
