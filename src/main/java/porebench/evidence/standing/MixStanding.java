package porebench.evidence.standing;

import java.util.List;
import porebench.evidence.CountedTrials;
import porebench.evidence.Evidence;
import porebench.record.Summary;
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
        return new MixStanding(
                evidence.mix().value().id(),
                RegisterLine.of(evidence),
                evidence.determinations().stream().map(CountedTrials::of).toList());
    }

    /** Returns it as it is kept. */
    Summary summary() {
        return new Summary(mixId, line.text(), WrittenTrials.of(trials));
    }
}
