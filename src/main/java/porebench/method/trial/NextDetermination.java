package porebench.method.trial;

import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * Where the mean of the next determination of a mix is to be expected, made of the same and of about as many trials.
 *
 * <p>Mean +- t s sqrt(1 + 1/k) over the means of k determinations, whatever makes them differ: trials, days, people, meters, the
 * aggregate. s is no less than what the division of the scale makes by itself.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.1 and 6.5 (prediction of a further value; recalled). Differences
 * from the source: the share of the division is this program's own; docs/variability.md shows by simulation what the interval is
 * worth.
 *
 * @param determinations how many it rests on, at least {@link #FEWEST}
 * @param lowPercent the lower end, in % air
 * @param highPercent the upper end, in % air
 */
public record NextDetermination(int determinations, double lowPercent, double highPercent) {
    /** The fewest determinations that such an interval is made of. Two would leave it wider than anybody can use. */
    public static final int FEWEST = 3;

    /** How many of 100 further determinations lie within. */
    public static final double CONFIDENCE = 0.95;

    public NextDetermination {
        Require.atLeast("determinations", determinations, FEWEST);
        Require.within("lowPercent", lowPercent, Double.NEGATIVE_INFINITY, highPercent);
    }

    /**
     * Returns where the next one is to be expected.
     *
     * @param means of the determinations made so far, in % air
     * @param type the type of meter of all of them
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @return empty when there are fewer than {@link #FEWEST}
     */
    public static Optional<NextDetermination> of(List<Double> means, MeterType type, double divisionPercent) {
        if (means.size() < FEWEST) {
            return Optional.empty();
        }
        Summary seen =
                Summary.of(means.stream().mapToDouble(Double::doubleValue).toArray());
        double s = Math.max(seen.standardDeviation().orElseThrow(), Scatter.ofTheDial(type, divisionPercent));
        double half = new StudentT(seen.count() - 1).coverageFactor(CONFIDENCE) * s * Math.sqrt(1 + 1.0 / seen.count());
        return Optional.of(new NextDetermination(seen.count(), seen.mean() - half, seen.mean() + half));
    }
}
