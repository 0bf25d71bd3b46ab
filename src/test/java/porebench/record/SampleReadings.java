package porebench.record;

import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;

/** Readings of crews at the loads. */
public final class SampleReadings {
    public static final LocalDateTime AT = LocalDateTime.of(2026, 3, 3, 9, 30);

    private SampleReadings() {}

    /** Returns a reading with nothing beside it. */
    public static FieldReading plain(String id, String mix, String gauge) {
        return new FieldReading(
                new ReadingId(id),
                new MixId(mix),
                AT,
                "12",
                Optional.empty(),
                new BigDecimal(gauge),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                Optional.empty());
    }

    /** Returns a reading with everything that can stand beside it. */
    public static FieldReading full(String id, String mix, String meter) {
        return new FieldReading(
                new ReadingId(id),
                new MixId(mix),
                AT.plusMinutes(40),
                "12",
                Optional.of(new MeterId(meter)),
                new BigDecimal("6.20"),
                Optional.of(Typed.of("2310", DensityUnit.KILOGRAM_PER_CUBIC_METRE)),
                Optional.of(new BigDecimal("19.5")),
                "at the pump",
                Optional.of("clock of the phone was seen"),
                Optional.of("leak at the clamp"));
    }

    /** Returns a reading on a meter. */
    public static FieldReading onMeter(String id, String mix, String meter, String gauge) {
        FieldReading of = plain(id, mix, gauge);
        return new FieldReading(
                of.id(),
                of.mixId(),
                of.readAt(),
                of.truck(),
                Optional.of(new MeterId(meter)),
                of.gaugePercent(),
                of.density(),
                of.temperatureCelsius(),
                of.remarks(),
                of.keptBecause(),
                of.struckBecause());
    }

    /** Returns a reading with a density. */
    public static FieldReading withDensity(FieldReading of, Typed<Density> density) {
        return new FieldReading(
                of.id(),
                of.mixId(),
                of.readAt(),
                of.truck(),
                of.meterId(),
                of.gaugePercent(),
                Optional.of(density),
                of.temperatureCelsius(),
                of.remarks(),
                of.keptBecause(),
                of.struckBecause());
    }
}
