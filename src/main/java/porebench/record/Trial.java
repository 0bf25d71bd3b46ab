package porebench.record;

import java.time.LocalDateTime;
import java.util.Optional;
import porebench.method.trial.Readings;

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
        Optional<String> struckBecause)
        implements Kept {

    /** Returns this trial struck out of the numbers; it stays visible with the reason. */
    public Trial struck(String reason) {
        return new Trial(
                id,
                mixId,
                determinationId,
                testedAt,
                operator,
                meterId,
                readings,
                remarks,
                keptBecause,
                Optional.of(reason));
    }

    /** Returns this trial standing again. */
    public Trial standing() {
        return new Trial(
                id,
                mixId,
                determinationId,
                testedAt,
                operator,
                meterId,
                readings,
                remarks,
                keptBecause,
                Optional.empty());
    }

    /** Returns this trial kept in spite of its doubts. */
    public Trial kept(String reason) {
        return new Trial(
                id,
                mixId,
                determinationId,
                testedAt,
                operator,
                meterId,
                readings,
                remarks,
                Optional.of(reason),
                struckBecause);
    }

    /** Returns this trial as part of a determination. */
    public Trial in(DeterminationId other) {
        return new Trial(id, mixId, other, testedAt, operator, meterId, readings, remarks, keptBecause, struckBecause);
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
