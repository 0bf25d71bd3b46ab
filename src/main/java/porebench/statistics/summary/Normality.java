package porebench.statistics.summary;

import java.util.Optional;
import porebench.quantity.Require;
import porebench.statistics.Judged;

/**
 * When a test of the normal distribution would mean nothing.
 *
 * <p>Normal values rounded to a division are rejected at 5 % by Shapiro-Wilk and Anderson-Darling in these shares of cases,
 * measured by simulation: with a standard deviation of one division 47 % and 51 % of ten values, 96 % and 100 % of thirty;
 * of three divisions 8 % and 8 % of ten, 26 % and 58 % of a hundred. With at least four divisions, and at least the root of
 * the count, it is below 8 %: that is asked for.
 */
final class Normality {
    /** With fewer values a test of normality rejects hardly anything, whatever the distribution. */
    static final int FEWEST = 10;

    /** The least spread, in divisions. */
    static final double LEAST_DIVISIONS = 4;

    private Normality() {}

    static Optional<Judged.Reason> reason(Summary all, double division) {
        Require.atLeastZero("division", division);
        if (all.count() > 1 && all.range() == 0) {
            return Optional.of(Judged.Reason.NO_SPREAD);
        }
        if (all.count() < FEWEST) {
            return Optional.of(Judged.Reason.TOO_FEW);
        }
        double divisions = Math.max(LEAST_DIVISIONS, Math.sqrt(all.count()));
        boolean coarse = all.standardDeviation().orElseThrow() < divisions * division;
        return coarse ? Optional.of(Judged.Reason.SCALE_TOO_COARSE) : Optional.empty();
    }
}
