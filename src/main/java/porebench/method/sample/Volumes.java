package porebench.method.sample;

import java.util.Comparator;
import java.util.List;
import porebench.method.Problem;
import porebench.quantity.Volume;

/**
 * The volume of concrete that a batch's masses stand for, and whether the stated volume can be true.
 *
 * <p>Absolute volumes take relative densities over water at 1000 kg/m3. The water of the mix design is net mixing water; the
 * free water of a mass stated as stocked is counted to it. Source: ASTM C138 for the yield (recalled); the absolute volume
 * method of ACI 211.1 (recalled).
 */
final class Volumes {
    /** A stated volume further from the constituents' own than this, in %, is a doubt: common practice, no source. */
    private static final double STATED_WITHIN_PERCENT = 2;

    private Volumes() {}

    /** Returns B, or B' for a wet-sieved batch; a volume that does not fit is added to the problems. */
    static Volume concrete(Batch batch, List<Problem> problems) {
        double airFree = airFree(batch, false);
        double solidShare = 1 - batch.targetAirPercent().doubleValue() / 100;
        checkRetained(batch, problems);
        if (batch.wetSieved()) {
            checkStated(batch, airFree, Double.NaN, problems);
            return new Volume(airFree(batch, true) / solidShare);
        }
        double computed = airFree / solidShare;
        checkStated(batch, airFree, computed, problems);
        return stated(batch, computed);
    }

    private static Volume stated(Batch batch, double computed) {
        if (batch.volume() instanceof BatchVolume.Stated stated) {
            return stated.volume().value();
        }
        if (batch.volume() instanceof BatchVolume.FromDensity measured) {
            return new Volume(totalKilograms(batch) / measured.density().value().kilogramsPerCubicMetre());
        }
        return new Volume(computed);
    }

    private static double totalKilograms(Batch batch) {
        return batch.constituents().stream()
                .mapToDouble(c -> c.mass().value().kilograms())
                .sum();
    }

    private static double airFree(Batch batch, boolean passingOnly) {
        double sum = 0;
        for (Constituent constituent : batch.constituents()) {
            Materials material = new Materials(constituent);
            double freeWater = constituent.role().isAggregate()
                    ? material.freeWaterInBatchKilograms() / Materials.WATER_KILOGRAMS_PER_CUBIC_METRE
                    : 0;
            sum += material.absoluteCubicMetres() * (passingOnly ? material.passingShare() : 1) + freeWater;
        }
        return sum;
    }

    private static void checkStated(Batch batch, double airFree, double computed, List<Problem> problems) {
        if (batch.volume() instanceof BatchVolume.FromConstituents || Double.isNaN(airFree)) {
            return;
        }
        double stated = stated(batch, computed).cubicMetres();
        if (airFree > stated) {
            problems.add(Problem.error("batchVolume", "mix.volumes-do-not-fit", airFree, stated, largest(batch)));
            return;
        }
        double offPercent = 100 * (stated - computed) / computed;
        if (Math.abs(offPercent) > STATED_WITHIN_PERCENT) {
            problems.add(Problem.warning(
                    "batchVolume", "mix.volume-far-from-constituents", stated, computed, Math.abs(offPercent)));
        }
    }

    private static String largest(Batch batch) {
        return batch.constituents().stream()
                .max(Comparator.comparingDouble(c -> new Materials(c).absoluteCubicMetres()))
                .map(Constituent::name)
                .orElse("");
    }

    private static void checkRetained(Batch batch, List<Problem> problems) {
        boolean anyRetained =
                batch.constituents().stream().anyMatch(c -> c.retainedPercent().signum() > 0);
        if (batch.wetSieved() && !anyRetained) {
            problems.add(Problem.warning("wetSieved", "mix.nothing-to-sieve"));
        }
        if (!batch.wetSieved() && anyRetained) {
            problems.add(Problem.warning("wetSieved", "mix.consider-wet-sieving"));
        }
    }
}
