package porebench.chart.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;
import porebench.port.DataTable;

class ForecastCheckChartTest {
    private static final List<ForecastCheck.Point> POINTS = List.of(
            new ForecastCheck.Point("M-1", "M-1/1", 0.45, 0.4), new ForecastCheck.Point("M-2", "M-2/1", 0.3, 0.65));

    private static JFreeChart chart(int untold, boolean isSimulated) {
        return new ForecastCheck(POINTS, untold, isSimulated).chart(PlotData.LOOK, Locale.ENGLISH);
    }

    private static List<String> said(JFreeChart chart) {
        return chart.getSubtitles().stream()
                .filter(TextTitle.class::isInstance)
                .map(title -> ((TextTitle) title).getText())
                .toList();
    }

    @Test
    void aDeterminationStandsAtItsForecastAndAsHighAsItWasMeasured() {
        XYPlot plot = chart(0, false).getXYPlot();
        XYDataset points = plot.getDataset(PlotDrawing.POINTS);
        assertThat(points.getItemCount(0)).isEqualTo(2);
        assertThat(points.getXValue(0, 0)).isEqualTo(0.3);
        assertThat(points.getYValue(0, 0)).isEqualTo(0.65);
        assertThat(plot.getRenderer(PlotDrawing.POINTS)
                        .getToolTipGenerator(0, 0)
                        .generateToolTip(points, 0, 0))
                .contains("M-2/1", "measured 0.65 % air, forecast 0.30 %");
    }

    @Test
    void bothAxesShowTheSameRangeAndALineWhereTheyAreEqual() {
        XYPlot plot = chart(0, false).getXYPlot();
        assertThat(plot.getDomainAxis().getRange())
                .isEqualTo(plot.getRangeAxis().getRange());
        assertThat(plot.getDomainAxis().getRange().contains(0.3)).isTrue();
        assertThat(plot.getDomainAxis().getRange().contains(0.65)).isTrue();
        XYDataset equal = plot.getDataset(PlotDrawing.LINES);
        for (int item = 0; item < equal.getItemCount(0); item++) {
            assertThat(equal.getXValue(0, item)).isEqualTo(equal.getYValue(0, item));
        }
    }

    @Test
    void whatIsNotShownAndWhatWasSimulatedIsSaid() {
        assertThat(said(chart(0, false))).noneMatch(text -> text.contains("not shown"));
        assertThat(said(chart(1, false)))
                .contains("One determination is not shown: the other mixes say nothing about it.");
        assertThat(said(chart(2, false)))
                .contains("2 determinations are not shown: the other mixes say nothing about them.");
        assertThat(said(chart(0, true))).anyMatch(text -> text.startsWith("SIMULATED"));
    }

    @Test
    void itsFiguresAreTakenAlong() {
        DataTable table = new ForecastCheck(POINTS, 0, false).table();
        assertThat(table.heading())
                .containsExactly("mix_id", "determination_id", "forecast_without_its_mix_pct_air", "measured_pct_air");
        assertThat(table.rows().get(0)).containsExactly("M-1", "M-1/1", "0.45", "0.4");
    }
}
