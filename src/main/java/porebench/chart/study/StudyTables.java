package porebench.chart.study;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import porebench.chart.look.TableCells;
import porebench.port.DataTable;
import porebench.statistics.comparison.Mandel;

/** The figures of the plots of a study as tables, nothing rounded. */
public final class StudyTables {
    private StudyTables() {}

    public static DataTable of(ComponentShares data) {
        return new DataTable(
                List.of("component", "share_pct", "standard_deviation", "remark"),
                data.shares().stream()
                        .map(one -> List.of(
                                one.name(), number(one.sharePercent()), number(one.standardDeviation()), one.words()))
                        .toList());
    }

    /** In the form that a study is read from. */
    public static DataTable of(ReadingsBySample data) {
        return new DataTable(
                List.of("operator", "sample", "repeat", "value"),
                data.readings().stream()
                        .map(one -> List.of(
                                data.operators().get(one.operator()),
                                data.samples().get(one.sample()),
                                Integer.toString(one.repeat()),
                                TableCells.number(one.value())))
                        .toList());
    }

    public static DataTable of(MandelPlot data) {
        return new DataTable(
                List.of(
                        "statistic",
                        "laboratory",
                        "level",
                        "results",
                        "value",
                        "critical_5",
                        "critical_1",
                        "verdict",
                        "reason"),
                data.values().stream()
                        .map(one -> List.of(
                                data.statistic().symbol(),
                                data.laboratories().get(one.laboratory()),
                                data.levels().get(one.level()),
                                Integer.toString(one.results()),
                                cell(one, found -> TableCells.number(found.statistic())),
                                cell(one, found -> TableCells.number(found.critical5())),
                                cell(one, found -> TableCells.number(found.critical1())),
                                cell(one, found -> found.suspicion().name().toLowerCase(Locale.ROOT)),
                                one.whyNot()))
                        .toList());
    }

    private static String cell(MandelPlot.Value value, Function<Mandel, String> said) {
        return value.found().map(said).orElse("");
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? TableCells.number(number.getAsDouble()) : "";
    }
}
