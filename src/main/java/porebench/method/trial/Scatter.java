package porebench.method.trial;

import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.UncertaintySum;
import porebench.statistics.variance.VariancePrior;

/**
 * The scatter of trials that a plan reckons with, and where it comes from.
 *
 * <p>The mix's own variance, pooled over these trials and its other determinations, is drawn towards what the other mixes have
 * in common ({@link VariancePrior}), as soon as there are {@link #FEWEST_MIXES} of them. The laboratory's part counts for no
 * more than {@link #MOST_TRUST} degrees of freedom, however alike the others are, and for no less than one. Where the own
 * variance is the wider one it is taken as it is: this mix may be the one that scatters more than all others. Neither counts
 * for less than the standard deviation that the division of the scale makes by itself, q / sqrt(12), or the root of 2 times
 * that on Type A, which reads twice: a smaller one cannot be seen.
 *
 * <p>Source: for the drawing {@link VariancePrior}; JCGM 100:2008, F.2.2.1 (the division), recalled. Differences from the
 * source: the two bounds on the trust are this program's own; docs/variability.md shows by simulation what they are worth.
 *
 * @param basis where it comes from
 * @param standardDeviationPercent in % air, greater than 0
 * @param elsewhereDegrees the degrees of freedom that stand behind it beside those of the trials themselves, at least 0
 * @param trials how many trials there are, at least 1
 * @param roundingPercent the half-width of the interval that rounding alone makes where all trials share it, in % air,
 *     greater than 0
 * @param isOfTheDial whether the division's share is taken because less cannot be seen
 */
public record Scatter(
        Basis basis,
        double standardDeviationPercent,
        double elsewhereDegrees,
        int trials,
        double roundingPercent,
        boolean isOfTheDial) {
    /** The degrees of freedom that the laboratory's pooled scatter should have at least before trials are held against it. */
    public static final int FEWEST_DEGREES = 10;

    /** How many other mixes should show their scatter before a mix's own is drawn towards theirs. */
    public static final int FEWEST_MIXES = 3;

    /** The degrees of freedom that the other mixes count for at most. */
    public static final double MOST_TRUST = 8;

    static final double CONFIDENCE = 0.95;

    /** Where the scatter comes from. */
    public enum Basis implements Symbolic {
        /** The mix's own, drawn towards that of the other mixes. */
        LABORATORY,
        /** The mix's own alone: the lab book has too few other mixes. */
        OWN,
        /** The mix's own: it scatters more than the other mixes do. */
        OWN_WIDER;
    }

    public Scatter {
        Require.positive("standardDeviationPercent", standardDeviationPercent);
        Require.atLeastZero("elsewhereDegrees", elsewhereDegrees);
        Require.atLeast("trials", trials, 1);
        Require.positive("roundingPercent", roundingPercent);
    }

    /**
     * Returns the scatter to reckon with.
     *
     * @param trials the trials that count
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     * @param elsewhere how trials scatter elsewhere in the laboratory
     * @return the scatter; empty for a single trial of a mix without other determinations when the laboratory's is not known
     */
    public static Optional<Scatter> of(
            Summary trials, MeterType type, double divisionPercent, ScatterElsewhere elsewhere) {
        double dial = ofTheDial(type, divisionPercent);
        Optional<PooledDeviation> own = own(trials, elsewhere);
        Optional<VariancePrior> prior = elsewhere.otherMixes().count() < FEWEST_MIXES
                ? Optional.empty()
                : elsewhere.otherMixes().prior(dial * dial);
        if (own.isEmpty() && prior.isEmpty()) {
            return Optional.empty();
        }
        int ownDegrees = own.map(PooledDeviation::degreesOfFreedom).orElse(0);
        double ownDeviation =
                Math.max(dial, own.map(PooledDeviation::standardDeviation).orElse(0.0));
        double trust = prior.map(known ->
                        Math.min(MOST_TRUST, Math.min(Math.max(1, known.degreesOfFreedom()), known.setDegrees())))
                .orElse(0.0);
        double drawn = prior.map(known -> Math.sqrt(
                        (trust * known.variance() + ownDegrees * ownDeviation * ownDeviation) / (trust + ownDegrees)))
                .orElse(ownDeviation);
        boolean wider = ownDeviation > Slack.over(drawn);
        Basis basis = prior.isEmpty() ? Basis.OWN : wider ? Basis.OWN_WIDER : Basis.LABORATORY;
        double deviation = Math.max(drawn, ownDegrees == 0 ? 0 : ownDeviation);
        return Optional.of(new Scatter(
                basis,
                deviation,
                trust + ownDegrees - (trials.count() - 1),
                trials.count(),
                sharedRounding(type, divisionPercent),
                deviation <= Slack.over(dial)));
    }

    private static Optional<PooledDeviation> own(Summary trials, ScatterElsewhere elsewhere) {
        Optional<PooledDeviation> these = PooledDeviation.of(List.of(trials));
        return these.isPresent() && elsewhere.sameMix().isPresent()
                ? Optional.of(these.get().with(elsewhere.sameMix().get()))
                : these.or(elsewhere::sameMix);
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
     * Returns how far rounding alone may lie off in 95 of 100 cases, in % air: where trials do not scatter they all share it,
     * and no number of them makes it smaller.
     *
     * <p>An even spread over a division on Type B: 0.95 q / 2. On Type A the difference of two such readings, a triangle over
     * two divisions: q (1 - sqrt(1 - 0.95)).
     *
     * <p>Source: JCGM 100:2008, 4.3.7 and 4.3.9 (recalled), and pencil. Differences from the source: none.
     *
     * @param type the type of meter
     * @param divisionPercent a division of its scale, in % air, greater than 0
     */
    static double sharedRounding(MeterType type, double divisionPercent) {
        Require.positive("divisionPercent", divisionPercent);
        return type == MeterType.A
                ? divisionPercent * (1 - Math.sqrt(1 - CONFIDENCE))
                : divisionPercent * CONFIDENCE / 2;
    }

    /** Returns the degrees of freedom of the standard deviation, those of the trials included. */
    public double degreesOfFreedom() {
        return degreesWith(trials);
    }

    private double degreesWith(int n) {
        return elsewhereDegrees + n - 1;
    }

    /** Returns the least number of trials that can be planned for: with fewer, nothing stands behind the scatter. */
    int fewestTrials() {
        int n = 1;
        while (degreesWith(n) < 1) {
            n++;
        }
        return n;
    }

    /**
     * Returns the half-width of the 95 % interval that a mean of n trials has with this scatter, in % air.
     *
     * <p>It is t s / sqrt(n), with the degrees of freedom that would then stand behind s; where the division of the scale
     * decides, at least what rounding alone does.
     *
     * @param n how many trials, enough for one degree of freedom
     */
    public double halfWidthPercent(int n) {
        double chance =
                new StudentT(degreesWith(n)).coverageFactor(CONFIDENCE) * standardDeviationPercent / Math.sqrt(n);
        return isOfTheDial ? Math.max(chance, roundingPercent) : chance;
    }
}
