package porebench.evidence.field;

import java.util.List;
import java.util.Optional;
import porebench.evidence.FactorState;
import porebench.method.Problem;

/**
 * What is made of a reading: the air of the load, or why it is marked and not corrected.
 *
 * @param state how it stood with the factor at the time of the reading
 * @param air the air; empty where the reading is marked
 * @param mark why it is not corrected; empty where it is
 * @param doubts what is doubtful of the air, or keeps it from being judged
 */
public record FieldFinding(FactorState state, Optional<FieldAir> air, Optional<Problem> mark, List<Problem> doubts) {
    public FieldFinding {
        doubts = List.copyOf(doubts);
        if (air.isPresent() == mark.isPresent()) {
            throw new IllegalArgumentException("a finding must have an air or a mark, but has " + air + " and " + mark);
        }
    }

    static FieldFinding marked(FactorState state, Problem why) {
        return new FieldFinding(state, Optional.empty(), Optional.of(why), List.of());
    }

    boolean saysTheSameAs(FieldFinding other) {
        return air.isPresent() && other.air.isPresent()
                ? air.get().saysTheSameAs(other.air.get())
                : air.isEmpty() && other.air.isEmpty() && mark.equals(other.mark);
    }
}
