package porebench.evidence.hold;

import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.evidence.Bench;
import porebench.method.Role;
import porebench.method.sample.Constituent;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.record.FieldReading;
import porebench.record.Kept;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.id.MixId;
import porebench.record.id.ReadingId;
import porebench.store.Books;

/**
 * A mix of 315 kg of cement at 3.15, 160 kg of water, 1750 kg of aggregate at 2.65 with a factor of 0.4 % air, and field readings
 * beside a density of 5 % air: what a gauge shows above 5.4 % is the difference.
 */
public final class PairsBench implements AutoCloseable {
    /** 2225 kg in 0.1 + 0.16 + 1750 / 2650 m3. */
    public static final double AIR_FREE = 2225 / (0.26 + 1750.0 / 2650);

    /** Worked in {@code HoldHandTest}: a shift of 5.5 % air from the ninth pair on, 1.2709742 to either side. */
    public static final double[] SHIFTED = {1, 0, 1, 0, 1, 0, 1, 0, 5.5, 6.5, 5.5, 6.5, 5.5, 6.5};

    public static final double[] QUIET = {1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0, 1, 0};
    public static final LocalDateTime FIRST = Bench.START.atTime(8, 0);
    public static final LocalDateTime NOW = Bench.START.plusDays(60).atTime(12, 0);

    public final Bench bench;

    public PairsBench(Path folder) {
        bench = new Bench(folder);
        Books.correct(bench.book, whole("M-1"));
        bench.issue(Bench.START);
    }

    public static MixDesign whole(String id) {
        return Samples.mix(
                id,
                Samples.constituent("Sand", Role.FINE, "S-1", "700"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "1050"),
                of("Cement", Role.CEMENT, "315", "3.15"),
                of("Water", Role.WATER, "160", "1"));
    }

    static Constituent of(String name, Role role, String mass, String density) {
        Constituent plain = Samples.constituent(name, role, "", mass);
        return new Constituent(
                name,
                role,
                Optional.empty(),
                plain.mass(),
                plain.state(),
                Optional.empty(),
                Optional.empty(),
                Samples.some(density),
                plain.retainedPercent());
    }

    public static FieldReading reading(String id, String mix, LocalDateTime at, double difference, double byDensity) {
        return new FieldReading(
                new ReadingId(id),
                new MixId(mix),
                at,
                "12",
                Optional.empty(),
                BigDecimal.valueOf(5.4 + difference).round(new MathContext(9)),
                Optional.of(new Typed<>(
                        BigDecimal.valueOf(AIR_FREE * (1 - byDensity / 100)), DensityUnit.KILOGRAM_PER_CUBIC_METRE)),
                Optional.empty(),
                "",
                Optional.empty(),
                Optional.empty());
    }

    static FieldReading with(FieldReading of, boolean isDense, boolean isStruck) {
        return new FieldReading(
                of.id(),
                of.mixId(),
                of.readAt(),
                of.truck(),
                of.meterId(),
                of.gaugePercent(),
                of.density().filter(any -> isDense),
                of.temperatureCelsius(),
                of.remarks(),
                of.keptBecause(),
                isStruck ? Optional.of("leak") : Optional.empty());
    }

    /** Readings of a mix, one a day from the first day on. */
    public static List<FieldReading> readings(String mix, double... differences) {
        List<FieldReading> all = new ArrayList<>();
        for (int i = 0; i < differences.length; i++) {
            String id = String.format(Locale.ROOT, "%s-R%02d", mix, i + 1);
            all.add(reading(id, mix, FIRST.plusDays(i), differences[i], 5));
        }
        return all;
    }

    public void keep(List<FieldReading> readings) {
        Books.keep(bench.book, readings.toArray(Kept[]::new));
    }

    @Override
    public void close() {
        bench.close();
    }
}
