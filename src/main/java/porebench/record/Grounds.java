package porebench.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.id.CalibrationId;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.TrialId;

/**
 * What a revision of a factor rests on, so that a later correction is noticed, and where it was decided.
 *
 * @param trialVersions the versions of all trials of its determination, those that do not count among them; empty for a
 *     withdrawal, for one that came in without them, and for one issued before versions were kept
 * @param calibrationVersions the versions of the calibrations of the meters of these trials, up to the last trial's day
 * @param takenOn the doubts that somebody took on
 * @param origin where it was decided
 * @param simulated whether it rests on simulated trials, for training
 * @param group the group whose factor it is, and the mix that was tested; empty where it is of its mix alone
 * @param keptBy the decision by which a factor found before a source changed is kept on trials made after it; empty for one that its
 *     own trials give
 * @param uncertainty how uncertain the factor was when it was issued; empty where nobody stated it
 */
public record Grounds(
        Map<TrialId, Integer> trialVersions,
        Map<CalibrationId, Integer> calibrationVersions,
        List<TakenDoubt> takenOn,
        FactorOrigin origin,
        boolean simulated,
        Optional<GroupGround> group,
        Optional<ChangeDecisionId> keptBy,
        Optional<StatedUncertainty> uncertainty) {
    /** Nothing stated, as of a withdrawal. */
    public static final Grounds NONE = new Grounds(Map.of(), Map.of(), List.of(), FactorOrigin.HERE, false);

    /** Makes grounds of a factor that its own trials give, of which no uncertainty is stated. */
    public Grounds(
            Map<TrialId, Integer> trialVersions,
            Map<CalibrationId, Integer> calibrationVersions,
            List<TakenDoubt> takenOn,
            FactorOrigin origin,
            boolean simulated) {
        this(
                trialVersions,
                calibrationVersions,
                takenOn,
                origin,
                simulated,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    public Grounds {
        trialVersions = Map.copyOf(trialVersions);
        calibrationVersions = Map.copyOf(calibrationVersions);
        takenOn = List.copyOf(takenOn);
    }

    /** Returns whether the trials it rests on are named with their versions. */
    public boolean namesTrials() {
        return !trialVersions.isEmpty();
    }

    /** Returns the same grounds, decided elsewhere or confirmed here. */
    public Grounds from(FactorOrigin other) {
        return new Grounds(trialVersions, calibrationVersions, takenOn, other, simulated, group, keptBy, uncertainty);
    }

    /** Returns the same grounds marked as simulated or not. */
    public Grounds simulated(boolean isSimulated) {
        return new Grounds(
                trialVersions, calibrationVersions, takenOn, origin, isSimulated, group, keptBy, uncertainty);
    }

    /** Returns the same grounds as those of a group's factor. */
    public Grounds of(Optional<GroupGround> other) {
        return new Grounds(trialVersions, calibrationVersions, takenOn, origin, simulated, other, keptBy, uncertainty);
    }

    /** Returns the same grounds of a factor that a decision keeps. */
    public Grounds keptBy(ChangeDecisionId decision) {
        return new Grounds(
                trialVersions,
                calibrationVersions,
                takenOn,
                origin,
                simulated,
                group,
                Optional.of(decision),
                uncertainty);
    }

    /** Returns the same grounds with how uncertain the factor is. */
    public Grounds stating(Optional<StatedUncertainty> stated) {
        return new Grounds(trialVersions, calibrationVersions, takenOn, origin, simulated, group, keptBy, stated);
    }
}
