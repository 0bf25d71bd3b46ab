package porebench.chart.control;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.chart.control.ControlPlot.BothSums;
import porebench.chart.control.ControlPlot.NotCounted;
import porebench.chart.control.ControlPlot.Plotted;
import porebench.chart.control.ControlPlot.Point;
import porebench.chart.look.TableColumns;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

/** The figures of a control chart as a table: one row a point, then one for each trial that is shown and not counted. */
final class ControlTable {
    private ControlTable() {}

    /** A row: a point with its number, or else a trial. */
    private record Row(String number, String changed, Optional<Point> point, Optional<NotCounted> trial) {
        String point(Function<Point, String> cell) {
            return point.map(cell).orElse("");
        }

        String either(Function<Point, String> ofPoint, Function<NotCounted, String> ofTrial) {
            return point.map(ofPoint).or(() -> trial.map(ofTrial)).orElse("");
        }

        String sums(Function<BothSums, Double> sum) {
            return point(one -> one.sums().map(sum).map(TableColumns::number).orElse(""));
        }
    }

    static DataTable of(ControlPlot data) {
        Map<Integer, String> changes = data.changes().stream()
                .collect(Collectors.groupingBy(
                        ControlPlot.ChangeMark::before,
                        Collectors.mapping(ControlPlot.ChangeMark::words, Collectors.joining("; "))));
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < data.points().size(); i++) {
            rows.add(new Row(
                    Integer.toString(i + 1),
                    changes.getOrDefault(i, ""),
                    Optional.of(data.points().get(i)),
                    Optional.empty()));
        }
        data.notCounted().forEach(trial -> rows.add(new Row("", "", Optional.empty(), Optional.of(trial))));
        TableColumns<Row> columns = new TableColumns<Row>()
                .text("point", Row::number)
                .text(
                        "trial_id",
                        row -> row.either(Point::id, shown -> shown.trial().id()))
                .text(
                        "on",
                        row -> row.either(
                                Point::label,
                                shown -> shown.trial().testedAt().toLocalDate().toString()))
                .text("phase", row -> row.point(point -> Integer.toString(point.phase())))
                .text(
                        "value_pct_air",
                        row -> row.either(
                                point -> TableColumns.number(point.level().value()),
                                shown -> TableColumns.number(shown.value())));
        bounds("", "signals", columns, point -> Optional.of(point.level()));
        columns.text(
                "spread_pct_air",
                row -> row.point(point -> point.spread()
                        .map(Plotted::value)
                        .map(TableColumns::number)
                        .orElse("")));
        bounds("spread_", "spread_signals", columns, Point::spread);
        return columns.yes("simulated", row -> data.isSimulated())
                .text("changed_before", Row::changed)
                .text(
                        "state",
                        row -> row.either(
                                point -> TrialPoint.State.COUNTED.symbol(),
                                shown -> shown.trial().state().symbol()))
                .text(
                        "reason",
                        row -> row.either(point -> "", shown -> shown.trial().reason()))
                .text("high_sum_pct_air", row -> row.sums(BothSums::high))
                .text("low_sum_pct_air", row -> row.sums(BothSums::low))
                .text("slack_k_pct_air", row -> row.sums(BothSums::slack))
                .text("interval_h_pct_air", row -> row.sums(BothSums::interval))
                .text(
                        "points_per_false_alarm",
                        row -> row.point(point -> TableColumns.number(data.pointsPerFalseAlarm())))
                .table(rows);
    }

    /** Adds centre, limits and signals of a chart. */
    private static void bounds(
            String chart, String signals, TableColumns<Row> columns, Function<Point, Optional<Plotted>> part) {
        bound(chart + "centre_pct_air", columns, part, Plotted::centre);
        bound(chart + "low_pct_air", columns, part, Plotted::low);
        bound(chart + "high_pct_air", columns, part, Plotted::high);
        columns.text(
                signals,
                row -> row.point(point -> part.apply(point)
                        .map(plotted -> String.join(";", plotted.signals()))
                        .orElse("")));
    }

    private static void bound(
            String name,
            TableColumns<Row> columns,
            Function<Point, Optional<Plotted>> part,
            Function<Plotted, OptionalDouble> bound) {
        columns.text(
                name,
                row -> row.point(point ->
                        part.apply(point).map(bound).map(TableColumns::number).orElse("")));
    }
}
