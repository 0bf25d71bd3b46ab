package porebench.statistics.summary;

import java.util.Collection;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.distribution.ChiSquare;
import porebench.statistics.distribution.StudentT;

/**
 * The standard deviation that several sets of repeat values share, whatever the mean of each.
 *
 * <p>s^2 = sum (n(i) - 1) s(i)^2 / sum (n(i) - 1). A set of one value has no scatter and counts for nothing. That the sets
 * scatter alike is taken for granted, not tested.
 *
 * <p>Source: ISO 5725-2:1994, 7.4.4 (repeatability variance); the interval: NIST/SEMATECH e-Handbook of Statistical Methods,
 * 7.2.3.1; both recalled. Differences from the source: none.
 *
 * @param sets how many sets have at least two values, at least 1
 * @param degreesOfFreedom of all of them together, at least 1
 * @param standardDeviation the pooled standard deviation, in the unit of the values; 0 when each set's values are equal
 */
public record PooledDeviation(int sets, int degreesOfFreedom, double standardDeviation) {
    public PooledDeviation {
        Require.atLeast("sets", sets, 1);
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, sets);
        Require.atLeastZero("standardDeviation", standardDeviation);
    }

    /**
     * Pools the scatter of some sets.
     *
     * @param sets each set's values, summed up
     * @return the pooled deviation; empty when no set has two values
     */
    public static Optional<PooledDeviation> of(Collection<Summary> sets) {
        int count = 0;
        int degrees = 0;
        double squares = 0;
        for (Summary set : sets) {
            if (set.count() > 1) {
                double s = set.standardDeviation().orElseThrow();
                count++;
                degrees += set.count() - 1;
                squares += s * s * (set.count() - 1);
            }
        }
        return count == 0
                ? Optional.empty()
                : Optional.of(new PooledDeviation(count, degrees, Math.sqrt(squares / degrees)));
    }

    /** Returns this pooled with another one. */
    public PooledDeviation with(PooledDeviation other) {
        int degrees = degreesOfFreedom + other.degreesOfFreedom;
        double squares = standardDeviation * standardDeviation * degreesOfFreedom
                + other.standardDeviation * other.standardDeviation * other.degreesOfFreedom;
        return new PooledDeviation(sets + other.sets, degrees, Math.sqrt(squares / degrees));
    }

    /**
     * An interval that holds the true standard deviation.
     *
     * @param low its lower end, in the unit of the values
     * @param high its upper end, in the unit of the values
     */
    public record Interval(double low, double high) {
        public Interval {
            Require.within("low", low, 0, high);
        }
    }

    /**
     * Returns the interval that fewer degrees of freedom make, as where the sets do not scatter alike.
     *
     * @param confidence greater than 0 and less than 1; 0.95 for 95 %
     * @param degrees of freedom, greater than 0
     * @throws IllegalArgumentException if the confidence is not between 0 and 1
     */
    public Interval interval(double confidence, double degrees) {
        StudentT.requireProbability("confidence", confidence);
        ChiSquare chiSquare = new ChiSquare(degrees);
        return new Interval(
                standardDeviation * Math.sqrt(degrees / chiSquare.quantile((1 + confidence) / 2)),
                standardDeviation * Math.sqrt(degrees / chiSquare.quantile((1 - confidence) / 2)));
    }
}
