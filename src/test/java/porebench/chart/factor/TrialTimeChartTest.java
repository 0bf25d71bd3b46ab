package porebench.chart.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jfree.chart.plot.Marker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.PlotDrawing;

class TrialTimeChartTest {
    private static XYPlot plot(FactorOverTime data) {
        return data.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static double at(String instant) {
        return Instant.parse(instant).toEpochMilli();
    }

    @Test
    void trialsStandAtTheirTimeAsWritten() {
        XYDataset trials = plot(PlotData.overTime()).getDataset(PlotDrawing.POINTS);
        assertThat(trials.getXValue(trials.indexOf("COUNTED"), 0)).isEqualTo(at("2026-03-02T10:30:00Z"));
    }

    @Test
    void aFactorHoldsUntilTheNextAndAWithdrawalLeavesAGap() {
        XYDataset lines = plot(PlotData.overTime()).getDataset(PlotDrawing.LINES);
        assertThat(lines.getItemCount(0)).isEqualTo(5);
        assertThat(lines.getXValue(0, 0)).isEqualTo(at("2026-01-10T00:00:00Z"));
        assertThat(lines.getYValue(0, 0)).isEqualTo(0.3);
        assertThat(lines.getXValue(0, 1)).isEqualTo(at("2026-03-01T00:00:00Z"));
        assertThat(lines.getYValue(0, 1)).isEqualTo(0.3);
        assertThat(lines.getY(0, 2)).isNull();
        assertThat(lines.getXValue(0, 4)).isEqualTo(at("2026-04-01T00:00:00Z"));
        assertThat(lines.getYValue(0, 4)).isEqualTo(0.4);
    }

    @Test
    void determinationsBeginAtNamedLines() {
        assertThat(plot(PlotData.overTime()).getDomainMarkers(Layer.BACKGROUND))
                .extracting(marker -> ((Marker) marker).getLabel(), marker -> ((ValueMarker) marker).getValue())
                .containsExactly(tuple("K7/1", at("2026-01-05T00:00:00Z")), tuple("K7/2", at("2026-03-02T00:00:00Z")));
    }

    @Test
    void legendSaysWhatTheStepsAndLinesAre() {
        assertThat(PlotData.legend(plot(PlotData.overTime())))
                .contains("factor in force", "a determination begins", "counts");
    }

    @Test
    void axisHoldsEveryDayShown() {
        XYPlot plot = plot(PlotData.overTime());
        assertThat(plot.getDomainAxis().getLowerBound()).isLessThan(at("2026-01-05T00:00:00Z"));
        assertThat(plot.getDomainAxis().getUpperBound()).isGreaterThan(at("2026-04-01T00:00:00Z"));
        assertThat(plot.getDomainAxis().getLabel()).isEqualTo("date of the trial");
    }

    @Test
    void drawsAnEmptyMixAndASingleTrial() {
        FactorOverTime empty = new FactorOverTime(List.of(), List.of(), List.of(), LocalDate.of(2026, 4, 1));
        FactorOverTime single = new FactorOverTime(
                List.of(PlotData.counted("K7-1", 0.4)),
                List.of(new FactorOverTime.Step(1, LocalDate.of(2026, 5, 1), OptionalDouble.of(0.4))),
                List.of(),
                LocalDate.of(2026, 3, 2));
        assertThat(List.of(empty, single, PlotData.overTime()))
                .allSatisfy(data -> assertThatCode(
                                () -> data.chart(PlotData.LOOK, Locale.ENGLISH).createBufferedImage(640, 360))
                        .doesNotThrowAnyException());
    }
}
