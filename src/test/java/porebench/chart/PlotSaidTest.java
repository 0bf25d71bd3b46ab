package porebench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import porebench.chart.change.DifferenceShown;
import porebench.chart.change.RiskByError;
import porebench.chart.control.ControlPlot;
import porebench.chart.factor.BudgetBars;
import porebench.chart.factor.CoverageOverTime;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.forecast.ForecastCheck;
import porebench.chart.look.Plottable;
import porebench.chart.look.TrialPoint;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationReadings;
import porebench.chart.source.StoneFigures;
import porebench.chart.study.ComponentShares;
import porebench.chart.study.MandelPlot;
import porebench.chart.study.ReadingsBySample;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.RiskCurve;
import porebench.statistics.comparison.Mandel;

/** Every kind of plot says in words the numbers that it draws. */
class PlotSaidTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private static List<String> said(Plottable plot) {
        return plot.said(Locale.ENGLISH);
    }

    @Test
    void trialsInTheirOrder() {
        assertThat(said(PlotData.mixed()))
                .containsExactly(
                        "Across: trial, in the order made. Up: factor G (% air).",
                        "counts: 2 (K7-1: 0.40; K7-2: 0.50).",
                        "struck: 1 (K7-3: 1.40).",
                        "void by its readings: 1 (K7-4: no factor).",
                        "mean of the trials that count: 0.45.",
                        "95 % interval, these trials alone: -0.19 to 1.09.",
                        "factor as reported: 0.40.");
    }

    @Test
    void ofManyTrialsThatCountBetweenWhichFactorsTheyLie() {
        List<TrialPoint> many = new ArrayList<>();
        for (int at = 1; at <= 13; at++) {
            many.add(PlotData.counted("T-" + at, at / 10.0));
        }
        FactorByTrial plot = new FactorByTrial(many, OptionalDouble.of(0.7), Optional.empty(), OptionalDouble.empty());
        assertThat(said(plot)).contains("counts: 13, from 0.10 to 1.30.").doesNotContain("T-1:");
        assertThat(said(new FactorByTrial(List.of(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty())))
                .contains("No trial yet.");
    }

    @Test
    void trialsThatWereSimulatedAreSaidToBe() {
        assertThat(said(PlotData.simulated())).anyMatch(sentence -> sentence.startsWith("SIMULATED for training"));
        assertThat(said(PlotData.mixed())).noneMatch(sentence -> sentence.startsWith("SIMULATED"));
    }

    @Test
    void trialsAndFactorsOverTime() {
        assertThat(said(PlotData.overTime()))
                .contains(
                        "Across: date of the trial. Up: factor G (% air).",
                        "factor in force: 3 (2026-01-10: 0.30; 2026-03-01: no factor; 2026-03-05: 0.40).",
                        "a determination begins: 2 (K7/1: 2026-01-05; K7/2: 2026-03-02).");
    }

    @Test
    void partsOfABudget() {
        // 0.03 of 0.05: (0.03 / 0.05)^2 = 36 %
        BudgetBars plot = new BudgetBars(
                List.of(
                        new BudgetBars.Bar("repeatability", 0.04, 0.64, false),
                        new BudgetBars.Bar("bowl volume", 0.03, 0.36, true)),
                0.05);
        assertThat(said(plot))
                .containsExactly(
                        "Axis: contribution to the standard uncertainty (% air).",
                        "found in the laboratory (in brackets: share of the variance): 1 (repeatability: 0.040 (64"
                                + " %)).",
                        "not found in the laboratory: assumed, or from the profile: 1 (bowl volume: 0.030 (36 %)).",
                        "all together: 0.050.");
    }

    @Test
    void howManyMixesHadAFactor() {
        CoverageOverTime plot = new CoverageOverTime(
                List.of(new CoverageOverTime.Step(DAY, 4, 1), new CoverageOverTime.Step(DAY.plusDays(3), 5, 3)),
                DAY.plusDays(9));
        assertThat(said(plot))
                .containsExactly(
                        "Across: day. Up: mixes.",
                        "with a factor that may be used: 2 (2026-03-05: 3; 2026-03-02: 1).",
                        "all mixes: 2 (2026-03-05: 5; 2026-03-02: 4).");
    }

    @Test
    void figuresOfAStone() {
        StoneFigures plot = new StoneFigures(
                StoneFigures.Figure.ABSORPTION,
                List.of(
                        new StoneFigures.Measured("m1", DAY, 1.2, "1.20", "R. Vale", "ledge 4", false),
                        new StoneFigures.Measured("m2", DAY.plusDays(1), 2.9, "2.90", "R. Vale", "ledge 4", true)),
                List.of(new StoneFigures.Step(DAY, 1.3, "ledge 4")),
                DAY.plusDays(9));
        assertThat(said(plot))
                .containsExactly(
                        "Across: date of the measurement. Up: absorption (%).",
                        "measured: 1 (2026-03-02: 1.20).",
                        "measured, far from the figure in use: 1 (2026-03-03: 2.90).",
                        "figure in use; a step is other material: 1 (2026-03-02: 1.3).");
    }

    private static ControlPlot.Point point(String id, double value, String... signals) {
        ControlPlot.Plotted level = new ControlPlot.Plotted(
                value, OptionalDouble.of(0.4), OptionalDouble.of(0.1), OptionalDouble.of(0.7), List.of(signals));
        return new ControlPlot.Point(id, "day " + id, List.of(), 1, level, Optional.empty(), Optional.empty());
    }

    @Test
    void aControlChartNamesItsSignals() {
        ControlPlot plot = new ControlPlot(
                List.of(point("T-1", 0.38), point("T-2", 0.42), point("T-3", 0.81, "beyond")),
                List.of(
                        new ControlPlot.ChangeMark(1, "another operator", false),
                        new ControlPlot.ChangeMark(2, "another stone", true)),
                "factor G (% air)",
                "",
                0,
                2,
                false,
                List.of(new ControlPlot.NotCounted(
                        2, OptionalDouble.of(1.4), PlotData.mixed().trials().get(2))),
                OptionalDouble.empty());
        assertThat(said(plot))
                .containsExactly(
                        "Across: in the order made, by date. Up: factor G (% air).",
                        "point: 3, from 0.380 to 0.810.",
                        "centre: 0.400.",
                        "limits: 0.100 to 0.700.",
                        "signal: 1 (T-3: 0.810).",
                        "something changed: 1 (day T-2: another operator).",
                        "a new phase begins: 1 (day T-3: another stone).",
                        "base of the limits: day T-1 to day T-2.",
                        "struck: 1 (K7-3: 1.40).");
    }

    @Test
    void aControlChartOfTheSpreadHasASecondAxis() {
        ControlPlot.Plotted level = new ControlPlot.Plotted(
                0.4, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of());
        ControlPlot.Plotted spread = new ControlPlot.Plotted(
                0.05, OptionalDouble.of(0.06), OptionalDouble.empty(), OptionalDouble.of(0.2), List.of());
        ControlPlot plot = new ControlPlot(
                List.of(new ControlPlot.Point("", "day 1", List.of(), 1, level, Optional.of(spread), Optional.empty())),
                List.of(),
                "G",
                "moving range",
                0,
                0,
                true,
                List.of(),
                OptionalDouble.empty());
        assertThat(said(plot))
                .containsExactly(
                        "Across: in the order made, by date. Up: G.",
                        "point: 1, from 0.400 to 0.400.",
                        "Axis: moving range.",
                        "point: 1, from 0.050 to 0.050.",
                        "centre: 0.060.",
                        "limits: 0.200.",
                        "SIMULATED for training: nothing here was measured.");
    }

    @Test
    void aChartOfSumsNamesThoseBeyondTheirInterval() {
        List<ControlPlot.Point> points = new ArrayList<>();
        double[][] sums = {{0.5, 0.25}, {6, 0}, {0, 7}};
        for (double[] both : sums) {
            points.add(new ControlPlot.Point(
                    "T-" + (points.size() + 1),
                    "day",
                    List.of(),
                    1,
                    new ControlPlot.Plotted(
                            0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of()),
                    Optional.empty(),
                    Optional.of(new ControlPlot.BothSums(both[0], both[1], 0.5, 5))));
        }
        ControlPlot plot =
                new ControlPlot(points, List.of(), "sums", "", 0, 0, false, List.of(), OptionalDouble.empty());
        assertThat(said(plot))
                .contains(
                        "point: 6, from -7.000 to 6.000.",
                        "limits: -5.000 to 5.000.",
                        "signal: 2 (T-2: 6.000; T-3: -7.000).");
    }

    @Test
    void whatWasForecastAndMeasured() {
        ForecastCheck plot = new ForecastCheck(List.of(new ForecastCheck.Point("M", "M/1", 0.35, 0.4)), 2, false);
        assertThat(said(plot))
                .containsExactly(
                        "Across: forecast from the other mixes (% air). Up: measured (% air).",
                        "a determination: 1 (M/1: measured 0.40 % air, forecast 0.35 %).",
                        "2 determinations are not shown: the other mixes say nothing about them.");
        assertThat(said(new ForecastCheck(List.of(), 0, false))).hasSize(1);
    }

    @Test
    void volumesOfABowl() {
        BowlHistory plot = new BowlHistory(
                List.of(
                        new BowlHistory.Found("C-1", DAY, 7.05, 0.002, 3, true),
                        new BowlHistory.Found("C-2", DAY.plusDays(1), 7.1, 0.002, 3, false)),
                List.of(new BowlHistory.Step(DAY, 7.05)),
                DAY.plusDays(30),
                "L");
        assertThat(said(plot))
                .containsExactly(
                        "Across: date of the calibration. Up: bowl volume (L).",
                        "volume found, size and shape pass: 1 (C-1, 2026-03-02: 7.0500 ± 0.0020).",
                        "volume found, size or shape fails: 1 (C-2, 2026-03-03: 7.1000 ± 0.0020).",
                        "volume in force: 1 (2026-03-02: 7.0500).");
    }

    @Test
    void readingsByElevation() {
        ElevationReadings plot = new ElevationReadings(
                List.of(new ElevationReadings.Reading(100, 5.02), new ElevationReadings.Reading(900, 5.4)),
                5,
                300,
                180);
        assertThat(said(plot))
                .containsExactly(
                        "Across: elevation where it is used (m). Up: reading (% air).",
                        "predicted reading of 5.00 % air: 2 (100: 5.02; 900: 5.40).",
                        "calibrated here: 300.",
                        "may be used without a new calibration: 120 to 480.");
        assertThat(said(new ElevationReadings(List.of(), 5, 300, 180))).hasSize(3);
    }

    @Test
    void errorsOfADial() {
        DialErrors plot = new DialErrors(
                "C-1",
                List.of(new DialErrors.Point(5, 0.05, 0.03, 2, true), new DialErrors.Point(8, -0.2, 0.03, 2, false)),
                List.of(new DialErrors.Predicted(5, 0.04)),
                0.1);
        assertThat(said(plot))
                .containsExactly(
                        "Across: true air (% air). Up: error of the dial (% air).",
                        "check point, within the tolerance: 1 (5.00: +0.05).",
                        "check point, outside the tolerance: 1 (8.00: -0.20).",
                        "tolerance, ±0.10 % air: -0.10 to +0.10.",
                        "predicted by Boyle and Mariotte: 1 (5.00: +0.04).");
    }

    @Test
    void readingsOfOperators() {
        ReadingsBySample plot = new ReadingsBySample(
                List.of("Ann", "Ben"),
                List.of("S1"),
                List.of(
                        new ReadingsBySample.Reading(0, 0, 1, 5.1),
                        new ReadingsBySample.Reading(0, 0, 2, 5.3),
                        new ReadingsBySample.Reading(1, 0, 1, 5.6)),
                false);
        assertThat(said(plot))
                .containsExactly(
                        "Across: sample. Up: reading.",
                        "Ann: 2, from 5.1 to 5.3.",
                        "Ben: 1, from 5.6 to 5.6.",
                        "sample: S1: 3, from 5.1 to 5.6.");
    }

    @Test
    void sharesOfAVariance() {
        ComponentShares plot = new ComponentShares(
                List.of(
                        new ComponentShares.Share("operator", OptionalDouble.of(25), OptionalDouble.of(0.1), ""),
                        new ComponentShares.Share("day", OptionalDouble.empty(), OptionalDouble.empty(), "one day")),
                true);
        assertThat(said(plot))
                .containsExactly(
                        "Axis: share of the variance (%).",
                        "operator: 25 %.", "day: not estimated.", "SIMULATED for training: nothing here was measured.");
    }

    @Test
    void laboratoriesOfAComparison() {
        MandelPlot plot = new MandelPlot(
                MandelPlot.Statistic.H,
                List.of("A", "B", "C"),
                List.of("low"),
                List.of(
                        new MandelPlot.Value(0, 0, 2, Optional.of(new Mandel(0.5, 1.7, 2.1)), ""),
                        new MandelPlot.Value(1, 0, 2, Optional.of(new Mandel(-2.5, 1.7, 2.1)), ""),
                        new MandelPlot.Value(2, 0, 1, Optional.empty(), "one result")),
                false);
        assertThat(said(plot))
                .containsExactly(
                        "Across: laboratory. Up: Mandel's h.",
                        "not above the 5 % value: 1 (A (level low): h = 0.500; critical values 1.700 (5 %) and 2.100"
                                + " (1 %)).",
                        "outlier (1 %): 1 (B (level low): h = -2.500; critical values 1.700 (5 %) and 2.100 (1 %)).",
                        "no h, for the reason above: 1 (C (level low)).");
    }

    @Test
    void aDifferenceAndItsIntervals() {
        assertThat(said(new DifferenceShown(0.1, 0.06, 0.05, 0.15)))
                .containsExactly(
                        "Axis: after less before (% air).",
                        "difference: 0.100.",
                        "its 95 % interval: 0.040 to 0.160.",
                        "its 90 % interval, for the margin: 0.050 to 0.150.",
                        "margin, ±0.150 % air: -0.150 to 0.150.");
    }

    @Test
    void loadsWronglyJudged() {
        RiskByError plot = new RiskByError(
                new RiskCurve(List.of(
                        new RiskCurve.Point(-0.5, new LoadRisk(0.01, 0.2)),
                        new RiskCurve.Point(0, new LoadRisk(0.02, 0.03)),
                        new RiskCurve.Point(0.5, new LoadRisk(0.09, 0.01)))),
                0.3,
                new LoadRisk(0.05, 0.02));
        assertThat(said(plot))
                .containsExactly(
                        "Across: error of the air that is seen (% air). Up: of all loads (%).",
                        "the error asked about: +0.30.",
                        "wrongly passed: 5.00.",
                        "wrongly failed: 2.00.",
                        "wrongly passed, whole curve: 3, from 1.00 to 9.00.",
                        "wrongly failed, whole curve: 3, from 1.00 to 20.00.");
    }

    @Test
    void moreThanTwelvePointsOfAKindAreCountedOn() {
        List<DialErrors.Point> points = new ArrayList<>();
        for (int at = 1; at <= 15; at++) {
            points.add(new DialErrors.Point(at, 0.5, 0.03, 2, false));
        }
        assertThat(said(new DialErrors("C-1", points, List.of(), 0.1)))
                .anyMatch(sentence -> sentence.startsWith("check point, outside the tolerance: 15 (1.00: +0.50;")
                        && sentence.endsWith("12.00: +0.50; and 3 more)."));
    }

    @Test
    void inSpanishToo() {
        assertThat(PlotData.mixed().said(Locale.forLanguageTag("es-ES")))
                .anyMatch(sentence -> sentence.contains("0,45"))
                .noneMatch(sentence -> sentence.contains("Across"));
    }
}
