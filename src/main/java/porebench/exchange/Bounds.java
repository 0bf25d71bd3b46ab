package porebench.exchange;

import java.math.BigDecimal;
import porebench.method.Limit;

/**
 * The numbers that a column may hold. They tell a slip of the pen from a reading; what is doubtful is judged elsewhere.
 *
 * @param lowInclusive the least
 * @param highInclusive the greatest
 */
record Bounds(BigDecimal lowInclusive, BigDecimal highInclusive) {
    /** Zero and anything above it that can be meant. */
    static final Bounds NOT_NEGATIVE = of("0", "1000000000");

    /** Shares of a whole, in %, which may be above 100 for moisture. */
    static final Bounds PERCENT = of("0", "1000");

    /** What a quantity can be at all. */
    static Bounds of(Limit limit) {
        return new Bounds(limit.lowInclusive(), limit.highInclusive());
    }

    static Bounds of(String lowInclusive, String highInclusive) {
        return new Bounds(new BigDecimal(lowInclusive), new BigDecimal(highInclusive));
    }

    boolean hold(BigDecimal number) {
        return number.compareTo(lowInclusive) >= 0 && number.compareTo(highInclusive) <= 0;
    }
}
