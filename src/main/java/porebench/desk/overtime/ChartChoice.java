package porebench.desk.overtime;

import java.util.EnumSet;
import java.util.Set;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/**
 * What a person wants charted.
 *
 * @param by what the trials are put together by
 * @param id which mix, source, meter or operator; blank for none
 * @param kind which chart
 * @param base from which points the limits come
 * @param isKept whether limits are kept through all phases; else they are found anew in each
 * @param rules which patterns are signals, where the chart asks rules
 * @param splits what begins a new phase
 */
record Wishes(
        By by, String id, PhasedChart.Kind kind, BaseWish base, boolean isKept, Set<RunRule> rules, Set<Split> splits) {
    Wishes {
        rules = Set.copyOf(rules);
        splits = Set.copyOf(splits);
    }

    /** Returns what is charted at first: determinations by mix, with two rules that seldom signal by chance. */
    static Wishes usual() {
        return new Wishes(
                By.MIX,
                "",
                PhasedChart.Kind.MEANS,
                BaseWish.USUAL,
                true,
                EnumSet.of(RunRule.BEYOND_LIMITS, RunRule.NINE_ON_ONE_SIDE),
                EnumSet.allOf(Split.class));
    }

    Wishes of(By otherBy, String otherId) {
        return new Wishes(otherBy, otherId, kind, base, isKept, rules, splits);
    }

    Wishes withKind(PhasedChart.Kind other) {
        return new Wishes(by, id, other, base, isKept, rules, splits);
    }

    Wishes withBase(BaseWish other) {
        return new Wishes(by, id, kind, other, isKept, rules, splits);
    }

    Wishes withKept(boolean kept) {
        return new Wishes(by, id, kind, base, kept, rules, splits);
    }

    Wishes with(RunRule rule, boolean wanted) {
        Set<RunRule> others = EnumSet.noneOf(RunRule.class);
        others.addAll(rules);
        if (wanted) {
            others.add(rule);
        } else {
            others.remove(rule);
        }
        return new Wishes(by, id, kind, base, isKept, others, splits);
    }

    Wishes with(Split split, boolean wanted) {
        Set<Split> others = EnumSet.noneOf(Split.class);
        others.addAll(splits);
        if (wanted) {
            others.add(split);
        } else {
            others.remove(split);
        }
        return new Wishes(by, id, kind, base, isKept, rules, others);
    }
}
