package porebench.chart.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.LabelAxis;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PlotPoint;
import porebench.chart.look.PlotPoints;
import porebench.chart.look.PointLook;
import porebench.chart.look.TrialPoint;
import porebench.port.DataTable;

class ControlPlotChartTest {
    private static ControlPlot.Plotted plotted(double value, String... signals) {
        return new ControlPlot.Plotted(
                value, OptionalDouble.of(0.45), OptionalDouble.of(0.2), OptionalDouble.of(0.7), List.of(signals));
    }

    private static ControlPlot.Point point(String id, int phase, ControlPlot.Plotted level, boolean hasSpread) {
        return new ControlPlot.Point(
                id,
                "2026-03-0" + id.charAt(2),
                List.of(id, "said"),
                phase,
                level,
                hasSpread ? Optional.of(plotted(0.3)) : Optional.empty(),
                Optional.empty());
    }

    /** Three points, a change of source that begins a phase, a signal and a point; another change begins none. */
    private static ControlPlot plot(boolean isSimulated) {
        return new ControlPlot(
                List.of(
                        point("T-1", 1, plotted(0.4), false),
                        point("T-2", 1, plotted(0.5), true),
                        point("T-3", 1, plotted(0.4), true),
                        point("T-4", 2, plotted(0.9, "beyond-limits"), false),
                        point("T-5", 2, plotted(0.5), true)),
                List.of(
                        new ControlPlot.ChangeMark(1, "B-1 calibrated", false),
                        new ControlPlot.ChangeMark(3, "S-2: other material", true)),
                "factor G (% air)",
                "moving range (% air)",
                0,
                3,
                isSimulated,
                List.of(),
                OptionalDouble.empty());
    }

    private static JFreeChart chart(ControlPlot plot) {
        return plot.chart(PlotData.LOOK, Locale.ENGLISH);
    }

    private static int count(XYPlot plot, PointLook look) {
        XYDataset points = plot.getDataset(PlotDrawing.POINTS);
        return points.getItemCount(points.indexOf(look.name()));
    }

    @Test
    void signalsHaveTheirOwnLookAndTheSpreadStandsBelow() {
        JFreeChart chart = chart(plot(false));
        assertThat(chart.getPlot()).isInstanceOf(CombinedDomainXYPlot.class);
        List<XYPlot> parts = PlotPoint.parts(chart);
        assertThat(parts).hasSize(2);
        assertThat(count(parts.get(0), PointLook.COUNTED)).isEqualTo(4);
        assertThat(count(parts.get(0), PointLook.SIGNAL)).isEqualTo(1);
        assertThat(count(parts.get(1), PointLook.COUNTED)).isEqualTo(3);
        assertThat(PlotPoints.of(chart))
                .extracting(PlotPoint::id)
                .containsExactly("T-1", "T-2", "T-3", "T-4", "T-5", "T-2", "T-3", "T-5");
    }

    @Test
    void noLineReachesFromOnePhaseToTheNextAndLimitsThatGoOnAreOneLine() {
        XYDataset lines = PlotPoint.parts(chart(plot(false))).get(0).getDataset(PlotDrawing.LINES);
        int joined = lines.indexOf("joined");
        List<Double> y = new ArrayList<>();
        for (int i = 0; i < lines.getItemCount(joined); i++) {
            y.add(lines.getYValue(joined, i));
        }
        assertThat(y).containsExactly(Double.NaN, 0.4, 0.5, 0.4, Double.NaN, 0.9, 0.5);
        int high = lines.indexOf("high");
        assertThat(lines.getItemCount(high)).isEqualTo(6);
        assertThat(lines.getXValue(high, 1)).isEqualTo(0.5);
        assertThat(lines.getXValue(high, 2)).isEqualTo(3.5);
        assertThat(lines.getXValue(high, 5)).isEqualTo(5.5);
    }

    @Test
    void changesAreUprightLinesWithTheirWords() {
        List<XYPlot> parts = PlotPoint.parts(chart(plot(false)));
        for (XYPlot part : parts) {
            assertThat(part.getDomainMarkers(Layer.BACKGROUND))
                    .filteredOn(ValueMarker.class::isInstance)
                    .extracting(marker -> ((ValueMarker) marker).getValue())
                    .containsExactly(1.5, 3.5);
        }
        assertThat(parts.get(0).getDomainMarkers(Layer.FOREGROUND))
                .extracting(marker -> ((ValueMarker) marker).getLabel())
                .containsExactly("B-1 calibrated", "S-2: other material");
    }

    /** Three trials of one day have one label, and at 50 pixels a point neighbours run together and the last is cut off. */
    @Test
    void aDayIsWrittenOnceAndWhereThereIsRoom() {
        LabelAxis axis = new LabelAxis(
                "by date", List.of("2026-03-01", "2026-03-01", "2026-03-01", "2026-03-02", "2026-03-03", "2026-03-09"));
        axis.setTickLabelFont(PlotData.LOOK.font());
        axis.setRange(0.5, 6.5);
        Graphics2D graphics = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        assertThat(axis.refreshTicks(
                        graphics, new AxisState(), new Rectangle2D.Double(0, 0, 300, 100), RectangleEdge.BOTTOM))
                .extracting(NumberTick::getText)
                .containsExactly("2026-03-01", "2026-03-02");
        assertThat(axis.refreshTicks(
                        graphics, new AxisState(), new Rectangle2D.Double(0, 0, 1200, 100), RectangleEdge.BOTTOM))
                .extracting(NumberTick::getNumber)
                .containsExactly(1.0, 4.0, 5.0, 6.0);
    }

    /** Three thousand points, seven a day, on 900 pixels: the days with room are those found by looking at every one. */
    @Test
    void ofManyDaysThoseAreWrittenThatHaveRoom() {
        List<String> days =
                IntStream.range(0, 3000).mapToObj(i -> "day " + i / 7).toList();
        LabelAxis axis = new LabelAxis("by date", days);
        axis.setTickLabelFont(PlotData.LOOK.font());
        axis.setRange(99.5, 2900.5);
        Rectangle2D area = new Rectangle2D.Double(0, 0, 900, 100);
        Graphics2D graphics = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
        graphics.setFont(PlotData.LOOK.font());
        List<String> expected = new ArrayList<>();
        double free = Double.NEGATIVE_INFINITY;
        for (int i = 99; i < 2900; i++) {
            double at = (i + 1 - 99.5) / 2801 * 900;
            double width = graphics.getFontMetrics().stringWidth(days.get(i) + "\u2007\u2007");
            boolean isNew = !days.get(i).equals(days.get(i - 1));
            if (isNew && at - width / 2 >= free && at + width / 2 <= 900 + width / 6) {
                expected.add(days.get(i));
                free = at + width / 2;
            }
        }
        assertThat(axis.refreshTicks(graphics, new AxisState(), area, RectangleEdge.BOTTOM))
                .extracting(NumberTick::getText)
                .hasSizeGreaterThan(10)
                .containsExactlyElementsOf(expected);
    }

    @Test
    void theLegendSaysWhatIsThere() {
        assertThat(PlotData.legend(chart(plot(false)).getXYPlot()))
                .containsExactly(
                        "point",
                        "signal",
                        "centre",
                        "limits",
                        "a new phase begins",
                        "something changed",
                        "base of the limits");
        assertThat(PlotData.legend(chart(plot(true)).getXYPlot()))
                .contains("point, simulated", "signal, simulated")
                .doesNotContain("point", "signal");
    }

    @Test
    void theFiguresSayValuesLimitsSignalsAndChanges() {
        DataTable table = plot(false).table();
        assertThat(table.rows().get(3))
                .containsExactly(
                        "4",
                        "T-4",
                        "2026-03-04",
                        "2",
                        "0.9",
                        "0.45",
                        "0.2",
                        "0.7",
                        "beyond-limits",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "no",
                        "S-2: other material",
                        "counted",
                        "",
                        "",
                        "",
                        "",
                        "",
                        "");
        assertThat(table.heading()).hasSameSizeAs(table.rows().get(3));
    }

    private static TrialPoint trial(String id, TrialPoint.State state, OptionalDouble factor) {
        return new TrialPoint(
                id, LocalDateTime.of(2026, 3, 2, 9, 0), "R. Vale", "B-1", factor, state, "spilled", false);
    }

    /** The plot of before with a struck trial beside the second point and a void one without a factor after the third. */
    private static ControlPlot withOthers() {
        ControlPlot plain = plot(false);
        return new ControlPlot(
                plain.points(),
                plain.changes(),
                plain.levelAxis(),
                plain.spreadAxis(),
                0,
                3,
                false,
                List.of(
                        new ControlPlot.NotCounted(
                                2.25,
                                OptionalDouble.of(1.4),
                                trial("T-8", TrialPoint.State.STRUCK, OptionalDouble.of(1.4))),
                        new ControlPlot.NotCounted(
                                3.5,
                                OptionalDouble.empty(),
                                trial("T-9", TrialPoint.State.VOID, OptionalDouble.empty()))),
                OptionalDouble.of(88));
    }

    @Test
    void struckAndVoidTrialsAreDrawnAsSuchAndNamedInTheLegend() {
        JFreeChart chart = chart(withOthers());
        XYPlot level = PlotPoint.parts(chart).get(0);
        XYDataset points = level.getDataset(PlotDrawing.POINTS);
        int struck = points.indexOf(PointLook.STRUCK.name());
        assertThat(points.getXValue(struck, 0)).isEqualTo(2.25);
        assertThat(points.getYValue(struck, 0)).isEqualTo(1.4);
        int cross = points.indexOf(PointLook.VOID.name());
        assertThat(points.getXValue(cross, 0)).isEqualTo(3.5);
        assertThat(level.getRangeAxis().getRange().contains(points.getYValue(cross, 0)))
                .isTrue();
        assertThat(level.getRangeAxis().getUpperBound()).isGreaterThan(1.4);
        assertThat(count(PlotPoint.parts(chart).get(1), PointLook.STRUCK)).isZero();
        assertThat(PlotData.legend(chart.getXYPlot())).contains("struck", "void by its readings");
        assertThat(PlotPoints.of(chart)).extracting(PlotPoint::id).contains("T-8", "T-9");
    }

    @Test
    void theFiguresHaveARowForEveryTrialThatIsNotCounted() {
        DataTable table = withOthers().table();
        assertThat(table.rows()).hasSize(7);
        assertThat(table.rows().get(0)).endsWith("counted", "", "", "", "", "", "88");
        assertThat(table.rows().get(5))
                .startsWith("", "T-8", "2026-03-02", "", "1.4", "")
                .endsWith("no", "", "struck", "spilled", "", "", "", "", "");
        assertThat(table.rows().get(6))
                .startsWith("", "T-9", "2026-03-02", "", "", "")
                .contains("void");
        assertThat(table.rows()).allSatisfy(row -> assertThat(row).hasSameSizeAs(table.heading()));
    }

    /** Upwards 0.1 and 0.6, downwards 0.2 and 0, with h = 0.5: the second sum upwards is the signal. */
    @Test
    void bothSumsAreDrawnAndWrittenDown() {
        ControlPlot plot = new ControlPlot(
                List.of(sums("T-1", 0.1, 0.2), sums("T-2", 0.6, 0)),
                List.of(),
                "sum (% air)",
                "",
                0,
                2,
                false,
                List.of(),
                OptionalDouble.empty());
        JFreeChart chart = chart(plot);
        XYDataset points = chart.getXYPlot().getDataset(PlotDrawing.POINTS);
        int counted = points.indexOf(PointLook.COUNTED.name());
        assertThat(List.of(points.getYValue(counted, 0), points.getYValue(counted, 1), points.getYValue(counted, 2)))
                .containsExactly(0.1, -0.2, -0.0);
        assertThat(points.getYValue(points.indexOf(PointLook.SIGNAL.name()), 0)).isEqualTo(0.6);
        XYDataset lines = chart.getXYPlot().getDataset(PlotDrawing.LINES);
        assertThat(lines.getYValue(lines.indexOf("lower"), 1)).isEqualTo(-0.2);
        assertThat(chart.getXYPlot().getRangeAxis().getRange().contains(-0.5)).isTrue();
        assertThat(plot.table().rows().get(1)).endsWith("counted", "", "0.6", "0", "0.05", "0.5", "");
    }

    private static ControlPlot.Point sums(String id, double high, double low) {
        ControlPlot.Plotted larger = new ControlPlot.Plotted(
                high > low ? high : -low,
                OptionalDouble.of(0),
                OptionalDouble.of(-0.5),
                OptionalDouble.of(0.5),
                high > 0.5 ? List.of("beyond-limits") : List.of());
        return new ControlPlot.Point(
                id,
                "2026-03-01",
                List.of(id),
                1,
                larger,
                Optional.empty(),
                Optional.of(new ControlPlot.BothSums(high, low, 0.05, 0.5)));
    }

    @Test
    void drawsEverythingAlsoWhenThereIsLittle() {
        ControlPlot one = new ControlPlot(
                List.of(new ControlPlot.Point(
                        "T-1",
                        "2026-03-01",
                        List.of("T-1"),
                        1,
                        new ControlPlot.Plotted(
                                0.4, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of()),
                        Optional.empty(),
                        Optional.empty())),
                List.of(),
                "factor G (% air)",
                "moving range (% air)",
                0,
                20,
                false,
                List.of(),
                OptionalDouble.empty());
        for (ControlPlot plot : List.of(
                one,
                plot(true),
                new ControlPlot(List.of(), List.of(), "a", "", 0, 0, false, List.of(), OptionalDouble.empty()))) {
            assertThatCode(() -> chart(plot).createBufferedImage(640, 360)).doesNotThrowAnyException();
        }
    }

    @Test
    void wordsAboutChangesThatAreNearStandInRowsBelowOneAnother() {
        List<ControlPlot.ChangeMark> changes = List.of(
                new ControlPlot.ChangeMark(2, "B-1 calibrated", true),
                new ControlPlot.ChangeMark(3, "S-2: other material", true),
                new ControlPlot.ChangeMark(60, "B-1 calibrated", true),
                new ControlPlot.ChangeMark(95, "B-2 calibrated", true));
        List<ChangeRows.Placed> placed = ChangeRows.of(changes, 100);
        assertThat(placed).extracting(ChangeRows.Placed::row).containsExactly(0, 1, 0, 0);
        assertThat(placed).extracting(ChangeRows.Placed::isLeft).containsExactly(false, false, false, true);
        assertThat(ChangeRows.rows(placed)).isEqualTo(2);
        assertThat(ChangeRows.rows(List.of())).isZero();
    }

    /** 100,000 points across 1000 pixels, every thousandth of them a signal. */
    @Test
    void ofManyPointsNoMoreAreDrawnThanPixelsCanShowAndEverySignalIs() {
        JFreeChart chart = chart(PlotData.many());
        XYPlot plot = chart.getXYPlot();
        assertThat(count(plot, PointLook.COUNTED)).isEqualTo(99_900);
        chart.createBufferedImage(1000, 480);
        assertThat(count(plot, PointLook.COUNTED)).isBetween(1000, 2000);
        assertThat(count(plot, PointLook.SIGNAL)).isEqualTo(100);
        XYDataset lines = plot.getDataset(PlotDrawing.LINES);
        assertThat(lines.getItemCount(lines.indexOf("joined"))).isBetween(1000, 4000);
        assertThat(PlotPoints.of(chart)).hasSize(100_000);
        plot.getDomainAxis().setRange(1000, 1100);
        chart.createBufferedImage(1000, 480);
        assertThat(count(plot, PointLook.COUNTED))
                .as("close up all are there, and one beyond either edge")
                .isEqualTo(103);
    }
}
