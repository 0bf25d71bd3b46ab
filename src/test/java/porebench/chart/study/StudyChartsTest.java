package porebench.chart.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Shape;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.look.OperatorShape;
import porebench.port.DataTable;

class StudyChartsTest {
    private static final ComponentShares SHARES = new ComponentShares(
            List.of(
                    new ComponentShares.Share(
                            "Mix", OptionalDouble.of(75), OptionalDouble.of(0.3), "standard deviation 0.3"),
                    new ComponentShares.Share("Day", OptionalDouble.empty(), OptionalDouble.empty(), "not told apart"),
                    new ComponentShares.Share("Meter", OptionalDouble.of(0), OptionalDouble.of(0), "at its bound"),
                    new ComponentShares.Share(
                            "Repeats", OptionalDouble.of(25), OptionalDouble.of(0.1), "deviation 0.1")),
            true);

    private static final ReadingsBySample READINGS = new ReadingsBySample(
            List.of("Ada", "Bo"),
            List.of("S-1", "S-2"),
            List.of(
                    new ReadingsBySample.Reading(0, 0, 1, 0.4),
                    new ReadingsBySample.Reading(0, 0, 2, 0.6),
                    new ReadingsBySample.Reading(1, 0, 1, 0.5),
                    new ReadingsBySample.Reading(1, 1, 1, 0.9)),
            true);

    private static XYPlot shares() {
        return SHARES.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    private static XYPlot readings() {
        return READINGS.chart(PlotData.LOOK, Locale.ENGLISH).getXYPlot();
    }

    @Test
    void aComponentHasABarAsLongAsItsShare() {
        XYDataset bars = shares().getDataset();
        assertThat(bars.getItemCount(0)).isEqualTo(2);
        assertThat(bars.getXValue(0, 0)).isZero();
        assertThat(bars.getYValue(0, 0)).isEqualTo(75);
        assertThat(bars.getXValue(0, 1)).isEqualTo(3);
        assertThat(bars.getYValue(0, 1)).isEqualTo(25);
        assertThat(shares().getRenderer().getDefaultItemLabelGenerator().generateLabel(bars, 0, 1))
                .isEqualTo("25 %");
    }

    @Test
    void whatWasSimulatedSaysSo() {
        saysSo(SHARES.chart(PlotData.LOOK, Locale.ENGLISH));
        saysSo(READINGS.chart(PlotData.LOOK, Locale.ENGLISH));
    }

    private static void saysSo(JFreeChart chart) {
        assertThat(chart.getSubtitles())
                .anySatisfy(title -> assertThat(title)
                        .isInstanceOfSatisfying(
                                TextTitle.class,
                                text -> assertThat(text.getText()).startsWith("SIMULATED")));
    }

    @Test
    void aComponentWithoutABarHasWordsInItsPlace() {
        assertThat(shares().getAnnotations())
                .extracting(each -> ((XYTextAnnotation) each).getText())
                .containsExactly("not estimated", "0 %");
    }

    @Test
    void everyOperatorHasAShapeOfItsOwnBesideTheOthers() {
        XYDataset points = readings().getDataset(0);
        assertThat(points.getItemCount(0)).isEqualTo(2);
        assertThat(points.getXValue(0, 0)).isLessThan(points.getXValue(1, 0));
        assertThat(points.getYValue(1, 1)).isEqualTo(0.9);
        XYDataset means = readings().getDataset(1);
        assertThat(means.getYValue(0, 0)).isEqualTo(0.5);
        Set<List<Object>> looks = new HashSet<>();
        for (OperatorShape one : OperatorShape.values()) {
            Shape shape = one.shape(10);
            assertThat(shape.getBounds2D().getWidth()).isBetween(5.0, 10.0);
            List<Object> look = new ArrayList<>();
            for (int x = -4; x <= 4; x += 2) {
                for (int y = -4; y <= 4; y += 2) {
                    look.add(shape.contains(x, y));
                }
            }
            look.add(one.isFilled());
            looks.add(look);
        }
        assertThat(looks).hasSize(OperatorShape.values().length);
        assertThat(OperatorShape.of(6)).isEqualTo(OperatorShape.of(0));
    }

    @Test
    void tipsTellWhoReadWhat() {
        String tip = readings()
                .getRenderer(0)
                .getToolTipGenerator(1, 1)
                .generateToolTip(readings().getDataset(0), 1, 1);
        assertThat(tip).contains("Bo, sample S-2, repeat 1", "0.9");
        String bar = shares().getRenderer().getToolTipGenerator(0, 0).generateToolTip(shares().getDataset(), 0, 0);
        assertThat(bar).contains("Mix", "standard deviation 0.3");
    }

    @Test
    void figuresAreTheReadingsInTheFormTheyAreReadFrom() {
        DataTable table = READINGS.table();
        assertThat(table.heading()).containsExactly("operator", "sample", "repeat", "value");
        assertThat(table.rows().get(3)).containsExactly("Bo", "S-2", "1", "0.9");
        assertThat(SHARES.table().rows().get(1)).containsExactly("Day", "", "", "not told apart");
    }
}
