package porebench.chart;

import java.util.List;
import java.util.OptionalDouble;
import porebench.record.port.DataTable;

/** The figures of the plots of a study as tables, nothing rounded. */
final class StudyTables {
    private StudyTables() {}

    static DataTable of(ComponentShares data) {
        return new DataTable(
                List.of("component", "share_pct", "standard_deviation", "remark"),
                data.shares().stream()
                        .map(one -> List.of(
                                one.name(), number(one.sharePercent()), number(one.standardDeviation()), one.words()))
                        .toList());
    }

    /** In the form that a study is read from. */
    static DataTable of(ReadingsBySample data) {
        return new DataTable(
                List.of("operator", "sample", "repeat", "value"),
                data.readings().stream()
                        .map(one -> List.of(
                                data.operators().get(one.operator()),
                                data.samples().get(one.sample()),
                                Integer.toString(one.repeat()),
                                PlotTables.number(one.value())))
                        .toList());
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? PlotTables.number(number.getAsDouble()) : "";
    }
}
