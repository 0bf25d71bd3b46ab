package porebench.statistics;

import java.util.Optional;
import porebench.quantity.Require;

/** When a test of the normal distribution would mean nothing. */
final class Normality {
    /** With fewer values a test of normality rejects hardly anything, whatever the distribution. */
    static final int FEWEST = 10;

    /** The least spread, in divisions. */
    static final double LEAST_DIVISIONS = 3;

    private Normality() {}

    static Optional<Judged.Reason> reason(Summary all, double division) {
        Require.atLeastZero("division", division);
        if (all.count() > 1 && all.range() == 0) {
            return Optional.of(Judged.Reason.NO_SPREAD);
        }
        if (all.count() < FEWEST) {
            return Optional.of(Judged.Reason.TOO_FEW);
        }
        boolean coarse = all.standardDeviation().orElseThrow() < LEAST_DIVISIONS * division;
        return coarse ? Optional.of(Judged.Reason.SCALE_TOO_COARSE) : Optional.empty();
    }
}
