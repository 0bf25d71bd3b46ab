package porebench.method.trial;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.method.simulate.HonestTrials;
import porebench.statistics.PooledDeviation;
import porebench.statistics.Summary;

/**
 * Counts how often the stop rule is right about simulated trials.
 *
 * <p>The scatter is that of a trial before its reading is rounded to 0.1 %. A laboratory that is known has eight other
 * determinations of four trials, 24 degrees of freedom. Trials are made one at a time from the third on until the rule says
 * that they are enough; the mean should then lie within the half-width of 0.05 % of the true factor.
 *
 * @param runs how many determinations were begun
 * @param stopped how many came to an end within 30 trials
 * @param within how many of those had their mean within the half-width of the true factor
 * @param trials how many trials those took in all
 * @param early how many of those ended before the number needed if the true scatter were known
 * @param late how many of those ended after it
 */
record StopRates(int runs, int stopped, int within, long trials, int early, int late) {
    private static final Profile PROFILE = Profiles.standard();
    private static final int FIRST = 3;
    private static final double WANTED = 0.05;

    static StopRates count(MeterType type, double scatter, boolean known, int runs, long seed) {
        HonestTrials stock = new HonestTrials(type, scatter, runs * (32 + StopRule.MOST_TRIALS), seed);
        int needed = needed(type, scatter);
        int stopped = 0;
        int within = 0;
        long trials = 0;
        int early = 0;
        int late = 0;
        for (int run = 0; run < runs; run++) {
            Optional<PooledDeviation> laboratory = known
                    ? PooledDeviation.of(
                            stock.determinations(8, 4).stream().map(Summary::of).toList())
                    : Optional.empty();
            Optional<Summary> enough = untilEnough(type, stock.next(StopRule.MOST_TRIALS), laboratory);
            if (enough.isPresent()) {
                Summary made = enough.get();
                stopped++;
                within += Math.abs(made.mean() - HonestTrials.TRUE_FACTOR) <= WANTED + 1e-9 ? 1 : 0;
                trials += made.count();
                early += made.count() < needed ? 1 : 0;
                late += made.count() > needed ? 1 : 0;
            }
        }
        return new StopRates(runs, stopped, within, trials, early, late);
    }

    private static int needed(MeterType type, double scatter) {
        double sigma = Math.hypot(scatter, Scatter.ofTheDial(type, HonestTrials.DIVISION));
        return Math.max(FIRST, (int) Math.ceil(Math.pow(1.959964 * sigma / WANTED, 2)));
    }

    private static Optional<Summary> untilEnough(
            MeterType type, double[] factors, Optional<PooledDeviation> laboratory) {
        for (int count = FIRST; count <= factors.length; count++) {
            double[] made = Arrays.copyOf(factors, count);
            StopRule stop = StopRule.of(made, type, HonestTrials.DIVISION, PROFILE, laboratory)
                    .orElseThrow();
            if (stop.verdict() == StopRule.Verdict.ENOUGH) {
                return Optional.of(Summary.of(made));
            }
        }
        return Optional.empty();
    }

    double withinShare() {
        return (double) within / stopped;
    }

    /** Prints the table of the documentation; the argument is how many determinations in each case. */
    public static void main(String[] arguments) {
        int runs = Integer.parseInt(arguments[0]);
        for (MeterType type : MeterType.values()) {
            for (double scatter : new double[] {0.025, 0.05, 0.075, 0.1}) {
                for (boolean known : new boolean[] {true, false}) {
                    StopRates found = count(type, scatter, known, runs, 1);
                    System.out.printf(
                            Locale.ROOT,
                            "%s %.3f needed %2d known %-5s stopped %5.1f mean %4.1f within %5.1f early %4.1f late %5.1f%n",
                            type,
                            scatter,
                            needed(type, scatter),
                            known,
                            100.0 * found.stopped() / runs,
                            (double) found.trials() / found.stopped(),
                            100 * found.withinShare(),
                            100.0 * found.early() / found.stopped(),
                            100.0 * found.late() / found.stopped());
                }
            }
        }
    }
}
