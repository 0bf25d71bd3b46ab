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
record ChartChoice(
        GroupedBy by,
        String id,
        PhasedChart.Kind kind,
        BaseChoice base,
        boolean isKept,
        Set<RunRule> rules,
        Set<Split> splits) {
    ChartChoice {
        rules = Set.copyOf(rules);
        splits = Set.copyOf(splits);
    }

    /** Returns what is charted at first: determinations by mix, with two rules that seldom signal by chance. */
    static ChartChoice usual() {
        return new ChartChoice(
                GroupedBy.MIX,
                "",
                PhasedChart.Kind.MEANS,
                BaseChoice.USUAL,
                true,
                EnumSet.of(RunRule.BEYOND_LIMITS, RunRule.NINE_ON_ONE_SIDE),
                EnumSet.allOf(Split.class));
    }

    ChartChoice of(GroupedBy otherBy, String otherId) {
        return new ChartChoice(otherBy, otherId, kind, base, isKept, rules, splits);
    }

    ChartChoice withKind(PhasedChart.Kind other) {
        return new ChartChoice(by, id, other, base, isKept, rules, splits);
    }

    ChartChoice withBase(BaseChoice other) {
        return new ChartChoice(by, id, kind, other, isKept, rules, splits);
    }

    ChartChoice withKept(boolean kept) {
        return new ChartChoice(by, id, kind, base, kept, rules, splits);
    }

    ChartChoice with(RunRule rule, boolean wanted) {
        Set<RunRule> others = EnumSet.noneOf(RunRule.class);
        others.addAll(rules);
        if (wanted) {
            others.add(rule);
        } else {
            others.remove(rule);
        }
        return new ChartChoice(by, id, kind, base, isKept, others, splits);
    }

    ChartChoice with(Split split, boolean wanted) {
        Set<Split> others = EnumSet.noneOf(Split.class);
        others.addAll(splits);
        if (wanted) {
            others.add(split);
        } else {
            others.remove(split);
        }
        return new ChartChoice(by, id, kind, base, isKept, rules, others);
    }
}
