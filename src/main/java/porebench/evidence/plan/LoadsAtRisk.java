package porebench.evidence.plan;

import java.util.OptionalDouble;
import porebench.quantity.Symbolic;

/**
 * How many loads of a mix are likely judged wrongly in a week because its factor is wrong: the more, the sooner it is tested.
 *
 * @param loadsAWeek how many loads are made a week; empty where nobody knows
 * @param cause where the likely error comes from, or why there is none
 * @param errorPercent the likely error, true factor less the one in force, in % air; empty where none is known
 * @param mixes how many mixes with trials a forecast rests on; 0 where the error is not forecast
 * @param share the share of all loads that are wrongly passed or failed because of the error, beyond those that a right factor would
 *     leave, from 0 to 1; empty where it is not known
 */
public record LoadsAtRisk(
        OptionalDouble loadsAWeek, Cause cause, OptionalDouble errorPercent, int mixes, OptionalDouble share) {
    /** What is known of a mix whose loads nobody counts. */
    public static final LoadsAtRisk UNKNOWN =
            new LoadsAtRisk(OptionalDouble.empty(), Cause.NO_LOADS, OptionalDouble.empty(), 0, OptionalDouble.empty());

    /** Where a likely error comes from, or why there is none. */
    public enum Cause implements Symbolic {
        /** A source or the mix changed: what the forecast says is there now, less the factor in force. */
        FORECAST,
        /** What two determinations of the same differ by in this laboratory. */
        SPREAD,
        /** There is no factor that could be wrong. */
        NO_FACTOR,
        /** Nobody said how many loads are made. */
        NO_LOADS,
        /** Nobody said how the air differs from load to load. */
        NO_LOAD_SPREAD,
        /** The laboratory's trials do not tell what determinations differ by. */
        NO_ERROR
    }

    /** Returns how many loads a week are likely judged wrongly because of the error; empty where it is not known. */
    public OptionalDouble wrongAWeek() {
        return share.isPresent() && loadsAWeek.isPresent()
                ? OptionalDouble.of(share.getAsDouble() * loadsAWeek.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Returns by what mixes of the same need are ranked, the most first: loads judged wrongly; without any factor all loads. */
    OptionalDouble rank() {
        return cause == Cause.NO_FACTOR ? loadsAWeek : wrongAWeek();
    }
}
