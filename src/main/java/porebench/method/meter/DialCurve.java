package porebench.method.meter;

import java.util.List;
import porebench.method.Answer;
import porebench.method.Profile;
import porebench.quantity.Require;
import porebench.quantity.Volume;

/**
 * What a Type B dial reads against the true air, as the check points tell: the curve along which readings are corrected.
 *
 * <p>True air at a point is R = 100 w / W for a vessel holding the mass w of water in a bowl holding W, and likewise for
 * any measured water, in % air. Repeats of one amount make one knot, their mean. Between knots the curve is straight; it
 * rises throughout, so that it can be gone along both ways. Beyond the knots the error of the nearest one is held, which
 * is marked as extrapolated.
 *
 * <p>Source: ASTM C231, annex on calibration, R = w / W (recalled); the curve is ours (derived). Differences from the
 * source: it takes any series of points.
 *
 * @param knots at least two, true air and reading both rising
 * @param tolerancePercent how far a reading may lie from the true air, in % air
 * @param toleranceClause the clause of the tolerance
 */
public record DialCurve(List<Knot> knots, double tolerancePercent, String toleranceClause) {
    public DialCurve {
        knots = List.copyOf(knots);
        Require.atLeast("count of knots", knots.size(), 2);
        Require.atLeastZero("tolerancePercent", tolerancePercent);
        for (int i = 1; i < knots.size(); i++) {
            Knot low = knots.get(i - 1);
            Knot high = knots.get(i);
            Require.positive("rise of the true air at knot " + i, high.truePercent() - low.truePercent());
            Require.positive("rise of the reading at knot " + i, high.readingPercent() - low.readingPercent());
        }
    }

    /**
     * One amount of air and what the dial reads of it.
     *
     * @param truePercent R, the true air, in % air
     * @param readingPercent the mean reading, in % air
     * @param count how many readings it is the mean of, at least 1
     * @param standardUncertaintyPercent of the error here, in % air: reading of the scale, scatter of repeats where there
     *     are some, and the digits of the amount
     */
    public record Knot(double truePercent, double readingPercent, int count, double standardUncertaintyPercent) {
        public Knot {
            Require.finite("truePercent", truePercent);
            Require.finite("readingPercent", readingPercent);
            Require.atLeast("count", count, 1);
            Require.atLeastZero("standardUncertaintyPercent", standardUncertaintyPercent);
        }

        /** Returns the error of the dial, reading less true air, in % air. */
        public double errorPercent() {
            return readingPercent - truePercent;
        }
    }

    /**
     * A reading brought to the true air.
     *
     * @param readingPercent the reading as it was, in % air
     * @param truePercent the corrected reading, in % air; may be slightly below 0
     * @param standardUncertaintyPercent of the correction, in % air, the reading itself not included
     * @param isExtrapolated whether the reading lies beyond the check points
     */
    public record Corrected(
            double readingPercent, double truePercent, double standardUncertaintyPercent, boolean isExtrapolated) {
        /** Returns the correction, true air less reading, in % air. */
        public double correctionPercent() {
            return truePercent - readingPercent;
        }
    }

    /**
     * Makes the curve from a dial check.
     *
     * @param check what was read
     * @param bowl the volume of the bowl, greater than 0
     * @param divisionPercent a division of the dial, in % air, greater than 0
     * @param profile whose tolerance holds
     * @return the curve with its doubts, or everything that is wrong with the check
     */
    public static Answer<DialCurve> of(DialCheck check, Volume bowl, double divisionPercent, Profile profile) {
        return new DialPoints(check, bowl, divisionPercent, profile).answer();
    }

    /** Returns the true air of a reading in % air, along the curve. */
    public Corrected trueOf(double readingPercent) {
        Require.finite("readingPercent", readingPercent);
        Knot first = knots.get(0);
        Knot last = knots.get(knots.size() - 1);
        if (readingPercent < first.readingPercent()) {
            return beyond(readingPercent, first, knots.get(1));
        }
        if (readingPercent > last.readingPercent()) {
            return beyond(readingPercent, last, knots.get(knots.size() - 2));
        }
        int i = 1;
        while (readingPercent > knots.get(i).readingPercent()) {
            i++;
        }
        Knot low = knots.get(i - 1);
        Knot high = knots.get(i);
        double part = (readingPercent - low.readingPercent()) / (high.readingPercent() - low.readingPercent());
        double truth = low.truePercent() + part * (high.truePercent() - low.truePercent());
        double uncertainty =
                Math.hypot((1 - part) * low.standardUncertaintyPercent(), part * high.standardUncertaintyPercent());
        return new Corrected(readingPercent, truth, uncertainty, false);
    }

    /**
     * Returns how far the corrections of two readings err together, from -1 to 1: by the check points that both rest on.
     *
     * @param one a reading, in % air
     * @param other another, in % air
     */
    public double coefficient(double one, double other) {
        double product =
                trueOf(one).standardUncertaintyPercent() * trueOf(other).standardUncertaintyPercent();
        if (product == 0) {
            return 0;
        }
        double covariance = beyondSlope(one) * beyondSlope(other) * (isBelow(one) == isBelow(other) ? 1 : 0);
        for (int i = 0; i < knots.size(); i++) {
            double u = knots.get(i).standardUncertaintyPercent();
            covariance += weight(i, one) * weight(i, other) * u * u;
        }
        return Math.max(-1, Math.min(1, covariance / product));
    }

    private boolean isBelow(double reading) {
        return reading < knots.get(0).readingPercent();
    }

    /** What the error might go on by beyond the knots, in % air; 0 between them. */
    private double beyondSlope(double reading) {
        Corrected corrected = trueOf(reading);
        double end = knots.get(isBelow(reading) ? 0 : knots.size() - 1).standardUncertaintyPercent();
        double u = corrected.standardUncertaintyPercent();
        return corrected.isExtrapolated() ? Math.sqrt(Math.max(0, u * u - end * end)) : 0;
    }

    /** By how much the error of a knot counts in the correction of a reading. */
    private double weight(int knot, double reading) {
        double at = knots.get(knot).readingPercent();
        int next = reading < at ? knot - 1 : knot + 1;
        if (next < 0 || next >= knots.size()) {
            return 1;
        }
        double far = knots.get(next).readingPercent();
        return Math.max(0, 1 - (reading - at) / (far - at));
    }

    /** Returns what the dial reads of a true air in % air: the way back along the curve. */
    public double readingOf(double truePercent) {
        Require.finite("truePercent", truePercent);
        Knot first = knots.get(0);
        Knot last = knots.get(knots.size() - 1);
        if (truePercent < first.truePercent()) {
            return truePercent + first.errorPercent();
        }
        if (truePercent > last.truePercent()) {
            return truePercent + last.errorPercent();
        }
        int i = 1;
        while (truePercent > knots.get(i).truePercent()) {
            i++;
        }
        Knot low = knots.get(i - 1);
        Knot high = knots.get(i);
        double part = (truePercent - low.truePercent()) / (high.truePercent() - low.truePercent());
        return low.readingPercent() + part * (high.readingPercent() - low.readingPercent());
    }

    /** Returns whether a knot lies within the tolerance, its limits included. */
    public boolean passes(Knot knot) {
        return check(Math.abs(knot.errorPercent())).passes();
    }

    /** Returns whether every knot lies within the tolerance. */
    public boolean passes() {
        return largestError().passes();
    }

    /** Returns the largest error, without its sign, against the tolerance. */
    public MeterCheck largestError() {
        return check(knots.stream()
                .mapToDouble(knot -> Math.abs(knot.errorPercent()))
                .max()
                .orElseThrow());
    }

    private MeterCheck check(double error) {
        return MeterCheck.atMost(MeterCheck.Subject.DIAL_ERROR, error, tolerancePercent, toleranceClause);
    }

    /** The error might go on as it went between the last two knots: that much is uncertain about holding it. */
    private static Corrected beyond(double reading, Knot end, Knot next) {
        double slope = (end.errorPercent() - next.errorPercent()) / (end.readingPercent() - next.readingPercent());
        double distance = reading - end.readingPercent();
        double uncertainty = Math.hypot(end.standardUncertaintyPercent(), slope * distance);
        return new Corrected(reading, reading - end.errorPercent(), uncertainty, true);
    }
}
