package porebench.record;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.quantity.Require;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.record.id.MeterId;

/**
 * A pressure air meter with its bowl.
 *
 * @param id the laboratory's name for it
 * @param type Type A or Type B
 * @param serial the maker's serial number, may be empty
 * @param bowl the bowl volume, as typed
 * @param divisionPercent a division of the scale, in % air, greater than 0
 * @param scaleTopPercent the top of the scale, in % air, greater than 0
 * @param inService whether it may be used for new trials
 * @param remarks anything else, may be empty
 */
public record Meter(
        MeterId id,
        MeterType type,
        String serial,
        Typed<Volume> bowl,
        BigDecimal divisionPercent,
        BigDecimal scaleTopPercent,
        boolean inService,
        String remarks)
        implements Kept {
    public Meter {
        Require.positive("bowl", bowl.value().cubicMetres());
        Require.positive("divisionPercent", divisionPercent.doubleValue());
        Require.positive("scaleTopPercent", scaleTopPercent.doubleValue());
    }

    /** Returns this meter with another bowl volume. */
    public Meter withBowl(Typed<Volume> other) {
        return new Meter(id, type, serial, other, divisionPercent, scaleTopPercent, inService, remarks);
    }

    /** Returns the problem that a division is larger than the whole scale. */
    public Optional<Problem> checkScale() {
        return divisionPercent.compareTo(scaleTopPercent) <= 0
                ? Optional.empty()
                : Optional.of(Problem.error("scaleTop", "meter.division-beyond-top", divisionPercent, scaleTopPercent));
    }

    @Override
    public RecordKind kind() {
        return RecordKind.METER;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
