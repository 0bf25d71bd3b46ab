package porebench.chart.study;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.StandardXYBarPainter;
import org.jfree.chart.renderer.xy.XYBarRenderer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYBarDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.study.ComponentShares.Share;

/** A bar for each component of a variance, as long as its share; one that is not estimated has words in its place. */
final class ComponentSharesChart extends PlotDrawing {
    private static final double BAR_WIDTH = 0.56;
    private static final double ROOM_FOR_LABELS = 112;
    private static final double TICK = 20;

    private final ComponentShares data;

    ComponentSharesChart(ComponentShares data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        XYPlot plot = new XYPlot();
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        SymbolAxis names =
                new SymbolAxis("", data.shares().stream().map(Share::name).toArray(String[]::new));
        names.setGridBandsVisible(false);
        names.setInverted(true);
        dress(names);
        plot.setDomainAxis(names);
        NumberAxis share = new NumberAxis(words.get("axis.share"));
        share.setTickUnit(new NumberTickUnit(TICK, NumberFormat.getIntegerInstance(words.locale())));
        share.setRange(0, ROOM_FOR_LABELS);
        dress(share);
        plot.setRangeAxis(share);
        XYSeries bars = new XYSeries("shares", false, false);
        List<String> labels = new ArrayList<>();
        List<String> tips = new ArrayList<>();
        for (int i = 0; i < data.shares().size(); i++) {
            Share one = data.shares().get(i);
            OptionalDouble percent = one.sharePercent();
            // A bar of no length is not drawn, nor is its label.
            if (percent.isPresent() && percent.getAsDouble() > 0) {
                bars.add(i, percent.getAsDouble());
                labels.add(words.get("label.share", words.share(percent.getAsDouble() / 100)));
                tips.add(words.lines(one.name(), one.words()));
            } else {
                String label = percent.isPresent()
                        ? words.get("label.share", words.share(0))
                        : words.get("label.not-estimated");
                XYTextAnnotation annotation = annotation(label, i);
                annotation.setToolTipText(words.lines(one.name(), one.words()));
                plot.addAnnotation(annotation);
            }
        }
        XYBarRenderer renderer = new XYBarRenderer();
        renderer.setBarPainter(new StandardXYBarPainter());
        renderer.setShadowVisible(false);
        renderer.setSeriesPaint(0, look.counted());
        renderer.setDefaultItemLabelsVisible(true);
        renderer.setDefaultItemLabelFont(look.font());
        renderer.setDefaultItemLabelPaint(look.text());
        renderer.setDefaultItemLabelGenerator((dataset, series, item) -> labels.get(item));
        renderer.setDefaultPositiveItemLabelPosition(
                new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT));
        renderer.setSeriesToolTipGenerator(0, (dataset, series, item) -> tips.get(item));
        plot.setDataset(new XYBarDataset(new XYSeriesCollection(bars), BAR_WIDTH));
        plot.setRenderer(renderer);
        sayIfSimulated(data.isSimulated());
        return chart(plot);
    }

    private XYTextAnnotation annotation(String text, int place) {
        XYTextAnnotation annotation = new XYTextAnnotation(text, place, 1);
        annotation.setFont(look.font());
        annotation.setPaint(look.struck());
        annotation.setTextAnchor(TextAnchor.CENTER_LEFT);
        return annotation;
    }
}
