package porebench.desk.overtime;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import porebench.desk.form.TypedDraft;
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

    /** Returns the form of what is charted at first: determinations by mix, with two rules that seldom signal by chance. */
    static TypedDraft usual() {
        TypedDraft draft = TypedDraft.BLANK
                .with(ChartFields.BY, ChartFields.symbol(GroupedBy.MIX))
                .with(ChartFields.KIND, ChartFields.symbol(PhasedChart.Kind.MEANS))
                .with(ChartFields.BASE, ChartFields.FIRST)
                .with(ChartFields.COUNT, Integer.toString(BaseChoice.USUAL.count()))
                .with(ChartFields.LIMITS, ChartFields.KEPT)
                .with(ChartFields.of(RunRule.BEYOND_LIMITS), true)
                .with(ChartFields.of(RunRule.NINE_ON_ONE_SIDE), true);
        for (Split split : Split.values()) {
            draft = draft.with(ChartFields.of(split), true);
        }
        return draft;
    }

    /**
     * Reads the form.
     *
     * @param base the base that was typed, or the one before while what is typed is none
     */
    static ChartChoice of(TypedDraft draft, BaseChoice base) {
        return new ChartChoice(
                chosen(GroupedBy.values(), draft.text(ChartFields.BY)),
                draft.text(ChartFields.WHICH),
                chosen(PhasedChart.Kind.values(), draft.text(ChartFields.KIND)),
                base,
                draft.text(ChartFields.LIMITS).equals(ChartFields.KEPT),
                Arrays.stream(RunRule.values())
                        .filter(rule -> draft.isYes(ChartFields.of(rule)))
                        .collect(Collectors.toSet()),
                Arrays.stream(Split.values())
                        .filter(split -> draft.isYes(ChartFields.of(split)))
                        .collect(Collectors.toSet()));
    }

    private static <E extends Enum<E>> E chosen(E[] choices, String symbol) {
        return Arrays.stream(choices)
                .filter(choice -> ChartFields.symbol(choice).equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    ChartChoice withKind(PhasedChart.Kind other) {
        return new ChartChoice(by, id, other, base, isKept, rules, splits);
    }
}
