package porebench.chart.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PlotPoint;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;
import porebench.port.DataTable;

class HoldPlotTest {
    private static final double[] SHIFTED = {1, 0, 1, 0, 1, 0, 1, 0, 5.5, 6.5, 5.5, 6.5, 5.5, 6.5};

    private static HoldPlot plot(boolean isSimulated, AirPair... more) {
        List<AirPair> pairs = new ArrayList<>();
        for (double difference : SHIFTED) {
            pairs.add(new AirPair("R-" + (pairs.size() + 1), 5 + difference, 5));
        }
        pairs.addAll(List.of(more));
        Hold hold = Hold.of(pairs, 0.05);
        return new HoldPlot(
                hold.points().stream()
                        .map(point -> new HoldPlot.Point(
                                "2026-03-09", List.of(point.pair().name()), point))
                        .toList(),
                hold.shift().map(shift -> OptionalInt.of(shift.from())).orElse(OptionalInt.empty()),
                Hold.runLength(),
                isSimulated);
    }

    private static List<XYPlot> parts(HoldPlot data) {
        return PlotPoint.parts(data.chart(PlotData.LOOK, Locale.ENGLISH));
    }

    private static List<Double> heights(XYDataset data, int series) {
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < data.getItemCount(series); i++) {
            heights.add(data.getYValue(series, i));
        }
        return heights;
    }

    private static int series(XYPlot plot, String look) {
        return plot.getDataset(PlotDrawing.POINTS).indexOf(look);
    }

    /** Means 0.5 before and 6 since; the shift's line stands between the eighth pair and the ninth on all three. */
    @Test
    void differencesStandWithTheirMeansAndTheShift() {
        List<XYPlot> parts = parts(plot(false));
        assertThat(parts).hasSize(3);
        XYPlot differences = parts.get(0);
        assertThat(differences.getDataset(PlotDrawing.POINTS).getItemCount(series(differences, "COUNTED")))
                .isEqualTo(14);
        assertThat(heights(differences.getDataset(PlotDrawing.LINES), 0))
                .containsExactly(Double.NaN, 0.5, 0.5, Double.NaN, 6.0, 6.0);
        for (XYPlot part : parts) {
            assertThat(part.getDomainMarkers(Layer.BACKGROUND))
                    .singleElement()
                    .satisfies(marker ->
                            assertThat(((ValueMarker) marker).getValue()).isEqualTo(8.5));
        }
        assertThat(PlotData.legend(differences))
                .contains("reading with a density", "beyond its limit", "mean difference", "limits")
                .doesNotContain("density doubtful, left out (at the foot)");
    }

    /** The eleventh pair is the first above 5; limits at 5 and at 2.962 / 3 to either side. */
    @Test
    void sumsAndAverageStandBetweenTheirLimits() {
        List<XYPlot> parts = parts(plot(false));
        XYPlot sums = parts.get(1);
        assertThat(sums.getDataset(PlotDrawing.POINTS).getItemCount(series(sums, "SIGNAL")))
                .isEqualTo(4);
        XYDataset lines = sums.getDataset(PlotDrawing.LINES);
        assertThat(lines.getSeriesCount()).isEqualTo(4);
        assertThat(heights(lines, 2)).containsExactly(5.0, 5.0);
        assertThat(heights(lines, 3)).containsExactly(-5.0, -5.0);
        assertThat(heights(lines, 1)).allMatch(height -> height <= 0);
        XYPlot average = parts.get(2);
        assertThat(heights(average.getDataset(PlotDrawing.LINES), 1).get(0)).isCloseTo(2.962 / 3, within(1e-9));
        assertThat(average.getDataset(PlotDrawing.POINTS).getItemCount(series(average, "SIGNAL")))
                .isEqualTo(5);
    }

    @Test
    void theRunLengthStandsAboveIt() {
        JFreeChart chart = plot(false).chart(PlotData.LOOK, Locale.ENGLISH);
        assertThat(chart.getSubtitles())
                .filteredOn(TextTitle.class::isInstance)
                .extracting(title -> ((TextTitle) title).getText())
                .containsExactly(
                        "About once in 486 pairs chance alone gives a signal of the sums; more often where a pair is like the"
                                + " one before it.");
    }

    /** A density that gives -40 % air stands at the foot: the scale is that of the others. */
    @Test
    void aDoubtedPairStandsAtTheFoot() {
        HoldPlot data = plot(true, new AirPair("odd", 5, -40));
        XYPlot differences = parts(data).get(0);
        XYDataset points = differences.getDataset(PlotDrawing.POINTS);
        assertThat(points.getItemCount(series(differences, "VOID"))).isEqualTo(1);
        assertThat(differences.getRangeAxis().getUpperBound()).isLessThan(8);
        assertThat(points.getYValue(series(differences, "VOID"), 0)).isBetween(-1.0, 0.0);
        assertThat(points.getItemCount(series(differences, "SIMULATED"))).isEqualTo(14);
        assertThat(PlotData.legend(differences)).contains("density doubtful, left out (at the foot)");
        DataTable table = data.table();
        assertThat(table.rows()).hasSize(15);
        assertThat(table.rows().get(14).get(table.heading().indexOf("density_doubted")))
                .isEqualTo("yes");
        assertThat(table.rows().get(14).get(table.heading().indexOf("score"))).isEmpty();
        assertThat(table.rows().get(8).get(table.heading().indexOf("difference_pct_air")))
                .isEqualTo("5.5");
        assertThat(table.rows().get(10).get(table.heading().indexOf("signal"))).isEqualTo("yes");
    }

    @Test
    void withoutAShiftThereIsOneMeanAndNoLine() {
        Hold hold = Hold.of(List.of(new AirPair("R-1", 5, 4), new AirPair("R-2", 5, 5)), 0.05);
        HoldPlot data = new HoldPlot(
                hold.points().stream()
                        .map(point -> new HoldPlot.Point("2026-03-09", List.of(), point))
                        .toList(),
                OptionalInt.empty(),
                486,
                false);
        XYPlot differences = parts(data).get(0);
        assertThat(heights(differences.getDataset(PlotDrawing.LINES), 0)).containsExactly(Double.NaN, 0.5, 0.5);
        assertThat(differences.getDomainMarkers(Layer.BACKGROUND)).isNullOrEmpty();
    }
}
