package porebench.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import porebench.method.RoundingRule;
import porebench.port.DataTable;

/** The figures of plots as tables: one row a point, everything with its unit in the heading, nothing rounded. */
final class PlotTables {
    private static final String YES = "yes";
    private static final String NO = "no";

    private PlotTables() {}

    static DataTable of(FactorByTrial data) {
        List<List<String>> rows = new ArrayList<>();
        for (TrialPoint trial : data.trials()) {
            rows.add(List.of(
                    trial.id(),
                    trial.testedAt().toString(),
                    trial.operator(),
                    trial.meter(),
                    number(trial.factorPercent()),
                    state(trial),
                    trial.reason(),
                    yes(trial.isSimulated()),
                    number(data.meanPercent()),
                    data.interval().map(known -> number(known.lowPercent())).orElse(""),
                    data.interval().map(known -> number(known.highPercent())).orElse(""),
                    number(data.reportedPercent())));
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
                                number(bar.contributionPercent()),
                                number(bar.share()),
                                yes(bar.isAssumed()),
                                number(data.combinedPercent())))
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
                    number(trial.factorPercent()),
                    state(trial),
                    trial.reason(),
                    yes(trial.isSimulated())));
        }
        for (FactorOverTime.Step step : data.steps()) {
            rows.add(List.of(
                    step.factorPercent().isPresent() ? "in-force" : "withdrawn",
                    Integer.toString(step.revision()),
                    step.from().toString(),
                    "",
                    "",
                    number(step.factorPercent()),
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
                    number(point.truePercent()),
                    number(point.errorPercent()),
                    number(point.expandedUncertaintyPercent()),
                    Integer.toString(point.count()),
                    yes(point.passes()),
                    number(data.tolerancePercent())));
        }
        for (DialErrors.Predicted predicted : data.model()) {
            rows.add(List.of(
                    "model",
                    data.calibration(),
                    number(predicted.truePercent()),
                    number(predicted.errorPercent()),
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
                    number(found.volume()),
                    number(found.expandedUncertainty()),
                    Integer.toString(found.fills()),
                    yes(found.passes())));
        }
        for (BowlHistory.Step step : data.steps()) {
            rows.add(List.of("in-force", "", step.from().toString(), number(step.volume()), "", "", ""));
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
                                number(reading.elevationMetres()),
                                number(reading.readingPercent()),
                                number(data.truePercent()),
                                number(data.calibratedMetres()),
                                number(data.limitMetres())))
                        .toList());
    }

    static String number(double number) {
        return RoundingRule.withoutNoise(number).stripTrailingZeros().toPlainString();
    }

    private static String number(OptionalDouble number) {
        return number.isPresent() ? number(number.getAsDouble()) : "";
    }

    static String yes(boolean is) {
        return is ? YES : NO;
    }

    private static String state(TrialPoint trial) {
        return trial.state().name().toLowerCase(Locale.ROOT);
    }
}
