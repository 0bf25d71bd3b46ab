package porebench.record;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/**
 * The change that a decision is about, and all that the comparison rested on, so that a later correction is noticed.
 *
 * @param sourceVersions the sources that changed, each with the version that says what it is since
 * @param changedOn the first day of what was declared last of them; empty where no version says one
 * @param revision the revision of the factor that was in question; empty where the mix had none
 * @param before the determinations compared from before the change, each with its version
 * @param after those from after it
 * @param trialVersions the versions of all trials of these determinations
 * @param calibrationVersions the versions of the calibrations of the meters of these trials, up to the last trial's day
 */
public record DecidedChange(
        Map<SourceId, Integer> sourceVersions,
        Optional<LocalDate> changedOn,
        Optional<Integer> revision,
        Map<DeterminationId, Integer> before,
        Map<DeterminationId, Integer> after,
        Map<TrialId, Integer> trialVersions,
        Map<CalibrationId, Integer> calibrationVersions) {
    public DecidedChange {
        sourceVersions = Map.copyOf(sourceVersions);
        before = Map.copyOf(before);
        after = Map.copyOf(after);
        trialVersions = Map.copyOf(trialVersions);
        calibrationVersions = Map.copyOf(calibrationVersions);
    }
}
