package porebench.method.budget;

import java.util.List;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.variance.VariancePrior;

/**
 * How trials of a determination scatter, and how well that is known.
 *
 * <p>Two or three trials tell little of their scatter: theirs is drawn towards that of the laboratory's other determinations,
 * s^2 = (d0 s0^2 + d s(own)^2) / (d0 + d), with s0^2 the pooled variance of those and d0 the degrees of freedom by which it counts. No
 * variance counts for less than the division of the scale makes by itself, q^2 / 12, twice that on Type A, which reads twice: equal
 * trials are no proof of a scatter of 0.
 *
 * <p>Source: G. K. Smyth (2004), section 6.2, as {@link VariancePrior} has it; recalled. Differences from the source: d0 is never
 * more than {@link #MOST_PRIOR_DEGREES}, and s0^2 is the pooled variance, which is the larger. With d0 as estimated the
 * uncertainty covered 91 to 94 % where mixes differ, and 85 % for a mix that scatters twice as much as the others; with this it
 * covers 95 % of those too, as the coverage tests show. The laboratory is asked from {@link #FEWEST_SETS} other determinations on.
 *
 * @param standardDeviationPercent of a single trial, in % air, greater than 0
 * @param degreesOfFreedom at least 0.5; infinite when it is taken as known
 * @param origin where it comes from
 */
public record TrialScatter(double standardDeviationPercent, double degreesOfFreedom, Origin origin) {
    /** The most degrees of freedom by which the laboratory's scatter counts beside that of the trials themselves. */
    public static final double MOST_PRIOR_DEGREES = 2;

    /** The other determinations that the laboratory should have at least. */
    public static final int FEWEST_SETS = 5;

    private static final int FEWEST_DEGREES = 10;
    private static final double LEAST_DEGREES = 0.5;

    public TrialScatter {
        Require.positive("standardDeviationPercent", standardDeviationPercent);
    }

    /**
     * Returns the scatter to reckon with.
     *
     * @param trials the factors of the trials, in % air
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param usualPercent the profile's standard deviation of a trial, in % air: stands in for a single trial of a laboratory
     *     that has no other determinations
     * @param laboratory how each of the laboratory's other determinations on this type of meter scatters
     */
    public static TrialScatter of(
            Summary trials,
            MeterType type,
            double divisionPercent,
            double usualPercent,
            List<PooledDeviation> laboratory) {
        double floor = (type == MeterType.A ? 2 : 1)
                * Require.positive("divisionPercent", divisionPercent)
                * divisionPercent
                / 12;
        int degrees = trials.count() - 1;
        double own = degrees == 0
                ? 0
                : Math.max(floor, square(trials.standardDeviation().orElseThrow()));
        int ofOthers =
                laboratory.stream().mapToInt(PooledDeviation::degreesOfFreedom).sum();
        if (laboratory.size() >= FEWEST_SETS && ofOthers >= FEWEST_DEGREES) {
            double pooled = laboratory.stream()
                            .mapToDouble(
                                    set -> set.degreesOfFreedom() * Math.max(floor, square(set.standardDeviation())))
                            .sum()
                    / ofOthers;
            double estimated = VariancePrior.of(laboratory, floor).orElseThrow().degreesOfFreedom();
            double prior = Math.max(LEAST_DEGREES, Math.min(MOST_PRIOR_DEGREES, estimated));
            double variance = (prior * pooled + degrees * own) / (prior + degrees);
            return new TrialScatter(Math.sqrt(variance), prior + degrees, Origin.LABORATORY_SCATTER);
        }
        return degrees == 0
                ? new TrialScatter(usualPercent, Double.POSITIVE_INFINITY, Origin.PROFILE)
                : new TrialScatter(Math.sqrt(own), degrees, Origin.SCATTER);
    }

    private static double square(double number) {
        return number * number;
    }
}
