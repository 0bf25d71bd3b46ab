package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;
import porebench.method.trial.Readings;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * One trial of a determination, as entered at the bench.
 *
 * @param id its name
 * @param mixId the mix
 * @param determinationId the determination it belongs to
 * @param testedAt when it was made, by the laboratory's clock
 * @param operator who made it
 * @param meterId the meter it was made on
 * @param readings everything read and weighed
 * @param remarks anything else, may be empty
 * @param keptBecause why it is kept in spite of its doubts; empty when nobody said so
 * @param struckBecause why a person struck it; empty while it stands
 * @param elevationMetres how high above the sea it was made, in m; empty when nobody said so
 * @param simulated whether it was made by the simulated bench, for training; such a trial never stands beside real ones
 */
public record Trial(
        TrialId id,
        MixId mixId,
        DeterminationId determinationId,
        LocalDateTime testedAt,
        String operator,
        MeterId meterId,
        Readings readings,
        String remarks,
        Optional<String> keptBecause,
        Optional<String> struckBecause,
        Optional<BigDecimal> elevationMetres,
        boolean simulated)
        implements Kept {
    /** Returns this trial struck out of the numbers; it stays visible with the reason. */
    public Trial struck(String reason) {
        return with(determinationId, keptBecause, Optional.of(reason), simulated);
    }

    /** Returns this trial standing again. */
    public Trial standing() {
        return with(determinationId, keptBecause, Optional.empty(), simulated);
    }

    /** Returns this trial with the reason why it is kept in spite of its doubts, or without one. */
    public Trial keptFor(Optional<String> reason) {
        return with(determinationId, reason, struckBecause, simulated);
    }

    /** Returns what stands for the determination in a row of a file that names none: the id of its mix. */
    public static DeterminationId noDetermination(MixId mix) {
        return new DeterminationId(mix.text());
    }

    /** Returns whether it says which determination it belongs to; in a lab book every trial does. */
    public boolean namesDetermination() {
        return !determinationId.equals(noDetermination(mixId));
    }

    /** Returns this trial as part of a determination. */
    public Trial in(DeterminationId other) {
        return with(other, keptBecause, struckBecause, simulated);
    }

    /** Returns this trial marked as made by the simulated bench. */
    public Trial asSimulated() {
        return with(determinationId, keptBecause, struckBecause, true);
    }

    private Trial with(
            DeterminationId determination, Optional<String> kept, Optional<String> struck, boolean isSimulated) {
        return new Trial(
                id,
                mixId,
                determination,
                testedAt,
                operator,
                meterId,
                readings,
                remarks,
                kept,
                struck,
                elevationMetres,
                isSimulated);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.TRIAL;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
