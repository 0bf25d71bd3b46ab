package porebench.method.meter;

import java.util.OptionalDouble;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.quantity.Symbolic;

/**
 * One thing of a meter held against its limits, as a calibration record shows it.
 *
 * @param subject what was checked, and with it the unit
 * @param value what was found, in the unit of the subject
 * @param lowInclusive the least that passes, empty for no limit
 * @param highInclusive the most that passes, empty for no limit
 * @param clause the clause of the limit
 */
public record MeterCheck(
        Subject subject, double value, OptionalDouble lowInclusive, OptionalDouble highInclusive, String clause) {

    /** What can be checked; the unit of its value stands with it. */
    public enum Subject implements Symbolic {
        /** The volume of the bowl, in L. */
        BOWL_VOLUME("L"),
        /** Its inner diameter divided by its inner height. */
        BOWL_SHAPE(""),
        /** The largest error of the dial without its sign, in % air. */
        DIAL_ERROR("% air"),
        /** How far the hand moved in 90 s, in marks. */
        LEAK("marks"),
        /** D of a Type A meter, in % air. */
        EXPANSION("% air"),
        /** How far a Type A meter was moved up or down since its calibration, in m without sign. */
        ELEVATION("m");

        private final String unit;

        Subject(String unit) {
            this.unit = unit;
        }

        /** Returns the unit of the value, empty for a plain ratio. */
        public String unit() {
            return unit;
        }
    }

    public MeterCheck {
        Require.finite("value", value);
    }

    /** Returns a check against a least value. */
    static MeterCheck atLeast(Subject subject, double value, double low, String clause) {
        return new MeterCheck(subject, value, OptionalDouble.of(low), OptionalDouble.empty(), clause);
    }

    /** Returns a check against a largest value. */
    static MeterCheck atMost(Subject subject, double value, double high, String clause) {
        return new MeterCheck(subject, value, OptionalDouble.empty(), OptionalDouble.of(high), clause);
    }

    /** Returns a check against a least and a largest value. */
    static MeterCheck within(Subject subject, double value, double low, double high, String clause) {
        return new MeterCheck(subject, value, OptionalDouble.of(low), OptionalDouble.of(high), clause);
    }

    /** Returns whether the value lies within its limits, both of them included. */
    public boolean passes() {
        return (lowInclusive.isEmpty() || !Slack.isBelow(value, lowInclusive.getAsDouble()))
                && (highInclusive.isEmpty() || !Slack.isAbove(value, highInclusive.getAsDouble()));
    }
}
