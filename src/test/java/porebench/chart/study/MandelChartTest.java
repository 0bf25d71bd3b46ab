package porebench.chart.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.awt.BasicStroke;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import porebench.chart.PlotData;
import porebench.chart.PlotView;
import porebench.chart.look.PlotPoint;
import porebench.chart.look.PlotPoints;
import porebench.chart.study.MandelPlot.Statistic;
import porebench.chart.study.MandelPlot.Value;
import porebench.port.DataTable;
import porebench.statistics.comparison.Mandel;

/** Three invented laboratories at the levels dense and porous; of the porous stone nothing is told. */
class MandelChartTest {
    private static final Locale SPANISH = Locale.forLanguageTag("es");
    private static final String NO_SPREAD = "There is no spread to judge by.";
    private static final List<String> LABORATORIES = List.of("Gill", "Fell", "Beck");
    private static final List<String> LEVELS = List.of("dense", "porous");

    private static Value found(int laboratory, int level, int results, double statistic) {
        return new Value(laboratory, level, results, Optional.of(new Mandel(statistic, 1.5, 2)), "");
    }

    private static Value none(int laboratory, int level, int results, String why) {
        return new Value(laboratory, level, results, Optional.empty(), why);
    }

    /** Beck did not test the porous stone. */
    private static MandelPlot plot(Statistic statistic) {
        return new MandelPlot(
                statistic,
                LABORATORIES,
                LEVELS,
                List.of(
                        found(0, 0, 3, 0.5),
                        found(1, 0, 3, -1.8),
                        found(2, 0, 3, 2.5),
                        none(0, 1, 3, NO_SPREAD),
                        none(1, 1, 3, NO_SPREAD)),
                false);
    }

    private static JFreeChart chart(MandelPlot data) {
        return data.chart(PlotData.LOOK, Locale.ENGLISH);
    }

    private static MandelPlot k(List<String> levels, boolean isSimulated, Value... values) {
        return new MandelPlot(Statistic.K, LABORATORIES, levels, List.of(values), isSimulated);
    }

    private static List<String> above(JFreeChart chart) {
        List<String> said = new ArrayList<>();
        for (Object each : chart.getSubtitles()) {
            if (each instanceof TextTitle title) {
                said.add(title.getText());
            }
        }
        return said;
    }

    private static List<String> legend(JFreeChart chart) {
        List<String> said = new ArrayList<>();
        LegendItemCollection items = chart.getPlot().getLegendItems();
        for (int i = 0; i < items.getItemCount(); i++) {
            said.add(items.get(i).getLabel());
        }
        return said;
    }

    private static List<String> points(XYDataset data, int series) {
        List<String> points = new ArrayList<>();
        for (int i = 0; i < data.getItemCount(series); i++) {
            points.add(String.format(Locale.ROOT, "%.2f %.2f", data.getXValue(series, i), data.getYValue(series, i)));
        }
        return points;
    }

    /** Two levels stand 0.2 to the left and to the right of their laboratory. */
    @Test
    void aLaboratoryHasItsLevelsSideBySideAndWhatStandsOutInAShapeOfItsOwn() {
        XYDataset points = chart(plot(Statistic.H)).getXYPlot().getDataset(0);
        assertThat(points.getSeriesCount()).isEqualTo(4);
        assertThat(points.getSeriesKey(0)).isEqualTo("CONSISTENT");
        assertThat(points(points, 0)).containsExactly("-0.20 0.50");
        assertThat(points.getSeriesKey(1)).isEqualTo("STRAGGLER");
        assertThat(points(points, 1)).containsExactly("0.80 -1.80");
        assertThat(points.getSeriesKey(2)).isEqualTo("OUTLIER");
        assertThat(points(points, 2)).containsExactly("1.80 2.50");
        assertThat(points.getSeriesKey(3)).isEqualTo("NOT_SHOWN");
        assertThat(points(points, 3)).containsExactly("0.20 0.00", "1.20 0.00");
    }

    @Test
    void aStemGoesFromZeroToEachFigureAndToNoneThatIsNotShown() {
        XYDataset stems = chart(plot(Statistic.H)).getXYPlot().getDataset(1);
        assertThat(points(stems, 0))
                .containsExactly(
                        "-0.20 0.00",
                        "-0.20 0.50",
                        "-0.20 NaN",
                        "0.80 0.00",
                        "0.80 -1.80",
                        "0.80 NaN",
                        "1.80 0.00",
                        "1.80 2.50",
                        "1.80 NaN");
    }

    @Test
    void shapesAreToldApartWithoutColour() {
        Set<List<Object>> looks = new HashSet<>();
        for (MandelLook one : MandelLook.values()) {
            List<Object> look = new ArrayList<>(List.of(one.isFilled()));
            for (int x = -4; x <= 4; x += 2) {
                for (int y = -4; y <= 4; y += 2) {
                    look.add(one.shape(10).contains(x, y));
                }
            }
            looks.add(look);
        }
        assertThat(looks).hasSize(MandelLook.values().length);
        XYLineAndShapeRenderer renderer =
                (XYLineAndShapeRenderer) chart(plot(Statistic.H)).getXYPlot().getRenderer(0);
        assertThat(renderer.getSeriesFillPaint(0)).isEqualTo(PlotData.LOOK.counted());
        assertThat(renderer.getSeriesFillPaint(1)).isEqualTo(PlotData.LOOK.background());
        assertThat(renderer.getSeriesOutlinePaint(1)).isEqualTo(PlotData.LOOK.factor());
        assertThat(renderer.getSeriesFillPaint(2)).isEqualTo(PlotData.LOOK.voided());
        assertThat(renderer.getSeriesFillPaint(3)).isEqualTo(PlotData.LOOK.struck());
    }

    /** h has its critical values on both sides, first 5 % and then 1 %; k has them above only. */
    @Test
    void criticalLinesStandOnBothSidesOfHAndAboveKOnly() {
        XYPlot h = chart(plot(Statistic.H)).getXYPlot();
        XYDataset lines = h.getDataset(2);
        assertThat(lines.getSeriesCount()).isEqualTo(4);
        assertThat(points(lines, 0))
                .containsExactly("-0.50 1.50", "0.50 1.50", "0.50 1.50", "1.50 1.50", "1.50 1.50", "2.00 1.50");
        assertThat(lines.getYValue(1, 0)).isEqualTo(2);
        assertThat(lines.getYValue(2, 0)).isEqualTo(-1.5);
        assertThat(lines.getYValue(3, 0)).isEqualTo(-2);
        XYLineAndShapeRenderer renderer = (XYLineAndShapeRenderer) h.getRenderer(2);
        assertThat(renderer.getDrawSeriesLineAsPath()).isTrue();
        assertThat(((BasicStroke) renderer.getSeriesStroke(0)).getDashArray()).isNotNull();
        assertThat(((BasicStroke) renderer.getSeriesStroke(1)).getDashArray()).isNull();
        assertThat(h.getRangeAxis().getLowerBound()).isEqualTo(-2.8, offset(1e-12));
        assertThat(h.getRangeAxis().getUpperBound()).isEqualTo(2.8, offset(1e-12));
        XYPlot k = chart(k(List.of("dense"), false, found(0, 0, 3, 1), found(1, 0, 3, 0)))
                .getXYPlot();
        assertThat(k.getDataset(2).getSeriesCount()).isEqualTo(2);
        assertThat(k.getRangeAxis().getLowerBound()).isEqualTo(-0.12, offset(1e-12));
        assertThat(k.getRangeAxis().getUpperBound()).isEqualTo(2.24, offset(1e-12));
    }

    /** The values stand level by level; the line goes laboratory by laboratory, and steps between them. */
    @Test
    void aCriticalLineStepsWhereALaboratoryGaveAnotherNumberOfResults() {
        MandelPlot data = k(
                LEVELS,
                false,
                found(0, 0, 3, 1),
                new Value(1, 0, 2, Optional.of(new Mandel(1, 1.75, 2.25)), ""),
                found(0, 1, 3, 1),
                found(1, 1, 3, 1));
        assertThat(points(chart(data).getXYPlot().getDataset(2), 0))
                .containsExactly(
                        "-0.50 1.50",
                        "0.00 1.50",
                        "0.00 1.50",
                        "0.50 1.50",
                        "0.50 1.75",
                        "1.00 1.75",
                        "1.00 1.50",
                        "1.50 1.50");
    }

    @Test
    void laboratoriesArePartedAndZeroIsALine() {
        XYPlot plot = chart(plot(Statistic.H)).getXYPlot();
        assertThat(plot.getDomainMarkers(Layer.BACKGROUND))
                .extracting(each -> ((ValueMarker) each).getValue())
                .containsExactlyInAnyOrder(0.5, 1.5);
        assertThat(plot.getRangeMarkers(Layer.BACKGROUND))
                .extracting(each -> ((ValueMarker) each).getValue())
                .containsExactly(0.0);
        assertThat(plot.isDomainGridlinesVisible()).isFalse();
    }

    @Test
    void saysAboveThePlotWhatIsNotShownAndWhy() {
        assertThat(above(chart(plot(Statistic.H))))
                .containsExactly("h is not shown at level porous. There is no spread to judge by.");
        MandelPlot data = k(
                LEVELS,
                false,
                found(0, 0, 3, 1),
                found(1, 0, 3, 1),
                none(2, 0, 1, "One result alone has no spread."),
                none(0, 1, 3, NO_SPREAD));
        assertThat(above(chart(data)))
                .containsExactly(
                        "k is not shown at level porous. There is no spread to judge by.",
                        "k is not shown of Beck (level dense). One result alone has no spread.");
        assertThat(above(data.chart(PlotData.DARK, SPANISH)))
                .first()
                .isEqualTo("k no se muestra en el nivel porous. There is no spread to judge by.");
    }

    @Test
    void levelsThatAreNotShownForOneReasonAreNamedInOneSentence() {
        MandelPlot data =
                k(LEVELS, false, none(0, 0, 2, NO_SPREAD), none(1, 0, 2, NO_SPREAD), none(0, 1, 2, NO_SPREAD));
        JFreeChart chart = chart(data);
        assertThat(above(chart)).containsExactly("k is not shown at level dense, porous. " + NO_SPREAD);
        assertThat(legend(chart)).containsExactly("no k, for the reason above");
        assertThat(chart.getXYPlot().getRangeAxis().getUpperBound()).isEqualTo(1.12, offset(1e-12));
    }

    /** Of two spreads of one degree of freedom each, k of the larger is above its 5 % value when it is 12.7 times the other. */
    @Test
    void twoLaboratoriesOfTwoResultsAreSaidToTellNextToNothing() {
        String said = "k shows next to nothing at level dense: of two laboratories with two results each, one whose "
                + "spread is ten times the other's is not even a straggler.";
        assertThat(above(chart(k(LEVELS, false, found(0, 0, 2, 1.4), found(1, 0, 2, 0)))))
                .containsExactly(said);
        assertThat(above(chart(k(LEVELS, false, found(0, 0, 3, 1.4), found(1, 0, 2, 0)))))
                .isEmpty();
        assertThat(above(chart(k(LEVELS, false, found(0, 0, 2, 1.4), found(1, 0, 2, 0), found(2, 0, 2, 0)))))
                .isEmpty();
        assertThat(above(chart(new MandelPlot(
                        Statistic.H, LABORATORIES, LEVELS, List.of(found(0, 0, 2, 1), found(1, 0, 2, 1)), false))))
                .isEmpty();
        double critical5 = Mandel.criticalK(2, 2, 0.05);
        assertThat(Math.sqrt(2 * 100.0 / 101)).isLessThan(critical5);
        assertThat(Math.sqrt(2 * 12.8 * 12.8 / (1 + 12.8 * 12.8))).isGreaterThan(critical5);
    }

    @Test
    void whatIsOfABookForTrainingSaysSo() {
        assertThat(above(chart(k(LEVELS, true, found(0, 0, 3, 1)))))
                .containsExactly("SIMULATED for training: nothing here was measured");
    }

    @Test
    void theLegendNamesWhatIsThere() {
        assertThat(legend(chart(plot(Statistic.H))))
                .containsExactly(
                        "not above the 5 % value",
                        "straggler (5 %)",
                        "outlier (1 %)",
                        "no h, for the reason above",
                        "critical value, 5 %",
                        "critical value, 1 %");
        assertThat(legend(k(LEVELS, false, found(0, 0, 3, 1)).chart(PlotData.LOOK, SPANISH)))
                .containsExactly("no mayor que el valor del 5 %", "valor crítico, 5 %", "valor crítico, 1 %");
    }

    @Test
    void axesNameTheLaboratoriesTheLevelsAndTheStatistic() {
        XYPlot plot = chart(plot(Statistic.H)).getXYPlot();
        SymbolAxis axis = (SymbolAxis) plot.getDomainAxis();
        assertThat(axis.getSymbols()).containsExactly("Gill", "Fell", "Beck");
        assertThat(axis.getLabel()).isEqualTo("laboratory; in each, the levels from left to right: dense, porous");
        assertThat(axis.isVerticalTickLabels()).isFalse();
        assertThat(plot.getRangeAxis().getLabel()).isEqualTo("Mandel's h");
        XYPlot spanish = k(List.of("dense"), false, found(0, 0, 3, 1))
                .chart(PlotData.LOOK, SPANISH)
                .getXYPlot();
        assertThat(spanish.getDomainAxis().getLabel()).isEqualTo("laboratorio");
        assertThat(spanish.getRangeAxis().getLabel()).isEqualTo("k de Mandel");
    }

    @Test
    void namesThatWouldRunIntoOneAnotherStandUprightAndManyLevelsAreNamedByTheFirstAndTheLast() {
        List<String> laboratories = Collections.nCopies(12, "Hawmere Gate");
        List<String> levels = List.of("x".repeat(30), "y".repeat(30), "z");
        SymbolAxis axis =
                (SymbolAxis) chart(new MandelPlot(Statistic.H, laboratories, levels, List.of(found(0, 0, 3, 1)), false))
                        .getXYPlot()
                        .getDomainAxis();
        assertThat(axis.isVerticalTickLabels()).isTrue();
        assertThat(axis.getLabel()).endsWith(": " + "x".repeat(30) + " \u2026 z");
    }

    @Test
    void tipsTellWhoWhereAndHowFarOut() {
        PlotPoint straggler = PlotPoints.of(chart(plot(Statistic.H))).stream()
                .filter(point -> point.id().equals("1/0"))
                .findFirst()
                .orElseThrow();
        assertThat(straggler.words())
                .isEqualTo("Fell, level dense, results: 3 · h = -1.800; critical values 1.500 (5 %) and 2.000 (1 %) ·"
                        + " straggler (5 %)");
        assertThat(PlotPoints.of(chart(plot(Statistic.H))))
                .extracting(PlotPoint::id)
                .containsExactly("0/0", "0/1", "1/0", "1/1", "2/0");
        assertThat(PlotPoints.of(chart(plot(Statistic.H))).get(1).words())
                .isEqualTo("Gill, level porous, results: 3 · There is no spread to judge by.");
    }

    @Test
    void figuresAreOneRowALaboratoryAndLevel() {
        DataTable table = plot(Statistic.H).table();
        assertThat(table.heading())
                .containsExactly(
                        "statistic",
                        "laboratory",
                        "level",
                        "results",
                        "value",
                        "critical_5",
                        "critical_1",
                        "verdict",
                        "reason");
        assertThat(table.rows())
                .containsExactly(
                        List.of("h", "Gill", "dense", "3", "0.5", "1.5", "2", "none", ""),
                        List.of("h", "Fell", "dense", "3", "-1.8", "1.5", "2", "straggler", ""),
                        List.of("h", "Beck", "dense", "3", "2.5", "1.5", "2", "outlier", ""),
                        List.of("h", "Gill", "porous", "3", "", "", "", "", NO_SPREAD),
                        List.of("h", "Fell", "porous", "3", "", "", "", "", NO_SPREAD));
        PlotView view = new PlotView("k", Locale.ENGLISH);
        view.show(plot(Statistic.K), PlotData.LOOK);
        assertThat(view.table().rows().get(0)).startsWith("k", "Gill");
    }
}
