package porebench.desk.overtime;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import porebench.record.column.CellType;
import porebench.record.column.Column;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** What is chosen and typed of a control chart, a column a field. */
final class ChartFields {
    /** What leads the names of all fields. */
    static final String LEAD = "overtime.";

    static final Column<ChartChoice, GroupedBy> BY =
            field("by", CellType.choice(GroupedBy.values(), ChartFields::symbol));
    /** Which mix, source, meter or operator. */
    static final Column<ChartChoice, String> WHICH = field("which", CellType.text());

    static final Column<ChartChoice, PhasedChart.Kind> KIND =
            field("kind", CellType.choice(PhasedChart.Kind.values(), ChartFields::symbol));
    static final String FIRST = "first";
    static final String DAYS = "days";
    /** Whether the base is of the first points or of some days. */
    static final Column<ChartChoice, String> BASE =
            field("base", CellType.choice(List.of(FIRST, DAYS), Function.identity()));

    static final Column<ChartChoice, String> COUNT = field("base.count", CellType.text());
    static final Column<ChartChoice, String> FROM = field("base.from", CellType.text());
    static final Column<ChartChoice, String> TO = field("base.to", CellType.text());
    static final String KEPT = "kept";
    /** Whether limits are kept through all phases or found anew in each. */
    static final Column<ChartChoice, String> LIMITS =
            field("limits", CellType.choice(List.of(KEPT, "anew"), Function.identity()));

    private ChartFields() {}

    /** Returns the column that says whether a rule is asked. */
    static Column<ChartChoice, Boolean> of(RunRule rule) {
        return field("rule." + rule.symbol(), CellType.yesNo());
    }

    /** Returns the column that says whether something begins a new phase. */
    static Column<ChartChoice, Boolean> of(Split split) {
        return field("split." + symbol(split), CellType.yesNo());
    }

    private static <V> Column<ChartChoice, V> field(String name, CellType<V> type) {
        return Column.any(LEAD + name, type, any -> Optional.empty());
    }

    /** Returns the word of a choice in the form and in the keys of its texts. */
    static String symbol(Enum<?> choice) {
        return choice.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
