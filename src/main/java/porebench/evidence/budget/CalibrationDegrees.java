package porebench.evidence.budget;

import java.time.LocalDate;
import porebench.evidence.MeterStory;
import porebench.method.budget.Bowl;
import porebench.method.meter.DialCurve;
import porebench.quantity.Slack;
import porebench.quantity.VolumeUnit;

/** How well the uncertainties that calibrations state are known themselves, and what they rest on. */
final class CalibrationDegrees {
    private CalibrationDegrees() {}

    /** Returns the degrees of freedom of an uncertainty of which only the scatter within it has finitely many. */
    static double of(double whole, double scatter, double ofScatter) {
        double share = whole == 0 ? 0 : Math.min(1, scatter / whole);
        return share == 0 || ofScatter < 1 ? Double.POSITIVE_INFINITY : ofScatter / Math.pow(share, 4);
    }

    /** Repeats have degrees of freedom, the step of the dial has not; what a knot has beyond the step is taken as scatter. */
    static double ofDial(DialCurve curve, MeterStory story) {
        int free = curve.knots().stream().mapToInt(knot -> knot.count() - 1).sum();
        double step = story.meter().value().divisionPercent().doubleValue() / Math.sqrt(12);
        return curve.knots().stream()
                .mapToDouble(knot -> of(
                        knot.standardUncertaintyPercent(),
                        Math.sqrt(Math.max(0, Math.pow(knot.standardUncertaintyPercent(), 2) - step * step)),
                        free))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Returns whether the dial in force on a day was checked with measured water in a bowl of the volume that is used. */
    static boolean restsOn(Bowl bowl, MeterStory story, LocalDate day) {
        return story.dialOn(day)
                .filter(dial -> !story.isDialCheckedInSharesOn(day))
                .filter(dial -> Slack.isSame(dial.scale().bowl().in(VolumeUnit.LITRE), bowl.litres()))
                .isPresent();
    }
}
