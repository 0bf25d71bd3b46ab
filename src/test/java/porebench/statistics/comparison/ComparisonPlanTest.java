package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import porebench.statistics.comparison.ComparisonPlan.More;

class ComparisonPlanTest {
    /** Two groups of n whose standard deviation is exactly s: n - 2 readings in the middle would not do, so pairs to either side. */
    private static ReadingSets around(double mean, double deviation, int pairs) {
        double[] readings = new double[2 * pairs];
        double away = deviation * Math.sqrt((2.0 * pairs - 1) / (2 * pairs));
        for (int i = 0; i < readings.length; i++) {
            readings[i] = mean + (i % 2 == 0 ? away : -away);
        }
        return ReadingSets.of(List.of(readings));
    }

    private static ComparisonPlan plan(ReadingSets before, ReadingSets after, double margin) {
        return BeforeAndAfter.of(before, after, 1e-6, false, Optional.empty()).plan(margin, OptionalDouble.empty());
    }

    /**
     * PowerTOST 1.5-6 and R's integral: of two groups of a standard deviation of 0.1 and a margin of 0.2, six each have a power of
     * 0.88406330387282, five each 0.78357987. Four each are there, and two more each are needed; the groups lie 0.15 apart, so
     * that it is not decided yet.
     */
    @Test
    void asManyMoreAreNeededAsTheIntegralSays() {
        ComparisonPlan plan = plan(around(0.4, 0.1, 2), around(0.55, 0.1, 2), 0.2);
        assertThat(plan.onEachSide()).contains(new More(2, 0));
        assertThat(plan(around(0.4, 0.1, 3), around(0.4, 0.1, 3), 0.2).power())
                .isCloseTo(0.88406330387282, within(1e-9));
    }

    /**
     * By power() of src/test/r/comparison.R, with the root of 0.01/4 + 0.01/m and Welch's degrees of freedom: of m = 9 after the change
     * 0.7964689, of 10 it is 0.8055311, which are six more.
     */
    @Test
    void moreAreNeededWhereOnlyOneSideCanBeAddedTo() {
        ComparisonPlan plan = plan(around(0.4, 0.1, 2), around(0.55, 0.1, 2), 0.2);
        assertThat(plan.after()).contains(new More(6, 0));
    }

    @Test
    void noneIsNeededOnceItIsDecided() {
        assertThat(plan(around(0.4, 0.01, 3), around(0.4, 0.01, 3), 0.05).onEachSide())
                .contains(new More(0, 0));
        assertThat(plan(around(0.4, 0.01, 3), around(0.9, 0.01, 3), 0.05).after())
                .contains(new More(0, 0));
    }

    /** What three before leave uncertain, no number after makes up for: s / sqrt(3) times the t of 2 degrees of freedom is 0.08. */
    @Test
    void noNumberAfterMakesUpForTooFewBefore() {
        ReadingSets three = ReadingSets.of(List.of(new double[] {0.35, 0.40, 0.45}));
        ComparisonPlan plan = plan(three, three, 0.05);
        assertThat(plan.after()).isEmpty();
        assertThat(plan.onEachSide().orElseThrow().readings()).isPositive();
    }

    @Test
    void determinationsAreCountedWithTheirTrials() {
        ReadingSets before = ReadingSets.of(List.of(new double[] {0.38, 0.42, 0.40}, new double[] {0.44, 0.48, 0.46}));
        ReadingSets after = ReadingSets.of(List.of(new double[] {0.40, 0.44, 0.42}, new double[] {0.46, 0.50, 0.48}));
        More more = plan(before, after, 0.05).onEachSide().orElseThrow();
        assertThat(more.determinations()).isPositive();
        assertThat(more.readings()).isEqualTo(3 * more.determinations());
    }

    /** What two determinations differ by, 0.05 each, is more than the margin lets pass: only new determinations shrink it. */
    @Test
    void whatDeterminationsDifferByIsShrunkByDeterminationsOnly() {
        ComparisonPlan plan = BeforeAndAfter.of(
                        around(0.4, 0.02, 2), around(0.4, 0.02, 2), 1e-6, false, Optional.of(new BetweenSets(0.05, 20)))
                .plan(0.05, OptionalDouble.empty());
        More more = plan.onEachSide().orElseThrow();
        assertThat(more.determinations()).isPositive();
        assertThat(more.readings()).isEqualTo(4 * more.determinations());
        assertThat(plan.after()).isEmpty();
    }

    /** Trials that happened to agree are planned with as they usually scatter. */
    @Test
    void theUsualScatterIsPlannedWith() {
        BeforeAndAfter lucky =
                BeforeAndAfter.of(around(0.4, 0.03, 2), around(0.45, 0.04, 2), 1e-6, false, Optional.empty());
        int alone = lucky.plan(0.06, OptionalDouble.empty())
                .onEachSide()
                .orElseThrow()
                .readings();
        ComparisonPlan usual = lucky.plan(0.06, OptionalDouble.of(0.08));
        assertThat(usual.onEachSide().orElseThrow().readings()).isGreaterThan(alone);
        assertThat(usual.power())
                .isLessThan(lucky.plan(0.06, OptionalDouble.empty()).power());
    }
}
