package porebench.desk.variability;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.method.Profile;
import porebench.method.trial.Outliers;
import porebench.method.trial.ScatterElsewhere;

/**
 * What the questions are asked of.
 *
 * @param judged the determination
 * @param divisionPercent a division of its meter's scale, in % air
 * @param profile whose figures hold
 * @param elsewhere how trials scatter elsewhere in the laboratory, on this type of meter
 */
record TrialsToJudge(JudgedDetermination judged, double divisionPercent, Profile profile, ScatterElsewhere elsewhere) {

    private List<JudgedTrial> counting() {
        return judged.trials().stream().filter(JudgedTrial::counts).toList();
    }

    /** Returns the factors of the trials that count, in % air. */
    double[] factors() {
        return counting().stream()
                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                .toArray();
    }

    /** Returns their mean, in % air. */
    double mean() {
        return Arrays.stream(factors()).average().orElseThrow();
    }

    /** Returns the id of one of the trials that count, by its position from 0. */
    String id(int index) {
        return counting().get(index).trial().value().id().text();
    }

    /** Returns the ids of the trials that lie farthest out, parted by commas. */
    String names(Outliers.Farthest farthest) {
        return farthest.indices().stream().map(this::id).collect(Collectors.joining(", "));
    }
}
