package porebench.method.meter;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.method.Profile;

/**
 * By how much a Type B meter changed between two dial checks.
 *
 * <p>Two things are looked at: how far the dial moved, which every check tells to about a division, and the chamber that
 * the checks imply, which tells a changed chamber from a moved line but needs many points to tell it well.
 *
 * @param movePercent the largest change of the reading of one true air, in % air and without its sign, at the check
 *     points within the range of both checks; of all check points where the ranges do not meet
 * @param toleranceMovePercent how far it may move, in % air: the later check's tolerance of the dial
 * @param chamber the change of the implied chamber; empty when one of the checks implies none
 */
public record DialDrift(double movePercent, double toleranceMovePercent, Optional<ImpliedChamber.Drift> chamber) {
    private static final double BINARY_SLACK = 1e-9;

    /** Compares two calibrations of one meter, under the limit of a profile for the chamber. */
    public static DialDrift between(DialCalibration earlier, DialCalibration later, Profile profile) {
        Optional<ImpliedChamber.Drift> chamber =
                earlier.chamber().flatMap(before -> later.chamber().map(after -> after.since(before, profile)));
        return new DialDrift(
                largestMove(earlier.curve(), later.curve()), later.curve().tolerancePercent(), chamber);
    }

    /** Returns whether the dial moved beyond its tolerance, or the chamber beyond its limit. */
    public boolean isFlagged() {
        return movePercent > toleranceMovePercent + BINARY_SLACK
                || chamber.map(ImpliedChamber.Drift::isFlagged).orElse(false);
    }

    private static double largestMove(DialCurve earlier, DialCurve later) {
        List<Double> all = Stream.of(earlier, later)
                .flatMap(curve -> curve.knots().stream())
                .map(DialCurve.Knot::truePercent)
                .toList();
        List<Double> shared = all.stream()
                .filter(truth -> covers(earlier, truth) && covers(later, truth))
                .toList();
        return (shared.isEmpty() ? all : shared)
                .stream()
                        .mapToDouble(truth -> Math.abs(later.readingOf(truth) - earlier.readingOf(truth)))
                        .max()
                        .orElseThrow();
    }

    private static boolean covers(DialCurve curve, double truth) {
        List<DialCurve.Knot> knots = curve.knots();
        return truth >= knots.get(0).truePercent()
                && truth <= knots.get(knots.size() - 1).truePercent();
    }
}
