package porebench.method.trial;

import java.util.Optional;
import porebench.method.MeterType;
import porebench.statistics.Judged;
import porebench.statistics.comparison.SpreadTest;
import porebench.statistics.summary.CriticalRange;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * Trials against the scatter that the laboratory's other determinations had.
 *
 * <p>The range decides, against the studentised range for the degrees of freedom of the pooled deviation; the ratio of the
 * variances is shown beside it and decides nothing, so that one question raises one alarm; the range lets 99 of 100 honest
 * determinations pass, because the profile's repeatability is asked as well.
 *
 * @param pooled the scatter of the other determinations on this type of meter
 * @param range the range of the trials against its limit; empty for a single trial
 * @param spread their standard deviation against the pooled one, or why that would mean nothing
 */
public record LaboratoryCheck(
        PooledDeviation pooled, Optional<CriticalRange.RangeCheck> range, Judged<SpreadTest> spread) {
    /** The confidence of {@link #usual}. */
    public static final double CONFIDENCE = 0.95;

    /** Where every second mix scatters twice as much: ((1 + 4) / 2)^2 / ((1 + 16) / 2) of the degrees of freedom are left. */
    private static final double LEFT_WHERE_MIXES_DIFFER = 25.0 / 34;

    /**
     * Checks some trials.
     *
     * @param factors their factors, in % air, at least one
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param laboratory the scatter of the laboratory's other determinations, if it has any
     * @return the check; empty when the pooled deviation has fewer than {@link Scatter#FEWEST_DEGREES} degrees of freedom
     */
    public static Optional<LaboratoryCheck> of(
            double[] factors, MeterType type, double divisionPercent, Optional<PooledDeviation> laboratory) {
        double least = Scatter.ofTheDial(type, divisionPercent);
        return laboratory
                .filter(pooled -> pooled.degreesOfFreedom() >= Scatter.FEWEST_DEGREES)
                .map(pooled -> new LaboratoryCheck(
                        pooled,
                        range(factors, pooled, divisionPercent, least),
                        SpreadTest.judge(divisionPercent, least, pooled, factors)));
    }

    private static Optional<CriticalRange.RangeCheck> range(
            double[] factors, PooledDeviation pooled, double division, double least) {
        return factors.length < 2
                ? Optional.empty()
                : Optional.of(
                        CriticalRange.check(Summary.of(factors).range(), factors.length, pooled, division, least));
    }

    /**
     * Returns where the scatter of the laboratory's trials lies, wide enough also where every second mix scatters twice as much
     * as the others; it is then the root of the mean of their variances.
     *
     * <p>Source: Satterthwaite, Biometrics Bulletin 2 (1946), recalled; that mixes differ so much is taken for granted.
     */
    public PooledDeviation.Interval usual() {
        return pooled.interval(CONFIDENCE, LEFT_WHERE_MIXES_DIFFER * pooled.degreesOfFreedom());
    }

    /** Returns whether the trials scatter no more than the others did; a single trial does not scatter. */
    public boolean passes() {
        return range.map(CriticalRange.RangeCheck::passes).orElse(true);
    }
}
