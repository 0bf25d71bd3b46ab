package porebench.chart.factor;

import java.util.List;
import porebench.quantity.Require;

/**
 * What the plot of an uncertainty budget shows: what each part contributes, and what they come to together.
 *
 * @param bars the parts from the top down, usually the largest first
 * @param combinedPercent the combined standard uncertainty, in % air, at least 0
 */
public record BudgetBars(List<Bar> bars, double combinedPercent) {
    public BudgetBars {
        bars = List.copyOf(bars);
        Require.atLeastZero("combinedPercent", combinedPercent);
    }

    /**
     * One part.
     *
     * @param name what it is, as said on the axis
     * @param contributionPercent its contribution to the standard uncertainty, in % air, at least 0
     * @param share its share of the variance, from 0 to 1
     * @param isAssumed whether its figure is assumed, rather than found in the laboratory
     */
    public record Bar(String name, double contributionPercent, double share, boolean isAssumed) {
        public Bar {
            Require.atLeastZero("contributionPercent", contributionPercent);
            Require.within("share", share, 0, 1);
        }
    }
}
