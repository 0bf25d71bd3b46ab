package porebench.method.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import porebench.method.Answer;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.Severity;
import porebench.quantity.Density;

/**
 * The density that fresh concrete of a batch would have without air.
 *
 * <p>T = M / V in kg/m3, with M the mass of all constituents in kg, aggregate with the water in its pores, and V their absolute
 * volumes in m3. The concrete in the bowl counts: of a wet-sieved batch what passes 37.5 mm, with all paste.
 *
 * <p>Source: ASTM C138/C138M, theoretical density on an air-free basis (recalled). Differences from the source: the wet-sieved
 * batch (derived); relative densities are over water at 1000 kg/m3.
 */
public final class AirFreeDensity {
    private AirFreeDensity() {}

    /**
     * Computes it.
     *
     * @return the density in kg/m3, or every reason why it is not known: a relative density or absorption that is missing, what
     *     cannot be right about the batch, or a batch without cement or water, which is not the whole concrete
     */
    public static Answer<Density> of(Batch batch) {
        // All volumes are needed, wherever the volume of the batch itself comes from.
        Batch absolute = new Batch(
                batch.constituents(), new BatchVolume.FromConstituents(), batch.targetAirPercent(), batch.wetSieved());
        List<Problem> problems = new ArrayList<>(BatchCheck.problems(absolute).stream()
                .filter(problem -> problem.severity() == Severity.ERROR)
                .toList());
        for (int row = 0; row < batch.constituents().size(); row++) {
            Constituent one = batch.constituents().get(row);
            if (one.role().isAggregate()
                    && one.state() == MoistureState.OVEN_DRY
                    && one.moisturePercent().isPresent()
                    && one.absorptionPercent().isEmpty()) {
                problems.add(Problem.error(
                        "constituents." + row + ".absorption", "mix.absorption-missing-for-volume", one.name()));
            }
        }
        if (Stream.of(Role.CEMENT, Role.WATER)
                .anyMatch(role -> batch.constituents().stream()
                        .noneMatch(
                                one -> one.role() == role && one.mass().number().signum() > 0))) {
            problems.add(Problem.error("constituents", "hold.not-whole"));
        }
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        double mass = 0;
        double volume = 0;
        for (Constituent one : batch.constituents()) {
            Materials material = new Materials(one);
            double free = material.freeWaterInBatchKilograms();
            mass += mass(one, batch.wetSieved());
            volume += material.absoluteCubicMetres() * (batch.wetSieved() ? material.passingShare() : 1)
                    + free / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE;
        }
        return Answer.of(new Density(mass / volume), List.of());
    }

    /** Returns what a constituent brings into the concrete in kg, the free water of a stock mass all of it. */
    private static double mass(Constituent one, boolean passingOnly) {
        Materials material = new Materials(one);
        double free = material.freeWaterInBatchKilograms();
        return (material.batchKilograms() - free) * (passingOnly ? material.passingShare() : 1) + free;
    }
}
