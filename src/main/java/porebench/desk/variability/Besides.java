package porebench.desk.variability;

import java.util.Optional;
import porebench.evidence.LaboratoryScatter;
import porebench.method.MeterType;
import porebench.method.trial.KnownFactor;
import porebench.method.trial.NextDetermination;
import porebench.statistics.Judged;
import porebench.statistics.comparison.EqualScatterTest;

/**
 * What the laboratory knows beside the trials of a determination.
 *
 * @param known the factor drawn towards the other determinations
 * @param next where the next determination should lie
 * @param alike whether the mixes scatter alike
 */
record Besides(Optional<KnownFactor> known, Optional<NextDetermination> next, Judged<EqualScatterTest> alike) {
    /**
     * What is asked; the same again has the same answer.
     *
     * @param trials the determination
     * @param laboratory all determinations as of the last change of the lab book
     */
    record Wanted(TrialsToJudge trials, LaboratoryScatter laboratory) {
        /** Finds it; takes seconds in a large lab book when it is asked for the first time. */
        Besides found() {
            MeterType type = trials.judged().meterType();
            double division = trials.divisionPercent();
            return new Besides(
                    laboratory.known(trials.judged(), division, trials.profile()),
                    laboratory.next(trials.judged(), division),
                    laboratory.equalScatter(type, division));
        }

        /** Says whether this asks about the same determination of the same state of the lab book. */
        boolean isSameAs(Wanted other) {
            return trials.judged().equals(other.trials.judged()) && laboratory == other.laboratory;
        }
    }
}
