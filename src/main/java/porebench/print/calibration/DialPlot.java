package porebench.print.calibration;

import java.io.IOException;
import java.util.List;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCurve;
import porebench.print.page.Align;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.PrintedFigures;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.quantity.Slack;

/**
 * Draws the error of a dial over the true air: the tolerance as a grey band, the check points with two standard
 * uncertainties, the curve between them, and dashed what the model reads.
 */
final class DialPlot {
    private static final double LEFT = 38;
    private static final double RIGHT = 8;
    private static final double TOP = 14;
    private static final double BOTTOM = 26;
    private static final double LABEL = 7.5;
    private static final double DOT = 2.2;
    private static final int MODEL_STEPS = 60;
    /** Steps between the marks of an axis, in % air, and how many decimals they need. */
    private static final double[] STEPS = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20};

    private final Pen pen;
    private final Words words;
    private final PrintedFigures figures;
    private final DialCalibration found;
    private final List<DialCurve.Knot> knots;
    private final Axis air;
    private final Axis error;

    /** A scale between two round numbers, drawn from one place to another. */
    private record Axis(double low, double high, double step) {
        static Axis of(double low, double high, int most) {
            double step = STEPS[STEPS.length - 1];
            for (int index = STEPS.length - 1; index >= 0; index--) {
                if ((high - low) / STEPS[index] <= most) {
                    step = STEPS[index];
                }
            }
            return new Axis(
                    step * Math.floor(low / step + Slack.OF_ONE), step * Math.ceil(high / step - Slack.OF_ONE), step);
        }

        double share(double value) {
            return (Math.min(high, Math.max(low, value)) - low) / (high - low);
        }

        int marks() {
            return (int) Math.round((high - low) / step);
        }

        int decimals() {
            return step < 0.1 ? 2 : step < 1 ? 1 : 0;
        }
    }

    DialPlot(Pen pen, Words words, DialCalibration found) {
        this.pen = pen;
        this.words = words;
        this.figures = new PrintedFigures(words);
        this.found = found;
        this.knots = found.curve().knots();
        double most = Math.max(1, knots.get(knots.size() - 1).truePercent());
        double largest = 1.5 * found.curve().tolerancePercent();
        for (DialCurve.Knot knot : knots) {
            largest = Math.max(largest, Math.abs(knot.errorPercent()) + 2.2 * knot.standardUncertaintyPercent());
        }
        this.air = Axis.of(0, most, 12);
        this.error = Axis.of(-largest, largest, 8);
    }

    void draw(double left, double top, double width, double height) throws IOException {
        Area place = new Area(left + LEFT, top + TOP, width - LEFT - RIGHT, height - TOP - BOTTOM);
        band(place);
        marks(place);
        pen.frame(place.left(), place.top(), place.width(), place.height(), 0.75);
        for (int index = 1; index < knots.size(); index++) {
            line(place, knots.get(index - 1), knots.get(index));
        }
        model(place);
        for (DialCurve.Knot knot : knots) {
            point(place, knot);
        }
        FittedText up =
                TextFit.line(Weight.REGULAR, LABEL, width).fit(pen.faces(), words.say("calibration.plot.error"));
        pen.text(up, left, top, width, Align.LEFT);
        FittedText across =
                TextFit.line(Weight.REGULAR, LABEL, width).fit(pen.faces(), words.say("calibration.plot.true"));
        pen.text(across, left, top + height - LABEL * FittedText.LEADING, width - RIGHT, Align.RIGHT);
    }

    /** Where the axes stand. */
    private record Area(double left, double top, double width, double height) {}

    private double x(Area place, double truePercent) {
        return place.left() + air.share(truePercent) * place.width();
    }

    private double y(Area place, double errorPercent) {
        return place.top() + (1 - error.share(errorPercent)) * place.height();
    }

    private void band(Area place) throws IOException {
        double tolerance = found.curve().tolerancePercent();
        double from = y(place, tolerance);
        pen.shade(place.left(), from, place.width(), y(place, -tolerance) - from, 0.9);
    }

    private void marks(Area place) throws IOException {
        for (int mark = 0; mark <= error.marks(); mark++) {
            double value = error.low() + mark * error.step();
            double at = y(place, value);
            pen.line(place.left() - 3, at, place.left(), at, 0.5);
            FittedText text = TextFit.line(Weight.REGULAR, LABEL, LEFT - 8)
                    .fit(pen.faces(), figures.signed(value, error.decimals()));
            pen.text(text, place.left() - LEFT, at - LABEL * 0.6, LEFT - 5, Align.RIGHT);
        }
        pen.line(place.left(), y(place, 0), place.left() + place.width(), y(place, 0), 0.5);
        double under = place.top() + place.height();
        for (int mark = 0; mark <= air.marks(); mark++) {
            double value = air.low() + mark * air.step();
            double at = x(place, value);
            pen.line(at, under, at, under + 3, 0.5);
            FittedText text =
                    TextFit.line(Weight.REGULAR, LABEL, 24).fit(pen.faces(), figures.fixed(value, air.decimals()));
            pen.text(text, at - 12, under + 3, 24, Align.CENTRE);
        }
    }

    private void line(Area place, DialCurve.Knot from, DialCurve.Knot to) throws IOException {
        pen.line(
                x(place, from.truePercent()),
                y(place, from.errorPercent()),
                x(place, to.truePercent()),
                y(place, to.errorPercent()),
                1.2);
    }

    private void model(Area place) throws IOException {
        double first = knots.get(0).truePercent();
        double span = knots.get(knots.size() - 1).truePercent() - first;
        for (int step = 0; step < MODEL_STEPS; step += 2) {
            double from = first + span * step / MODEL_STEPS;
            double to = first + span * (step + 1) / MODEL_STEPS;
            pen.line(
                    x(place, from),
                    y(place, found.predictedReading(from) - from),
                    x(place, to),
                    y(place, found.predictedReading(to) - to),
                    0.75);
        }
    }

    private void point(Area place, DialCurve.Knot knot) throws IOException {
        double x = x(place, knot.truePercent());
        double y = y(place, knot.errorPercent());
        double up = y(place, knot.errorPercent() + 2 * knot.standardUncertaintyPercent());
        double down = y(place, knot.errorPercent() - 2 * knot.standardUncertaintyPercent());
        pen.line(x, up, x, down, 0.75);
        pen.line(x - 3, up, x + 3, up, 0.75);
        pen.line(x - 3, down, x + 3, down, 0.75);
        pen.shade(x - DOT, y - DOT, 2 * DOT, 2 * DOT, 0);
    }
}
