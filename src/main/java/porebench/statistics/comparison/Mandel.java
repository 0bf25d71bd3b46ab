package porebench.statistics.comparison;

import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.outlier.CochranTest;
import porebench.statistics.outlier.Suspicion;
import porebench.statistics.outlier.VarianceShare;

/**
 * How consistent one laboratory is with the others: Mandel's h, between laboratories, or k, within them.
 *
 * <p>h is the laboratory's mean less that of all means, in standard deviations of the means; k is its standard deviation in
 * units of the root mean square of all. Of p laboratories h cannot exceed (p - 1) / sqrt(p) and k cannot exceed sqrt(p).
 *
 * <p>On a divided scale the standard deviations of the other laboratories count as at least what the division may hide, as
 * in {@link CochranTest}: else equal readings of one make an outlier of another.
 *
 * <p>Source: ISO 5725-2:1994, 7.3.1 and 8.3; ASTM E691; recalled. Differences from the source: critical values are computed,
 * those of k for the number of results of the laboratory in question.
 *
 * @param statistic h of either sign, or k at least 0
 * @param critical5 the 5 % critical value of its size
 * @param critical1 the 1 % critical value of its size
 */
public record Mandel(double statistic, double critical5, double critical1) {
    public Mandel {
        Require.finite("statistic", statistic);
        Require.positive("critical5", critical5);
        Require.positive("critical1", critical1);
    }

    /** What a critical value of k depends on. */
    private record Asked(int laboratories, int results, double significance) {}

    /** Critical values found so far: a comparison of many levels asks for the same few again and again. */
    private static final ConcurrentMap<Asked, Double> FOUND = new ConcurrentHashMap<>();

    private static final int MOST_FOUND = 1000;

    static Mandel h(double statistic, int laboratories) {
        return new Mandel(
                statistic, criticalH(laboratories, Suspicion.STRAGGLING), criticalH(laboratories, Suspicion.OUTLYING));
    }

    static Mandel k(double statistic, int laboratories, int results) {
        return new Mandel(
                statistic,
                criticalK(laboratories, results, Suspicion.STRAGGLING),
                criticalK(laboratories, results, Suspicion.OUTLYING));
    }

    /** Returns what the laboratory is to be called. */
    public Suspicion suspicion() {
        return Suspicion.of(Math.abs(statistic), critical5, critical1);
    }

    /**
     * Returns the size that h of one consistent laboratory, named beforehand, exceeds with a probability.
     *
     * @param laboratories at least 3; of two, h is 0.7071 whatever they find
     * @param significance of both signs together, greater than 0 and less than 1
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double criticalH(int laboratories, double significance) {
        int p = Require.atLeast("laboratories", laboratories, 3);
        double t = new StudentT(p - 2).upperPoint(significance / 2);
        return (p - 1) * t / Math.sqrt(p * (t * t + p - 2));
    }

    /**
     * Returns what k of one consistent laboratory, named beforehand, exceeds with a probability.
     *
     * @param laboratories with repeated results, at least 2
     * @param results of the laboratory, at least 2
     * @param significance greater than 0 and less than 1
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double criticalK(int laboratories, int results, double significance) {
        StudentT.requireProbability("significance", significance);
        Asked asked = new Asked(laboratories, results, significance);
        Double known = FOUND.get(asked);
        if (known == null) {
            known = Math.sqrt(laboratories * new VarianceShare(laboratories, results).upperPoint(significance));
            if (FOUND.size() < MOST_FOUND) {
                FOUND.put(asked, known);
            }
        }
        return known;
    }
}
