package porebench.record.column;

import java.math.BigDecimal;
import porebench.method.Limit;

/**
 * The numbers that a column may hold. They tell a slip of the pen from a reading; what is doubtful is judged elsewhere.
 *
 * @param lowInclusive the least
 * @param highInclusive the greatest
 */
public record NumberRange(BigDecimal lowInclusive, BigDecimal highInclusive) {
    /** Zero and anything above it that can be meant. */
    public static final NumberRange NOT_NEGATIVE = of("0", "1000000000");

    /** Shares of a whole, in %, which may be above 100 for moisture. */
    public static final NumberRange PERCENT = of("0", "1000");

    /** Any number that can be meant. */
    public static final NumberRange ANY = of("-1e15", "1e15");

    /** A reading of a scale, in % air. */
    public static final NumberRange READING = of("0", "100");

    /** What a quantity can be at all. */
    public static NumberRange of(Limit limit) {
        return new NumberRange(limit.lowInclusive(), limit.highInclusive());
    }

    /** Returns the numbers from one to another, both written as decimals. */
    public static NumberRange of(String lowInclusive, String highInclusive) {
        return new NumberRange(new BigDecimal(lowInclusive), new BigDecimal(highInclusive));
    }

    /** Returns whether a number is within the bounds. */
    public boolean holds(BigDecimal number) {
        return number.compareTo(lowInclusive) >= 0 && number.compareTo(highInclusive) <= 0;
    }
}
