package porebench.chart.look;

import org.jfree.chart.axis.ValueAxis;

/** The part of a scale that holds some values, with some air around them. */
public final class Span {
    private static final double AIR = 0.12;

    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** Lets the part hold a value. */
    public void hold(double value) {
        low = Math.min(low, value);
        high = Math.max(high, value);
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    /** Shows the part on an axis; one narrower than it should at least be is widened about its middle. */
    public void show(ValueAxis axis, double leastSpan) {
        double missing = Math.max(0, leastSpan - (high - low)) / 2;
        double air = AIR * (high - low + 2 * missing);
        axis.setRange(low - missing - air, high + missing + air);
    }
}
