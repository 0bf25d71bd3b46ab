package porebench.evidence.change;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonPlan;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.comparison.Equivalence;

/**
 * Readings before and after a change, with the margin that matters.
 *
 * @param found the difference and what is known of it, in % air
 * @param marginPercent how far a factor may move before it matters, in % air, greater than 0
 * @param divisionPercent a division of the scale that was read, in % air, greater than 0
 * @param usualPercent the standard deviation of trials that is planned with, in % air; empty where these readings tell it alone
 */
public record Comparison(
        BeforeAndAfter found, double marginPercent, double divisionPercent, OptionalDouble usualPercent) {
    public Comparison {
        Require.positive("marginPercent", marginPercent);
        Require.positive("divisionPercent", divisionPercent);
        usualPercent.ifPresent(usual -> Require.positive("usualPercent", usual));
    }

    /** Returns half the step in which a profile reports the factor, in % air: a smaller change is none on the card. */
    public static BigDecimal usualMargin(Profile profile) {
        return profile.factorRounding().step().divide(BigDecimal.valueOf(2));
    }

    public ComparisonVerdict verdict() {
        return found.verdict(marginPercent);
    }

    public Equivalence equivalence() {
        return found.equivalence(marginPercent);
    }

    public ComparisonPlan plan() {
        return found.plan(marginPercent, usualPercent);
    }

    /** Returns what a reader of the numbers must know besides: warnings, none of them of a single reading. */
    public List<Problem> doubts() {
        List<Problem> doubts = new ArrayList<>();
        if (marginPercent < Slack.under(divisionPercent)) {
            doubts.add(Problem.warning(
                    "margin", "change.margin-below-division", plain(marginPercent), plain(divisionPercent)));
        }
        switch (found.unit()) {
            case READINGS -> doubts.add(Problem.warning("determination", "change.determinations-unseen"));
            case DETERMINATIONS_OF_ONE_SIDE ->
                doubts.add(Problem.warning("determination", "change.determinations-borrowed"));
            case READINGS_WITH_LABORATORY, DETERMINATIONS -> {
                // What determinations differ by is in the numbers.
            }
        }
        if (found.isOfDivision()) {
            doubts.add(Problem.warning("value", "change.readings-still", plain(divisionPercent)));
        }
        return doubts;
    }

    private static BigDecimal plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros();
    }
}
