package porebench.chart.factor;

import java.awt.Color;
import java.awt.Paint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.chart.labels.ItemLabelAnchor;
import org.jfree.chart.labels.ItemLabelPosition;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;

/** What the parts of an uncertainty budget contribute, as bars with their figures: filled when found, hollow when assumed. */
final class BudgetChart extends PlotDrawing {
    /** Would be written as nothing. */
    private static final double SMALLEST_SHOWN = 0.0005;

    private static final double ROOM = 1.45;
    private static final double WIDEST_BAR = 0.12;
    private static final float LABEL_SHARE = 0.34f;

    private final BudgetBars data;

    BudgetChart(BudgetBars data, ChartLook look, Locale locale) {
        super(look, locale);
        this.data = data;
    }

    JFreeChart chart() {
        DefaultCategoryDataset values = new DefaultCategoryDataset();
        List<String> labels = new ArrayList<>();
        for (BudgetBars.Bar bar : data.bars()) {
            values.addValue(bar.contributionPercent(), "part", bar.name());
            labels.add(label(bar));
        }
        if (!data.bars().isEmpty()) {
            values.addValue(data.combinedPercent(), "part", words.get("legend.together"));
            labels.add(words.fine(data.combinedPercent()));
        }
        CategoryPlot plot = new CategoryPlot(values, names(), range(), renderer(labels));
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_RIGHT);
        plot.setDomainGridlinesVisible(false);
        if (data.bars().stream().anyMatch(bar -> !bar.isAssumed())) {
            addLegendBox(words.get("legend.found"), look.counted());
        }
        if (data.bars().stream().anyMatch(BudgetBars.Bar::isAssumed)) {
            addLegendBox(words.get("legend.assumed"), look.background());
        }
        return chart(plot);
    }

    private String label(BudgetBars.Bar bar) {
        return bar.contributionPercent() < SMALLEST_SHOWN
                ? words.get("tip.hardly", words.fine(2 * SMALLEST_SHOWN))
                : words.get("tip.contribution", words.fine(bar.contributionPercent()), words.share(bar.share()));
    }

    private CategoryAxis names() {
        CategoryAxis axis = new CategoryAxis();
        axis.setTickLabelFont(look.font());
        axis.setTickLabelPaint(look.text());
        axis.setAxisLinePaint(look.grid());
        axis.setTickMarksVisible(false);
        axis.setLowerMargin(0.02);
        axis.setUpperMargin(0.02);
        axis.setCategoryMargin(0.3);
        axis.setMaximumCategoryLabelWidthRatio(LABEL_SHARE);
        return axis;
    }

    private NumberAxis range() {
        NumberAxis axis = numbers(words.get("axis.contribution"));
        axis.setRange(0, ROOM * Math.max(0.001, data.combinedPercent()));
        return axis;
    }

    private BarRenderer renderer(List<String> labels) {
        BarRenderer renderer = new Filling();
        renderer.setBarPainter(new StandardBarPainter());
        renderer.setShadowVisible(false);
        renderer.setDrawBarOutline(true);
        renderer.setMaximumBarWidth(WIDEST_BAR);
        renderer.setDefaultOutlinePaint(look.counted());
        renderer.setDefaultOutlineStroke(stroke(1.6));
        renderer.setDefaultItemLabelGenerator(new Labels(labels));
        renderer.setDefaultItemLabelsVisible(true);
        renderer.setDefaultItemLabelFont(look.font());
        renderer.setDefaultItemLabelPaint(look.text());
        renderer.setItemLabelAnchorOffset(4 * look.scale());
        renderer.setDefaultPositiveItemLabelPosition(
                new ItemLabelPosition(ItemLabelAnchor.OUTSIDE3, TextAnchor.CENTER_LEFT));
        renderer.setDefaultToolTipGenerator((dataset, row, column) ->
                words.lines(dataset.getColumnKey(column).toString(), labels.get(column)));
        return renderer;
    }

    /** Fills a bar by where its figure comes from; what all come to has the colour of text. */
    private final class Filling extends BarRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Paint getItemPaint(int row, int column) {
            if (column >= data.bars().size()) {
                return look.text();
            }
            Color hollow = look.background();
            return data.bars().get(column).isAssumed() ? hollow : look.counted();
        }
    }

    /** Says the figure of each bar at its end. */
    private record Labels(List<String> labels) implements CategoryItemLabelGenerator {
        @Override
        public String generateRowLabel(CategoryDataset dataset, int row) {
            return "";
        }

        @Override
        public String generateColumnLabel(CategoryDataset dataset, int column) {
            return "";
        }

        @Override
        public String generateLabel(CategoryDataset dataset, int row, int column) {
            return labels.get(column);
        }
    }
}
