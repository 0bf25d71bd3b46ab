package porebench.method.sample;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.quantity.Density;
import porebench.quantity.DensityUnit;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/** One line of a mix design as tests write it: SSD, no absorption, moisture, density or stone over 37.5 mm unless said. */
public record MixLine(Constituent constituent) {
    public static MixLine of(Role role, String name, String mass) {
        return new MixLine(new Constituent(
                name,
                role,
                Optional.empty(),
                mass(mass),
                MoistureState.SSD,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                BigDecimal.ZERO));
    }

    public static MixLine cement(String mass) {
        return of(Role.CEMENT, "cement", mass);
    }

    public static MixLine water(String mass) {
        return of(Role.WATER, "water", mass);
    }

    public static MixLine fine(String mass) {
        return of(Role.FINE, "sand", mass);
    }

    public static MixLine coarse(String mass) {
        return of(Role.COARSE, "stone", mass);
    }

    public static Typed<Mass> mass(String text) {
        return Typed.parse(text, List.of(MassUnit.values())).orElseThrow();
    }

    public static Typed<Volume> volume(String text) {
        return Typed.parse(text, List.of(VolumeUnit.values())).orElseThrow();
    }

    public static Typed<Density> density(String text) {
        return Typed.parse(text, List.of(DensityUnit.values())).orElseThrow();
    }

    public MixLine named(String name) {
        Constituent c = constituent;
        return copy(
                name,
                c.sourceId(),
                c.state(),
                c.absorptionPercent(),
                c.moisturePercent(),
                c.relativeDensity(),
                c.retainedPercent());
    }

    public MixLine from(String source) {
        Constituent c = constituent;
        return copy(
                c.name(),
                Optional.of(source),
                c.state(),
                c.absorptionPercent(),
                c.moisturePercent(),
                c.relativeDensity(),
                c.retainedPercent());
    }

    public MixLine in(MoistureState state) {
        Constituent c = constituent;
        return copy(
                c.name(),
                c.sourceId(),
                state,
                c.absorptionPercent(),
                c.moisturePercent(),
                c.relativeDensity(),
                c.retainedPercent());
    }

    public MixLine absorbing(String percent) {
        Constituent c = constituent;
        return copy(
                c.name(),
                c.sourceId(),
                c.state(),
                Optional.of(new BigDecimal(percent)),
                c.moisturePercent(),
                c.relativeDensity(),
                c.retainedPercent());
    }

    public MixLine moist(String percent) {
        Constituent c = constituent;
        return copy(
                c.name(),
                c.sourceId(),
                c.state(),
                c.absorptionPercent(),
                Optional.of(new BigDecimal(percent)),
                c.relativeDensity(),
                c.retainedPercent());
    }

    public MixLine dense(String relativeDensity) {
        Constituent c = constituent;
        return copy(
                c.name(),
                c.sourceId(),
                c.state(),
                c.absorptionPercent(),
                c.moisturePercent(),
                Optional.of(new BigDecimal(relativeDensity)),
                c.retainedPercent());
    }

    public MixLine retained(String percent) {
        Constituent c = constituent;
        return copy(
                c.name(),
                c.sourceId(),
                c.state(),
                c.absorptionPercent(),
                c.moisturePercent(),
                c.relativeDensity(),
                new BigDecimal(percent));
    }

    private MixLine copy(
            String name,
            Optional<String> source,
            MoistureState state,
            Optional<BigDecimal> absorption,
            Optional<BigDecimal> moisture,
            Optional<BigDecimal> relativeDensity,
            BigDecimal retained) {
        return new MixLine(new Constituent(
                name,
                constituent.role(),
                source,
                constituent.mass(),
                state,
                absorption,
                moisture,
                relativeDensity,
                retained));
    }

    public static Batch stated(String volume, String air, MixLine... lines) {
        return batch(new BatchVolume.Stated(volume(volume)), air, lines);
    }

    public static Batch fromConstituents(String air, MixLine... lines) {
        return batch(new BatchVolume.FromConstituents(), air, lines);
    }

    public static Batch measured(String density, String air, MixLine... lines) {
        return batch(new BatchVolume.FromDensity(density(density)), air, lines);
    }

    private static Batch batch(BatchVolume volume, String air, MixLine... lines) {
        return new Batch(Arrays.stream(lines).map(MixLine::constituent).toList(), volume, new BigDecimal(air), false);
    }
}
