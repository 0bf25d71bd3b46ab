package porebench.statistics.comparison;

import java.util.Optional;
import java.util.OptionalDouble;
import porebench.quantity.Require;
import porebench.quantity.Symbolic;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.UncertaintySum;

/**
 * Two sets of readings compared, before and after something changed: Welch's difference of two means, readings clustered by
 * determination and read on a divided scale.
 *
 * <p>What counts one by one is stated by {@link Unit}. The variance of the difference is the sum of s^2 / n of both sides. On a scale
 * of equal steps s is never less than the division makes by itself, and a side whose readings scatter less than that adds the variance
 * of one rounding, which all its readings share and no number of them makes smaller.
 *
 * <p>Source: B. L. Welch, Biometrika 29 (1938), 350-362, and F. E. Satterthwaite, Biometrics Bulletin 2 (1946), 110-114, the
 * difference and its degrees of freedom; recalled; checked against R's t.test. Differences from the source: the least scatter and the
 * rounding that readings share (ours, simulated in docs/changes.md); a side of one determination beside one of several.
 */
public final class BeforeAndAfter {
    /** The confidence of the interval of the difference. */
    public static final double CONFIDENCE = 0.95;

    /** Readings that scatter less than this many times as much as the division makes share their rounding; found by simulation. */
    private static final double STILL = 1.25;

    private final ReadingSets before;
    private final ReadingSets after;
    private final Unit unit;
    private final SidesOfDifference sides;
    private final Precision precision;

    /** What counts one by one. */
    public enum Unit implements Symbolic {
        /** Readings, of one determination a side; what determinations differ by is not in the numbers. */
        READINGS,
        /** Readings, of one determination a side; what determinations differ by is known from elsewhere and in the numbers. */
        READINGS_WITH_LABORATORY,
        /** The means of determinations, several on each side. */
        DETERMINATIONS,
        /** The means of determinations; a side that has one only is taken to scatter as the other does. */
        DETERMINATIONS_OF_ONE_SIDE
    }

    private BeforeAndAfter(ReadingSets before, ReadingSets after, double ofDivision, Optional<BetweenSets> between) {
        this.before = before;
        this.after = after;
        this.unit = unitOf(before, after, between);
        SideOfDifference first = side(before, ofDivision);
        SideOfDifference second = side(after, ofDivision);
        boolean borrows = unit == Unit.DETERMINATIONS_OF_ONE_SIDE;
        this.sides = new SidesOfDifference(
                borrows && before.sets() == 1 ? borrowed(before, first, after, second) : first,
                borrows && after.sets() == 1 ? borrowed(after, second, before, first) : second,
                borrows,
                between);
        this.precision = sides.precision();
    }

    /**
     * Compares readings.
     *
     * @param before at least two readings, before the change
     * @param after at least two readings, after it, in the same unit
     * @param division the smallest step of the scale, in that unit, greater than 0
     * @param isDifference whether a reading is the difference of two readings of the scale
     * @param between what determinations differ by, if that is known from elsewhere; it counts where a side has one only
     * @throws IllegalArgumentException if a side has one reading, or the division is not greater than 0
     */
    public static BeforeAndAfter of(
            ReadingSets before,
            ReadingSets after,
            double division,
            boolean isDifference,
            Optional<BetweenSets> between) {
        Require.atLeast("count of readings before", before.readings(), 2);
        Require.atLeast("count of readings after", after.readings(), 2);
        double ofDivision = UncertaintySum.resolutionUncertainty(Require.positive("division", division))
                * (isDifference ? Math.sqrt(2) : 1);
        return new BeforeAndAfter(before, after, ofDivision, between);
    }

    private static Unit unitOf(ReadingSets before, ReadingSets after, Optional<BetweenSets> between) {
        int fewest = Math.min(before.sets(), after.sets());
        if (fewest > 1) {
            return Unit.DETERMINATIONS;
        }
        if (between.isPresent()) {
            return Unit.READINGS_WITH_LABORATORY;
        }
        return before.sets() == after.sets() ? Unit.READINGS : Unit.DETERMINATIONS_OF_ONE_SIDE;
    }

    private SideOfDifference side(ReadingSets side, double ofDivision) {
        boolean isOne = side.sets() == 1;
        Summary units = isOne ? side.all() : side.means();
        boolean isStill = side.all().standardDeviation().orElse(0) < STILL * ofDivision;
        double least = ofDivision * (isOne || isStill ? 1 : Math.sqrt(side.shareInMeans()));
        boolean needsLaboratory = isOne && unit == Unit.READINGS_WITH_LABORATORY;
        return new SideOfDifference(
                units.count(),
                Math.max(least, units.standardDeviation().orElse(0)),
                least,
                Math.max(1, units.count() - 1),
                isStill ? ofDivision * ofDivision : 0,
                needsLaboratory ? 1 : 0);
    }

    /**
     * Returns the mean of the only determination of a side as if it scattered like those of the other side, and by what fewer readings
     * add to that.
     */
    private static SideOfDifference borrowed(
            ReadingSets one, SideOfDifference own, ReadingSets several, SideOfDifference other) {
        double more = own.deviation() * own.deviation() * (one.shareInMeans() - several.shareInMeans());
        double variance = other.deviation() * other.deviation() + Math.max(0, more);
        return new SideOfDifference(1, Math.sqrt(variance), other.least(), other.degreesOfFreedom(), own.rounding(), 0);
    }

    /** Returns the readings before the change. */
    public ReadingSets before() {
        return before;
    }

    /** Returns the readings after the change. */
    public ReadingSets after() {
        return after;
    }

    public Unit unit() {
        return unit;
    }

    /** Returns whether readings stand so still that the rounding they share is in the numbers. */
    public boolean isOfDivision() {
        return sides.before().rounding() + sides.after().rounding() > 0;
    }

    /** Returns the mean after less the mean before, in the unit of the readings. */
    public double difference() {
        return after.mean() - before.mean();
    }

    /** Returns the standard error of the difference, in the unit of the readings. */
    public double standardError() {
        return precision.standardError();
    }

    /** Returns the degrees of freedom of the standard error. */
    public double degreesOfFreedom() {
        return precision.degreesOfFreedom();
    }

    /** Returns half the width of the 95 % interval of the difference, in the unit of the readings. */
    public double halfWidth() {
        return precision.factor((1 - CONFIDENCE) / 2) * precision.standardError();
    }

    /** Returns Welch's t, the difference in standard errors. */
    public double t() {
        return difference() / precision.standardError();
    }

    /** Returns the probability of so large a difference, of either sign, when nothing changed. */
    public double p() {
        return 2 * new StudentT(precision.degreesOfFreedom()).upperTail(Math.abs(t()));
    }

    /**
     * Returns whether the difference is shown to lie within a margin.
     *
     * @param margin in the unit of the readings, greater than 0
     */
    public Equivalence equivalence(double margin) {
        return Equivalence.of(difference(), precision, margin);
    }

    /**
     * Returns what the comparison says: keep where the difference is shown to lie within the margin; replace where the 95 % interval
     * leaves out 0 and the difference itself is larger than the margin; else test more.
     *
     * @param margin in the unit of the readings, greater than 0
     */
    public ComparisonVerdict verdict(double margin) {
        if (equivalence(margin).isEquivalent()) {
            return ComparisonVerdict.KEEP;
        }
        boolean isThere = Math.abs(difference()) > halfWidth();
        return isThere && Math.abs(difference()) > margin ? ComparisonVerdict.REPLACE : ComparisonVerdict.TEST_MORE;
    }

    /**
     * Returns what more readings would show.
     *
     * @param margin in the unit of the readings, greater than 0
     * @param usualDeviation how readings of a determination scatter as known from elsewhere, in their unit; where determinations are
     *     what counts, and where nothing is known, these readings' own scatter counts
     */
    public ComparisonPlan plan(double margin, OptionalDouble usualDeviation) {
        boolean isOfReadings = unit == Unit.READINGS || unit == Unit.READINGS_WITH_LABORATORY;
        boolean allReadings = isOfReadings && before.sets() == after.sets();
        SidesOfDifference planned =
                allReadings && usualDeviation.isPresent() ? sides.scattering(usualDeviation.getAsDouble()) : sides;
        int readingsInOne =
                (int) Math.ceil((double) (before.readings() + after.readings()) / (before.sets() + after.sets()));
        return new ComparisonPlan(
                planned, allReadings, readingsInOne, margin, verdict(margin) == ComparisonVerdict.TEST_MORE);
    }
}
