package porebench.method.sample;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.quantity.Slack;
import porebench.quantity.Volume;

/**
 * The volume of concrete that a batch's masses stand for, and whether the stated volume can be true.
 *
 * <p>Absolute volumes take relative densities over water at 1000 kg/m3. The water of the mix design is net mixing water: it
 * does not hold what dry aggregate takes up, and the free water of a mass stated as stocked is counted to it. Source:
 * ASTM C138 for the yield (recalled); the absolute volume method of ACI 211.1 (recalled).
 */
final class Volumes {
    /** A stated volume further from the constituents' own than this, in %, is a doubt: common practice, no source. */
    private static final double STATED_WITHIN_PERCENT = 2;

    private final Batch batch;
    private final List<Problem> problems;

    private Volumes(Batch batch, List<Problem> problems) {
        this.batch = batch;
        this.problems = problems;
    }

    /** Returns B, or B' for a wet-sieved batch; a volume that does not fit is added to the problems. */
    static Volume concrete(Batch batch, List<Problem> problems) {
        return new Volumes(batch, problems).concrete();
    }

    private Volume concrete() {
        double whole = airFree(false);
        double passing = airFree(true);
        double withAir = 1 / (1 - batch.targetAirPercent().doubleValue() / 100);
        // The target air is that of the concrete in the bowl: of what passes when it is sieved.
        double computed = batch.wetSieved() ? whole - passing + passing * withAir : whole * withAir;
        checkRetained();
        checkStated(whole, computed);
        checkDensity(computed);
        return new Volume(batch.wetSieved() ? passing * withAir : stated(computed));
    }

    /** Returns the volume of the batch as the mix design gives it, in m3. */
    private double stated(double computed) {
        if (batch.volume() instanceof BatchVolume.Stated stated) {
            return stated.volume().value().cubicMetres();
        }
        if (batch.volume() instanceof BatchVolume.FromDensity measured) {
            return totalKilograms() / measured.density().value().kilogramsPerCubicMetre();
        }
        return computed;
    }

    private double totalKilograms() {
        return batch.constituents().stream()
                .mapToDouble(c -> new Materials(c).batchKilograms())
                .sum();
    }

    /** Returns the volume of all constituents in m3, or of what passes 37.5 mm; NaN when a figure is not known. */
    private double airFree(boolean passingOnly) {
        return batch.constituents().stream()
                .mapToDouble(constituent -> airFree(constituent, passingOnly))
                .sum();
    }

    private static double airFree(Constituent constituent, boolean passingOnly) {
        Materials material = new Materials(constituent);
        double freeWater = material.freeWaterInBatchKilograms() / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE;
        return material.absoluteCubicMetres() * (passingOnly ? material.passingShare() : 1) + freeWater;
    }

    private void checkStated(double whole, double computed) {
        if (batch.volume() instanceof BatchVolume.FromConstituents) {
            return;
        }
        double stated = stated(computed);
        // What is known must fit even when a relative density is missing.
        double known = batch.constituents().stream()
                .mapToDouble(constituent -> airFree(constituent, false))
                .filter(Double::isFinite)
                .sum();
        if (known > Slack.over(stated)) {
            problems.add(doesNotFit(known, stated));
        } else if (Double.isFinite(whole) && isWholeConcrete()) {
            double offPercent = 100 * Math.abs(stated - computed) / computed;
            if (Slack.isAbove(offPercent, STATED_WITHIN_PERCENT)) {
                problems.add(Problem.warning(
                        "batchVolume", "mix.volume-far-from-constituents", stated, computed, offPercent));
            }
        }
    }

    /** Returns whether the design lists more than aggregates; without cement or water it does not fill the volume it states. */
    private boolean isWholeConcrete() {
        return Stream.of(Role.CEMENT, Role.WATER)
                .allMatch(role -> batch.constituents().stream().anyMatch(c -> c.role() == role));
    }

    private void checkDensity(double computed) {
        double density = typedKilograms() / stated(computed);
        boolean light = density < Limit.USUAL_CONCRETE_DENSITY.lowInclusive().doubleValue();
        if (Double.isNaN(density) || light && !isWholeConcrete() || Problem.anyError(problems)) {
            return;
        }
        String field = batch.volume() instanceof BatchVolume.FromDensity ? "density" : "batchVolume";
        if (!Limit.CONCRETE_DENSITY.holds(density)) {
            problems.add(Problem.error(
                    field,
                    "mix.concrete-impossible",
                    density,
                    Limit.CONCRETE_DENSITY.lowInclusive(),
                    Limit.CONCRETE_DENSITY.highInclusive()));
        } else if (!Limit.USUAL_CONCRETE_DENSITY.holds(density)) {
            problems.add(Problem.warning(
                    field,
                    "mix.concrete-unusual",
                    density,
                    Limit.USUAL_CONCRETE_DENSITY.lowInclusive(),
                    Limit.USUAL_CONCRETE_DENSITY.highInclusive()));
        }
    }

    private double typedKilograms() {
        return batch.constituents().stream()
                .mapToDouble(c -> c.mass().value().kilograms())
                .sum();
    }

    private Problem doesNotFit(double airFree, double stated) {
        String largest = batch.constituents().stream()
                .filter(c -> Double.isFinite(airFree(c, false)))
                .max(Comparator.comparingDouble(c -> airFree(c, false)))
                .map(Constituent::name)
                .orElseThrow();
        if (batch.volume() instanceof BatchVolume.FromDensity) {
            double kilograms = totalKilograms();
            return Problem.error(
                    "density", "mix.density-above-air-free", kilograms / stated, kilograms / airFree, largest);
        }
        return Problem.error("batchVolume", "mix.volumes-do-not-fit", airFree, stated, largest);
    }

    private void checkRetained() {
        boolean anyRetained = batch.constituents().stream()
                .anyMatch(c -> c.role() == Role.COARSE && c.retainedPercent().signum() > 0);
        if (batch.wetSieved() && !anyRetained) {
            problems.add(Problem.warning("wetSieved", "mix.nothing-to-sieve"));
        }
        if (!batch.wetSieved() && anyRetained) {
            problems.add(Problem.warning("wetSieved", "mix.consider-wet-sieving"));
        }
    }
}
