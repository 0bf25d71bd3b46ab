package porebench.method.air;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.distribution.Normal;

/**
 * Between which limits the air of a load is accepted: those of its tolerance, drawn in by a guard band where one is asked for.
 *
 * <p>Without a guard band the reported air is held against the limits, as a person does who reads it off the card. With one the air at
 * full precision must also lie w inside them, w = k u.
 *
 * <p>Source: JCGM 106:2012, 8.3.2 (guarded acceptance), recalled; air is reported and compared by ASTM E29, recalled. Differences from
 * the source: none.
 *
 * @param lowPercent the lower limit of the tolerance, in % air
 * @param highPercent the upper limit of the tolerance, in % air, at least the lower one
 * @param guardPercent w, by how much the limits of acceptance lie inside those, in % air; 0 without a guard band
 */
public record AcceptanceLimits(BigDecimal lowPercent, BigDecimal highPercent, double guardPercent) {
    public AcceptanceLimits {
        Require.atLeastZero("tolerance", highPercent.subtract(lowPercent).doubleValue());
        Require.atLeastZero("guardPercent", guardPercent);
    }

    /**
     * Returns the limits of a tolerance without a guard band.
     *
     * @param target the air wanted, in % air
     * @param tolerance how far it may lie from there to either side, in % air, at least 0
     */
    public static AcceptanceLimits of(BigDecimal target, BigDecimal tolerance) {
        return new AcceptanceLimits(target.subtract(tolerance), target.add(tolerance), 0);
    }

    /**
     * Returns these limits drawn in by k standard uncertainties; empty where nothing would be left between them.
     *
     * @param k how many, greater than 0
     * @param standard the standard uncertainty of the air, in % air, greater than 0
     */
    public Optional<AcceptanceLimits> guarded(double k, double standard) {
        double guard = Require.positive("k", k) * Require.positive("standard", standard);
        double half = highPercent.subtract(lowPercent).doubleValue() / 2;
        return Slack.isAbove(guard, half)
                ? Optional.empty()
                : Optional.of(new AcceptanceLimits(lowPercent, highPercent, guard));
    }

    /** Returns the lowest air that is accepted, in % air. */
    public double acceptedFromPercent() {
        return lowPercent.doubleValue() + guardPercent;
    }

    /** Returns the highest air that is accepted, in % air. */
    public double acceptedToPercent() {
        return highPercent.doubleValue() - guardPercent;
    }

    /**
     * Returns what is said of an air.
     *
     * @param air the air at full precision, in % air
     * @param reported the same as reported, in % air
     */
    public AirVerdict verdict(BigDecimal air, BigDecimal reported) {
        if (reported.compareTo(lowPercent) < 0 || reported.compareTo(highPercent) > 0) {
            return AirVerdict.FAILS;
        }
        if (guardPercent == 0) {
            return AirVerdict.PASSES;
        }
        boolean isNear = Slack.isBelow(air.doubleValue(), acceptedFromPercent())
                || Slack.isAbove(air.doubleValue(), acceptedToPercent());
        return isNear ? AirVerdict.GUARDED : AirVerdict.PASSES;
    }

    /**
     * Returns the probability that the true air lies within the tolerance, from 0 to 1, when nothing is known but the measured one.
     *
     * <p>Source: JCGM 106:2012, 7.4 (two limits), recalled: the area of a normal distribution between the limits. Differences from the
     * source: none.
     *
     * @param air the measured air, in % air
     * @param standard its standard uncertainty, in % air, greater than 0
     */
    public double conforming(double air, double standard) {
        Require.finite("air", air);
        Require.positive("standard", standard);
        double below = (lowPercent.doubleValue() - air) / standard;
        double above = (highPercent.doubleValue() - air) / standard;
        // From the side on which the distribution keeps its digits.
        return below > 0
                ? Normal.upperTail(below) - Normal.upperTail(above)
                : Normal.cumulative(above) - Normal.cumulative(below);
    }
}
