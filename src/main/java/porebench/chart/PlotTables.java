package porebench.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import porebench.chart.factor.BudgetBars;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.look.TableCells;
import porebench.chart.look.TrialPoint;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationReadings;
import porebench.port.DataTable;

/** The figures of plots as tables: one row a point, everything with its unit in the heading, nothing rounded. */
final class PlotTables {

    private PlotTables() {}

    static DataTable of(FactorByTrial data) {
        List<List<String>> rows = new ArrayList<>();
        for (TrialPoint trial : data.trials()) {
            rows.add(List.of(
                    trial.id(),
                    trial.testedAt().toString(),
                    trial.operator(),
                    trial.meter(),
                    TableCells.number(trial.factorPercent()),
                    state(trial),
                    trial.reason(),
                    TableCells.yes(trial.isSimulated()),
                    TableCells.number(data.meanPercent()),
                    data.interval()
                            .map(known -> TableCells.number(known.lowPercent()))
                            .orElse(""),
                    data.interval()
                            .map(known -> TableCells.number(known.highPercent()))
                            .orElse(""),
                    TableCells.number(data.reportedPercent())));
        }
        return new DataTable(
                List.of(
                        "trial_id",
                        "tested_at",
                        "operator",
                        "meter_id",
                        "factor_pct_air",
                        "state",
                        "reason",
                        "simulated",
                        "mean_pct_air",
                        "interval_low_pct_air",
                        "interval_high_pct_air",
                        "reported_pct_air"),
                rows);
    }

    static DataTable of(BudgetBars data) {
        return new DataTable(
                List.of("part", "contribution_pct_air", "share_of_variance", "assumed", "combined_pct_air"),
                data.bars().stream()
                        .map(bar -> List.of(
                                bar.name(),
                                TableCells.number(bar.contributionPercent()),
                                TableCells.number(bar.share()),
                                TableCells.yes(bar.isAssumed()),
                                TableCells.number(data.combinedPercent())))
                        .toList());
    }

    static DataTable of(FactorOverTime data) {
        List<List<String>> rows = new ArrayList<>();
        for (TrialPoint trial : data.trials()) {
            rows.add(List.of(
                    "trial",
                    trial.id(),
                    trial.testedAt().toString(),
                    trial.operator(),
                    trial.meter(),
                    TableCells.number(trial.factorPercent()),
                    state(trial),
                    trial.reason(),
                    TableCells.yes(trial.isSimulated())));
        }
        for (FactorOverTime.Step step : data.steps()) {
            rows.add(List.of(
                    step.factorPercent().isPresent() ? "in-force" : "withdrawn",
                    Integer.toString(step.revision()),
                    step.from().toString(),
                    "",
                    "",
                    TableCells.number(step.factorPercent()),
                    "",
                    "",
                    ""));
        }
        for (FactorOverTime.Begun begun : data.begun()) {
            rows.add(List.of("determination", begun.id(), begun.on().toString(), "", "", "", "", "", ""));
        }
        return new DataTable(
                List.of("series", "id", "at", "operator", "meter_id", "factor_pct_air", "state", "reason", "simulated"),
                rows);
    }

    static DataTable of(DialErrors data) {
        List<List<String>> rows = new ArrayList<>();
        for (DialErrors.Point point : data.points()) {
            rows.add(List.of(
                    "check-point",
                    data.calibration(),
                    TableCells.number(point.truePercent()),
                    TableCells.number(point.errorPercent()),
                    TableCells.number(point.expandedUncertaintyPercent()),
                    Integer.toString(point.count()),
                    TableCells.yes(point.passes()),
                    TableCells.number(data.tolerancePercent())));
        }
        for (DialErrors.Predicted predicted : data.model()) {
            rows.add(List.of(
                    "model",
                    data.calibration(),
                    TableCells.number(predicted.truePercent()),
                    TableCells.number(predicted.errorPercent()),
                    "",
                    "",
                    "",
                    ""));
        }
        return new DataTable(
                List.of(
                        "series",
                        "calibration_id",
                        "true_air_pct",
                        "error_pct_air",
                        "expanded_uncertainty_pct_air",
                        "readings",
                        "passes",
                        "tolerance_pct_air"),
                rows);
    }

    static DataTable of(BowlHistory data) {
        String unit = "_" + data.unit();
        List<List<String>> rows = new ArrayList<>();
        for (BowlHistory.Found found : data.found()) {
            rows.add(List.of(
                    "found",
                    found.id(),
                    found.on().toString(),
                    TableCells.number(found.volume()),
                    TableCells.number(found.expandedUncertainty()),
                    Integer.toString(found.fills()),
                    TableCells.yes(found.passes())));
        }
        for (BowlHistory.Step step : data.steps()) {
            rows.add(List.of("in-force", "", step.from().toString(), TableCells.number(step.volume()), "", "", ""));
        }
        return new DataTable(
                List.of(
                        "series",
                        "calibration_id",
                        "from",
                        "volume" + unit,
                        "expanded_uncertainty" + unit,
                        "fills",
                        "passes"),
                rows);
    }

    static DataTable of(ElevationReadings data) {
        return new DataTable(
                List.of("elevation_m", "reading_pct_air", "true_air_pct", "calibrated_at_m", "limit_m"),
                data.readings().stream()
                        .map(reading -> List.of(
                                TableCells.number(reading.elevationMetres()),
                                TableCells.number(reading.readingPercent()),
                                TableCells.number(data.truePercent()),
                                TableCells.number(data.calibratedMetres()),
                                TableCells.number(data.limitMetres())))
                        .toList());
    }

    private static String state(TrialPoint trial) {
        return trial.state().name().toLowerCase(Locale.ROOT);
    }
}
