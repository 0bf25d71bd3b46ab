package porebench.method.risk;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import porebench.method.Problem;

/** What a person can correct before shares of loads are worked out: the same in the window and on the command line. */
public final class RiskCheck {
    public static final String TOLERANCE = "tolerance";
    public static final String SPREAD = "spread";
    public static final String READING_SPREAD = "reading-spread";

    private RiskCheck() {}

    /**
     * Checks typed figures.
     *
     * @param tolerance how far the air may lie from the target, in % air
     * @param spread standard deviation from load to load, in % air
     * @param readingSpread standard deviation of readings of one load, in % air
     */
    public static List<Problem> check(BigDecimal tolerance, BigDecimal spread, BigDecimal readingSpread) {
        List<Problem> problems = new ArrayList<>();
        if (tolerance.signum() <= 0) {
            problems.add(Problem.error(TOLERANCE, "risk.tolerance-not-positive", tolerance));
        }
        if (spread.signum() < 0) {
            problems.add(Problem.error(SPREAD, "risk.spread-negative", spread));
        }
        if (readingSpread.signum() < 0) {
            problems.add(Problem.error(READING_SPREAD, "risk.reading-spread-negative", readingSpread));
        }
        return problems;
    }
}
