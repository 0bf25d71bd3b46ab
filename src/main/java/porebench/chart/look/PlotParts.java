package porebench.chart.look;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.LegendItemSource;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** What plots are made of: points by state, axes, legend in words, the theme's look. */
public final class PlotParts {
    /** The dataset of a plot that holds its trials; lines stand in the one after it. */
    public static final int TRIALS = 0;

    public static final int LINES = 1;

    private static final double SHAPE_SIDE = 11;

    private final ChartLook look;
    private final PlotWords words;
    private final LegendItemCollection legend = new LegendItemCollection();
    private final List<String> notices = new ArrayList<>();
    private final List<String> explanations = new ArrayList<>();

    public PlotParts(ChartLook look, PlotWords words) {
        this.look = look;
        this.words = words;
    }

    /** Where along the horizontal axis a trial stands, from its position in the list. */
    public interface Position {
        double of(int index);
    }

    /** Puts the trials into the plot, one series a look, each with its legend words, its tip and its id; one without a value at the foot. */
    public void addTrials(XYPlot plot, List<TrialPoint> trials, Position position, double foot) {
        PointSeries points = new PointSeries(this, look);
        TrialTip tip = new TrialTip(words);
        for (int i = 0; i < trials.size(); i++) {
            TrialPoint trial = trials.get(i);
            points.add(
                    PointLook.of(trial),
                    position.of(i),
                    trial.factorPercent().orElse(foot),
                    () -> tip.of(trial),
                    trial.id());
        }
        points.addTo(plot, TRIALS, this::word);
        if (trials.stream().anyMatch(trial -> trial.factorPercent().isEmpty())) {
            legend.add(new LegendItem(words.get("legend.foot"), look.background()));
        }
        if (trials.stream().anyMatch(TrialPoint::isSimulated)) {
            sayAbove(words.get("notice.simulated"));
        }
    }

    /** Says something above the plot, in the colour of what is wrong. */
    public void sayAbove(String notice) {
        notices.add(notice);
    }

    /** Says something above the plot that explains it, in the colour of text. */
    public void explainAbove(String explanation) {
        explanations.add(explanation);
    }

    private String word(PointLook point) {
        return words.get(
                switch (point) {
                    case COUNTED -> "legend.counted";
                    case SIMULATED -> "legend.simulated";
                    case STRUCK -> "legend.struck";
                    case VOID -> "legend.void";
                    case SIGNAL -> "legend.signal";
                    case SIMULATED_SIGNAL -> "legend.simulated-signal";
                });
    }

    Shape shape(PointLook point) {
        return StateShape.of(point, SHAPE_SIDE * look.scale());
    }

    public BasicStroke stroke(double pixels) {
        return new BasicStroke(look.width(pixels));
    }

    public BasicStroke dashes() {
        return new BasicStroke(
                look.width(1.8),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {look.width(7), look.width(4)},
                0);
    }

    public BasicStroke dots() {
        return new BasicStroke(
                look.width(1.2),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {look.width(2), look.width(3)},
                0);
    }

    /** Says what points of a look are. */
    public void addLegendShape(PointLook point, String word) {
        Shape shape = shape(point);
        legend.add(
                point.isFilled()
                        ? new LegendItem(word, null, null, null, shape, look.of(point))
                        : new LegendItem(
                                word, null, null, null, shape, look.background(), stroke(1.6), look.of(point)));
    }

    /** Says what a mark stands for: whose readings, or which statistics of a laboratory. */
    public void addLegendShape(LegendMark mark, String word) {
        Shape shape = mark.shape(SHAPE_SIDE * look.scale());
        legend.add(
                mark.isFilled()
                        ? new LegendItem(word, null, null, null, shape, mark.colour(look))
                        : new LegendItem(
                                word, null, null, null, shape, look.background(), stroke(1.6), mark.colour(look)));
    }

    public void addLegendLine(String word, BasicStroke stroke, Paint paint) {
        double length = 24 * look.scale();
        legend.add(new LegendItem(
                word, null, null, null, new Line2D.Double(-length / 2, 0, length / 2, 0), stroke, paint));
    }

    public void addLegendBand(String word, Paint paint) {
        double side = 14 * look.scale();
        legend.add(new LegendItem(
                word, null, null, null, new Rectangle2D.Double(-side / 2, -side / 3, side, side * 2 / 3), paint));
    }

    public NumberAxis factorAxis(double low, double high) {
        NumberAxis axis = new NumberAxis(words.get("axis.factor"));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        axis.setRange(low, high);
        dress(axis);
        return axis;
    }

    public void dress(ValueAxis axis) {
        axis.setLabelFont(look.font());
        axis.setTickLabelFont(look.font());
        axis.setLabelPaint(look.text());
        axis.setTickLabelPaint(look.text());
        axis.setAxisLinePaint(look.grid());
        axis.setTickMarkPaint(look.grid());
    }

    public BasicStroke limits() {
        return new BasicStroke(
                look.width(1.6),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {look.width(10), look.width(4), look.width(2), look.width(4)},
                0);
    }

    private RectangleInsets insets(double top, double left, double bottom, double right) {
        double scale = look.scale();
        return new RectangleInsets(scale * top, scale * left, scale * bottom, scale * right);
    }

    /** Says what bars filled so are. */
    public void addLegendBox(String word, Paint filling) {
        double side = 11 * look.scale();
        legend.add(new LegendItem(
                word,
                null,
                null,
                null,
                new Rectangle2D.Double(-side / 2, -side / 2, side, side),
                filling,
                stroke(1.6),
                look.counted()));
    }

    /** Makes a chart of bars in the theme's look, its legend below. */
    public JFreeChart chart(CategoryPlot plot) {
        plot.setRangeGridlinePaint(look.grid());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setFixedLegendItems(legend);
        dressFrame(plot);
        return finished(plot, plot);
    }

    /** Makes a chart of a plot in the theme's look, its legend below. */
    public JFreeChart chart(XYPlot plot) {
        dress(plot);
        return finished(plot, plot);
    }

    /** Makes a chart of plots below one another along one axis, in the theme's look, its legend below. */
    public JFreeChart chart(ValueAxis shared, XYPlot above, XYPlot below) {
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(shared);
        both.setGap(14 * look.scale());
        dress(above);
        dress(below);
        both.add(above, 5);
        both.add(below, 3);
        dress(both);
        return finished(both, both);
    }

    private void dress(XYPlot plot) {
        plot.setDomainGridlinePaint(look.grid());
        plot.setRangeGridlinePaint(look.grid());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setFixedLegendItems(legend);
        dressFrame(plot);
    }

    private void dressFrame(Plot plot) {
        plot.setBackgroundPaint(look.background());
        plot.setOutlinePaint(look.grid());
        plot.setNoDataMessage(words.get("nothing"));
        plot.setNoDataMessageFont(look.font());
        plot.setNoDataMessagePaint(look.text());
    }

    private JFreeChart finished(Plot plot, LegendItemSource items) {
        JFreeChart chart = new JFreeChart(null, look.font(), plot, false);
        chart.setBackgroundPaint(look.background());
        chart.setAntiAlias(true);
        chart.setTextAntiAlias(true);
        chart.setPadding(insets(8, 4, 4, 12));
        LegendTitle below = new LegendTitle(items);
        below.setPosition(RectangleEdge.BOTTOM);
        below.setHorizontalAlignment(HorizontalAlignment.LEFT);
        below.setItemFont(look.font());
        below.setItemPaint(look.text());
        below.setBackgroundPaint(look.background());
        below.setFrame(BlockBorder.NONE);
        below.setItemLabelPadding(insets(3, 4, 3, 14));
        chart.addLegend(below);
        for (String notice : notices) {
            chart.addSubtitle(title(notice, look.font().deriveFont(Font.BOLD), look.voided()));
        }
        for (String explanation : explanations) {
            chart.addSubtitle(title(explanation, look.font(), look.text()));
        }
        return chart;
    }

    /** Makes words that stand above a plot, from its left edge on. */
    private TextTitle title(String text, Font font, Paint paint) {
        TextTitle title = new TextTitle(text, font);
        title.setPaint(paint);
        title.setHorizontalAlignment(HorizontalAlignment.LEFT);
        title.setTextAlignment(HorizontalAlignment.LEFT);
        title.setPadding(insets(2, 8, 6, 8));
        return title;
    }

    /** Puts a title above a chart. */
    public static void entitle(JFreeChart chart, String text, ChartLook look) {
        PlotParts parts = new PlotParts(look, new PlotWords(Locale.ROOT));
        chart.setTitle(
                parts.title(text, look.font().deriveFont(Font.BOLD, look.font().getSize2D() + 3), look.text()));
    }
}
