package porebench.chart.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PlotWords;
import porebench.chart.look.PointLook;
import porebench.chart.look.TrialTip;

class TrialOrderChartTest {
    private static XYPlot plot(FactorByTrial data) {
        return chart(data).getXYPlot();
    }

    private static JFreeChart chart(FactorByTrial data) {
        return data.chart(PlotData.LOOK, Locale.ENGLISH);
    }

    private static FactorByTrial countedOnly(double... factors) {
        return new FactorByTrial(
                IntStream.range(0, factors.length)
                        .mapToObj(i -> PlotData.counted("T" + (i + 1), factors[i]))
                        .toList(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    @Test
    void pointsStandByStateAtTheirPlaceInTheOrder() {
        XYDataset trials = plot(PlotData.mixed()).getDataset(PlotDrawing.POINTS);
        int counted = trials.indexOf("COUNTED");
        int struck = trials.indexOf("STRUCK");
        assertThat(trials.getItemCount(counted)).isEqualTo(2);
        assertThat(trials.getXValue(counted, 1)).isEqualTo(2);
        assertThat(trials.getYValue(counted, 1)).isEqualTo(0.5);
        assertThat(trials.getXValue(struck, 0)).isEqualTo(3);
        assertThat(trials.getYValue(struck, 0)).isEqualTo(1.4);
    }

    @Test
    void aVoidTrialWithoutAValueIsMarkedAtTheFoot() {
        XYPlot plot = plot(PlotData.mixed());
        XYDataset trials = plot.getDataset(PlotDrawing.POINTS);
        int voided = trials.indexOf("VOID");
        double low = plot.getRangeAxis().getLowerBound();
        double high = plot.getRangeAxis().getUpperBound();
        assertThat(trials.getXValue(voided, 0)).isEqualTo(4);
        assertThat(trials.getYValue(voided, 0)).isBetween(low, low + (high - low) / 10);
        assertThat(PlotData.legend(plot)).contains("(at the foot: no value)");
    }

    @Test
    void meanAndReportedFactorRunAcrossAllTrials() {
        XYDataset lines = plot(PlotData.mixed()).getDataset(PlotDrawing.LINES);
        int mean = lines.indexOf("mean");
        int reported = lines.indexOf("reported");
        assertThat(lines.getYValue(mean, 0)).isEqualTo(0.45);
        assertThat(lines.getXValue(mean, 0)).isEqualTo(0.5);
        assertThat(lines.getXValue(mean, 1)).isEqualTo(4.5);
        assertThat(lines.getYValue(reported, 1)).isEqualTo(0.4);
    }

    @Test
    void theBandIsTheInterval() {
        IntervalMarker band = (IntervalMarker) plot(PlotData.mixed())
                .getRangeMarkers(Layer.BACKGROUND)
                .iterator()
                .next();
        assertThat(band.getStartValue()).isEqualTo(-0.1853);
        assertThat(band.getEndValue()).isEqualTo(1.0853);
    }

    @Test
    void legendSaysWhatIsThereAndNothingElse() {
        assertThat(PlotData.legend(plot(PlotData.mixed())))
                .containsExactly(
                        "counts",
                        "struck",
                        "void by its readings",
                        "(at the foot: no value)",
                        "mean of the trials that count",
                        "factor as reported",
                        "95 % interval, these trials alone");
        assertThat(PlotData.legend(plot(countedOnly(0.4)))).containsExactly("counts");
    }

    @Test
    void statesDifferByShapeNotByColourAlone() {
        List<Rectangle2D> bounds = new ArrayList<>();
        for (PointLook look : PointLook.values()) {
            bounds.add(look.shape(10).getBounds2D());
        }
        // A disc, an open diamond, a cross and a triangle: each holds other places, or is hollow where its like is
        // filled.
        assertThat(Arrays.stream(PointLook.values())
                        .map(look -> look.isFilled() + " "
                                + look.shape(10).contains(0, -4.5) + " "
                                + look.shape(10).contains(3, 0) + " "
                                + look.shape(10).contains(2.5, 3)))
                .doesNotHaveDuplicates();
        assertThat(PointLook.SIMULATED.isFilled()).isFalse();
        assertThat(PointLook.SIMULATED.shape(10).getBounds2D())
                .isEqualTo(PointLook.COUNTED.shape(10).getBounds2D());
        assertThat(bounds).allSatisfy(each -> assertThat(each.getWidth()).isBetween(6.0, 10.1));
    }

    @Test
    void axesNameTheirUnits() {
        XYPlot plot = plot(PlotData.mixed());
        assertThat(plot.getRangeAxis().getLabel()).isEqualTo("factor G (% air)");
        assertThat(plot.getDomainAxis().getLabel()).isEqualTo("trial, in the order made");
    }

    @Test
    void hoverTellsTheWholeTrial() {
        XYPlot plot = plot(PlotData.mixed());
        XYDataset trials = plot.getDataset(PlotDrawing.POINTS);
        int struck = trials.indexOf("STRUCK");
        String tip = plot.getRenderer(PlotDrawing.POINTS)
                .getToolTipGenerator(struck, 0)
                .generateToolTip(trials, struck, 0);
        assertThat(tip)
                .isEqualTo("<html>Trial K7-3<br>2026-03-02 10:30, R. Vane, meter meter-2<br>G = 1.40 % air<br>"
                        + "struck: spilled &lt;half&gt; the water</html>");
    }

    @Test
    void numbersAreWrittenAsThePersonWritesThem() {
        assertThat(new TrialTip(new PlotWords(Locale.GERMANY)).of(PlotData.counted("K7-1", 0.4)))
                .contains("G = 0,40 % Luft");
    }

    @Test
    void drawsWhateverThereIs() {
        List<FactorByTrial> cases = List.of(
                countedOnly(),
                countedOnly(0.4),
                countedOnly(0.4, 0.4, 0.4),
                countedOnly(IntStream.range(0, 60).mapToDouble(i -> i / 100.0).toArray()),
                PlotData.mixed());
        assertThat(cases)
                .allSatisfy(data -> assertThatCode(() -> chart(data).createBufferedImage(640, 360))
                        .doesNotThrowAnyException());
    }

    @Test
    void aLongNameIsCutAtItsBeginning() {
        FactorByTrial data = new FactorByTrial(
                List.of(PlotData.counted("northern-quarry-paving-trial-12", 0.4)),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty());
        SymbolAxis axis = (SymbolAxis) plot(data).getDomainAxis();
        assertThat(axis.getSymbols()[1]).hasSize(16).startsWith("\u2026").endsWith("trial-12");
    }
}
