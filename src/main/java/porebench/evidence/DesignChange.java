package porebench.evidence;

import java.time.LocalDate;
import java.util.Optional;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;

/**
 * What another design of a mix would do to what rests on it, by the drift of proportions that its profile tolerates.
 *
 * @param evidence what is known of the mix
 * @param other the other design
 */
public record DesignChange(Evidence evidence, MixDesign other) {
    /** Returns the factor in force on a day that stands for the aggregates as they are, and no longer would. */
    public Optional<FactorIssue> endedFactor(LocalDate day) {
        return evidence.inForceOn(day)
                .filter(issue -> Optional.ofNullable(evidence.bases().get(issue.revision()))
                        .filter(this::leaves)
                        .isPresent());
    }

    /** Returns the open determination whose trials no longer would join those of the other design; empty where none was made. */
    public Optional<JudgedDetermination> closedDetermination() {
        return evidence.openDetermination()
                .filter(open -> !open.trials().isEmpty())
                .filter(open -> Optional.ofNullable(
                                evidence.made().get(open.determination().value().id()))
                        .filter(this::leaves)
                        .isPresent());
    }

    private boolean leaves(Basis basis) {
        return isOf(basis, evidence.mix().value()) && !isOf(basis, other);
    }

    private boolean isOf(Basis basis, MixDesign design) {
        return basis.mix().hasSameAggregatesAs(design, evidence.proportionTolerance());
    }
}
