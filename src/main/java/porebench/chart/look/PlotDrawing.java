package porebench.chart.look;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.LongSummaryStatistics;
import java.util.TimeZone;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.LegendItemSource;
import org.jfree.chart.axis.DateAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * A plot being drawn, and what plots are made of: points by state, axes, lines and bands, the legend in words, the theme's look.
 */
public abstract class PlotDrawing {
    /** The dataset of a plot that holds its points; lines stand in the one after it. */
    public static final int POINTS = 0;

    public static final int LINES = 1;

    private static final double SHAPE_SIDE = 11;
    private static final TimeZone AS_WRITTEN = TimeZone.getTimeZone("UTC");
    private static final double DAY = 86_400_000;

    protected final ChartLook look;
    protected final PlotWords words;
    private final LegendItemCollection legend = new LegendItemCollection();
    private final List<String> notices = new ArrayList<>();
    private final List<String> explanations = new ArrayList<>();

    protected PlotDrawing(ChartLook look, Locale locale) {
        this.look = look;
        this.words = new PlotWords(locale);
    }

    /**
     * Puts the trials into the plot, one series a look, each with its legend words, its tip and its id.
     *
     * @param position where along the horizontal axis a trial stands, from its position in the list
     * @param foot where one without a value stands
     */
    protected void addTrials(XYPlot plot, List<TrialPoint> trials, IntToDoubleFunction position, double foot) {
        PointSeries points = new PointSeries(this);
        TrialTip tip = new TrialTip(words);
        for (int i = 0; i < trials.size(); i++) {
            TrialPoint trial = trials.get(i);
            points.add(
                    PointLook.of(trial),
                    position.applyAsDouble(i),
                    trial.factorPercent().orElse(foot),
                    () -> tip.of(trial),
                    trial.id());
        }
        points.addTo(plot, POINTS, this::word);
        if (trials.stream().anyMatch(trial -> trial.factorPercent().isEmpty())) {
            legend.add(new LegendItem(words.get("legend.foot"), look.background()));
        }
        sayIfSimulated(trials.stream().anyMatch(TrialPoint::isSimulated));
    }

    /** Says above a plot of what was simulated that nothing in it was measured, in the colour of what is wrong. */
    protected void sayIfSimulated(boolean isSimulated) {
        if (isSimulated) {
            notices.add(words.get("notice.simulated"));
        }
    }

    /** Says something above the plot that explains it, in the colour of text. */
    protected void explainAbove(String explanation) {
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

    Shape shape(LegendMark mark) {
        return mark.shape(SHAPE_SIDE * look.scale());
    }

    protected BasicStroke stroke(double pixels) {
        return new BasicStroke(look.width(pixels));
    }

    protected BasicStroke dashes() {
        return dashed(1.8, 7, 4);
    }

    protected BasicStroke dots() {
        return dashed(1.2, 2, 3);
    }

    /** Returns the stroke of the limits of a control chart: a dash and a dot. */
    protected BasicStroke limits() {
        return dashed(1.6, 10, 4, 2, 4);
    }

    private BasicStroke dashed(double pixels, int... onAndOff) {
        float[] dashes = new float[onAndOff.length];
        for (int i = 0; i < dashes.length; i++) {
            dashes[i] = look.width(onAndOff[i]);
        }
        return new BasicStroke(look.width(pixels), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dashes, 0);
    }

    /** Says what a mark stands for: points of a look, whose readings, or which statistics of a laboratory. */
    protected void addLegendShape(LegendMark mark, String word) {
        Shape shape = shape(mark);
        legend.add(
                mark.isFilled()
                        ? new LegendItem(word, null, null, null, shape, mark.colour(look))
                        : new LegendItem(
                                word, null, null, null, shape, look.background(), stroke(1.6), mark.colour(look)));
    }

    protected void addLegendLine(String word, BasicStroke stroke, Paint paint) {
        double length = 24 * look.scale();
        legend.add(new LegendItem(
                word, null, null, null, new Line2D.Double(-length / 2, 0, length / 2, 0), stroke, paint));
    }

    /**
     * Makes a band behind a plot, and says in the legend what it is.
     *
     * @param strength how much of the colour is seen, from 0 to 1
     */
    protected IntervalMarker band(String word, double low, double high, Color colour, float strength) {
        IntervalMarker band = new IntervalMarker(low, high);
        band.setPaint(colour);
        band.setAlpha(strength);
        double side = 14 * look.scale();
        Color seen = new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), Math.round(255 * strength));
        legend.add(new LegendItem(
                word, null, null, null, new Rectangle2D.Double(-side / 2, -side / 3, side, side * 2 / 3), seen));
        return band;
    }

    /** Draws one line. */
    protected void line(XYPlot plot, int dataset, XYSeries points, BasicStroke stroke, Paint paint) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
        renderer.setSeriesPaint(0, paint);
        renderer.setSeriesStroke(0, stroke);
        plot.setDataset(dataset, new XYSeriesCollection(points));
        plot.setRenderer(dataset, renderer);
    }

    /** Writes words beside an upright line, from its upper end on, some way below the edge of the plot. */
    protected void label(ValueMarker line, String text, boolean isLeft, double below) {
        line.setAlpha(1);
        line.setLabel(text);
        line.setLabelFont(look.font());
        line.setLabelPaint(look.text());
        line.setLabelBackgroundColor(look.background());
        line.setLabelAnchor(isLeft ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
        line.setLabelTextAnchor(isLeft ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
        double gap = 4 * look.scale();
        line.setLabelOffset(new RectangleInsets(gap + below * look.scale(), gap, gap, gap));
    }

    /** Makes an axis of numbers. */
    protected NumberAxis numbers(String title) {
        NumberAxis axis = new NumberAxis(title);
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        dress(axis);
        return axis;
    }

    protected NumberAxis factorAxis(double low, double high) {
        NumberAxis axis = numbers(words.get("axis.factor"));
        axis.setRange(low, high);
        return axis;
    }

    /**
     * Makes an axis of days that shows some times with air around them.
     *
     * @param times at least one; of the laboratory's clock, shown as they are, without a zone
     * @param leastDays how many days it spans at least
     * @param air the air on either side, as a share of the span
     */
    protected DateAxis dates(String title, Stream<LocalDateTime> times, int leastDays, double air) {
        LongSummaryStatistics all = times.mapToLong(PlotDrawing::millis).summaryStatistics();
        double first = all.getMin();
        double span = Math.max(all.getMax() - first, leastDays * DAY);
        DateAxis axis = new DateAxis(title, AS_WRITTEN, words.locale());
        axis.setStandardTickUnits(DateMarks.in(AS_WRITTEN));
        axis.setRange(new Date((long) (first - air * span)), new Date((long) (first + (1 + air) * span)));
        dress(axis);
        return axis;
    }

    /** Returns where a time stands along an axis of days. */
    protected static long millis(LocalDateTime time) {
        return time.toInstant(ZoneOffset.UTC).toEpochMilli();
    }

    protected void dress(ValueAxis axis) {
        axis.setLabelFont(look.font());
        axis.setTickLabelFont(look.font());
        axis.setLabelPaint(look.text());
        axis.setTickLabelPaint(look.text());
        axis.setAxisLinePaint(look.grid());
        axis.setTickMarkPaint(look.grid());
    }

    private static RectangleInsets insets(ChartLook look, double top, double left, double bottom, double right) {
        double scale = look.scale();
        return new RectangleInsets(scale * top, scale * left, scale * bottom, scale * right);
    }

    /** Says what bars filled so are. */
    protected void addLegendBox(String word, Paint filling) {
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
    protected JFreeChart chart(CategoryPlot plot) {
        plot.setRangeGridlinePaint(look.grid());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setFixedLegendItems(legend);
        dressFrame(plot);
        return finished(plot, plot);
    }

    /** Makes a chart of a plot in the theme's look, its legend below. */
    protected JFreeChart chart(XYPlot plot) {
        dress(plot);
        return finished(plot, plot);
    }

    /** Makes a chart of plots below one another along one axis, in the theme's look, its legend below. */
    protected JFreeChart chart(ValueAxis shared, XYPlot above, XYPlot... below) {
        CombinedDomainXYPlot all = new CombinedDomainXYPlot(shared);
        all.setGap(14 * look.scale());
        dress(above);
        all.add(above, 5);
        for (XYPlot each : below) {
            dress(each);
            all.add(each, 3);
        }
        dress(all);
        return finished(all, all);
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
        chart.setPadding(insets(look, 8, 4, 4, 12));
        LegendTitle below = new LegendTitle(items);
        below.setPosition(RectangleEdge.BOTTOM);
        below.setHorizontalAlignment(HorizontalAlignment.LEFT);
        below.setItemFont(look.font());
        below.setItemPaint(look.text());
        below.setBackgroundPaint(look.background());
        below.setFrame(BlockBorder.NONE);
        below.setItemLabelPadding(insets(look, 3, 4, 3, 14));
        chart.addLegend(below);
        for (String notice : notices) {
            chart.addSubtitle(title(notice, look.font().deriveFont(Font.BOLD), look.voided(), look));
        }
        for (String explanation : explanations) {
            chart.addSubtitle(title(explanation, look.font(), look.text(), look));
        }
        return chart;
    }

    /** Makes words that stand above a plot, from its left edge on. */
    private static TextTitle title(String text, Font font, Paint paint, ChartLook look) {
        TextTitle title = new TextTitle(text, font);
        title.setPaint(paint);
        title.setHorizontalAlignment(HorizontalAlignment.LEFT);
        title.setTextAlignment(HorizontalAlignment.LEFT);
        title.setPadding(insets(look, 2, 8, 6, 8));
        return title;
    }

    /** Puts a title above a chart. */
    public static void entitle(JFreeChart chart, String text, ChartLook look) {
        Font font = look.font().deriveFont(Font.BOLD, look.font().getSize2D() + 3);
        chart.setTitle(title(text, font, look.text(), look));
    }
}
