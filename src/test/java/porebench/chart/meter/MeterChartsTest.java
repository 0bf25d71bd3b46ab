package porebench.chart.meter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.IntervalXYDataset;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;

class MeterChartsTest {
    private static final DialErrors DIAL = new DialErrors(
            "C-1",
            List.of(new DialErrors.Point(5, 0.05, 0.03, 1, true), new DialErrors.Point(10, 0.2, 0.04, 2, false)),
            List.of(new DialErrors.Predicted(0, 0.01), new DialErrors.Predicted(10, 0.19)),
            0.1);

    private static final BowlHistory BOWL = new BowlHistory(
            List.of(
                    new BowlHistory.Found("C-1", LocalDate.of(2026, 1, 10), 7.05, 0.002, 3, true),
                    new BowlHistory.Found("C-2", LocalDate.of(2026, 3, 1), 7.04, 0.001, 1, false)),
            List.of(
                    new BowlHistory.Step(LocalDate.of(2026, 1, 10), 7.05),
                    new BowlHistory.Step(LocalDate.of(2026, 3, 1), 7.04)),
            LocalDate.of(2026, 4, 1),
            "L");

    private static final ElevationReadings ELEVATION = new ElevationReadings(
            List.of(new ElevationReadings.Reading(0, 4.9), new ElevationReadings.Reading(1000, 5.3)), 5, 200, 183);

    private static XYPlot dial() {
        return DIAL.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static XYPlot bowl() {
        return BOWL.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static double at(String instant) {
        return Instant.parse(instant).toEpochMilli();
    }

    @Test
    void checkPointsStandWithTheirBarsByWhetherTheyPass() {
        IntervalXYDataset points = (IntervalXYDataset) dial().getDataset(PlotDrawing.POINTS);
        int passed = points.indexOf("passed");
        int failed = points.indexOf("failed");
        assertThat(points.getXValue(passed, 0)).isEqualTo(5);
        assertThat(points.getStartYValue(passed, 0)).isEqualTo(0.05 - 0.03);
        assertThat(points.getEndYValue(passed, 0)).isEqualTo(0.05 + 0.03);
        assertThat(points.getYValue(failed, 0)).isEqualTo(0.2);
        assertThat(points.getItemCount(passed)).isEqualTo(1);
    }

    @Test
    void theErrorIsHeldBeyondThePointsAndTheModelStandsBeside() {
        XYDataset lines = dial().getDataset(PlotDrawing.LINES);
        int before = lines.indexOf("before");
        int beyond = lines.indexOf("beyond");
        assertThat(lines.getYValue(before, 0)).isEqualTo(0.05);
        assertThat(lines.getYValue(beyond, 1)).isEqualTo(0.2);
        assertThat(lines.getXValue(beyond, 1)).isGreaterThan(10);
        assertThat(lines.getYValue(lines.indexOf("model"), 1)).isEqualTo(0.19);
    }

    @Test
    void theToleranceIsABandAboutZeroAndTheScaleHoldsEverything() {
        XYPlot plot = dial();
        assertThat(plot.getRangeMarkers(Layer.BACKGROUND))
                .filteredOn(IntervalMarker.class::isInstance)
                .singleElement()
                .satisfies(marker -> {
                    assertThat(((IntervalMarker) marker).getStartValue()).isEqualTo(-0.1);
                    assertThat(((IntervalMarker) marker).getEndValue()).isEqualTo(0.1);
                });
        assertThat(plot.getRangeAxis().getLowerBound()).isLessThan(-0.1);
        assertThat(plot.getRangeAxis().getUpperBound()).isGreaterThan(0.24);
    }

    @Test
    void legendAndTipSayWhatThePointsAre() {
        XYPlot plot = dial();
        assertThat(PlotData.legend(plot))
                .contains(
                        "check point, within the tolerance",
                        "check point, outside the tolerance",
                        "predicted by Boyle and Mariotte",
                        "tolerance, ±0.10 % air");
        XYDataset points = plot.getDataset(PlotDrawing.POINTS);
        int failed = points.indexOf("failed");
        assertThat(plot.getRenderer(PlotDrawing.POINTS)
                        .getToolTipGenerator(failed, 0)
                        .generateToolTip(points, failed, 0))
                .contains("10.00 % air reads 10.20 %", "error +0.20 % air", "does not pass");
    }

    @Test
    void aVolumeHoldsUntilTheNextAndTheLastUntilToday() {
        XYDataset steps = bowl().getDataset(PlotDrawing.LINES);
        assertThat(steps.getXValue(0, 1)).isEqualTo(at("2026-03-01T00:00:00Z"));
        assertThat(steps.getYValue(0, 1)).isEqualTo(7.05);
        assertThat(steps.getXValue(0, 3)).isEqualTo(at("2026-04-01T00:00:00Z"));
        assertThat(steps.getYValue(0, 3)).isEqualTo(7.04);
        IntervalXYDataset found = (IntervalXYDataset) bowl().getDataset(PlotDrawing.POINTS);
        assertThat(found.getStartYValue(found.indexOf("passed"), 0)).isEqualTo(7.05 - 0.002);
        assertThat(bowl().getRangeAxis().getLabel()).isEqualTo("bowl volume (L)");
    }

    @Test
    void theElevationsWithinTheLimitAreABand() {
        XYPlot plot = ELEVATION.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
        assertThat(plot.getDomainMarkers(Layer.BACKGROUND))
                .filteredOn(IntervalMarker.class::isInstance)
                .singleElement()
                .satisfies(marker -> {
                    assertThat(((IntervalMarker) marker).getStartValue()).isEqualTo(17);
                    assertThat(((IntervalMarker) marker).getEndValue()).isEqualTo(383);
                });
    }

    @Test
    void drawsEverythingAlsoWhenThereIsLittle() {
        List<JFreeChart> charts = List.of(
                DIAL.chart(PlotData.LOOK, Locale.ENGLISH),
                new DialErrors("C-1", List.of(), List.of(), 0.1).chart(PlotData.LOOK, Locale.GERMANY),
                BOWL.chart(PlotData.LOOK, Locale.ENGLISH),
                new BowlHistory(List.of(), List.of(), LocalDate.of(2026, 4, 1), "ft3")
                        .chart(PlotData.LOOK, Locale.ENGLISH),
                ELEVATION.chart(PlotData.LOOK, Locale.ENGLISH),
                new ElevationReadings(List.of(), 5, 0, 183).chart(PlotData.LOOK, Locale.ENGLISH));
        assertThat(charts)
                .allSatisfy(chart -> assertThatCode(() -> chart.createBufferedImage(640, 360))
                        .doesNotThrowAnyException());
    }
}
