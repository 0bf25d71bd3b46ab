package porebench.chart.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import porebench.chart.look.TableCells;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

/** The figures of a control chart as a table: one row a point, then one for each trial that is shown and not counted. */
public final class ControlTable {
    private static final List<String> COLUMNS = List.of(
            "point",
            "trial_id",
            "on",
            "phase",
            "value_pct_air",
            "centre_pct_air",
            "low_pct_air",
            "high_pct_air",
            "signals",
            "spread_pct_air",
            "spread_centre_pct_air",
            "spread_low_pct_air",
            "spread_high_pct_air",
            "spread_signals",
            "simulated",
            "changed_before",
            "state",
            "reason",
            "high_sum_pct_air",
            "low_sum_pct_air",
            "slack_k_pct_air",
            "interval_h_pct_air",
            "points_per_false_alarm");

    private ControlTable() {}

    public static DataTable of(ControlPlot data) {
        List<List<String>> rows = new ArrayList<>();
        Map<Integer, String> changes = data.changes().stream()
                .collect(Collectors.groupingBy(
                        ControlPlot.ChangeMark::before,
                        Collectors.mapping(ControlPlot.ChangeMark::words, Collectors.joining("; "))));
        for (int i = 0; i < data.points().size(); i++) {
            rows.add(counted(data, i, changes.getOrDefault(i, "")));
        }
        data.notCounted().forEach(shown -> rows.add(notCounted(data, shown)));
        return new DataTable(COLUMNS, rows);
    }

    private static List<String> counted(ControlPlot data, int index, String changed) {
        ControlPlot.Point point = data.points().get(index);
        List<String> row = new ArrayList<>(
                List.of(Integer.toString(index + 1), point.id(), point.label(), Integer.toString(point.phase())));
        row.addAll(cells(point.level()));
        row.addAll(point.spread().map(ControlTable::cells).orElse(blank(5)));
        row.add(TableCells.yes(data.isSimulated()));
        row.add(changed);
        row.addAll(List.of(word(TrialPoint.State.COUNTED), ""));
        row.addAll(point.sums()
                .map(sums -> List.of(
                        TableCells.number(sums.high()),
                        TableCells.number(sums.low()),
                        TableCells.number(sums.slack()),
                        TableCells.number(sums.interval())))
                .orElse(blank(4)));
        row.add(number(data.pointsPerFalseAlarm()));
        return row;
    }

    private static List<String> notCounted(ControlPlot data, ControlPlot.NotCounted shown) {
        List<String> row = new ArrayList<>(List.of(
                "", shown.trial().id(), shown.trial().testedAt().toLocalDate().toString(), "", number(shown.value())));
        row.addAll(blank(9));
        row.add(TableCells.yes(data.isSimulated()));
        row.add("");
        row.addAll(List.of(word(shown.trial().state()), shown.trial().reason()));
        row.addAll(blank(5));
        return row;
    }

    private static List<String> cells(ControlPlot.Plotted plotted) {
        return List.of(
                TableCells.number(plotted.value()),
                number(plotted.centre()),
                number(plotted.low()),
                number(plotted.high()),
                String.join(";", plotted.signals()));
    }

    private static List<String> blank(int count) {
        return Collections.nCopies(count, "");
    }

    private static String word(TrialPoint.State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? TableCells.number(number.getAsDouble()) : "";
    }
}
