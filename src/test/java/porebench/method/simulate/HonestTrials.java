package porebench.method.simulate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.method.trial.Expected;
import porebench.method.trial.Readings;
import porebench.method.trial.TrialFactor;
import porebench.method.trial.Withdrawal;

/**
 * Factors of faultless simulated trials, one after another: G is 0.40 %, the scale is divided to 0.1 %, half the variance of
 * the scatter is in the sample and half in the reading, before it is written down as the nearest division.
 */
public final class HonestTrials {
    public static final double TRUE_FACTOR = 0.40;
    public static final double DIVISION = 0.1;

    private static final Profile PROFILE = Profiles.standard();

    private final double[] factors;
    private int next;

    /**
     * Makes a stock of trials.
     *
     * @param type the type of meter
     * @param scatterPercent the standard deviation of a trial before its reading is rounded, in % air
     * @param count how many to make
     * @param seed of the simulated bench
     */
    public HonestTrials(MeterType type, double scatterPercent, int count, long seed) {
        double part = scatterPercent / Math.sqrt(2);
        Bench.Gauge usual = Bench.Gauge.of(type);
        Bench bench = Bench.of(type, TRUE_FACTOR)
                .withOperatorScatter(part)
                .with(new Bench.Gauge(type, usual.bowl(), new BigDecimal("0.1"), part, 1));
        factors = bench.trials(count, seed).stream()
                .mapToDouble(trial -> judged(trial, PROFILE).factorPercent().orElseThrow())
                .toArray();
    }

    /** Judges a simulated trial as if it had been typed. */
    static TrialFactor judged(SimulatedTrial trial, Profile profile) {
        Readings readings = new Readings(
                trial.meterType(),
                trial.bowl(),
                Optional.of(trial.fine()),
                Optional.of(trial.coarse()),
                Optional.of(trial.soakMinutes()),
                Optional.of(trial.waterCelsius()),
                trial.withdrawnMillilitres().map(water -> new Withdrawal(water, Withdrawal.Unit.MILLILITRE)),
                trial.gaugePercent(),
                trial.h1Percent(),
                trial.h2Percent(),
                false);
        return TrialFactor.of(readings, Expected.UNKNOWN, profile);
    }

    /** Returns the next factors of the stock, in % air. */
    public double[] next(int count) {
        double[] taken = java.util.Arrays.copyOfRange(factors, next, next + count);
        next += count;
        return taken;
    }

    /** Returns the next determinations of the stock. */
    public List<double[]> determinations(int count, int trials) {
        return java.util.stream.IntStream.range(0, count)
                .mapToObj(any -> next(trials))
                .toList();
    }

    /** Returns whether so many factors are left. */
    public boolean has(int count) {
        return next + count <= factors.length;
    }
}
