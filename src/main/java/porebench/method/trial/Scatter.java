package porebench.method.trial;

import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.statistics.PooledDeviation;
import porebench.statistics.StudentT;
import porebench.statistics.Summary;
import porebench.statistics.UncertaintySum;

/**
 * The scatter of trials that a plan reckons with, and where it comes from.
 *
 * <p>The laboratory's own scatter, pooled over its other determinations, is better known than that of a few trials, and does
 * not depend on the luck of the trials at hand: it is taken as soon as the lab book has {@link #FEWEST_DEGREES} degrees of
 * freedom, unless these trials scatter more than it allows. Else the trials' own standard deviation is taken. Neither counts
 * for less than the standard deviation that the division of the scale makes by itself, q / sqrt(12), or the root of 2 times
 * that on Type A, which reads twice: a smaller one cannot be seen.
 *
 * <p>Source: JCGM 100:2008, 4.2.4 (a pooled estimate characterises the procedure) and F.2.2.1 (the division); recalled.
 * Differences from the source: ten degrees of freedom are this program's own choice; s is then known to about 22 %.
 *
 * @param basis where it comes from
 * @param standardDeviationPercent in % air, greater than 0
 * @param degreesOfFreedom of the standard deviation, at least 1
 * @param isOfTheDial whether the division's share is taken because less cannot be seen
 */
public record Scatter(Basis basis, double standardDeviationPercent, int degreesOfFreedom, boolean isOfTheDial) {
    /** The degrees of freedom that the laboratory's pooled scatter should have at least. */
    public static final int FEWEST_DEGREES = 10;

    static final double CONFIDENCE = 0.95;

    /** Where the scatter comes from. */
    public enum Basis {
        /** The laboratory's other determinations. */
        LABORATORY("laboratory"),
        /** These trials alone: the lab book has too few others. */
        OWN("own"),
        /** These trials alone: they scatter more than the laboratory's others do. */
        OWN_WIDER("own-wider");

        private final String symbol;

        Basis(String symbol) {
            this.symbol = symbol;
        }

        /** Returns the word by which data knows it. */
        public String symbol() {
            return symbol;
        }
    }

    public Scatter {
        Require.positive("standardDeviationPercent", standardDeviationPercent);
        Require.atLeast("degreesOfFreedom", degreesOfFreedom, 1);
    }

    /**
     * Returns the scatter to reckon with.
     *
     * @param trials the trials that count
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param check these trials against the laboratory's scatter; empty where it is not known well enough
     * @return the scatter; empty for a single trial when the laboratory's is not known
     */
    static Optional<Scatter> of(
            Summary trials, MeterType type, double divisionPercent, Optional<LaboratoryCheck> check) {
        double least = ofTheDial(type, divisionPercent);
        if (check.isPresent() && check.get().passes()) {
            PooledDeviation pooled = check.get().pooled();
            return Optional.of(of(Basis.LABORATORY, pooled.standardDeviation(), pooled.degreesOfFreedom(), least));
        }
        if (trials.count() < 2) {
            return Optional.empty();
        }
        Basis basis = check.isPresent() ? Basis.OWN_WIDER : Basis.OWN;
        return Optional.of(of(basis, trials.standardDeviation().orElseThrow(), trials.count() - 1, least));
    }

    private static Scatter of(Basis basis, double deviation, int degrees, double least) {
        return new Scatter(basis, Math.max(deviation, least), degrees, deviation < least);
    }

    /**
     * Returns the standard deviation that reading a divided scale makes by itself, in % air.
     *
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     */
    public static double ofTheDial(MeterType type, double divisionPercent) {
        Require.positive("divisionPercent", divisionPercent);
        return UncertaintySum.resolutionUncertainty(divisionPercent) * (type == MeterType.A ? Math.sqrt(2) : 1);
    }

    /**
     * Returns the half-width of the 95 % interval that a mean of n trials has with this scatter, in % air.
     *
     * <p>It is t s / sqrt(n). The trials' own scatter is then known by n - 1 degrees of freedom, the laboratory's by its own.
     *
     * @param n how many trials, at least 1, at least 2 for their own scatter
     */
    public double halfWidthPercent(int n) {
        double t = new StudentT(basis == Basis.LABORATORY ? degreesOfFreedom : n - 1).coverageFactor(CONFIDENCE);
        return t * standardDeviationPercent / Math.sqrt(n);
    }
}
