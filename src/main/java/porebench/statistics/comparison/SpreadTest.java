package porebench.statistics.comparison;

import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.distribution.FRatio;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * The test of whether some values scatter more than the sets before them did.
 *
 * <p>The statistic is s^2 / s(pooled)^2, to be compared with the F distribution of n - 1 and the pooled degrees of freedom;
 * p is that of the upper tail, because scatter that is smaller than usual is no cause for alarm.
 *
 * <p>{@link #judge} is for readings of a divided scale. Equal values and values one division apart are what the division
 * alone makes of a scatter it cannot show: then no probability is given. For the same reason a pooled deviation below that of
 * the division counts as the division's.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.9 (F test); Abramowitz and Stegun, Handbook of
 * Mathematical Functions (1964), 26.6.2 (its tail); recalled. Differences from the source: one-sided, and what is said of the
 * division.
 *
 * @param degreesOfFreedom of the values, at least 1
 * @param pooledDegreesOfFreedom of the sets before them, at least 1
 * @param statistic the ratio of the variances, a plain number
 * @param p the probability of so large a ratio when both scatter alike
 */
public record SpreadTest(int degreesOfFreedom, int pooledDegreesOfFreedom, double statistic, double p) {

    public SpreadTest {
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 1);
        Require.atLeast("pooledDegreesOfFreedom", pooledDegreesOfFreedom, 1);
        Require.atLeastZero("statistic", statistic);
        Require.within("p", p, 0, 1);
    }

    /**
     * Tests values read on a divided scale against the sets before them.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param leastDeviation the standard deviation that the division alone makes, in the unit of the values; 0 for none
     * @param pooled the sets before, the values not among them
     * @param values at least one, each finite
     * @return the result, or why it would mean nothing
     * @throws IllegalArgumentException if an argument is outside these bounds, or neither the pooled deviation nor the least
     *     one is greater than 0
     */
    public static Judged<SpreadTest> judge(
            double division, double leastDeviation, PooledDeviation pooled, double... values) {
        Require.atLeastZero("division", division);
        Require.atLeastZero("leastDeviation", leastDeviation);
        double usual = Require.positive("usual deviation", Math.max(leastDeviation, pooled.standardDeviation()));
        Summary own = Summary.of(values);
        if (own.count() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        if (own.range() == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        double ratio = own.standardDeviation().orElseThrow() / usual;
        if (own.range() <= Slack.over(division)) {
            return Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, ratio * ratio);
        }
        return new Judged.Meaningful<>(of(own.count() - 1, pooled.degreesOfFreedom(), ratio * ratio));
    }

    /** Returns the test of a ratio of variances by its degrees of freedom. */
    public static SpreadTest of(int degreesOfFreedom, int pooledDegreesOfFreedom, double statistic) {
        double p = new FRatio(degreesOfFreedom, pooledDegreesOfFreedom).upperTail(statistic);
        return new SpreadTest(degreesOfFreedom, pooledDegreesOfFreedom, statistic, p);
    }
}
