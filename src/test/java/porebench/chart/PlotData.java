package porebench.chart;

import java.awt.Color;
import java.awt.Font;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jfree.chart.plot.XYPlot;
import porebench.chart.control.ControlPlot;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.look.ChartLook;
import porebench.chart.look.TrialPoint;

/** Invented trials for tests of plots. */
public final class PlotData {
    public static final ChartLook LOOK = new ChartLook(
            Color.WHITE,
            Color.BLACK,
            Color.LIGHT_GRAY,
            Color.BLUE,
            Color.GRAY,
            Color.RED,
            Color.GREEN,
            new Font(Font.SANS_SERIF, Font.PLAIN, 12),
            1);

    public static final ChartLook DARK = new ChartLook(
            Color.BLACK,
            Color.YELLOW,
            Color.DARK_GRAY,
            Color.CYAN,
            Color.GRAY,
            Color.PINK,
            Color.ORANGE,
            new Font(Font.SANS_SERIF, Font.PLAIN, 12),
            1);

    private PlotData() {}

    public static TrialPoint counted(String id, double factor) {
        return trial(id, OptionalDouble.of(factor), TrialPoint.State.COUNTED, "");
    }

    static TrialPoint trial(String id, OptionalDouble factor, TrialPoint.State state, String reason) {
        return new TrialPoint(
                id, LocalDateTime.of(2026, 3, 2, 10, 30), "R. Vane", "meter-2", factor, state, reason, false);
    }

    public static FactorByTrial mixed() {
        return new FactorByTrial(
                List.of(
                        counted("K7-1", 0.4),
                        counted("K7-2", 0.5),
                        trial("K7-3", OptionalDouble.of(1.4), TrialPoint.State.STRUCK, "spilled <half> the water"),
                        trial("K7-4", OptionalDouble.empty(), TrialPoint.State.VOID, "the meter leaked")),
                OptionalDouble.of(0.45),
                Optional.of(new FactorByTrial.Interval(-0.1853, 1.0853)),
                OptionalDouble.of(0.4));
    }

    /** The first three of the same trials, had they been simulated. */
    static FactorByTrial simulated() {
        return new FactorByTrial(
                mixed().trials().stream()
                        .limit(3)
                        .map(trial -> new TrialPoint(
                                trial.id(),
                                trial.testedAt(),
                                trial.operator(),
                                trial.meter(),
                                trial.factorPercent(),
                                trial.state(),
                                trial.reason(),
                                true))
                        .toList(),
                OptionalDouble.of(0.45),
                Optional.empty(),
                OptionalDouble.of(0.4));
    }

    public static FactorOverTime overTime() {
        return new FactorOverTime(
                mixed().trials(),
                List.of(
                        new FactorOverTime.Step(1, LocalDate.of(2026, 1, 10), OptionalDouble.of(0.3)),
                        new FactorOverTime.Step(2, LocalDate.of(2026, 3, 1), OptionalDouble.empty()),
                        new FactorOverTime.Step(3, LocalDate.of(2026, 3, 5), OptionalDouble.of(0.4))),
                List.of(
                        new FactorOverTime.Begun("K7/1", LocalDate.of(2026, 1, 5)),
                        new FactorOverTime.Begun("K7/2", LocalDate.of(2026, 3, 2))),
                LocalDate.of(2026, 4, 1));
    }

    /** Values between 0.3 and 0.5 % air in turn by a step that fills the range. */
    public static ControlPlot many() {
        List<ControlPlot.Point> points = new ArrayList<>();
        for (int i = 0; i < 100_000; i++) {
            ControlPlot.Plotted level = new ControlPlot.Plotted(
                    0.3 + 0.2 * (i * 37 % 101) / 100,
                    OptionalDouble.of(0.4),
                    OptionalDouble.of(0.1),
                    OptionalDouble.of(0.7),
                    i % 1000 == 500 ? List.of("run") : List.of());
            points.add(new ControlPlot.Point(
                    "T-" + i, "day " + i / 500, List.of("Trial " + i), 1, level, Optional.empty(), Optional.empty()));
        }
        return new ControlPlot(
                points, List.of(), "factor G (% air)", "", 0, 20, false, List.of(), OptionalDouble.empty());
    }

    /** Returns the words of a plot's legend, from left to right. */
    public static List<String> legend(XYPlot plot) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < plot.getLegendItems().getItemCount(); i++) {
            words.add(plot.getLegendItems().get(i).getLabel());
        }
        return words;
    }
}
