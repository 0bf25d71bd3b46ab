package porebench.chart.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;
import porebench.method.risk.AirLimits;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.Loads;
import porebench.method.risk.RiskCurve;

class ChangeChartsTest {
    private static final DifferenceShown DIFFERENCE = new DifferenceShown(0.08, 0.06, 0.04, 0.05);
    private static final AirLimits LIMITS = new AirLimits(6, 1.5);
    private static final Loads LOADS = new Loads(6, 0.6, 0.2);
    private static final RiskByError RISK =
            new RiskByError(RiskCurve.of(LIMITS, LOADS, 0.75), 0.3, LoadRisk.of(LIMITS, LOADS, 0.3));

    private static XYPlot difference() {
        return DIFFERENCE.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static XYPlot risk() {
        return RISK.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static double least(XYDataset data) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < data.getItemCount(0); i++) {
            least = Math.min(least, data.getXValue(0, i));
        }
        return least;
    }

    @Test
    void theDifferenceStandsWithBothIntervals() {
        XYPlot plot = difference();
        assertThat(plot.getDataset(PlotDrawing.POINTS).getXValue(0, 0)).isEqualTo(0.08);
        assertThat(least(plot.getDataset(PlotDrawing.LINES))).isCloseTo(0.02, within(1e-12));
        assertThat(least(plot.getDataset(PlotDrawing.LINES + 1))).isCloseTo(0.04, within(1e-12));
        assertThat(plot.getDomainAxis().getRange().contains(0.14)).isTrue();
        assertThat(plot.getDomainAxis().getRange().contains(-0.05)).isTrue();
    }

    @Test
    void theMarginIsABandAboutZero() {
        assertThat(difference().getDomainMarkers(Layer.BACKGROUND))
                .filteredOn(IntervalMarker.class::isInstance)
                .singleElement()
                .satisfies(marker -> {
                    IntervalMarker band = (IntervalMarker) marker;
                    assertThat(band.getStartValue()).isEqualTo(-0.05);
                    assertThat(band.getEndValue()).isEqualTo(0.05);
                });
    }

    /** The shares at 0.3 by R (load-risk.csv): 0.4367 and 2.3050 % of all loads. */
    @Test
    void bothSharesAreCurvesWithTheErrorAskedAbout() {
        XYPlot plot = risk();
        XYDataset points = plot.getDataset(PlotDrawing.POINTS);
        assertThat(List.of(points.getYValue(0, 0), points.getYValue(0, 1)))
                .anySatisfy(share -> assertThat(share).isCloseTo(0.436675592185, within(1e-9)))
                .anySatisfy(share -> assertThat(share).isCloseTo(2.305047376106, within(1e-9)));
        assertThat(plot.getDataset(PlotDrawing.LINES).getItemCount(0)).isEqualTo(41);
        XYDataset failed = plot.getDataset(PlotDrawing.LINES + 1);
        assertThat(failed.getYValue(0, 28)).isCloseTo(2.305047376106, within(1e-9));
        assertThat(plot.getRangeAxis().getRange().getUpperBound()).isGreaterThan(failed.getYValue(0, 40));
        assertThat(plot.getDomainMarkers(Layer.BACKGROUND))
                .singleElement()
                .satisfies(
                        marker -> assertThat(((ValueMarker) marker).getValue()).isEqualTo(0.3));
    }

    @Test
    void aPlotSaysInItsLegendWhatEachLineIs() {
        assertThat(difference().getLegendItems().getItemCount()).isEqualTo(4);
        assertThat(risk().getLegendItems().getItemCount()).isEqualTo(3);
        assertThat(RISK.chart(PlotData.DARK, Locale.forLanguageTag("es"))
                        .getXYPlot()
                        .getBackgroundPaint())
                .isEqualTo(PlotData.DARK.background());
    }

    @Test
    void theFiguresAreTakenAlongUnrounded() {
        assertThat(DIFFERENCE.table().rows()).containsExactly(List.of("0.08", "0.02", "0.14", "0.04", "0.12", "0.05"));
        assertThat(RISK.table().rows()).hasSize(41);
        assertThat(RISK.table().heading())
                .containsExactly("error_pct_air", "wrongly_passed_share", "wrongly_failed_share");
        assertThat(RISK.table().rows().get(0).get(0)).isEqualTo("-0.75");
    }
}
