package porebench.chart.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;

class StoneFiguresChartTest {
    private static final LocalDate NOV_9 = LocalDate.of(2026, 11, 9);

    private static XYPlot plot(StoneFigures.Figure figure, double low, double high) {
        return new StoneFigures(
                        figure,
                        List.of(
                                new StoneFigures.Measured("m1", NOV_9.minusDays(30), low, "", "A", "4", false),
                                new StoneFigures.Measured("m2", NOV_9, high, "", "A", "5", true)),
                        List.of(
                                new StoneFigures.Step(NOV_9.minusDays(30), low, "4"),
                                new StoneFigures.Step(NOV_9, high, "5")),
                        NOV_9.plusDays(10))
                .chart(PlotData.LOOK, Locale.ENGLISH)
                .getXYPlot();
    }

    /** The figure in use steps on the day of the change: 2.74 until 9 November, 2.71 from then on. */
    @Test
    void theFigureInUseStepsWhereTheStoneChangedAndWhatIsFarIsAPointOfItsOwn() {
        XYPlot plot = plot(StoneFigures.Figure.RELATIVE_DENSITY, 2.74, 2.71);
        XYDataset line = plot.getDataset(PlotDrawing.LINES);
        assertThat(line.getItemCount(0)).isEqualTo(4);
        assertThat(line.getXValue(0, 1)).isEqualTo(line.getXValue(0, 2));
        assertThat(line.getYValue(0, 1)).isEqualTo(2.74);
        assertThat(line.getYValue(0, 2)).isEqualTo(2.71);
        XYDataset points = plot.getDataset(PlotDrawing.POINTS);
        assertThat(points.getItemCount(points.indexOf("passed"))).isEqualTo(1);
        assertThat(points.getYValue(points.indexOf("failed"), 0)).isEqualTo(2.71);
        assertThat(plot.getRangeAxis().getLabel()).isEqualTo("relative density, SSD");
    }

    /** A narrow scatter is not drawn as if it were large. */
    @ParameterizedTest
    @EnumSource
    void theScaleHoldsAllAndIsNeverNarrow(StoneFigures.Figure figure) {
        XYPlot plot = plot(figure, 2.0, 2.001);
        assertThat(plot.getRangeAxis().getRange().contains(2.0)).isTrue();
        assertThat(plot.getRangeAxis().getRange().getLength()).isGreaterThanOrEqualTo(figure.least());
    }

    @Test
    void withNothingMeasuredThereIsStillAPlot() {
        StoneFigures empty = new StoneFigures(StoneFigures.Figure.RETAINED, List.of(), List.of(), NOV_9);
        assertThat(empty.chart(PlotData.LOOK, Locale.ENGLISH)
                        .getXYPlot()
                        .getRangeAxis()
                        .getLabel())
                .isEqualTo("held on 37.5 mm (%)");
    }
}
