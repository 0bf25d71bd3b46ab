package porebench.evidence;

import java.util.List;
import java.util.Optional;
import porebench.method.Profile;
import porebench.method.trial.ScatterElsewhere;
import porebench.method.trial.StopRule;

/**
 * All that is asked of a determination about its scatter, in little, so that it can wait until the scatter of the whole laboratory is
 * known.
 *
 * @param ofMix the trials that count of its mix, by determination
 * @param determination its own
 * @param divisionPercent a division of its meter's scale, in % air, greater than 0
 * @param profile whose half-width, least number of trials, rounding and limits hold
 */
public record EnoughTrials(
        List<CountedTrials> ofMix, CountedTrials determination, double divisionPercent, Profile profile) {
    public EnoughTrials {
        ofMix = List.copyOf(ofMix);
    }

    /**
     * Says whether the trials are enough, beside the laboratory's other determinations.
     *
     * @return what to do, or empty when no trial counts
     */
    public Optional<StopRule> stop(LaboratoryScatter laboratory) {
        return StopRule.of(
                determination.factors(), determination.meterType(), divisionPercent, profile, elsewhere(laboratory));
    }

    private ScatterElsewhere elsewhere(LaboratoryScatter laboratory) {
        return laboratory.without(ofMix, determination, determination.meterType());
    }
}
