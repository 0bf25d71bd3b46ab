package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/**
 * What a crew read on a pressure meter at a load, as it was read: nothing is subtracted from it.
 *
 * @param id its name
 * @param mixId the mix of the load
 * @param readAt day and time of the reading, by the laboratory's clock
 * @param truck the truck or load, may be empty
 * @param meterId the meter; empty where it is none of the laboratory's, or nobody wrote it down
 * @param gaugePercent what the gauge showed, in % air
 * @param density density of the fresh concrete of the same sample; empty where it was not measured
 * @param temperatureCelsius temperature of the concrete, in C; empty where it was not measured
 * @param remarks anything else, may be empty
 * @param keptBecause why it is kept although it is doubted; empty where nothing was doubted
 * @param struckBecause why it does not count; empty where it counts
 */
public record FieldReading(
        ReadingId id,
        MixId mixId,
        LocalDateTime readAt,
        String truck,
        Optional<MeterId> meterId,
        BigDecimal gaugePercent,
        Optional<Typed<Density>> density,
        Optional<BigDecimal> temperatureCelsius,
        String remarks,
        Optional<String> keptBecause,
        Optional<String> struckBecause)
        implements Kept {
    /** The densities that fresh concrete can have, in kg/m3: from light to heavy aggregate. Common practice, no source. */
    public static final double LEAST_DENSITY = 800;

    public static final double GREATEST_DENSITY = 6000;

    /** So far a phone's clock may be ahead of the laboratory's before its reading is refused, in minutes. Common practice, no source. */
    public static final int MOST_AHEAD_MINUTES = 60;

    /**
     * Returns what is wrong or doubtful with it by itself, under the fields of its form. One from a clock that is a little ahead is a
     * doubt; one that is farther to come is refused.
     *
     * @param now the day and time at which it is to be kept, by the laboratory's clock
     */
    public List<Problem> check(LocalDateTime now) {
        List<Problem> problems = new ArrayList<>();
        if (readAt.isAfter(now.plusMinutes(MOST_AHEAD_MINUTES))) {
            problems.add(Problem.error("readAt", "field.to-come", id.text(), Dates.minute(readAt), Dates.minute(now)));
        } else if (readAt.isAfter(now.plusMinutes(CardSteps.CLOCK_MINUTES))) {
            problems.add(Problem.warning("readAt", "field.clock", id.text(), Dates.minute(readAt), Dates.minute(now)));
        }
        density.filter(typed -> typed.value().kilogramsPerCubicMetre() < LEAST_DENSITY
                        || typed.value().kilogramsPerCubicMetre() > GREATEST_DENSITY)
                .ifPresent(typed -> problems.add(Problem.error(
                        "density",
                        "field.density",
                        id.text(),
                        typed.number(),
                        ((DensityUnit) typed.unit()).symbol(),
                        LEAST_DENSITY,
                        GREATEST_DENSITY)));
        return problems;
    }

    /** Returns why it cannot have been read on its meter: the scale ends below it; empty where the scale holds it. */
    public Optional<Problem> checkScale(Meter meter) {
        return gaugePercent.compareTo(meter.scaleTopPercent()) <= 0
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "gauge",
                        "field.above-scale",
                        id.text(),
                        gaugePercent,
                        meter.id().text(),
                        meter.scaleTopPercent()));
    }

    /** Returns whether it counts: nobody struck it. */
    public boolean counts() {
        return struckBecause.isEmpty();
    }

    /** Returns the same reading under another name. */
    public FieldReading named(ReadingId other) {
        return with(other, readAt, keptBecause, struckBecause);
    }

    /** Returns the same reading of another moment. */
    public FieldReading at(LocalDateTime moment) {
        return with(id, moment, keptBecause, struckBecause);
    }

    /** Returns the same reading kept for a reason; for none where nothing about it is doubted. */
    public FieldReading keptFor(Optional<String> reason) {
        return with(id, readAt, reason, struckBecause);
    }

    /** Returns the same reading struck for a reason: it stays visible and does not count. */
    public FieldReading struck(String reason) {
        return with(id, readAt, keptBecause, Optional.of(reason));
    }

    /** Returns the same reading counting again. */
    public FieldReading standing() {
        return with(id, readAt, keptBecause, Optional.empty());
    }

    private FieldReading with(ReadingId name, LocalDateTime moment, Optional<String> kept, Optional<String> struck) {
        return new FieldReading(
                name, mixId, moment, truck, meterId, gaugePercent, density, temperatureCelsius, remarks, kept, struck);
    }

    @Override
    public RecordKind kind() {
        return RecordKind.FIELD_READING;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
