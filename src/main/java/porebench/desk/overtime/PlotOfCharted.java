package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import porebench.chart.control.ControlPlot;
import porebench.desk.form.Numbers;
import porebench.evidence.FactorHistory.Made;
import porebench.method.Digits;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.statistics.control.ChartPoint;
import porebench.statistics.control.CusumChart;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

/** Turns an outcome into what the plot shows. */
final class PlotOfCharted {
    private static final int DECIMALS = Digits.AIR;
    private static final int SUM_DECIMALS = Digits.SCATTER;

    private final Charted outcome;
    private final Map<Integer, List<Charted.Signal>> signalsAt;
    private final Texts texts;
    private final Numbers numbers;
    private final SignalWords signals;
    private final ProblemText problems;
    private final OptionalDouble pointsPerFalseAlarm;

    PlotOfCharted(
            Charted outcome,
            SignalWords signals,
            Texts texts,
            Numbers numbers,
            ProblemText problems,
            OptionalDouble pointsPerFalseAlarm) {
        this.problems = problems;
        this.pointsPerFalseAlarm = pointsPerFalseAlarm;
        this.outcome = outcome;
        this.signalsAt = outcome.signals().stream().collect(Collectors.groupingBy(Charted.Signal::index));
        this.signals = signals;
        this.texts = texts;
        this.numbers = numbers;
    }

    /** Returns what the plot shows; empty while there is no point. */
    Optional<ControlPlot> plot() {
        return outcome.series().points().isEmpty() ? Optional.empty() : Optional.of(of());
    }

    private ControlPlot of() {
        List<ControlPlot.Point> points = new ArrayList<>();
        List<ControlPlot.ChangeMark> changes = new ArrayList<>();
        List<PhasedChart.Phase> phases = outcome.phases();
        for (int number = 0; number < phases.size(); number++) {
            PhasedChart.Phase phase = phases.get(number);
            Map<Integer, ChartPoint> level = byIndex(phase, false);
            Map<Integer, ChartPoint> spread = byIndex(phase, true);
            for (int i = phase.first(); i < phase.first() + phase.count(); i++) {
                points.add(point(
                        i,
                        number,
                        Optional.ofNullable(level.get(i)),
                        Optional.ofNullable(spread.get(i)),
                        sums(phase, i)));
                change(i, i == phase.first() && i > 0).ifPresent(changes::add);
            }
        }
        PhasedChart.Base base = Charted.base(outcome.series(), outcome.wishes());
        boolean isDifference = outcome.series().isDifference();
        return new ControlPlot(
                points,
                changes,
                levelAxis(isDifference),
                outcome.wishes().kind().hasSpread() ? texts.get("axis." + spreadKey()) : "",
                base.first(),
                base.isKept() ? Math.max(0, Math.min(base.count(), points.size() - base.first())) : 0,
                outcome.series().isSimulated(),
                new NotCharted(outcome, problems).all(),
                pointsPerFalseAlarm);
    }

    /** Says what is plotted; of sums also k and h, which are those of the newest phase. */
    private String levelAxis(boolean isDifference) {
        String axis = texts.get("axis." + levelKey() + (isDifference ? ".difference" : ".factor"));
        List<PhasedChart.Limited> limited = outcome.limited();
        return limited.isEmpty()
                ? axis
                : limited.get(limited.size() - 1)
                        .cusum()
                        .map(sums -> texts.get(
                                "axis.sum.k-h",
                                axis,
                                numbers.show(sums.slack(), SUM_DECIMALS),
                                numbers.show(sums.interval(), SUM_DECIMALS)))
                        .orElse(axis);
    }

    private String levelKey() {
        return switch (outcome.wishes().kind()) {
            case TRIALS -> "value";
            case MEANS, MEAN_RANGE, MEAN_DEVIATION -> "mean";
            case EWMA -> "average";
            case CUSUM -> "sum";
        };
    }

    private String spreadKey() {
        return switch (outcome.wishes().kind()) {
            case MEAN_RANGE -> "range";
            case MEAN_DEVIATION -> "deviation";
            case MEANS, TRIALS, EWMA, CUSUM -> "moving-range";
        };
    }

    private static Map<Integer, ChartPoint> byIndex(PhasedChart.Phase phase, boolean isOfSpread) {
        Map<Integer, ChartPoint> points = new HashMap<>();
        phase.chart().meaningful().ifPresent(limited -> {
            List<ChartPoint> all = isOfSpread ? limited.spread() : limited.level();
            all.forEach(point -> points.put(point.index(), point));
        });
        return points;
    }

    private static Optional<ControlPlot.BothSums> sums(PhasedChart.Phase phase, int index) {
        return phase.chart().meaningful().flatMap(PhasedChart.Limited::cusum).map(chart -> {
            CusumChart.Sums sums = chart.points().get(index - phase.first());
            return new ControlPlot.BothSums(sums.high(), sums.low(), chart.slack(), chart.interval());
        });
    }

    private ControlPlot.Point point(
            int index,
            int phase,
            Optional<ChartPoint> level,
            Optional<ChartPoint> spread,
            Optional<ControlPlot.BothSums> sums) {
        Series.Point point = outcome.series().points().get(index);
        return new ControlPlot.Point(
                point.first().trial().id().text(),
                point.day().toString(),
                said(index, level, spread),
                phase + 1,
                level.map(PlotOfCharted::plotted).orElseGet(() -> without(point)),
                spread.map(PlotOfCharted::plotted),
                sums);
    }

    private List<String> said(int index, Optional<ChartPoint> level, Optional<ChartPoint> spread) {
        Series.Point point = outcome.series().points().get(index);
        Made first = point.first();
        List<String> said = new ArrayList<>();
        said.add(signals.point(index));
        said.add(texts.get(
                "tip.made",
                first.trial().mixId().text(),
                first.trial().operator(),
                first.trial().meterId().text()));
        said.add(texts.get(
                outcome.series().isDifference() ? "tip.difference" : "tip.value",
                numbers.show(point.mean(), DECIMALS),
                point.values().size()));
        signalsAt.getOrDefault(index, List.of()).stream()
                .filter(signal -> level.isPresent() || spread.isPresent())
                .forEach(signal -> said.add(texts.get("tip.signal", signals.happened(signal))));
        return said;
    }

    private static ControlPlot.Plotted plotted(ChartPoint point) {
        return new ControlPlot.Plotted(
                point.value(),
                OptionalDouble.of(point.centre()),
                OptionalDouble.of(point.low()),
                OptionalDouble.of(point.high()),
                point.signals().stream().map(RunRule::symbol).toList());
    }

    /** A phase without limits still shows its points. */
    private static ControlPlot.Plotted without(Series.Point point) {
        return new ControlPlot.Plotted(
                point.mean(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of());
    }

    private Optional<ControlPlot.ChangeMark> change(int index, boolean isBreak) {
        List<porebench.evidence.FactorHistory.HistoryChange> all =
                outcome.series().points().get(index).changes();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(new ControlPlot.ChangeMark(index, signals.changes(all), isBreak));
    }
}
