package porebench.method.hold;

import java.util.OptionalDouble;

/**
 * One pair on both charts, after it was added.
 *
 * @param pair the pair
 * @param score how far its difference lies from those before it, as a standard normal deviate between -3 and 3; none for
 *     the first two pairs and for a pair that is doubted
 * @param high the sum upwards, at least 0
 * @param low the sum downwards, at least 0
 * @param average the exponentially weighted average of the scores
 * @param isSignal whether a sum is above its interval
 * @param isAverageBeyond whether the average is beyond its limit
 */
public record HoldPoint(
        AirPair pair,
        OptionalDouble score,
        double high,
        double low,
        double average,
        boolean isSignal,
        boolean isAverageBeyond) {

    /** Returns the larger sum, the one downwards with a minus. */
    public double larger() {
        return high >= low ? high : -low;
    }

    /** Returns whether the difference lies so far out that it counts only up to the limit. */
    public boolean isFarOut() {
        return score.isPresent() && Math.abs(score.getAsDouble()) >= Hold.LIMIT;
    }
}
