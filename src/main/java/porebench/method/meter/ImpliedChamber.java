package porebench.method.meter;

import java.util.List;
import java.util.Optional;
import porebench.method.DialScale;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.quantity.Pressure;
import porebench.quantity.Require;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * The air chamber and initial pressure that explain the points of a dial check best.
 *
 * <p>By Boyle and Mariotte a dial graduated for a chamber Vd reads A = c (l - 1) + l (Vd / Vk) R, a straight line in the
 * true air R: c is Vd in % of the bowl, l the initial pressure of the scale divided by the one pumped, Vk the chamber. The
 * least-squares line through the knots, A = a + b R, gives l = 1 + a / c and Vk = l Vd / b.
 *
 * <p>Source: the law of Boyle and Mariotte and least squares (derived). Differences from the source: none. The result is
 * only as absolute as the chamber of the scale; compared between calibrations of one meter that cancels.
 *
 * @param volume Vk
 * @param relativeUncertainty standard uncertainty of Vk divided by Vk, from that of the knots
 * @param initialGauge the initial pressure above that of the air that explains the points
 */
public record ImpliedChamber(Volume volume, double relativeUncertainty, Pressure initialGauge) {
    private static final double COVERAGE = 2;

    public ImpliedChamber {
        Require.positive("volume", volume.cubicMetres());
        Require.atLeastZero("relativeUncertainty", relativeUncertainty);
        Require.positive("initialGauge", initialGauge.pascals());
    }

    /**
     * By how much the implied chamber of one meter changed between two calibrations.
     *
     * @param percent the change, in % of the earlier chamber
     * @param expandedUncertaintyPercent of the change, in %, coverage factor 2
     * @param limitPercent the profile's limit, in %
     */
    public record Drift(double percent, double expandedUncertaintyPercent, double limitPercent) {
        /** Returns whether the change passes both the limit and what the readings can tell. */
        public boolean isFlagged() {
            return Math.abs(percent) > limitPercent && Math.abs(percent) > expandedUncertaintyPercent;
        }
    }

    /**
     * Returns the chamber that a dial curve implies; empty when no chamber could give it.
     *
     * @param curve what the dial reads
     * @param scale what the dial is graduated for
     */
    public static Optional<ImpliedChamber> of(DialCurve curve, DialScale scale) {
        List<DialCurve.Knot> knots = curve.knots();
        int n = knots.size();
        double meanTrue =
                knots.stream().mapToDouble(DialCurve.Knot::truePercent).sum() / n;
        double meanReading =
                knots.stream().mapToDouble(DialCurve.Knot::readingPercent).sum() / n;
        double squares = 0;
        double products = 0;
        for (DialCurve.Knot knot : knots) {
            double offMean = knot.truePercent() - meanTrue;
            squares += offMean * offMean;
            products += offMean * (knot.readingPercent() - meanReading);
        }
        double slope = products / squares;
        double pressureRatio = 1 + (meanReading - slope * meanTrue) / scale.chamberPercent();
        if (pressureRatio <= 0) {
            return Optional.empty();
        }
        double variance = 0;
        for (DialCurve.Knot knot : knots) {
            double onSlope = (knot.truePercent() - meanTrue) / squares;
            double onRatio = (1.0 / n - meanTrue * onSlope) / scale.chamberPercent();
            double part = (onRatio / pressureRatio - onSlope / slope) * knot.standardUncertaintyPercent();
            variance += part * part;
        }
        return Optional.of(new ImpliedChamber(
                scale.chamber().times(pressureRatio / slope),
                Math.sqrt(variance),
                new Pressure(scale.initialGauge().pascals() / pressureRatio)));
    }

    /** Returns the chamber in L. */
    public double litres() {
        return volume.in(VolumeUnit.LITRE);
    }

    /** Returns by how much the chamber changed since an earlier calibration, against the limit of a profile. */
    public Drift since(ImpliedChamber earlier, Profile profile) {
        return new Drift(
                100 * (volume.cubicMetres() / earlier.volume.cubicMetres() - 1),
                100 * COVERAGE * Math.hypot(relativeUncertainty, earlier.relativeUncertainty),
                profile.number(FigureName.CHAMBER_DRIFT));
    }
}
