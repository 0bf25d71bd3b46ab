package porebench.chart;

import java.awt.BasicStroke;
import java.awt.Paint;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.LegendItemSource;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import porebench.chart.TrialPoint.State;

/** What plots are made of: points by state, axes, legend in words, the theme's look. */
final class PlotParts {
    /** The dataset of a plot that holds its trials; lines stand in the one after it. */
    static final int TRIALS = 0;

    static final int LINES = 1;

    private static final double SHAPE_SIDE = 11;

    private final ChartLook look;
    private final Words words;
    private final LegendItemCollection legend = new LegendItemCollection();

    PlotParts(ChartLook look, Words words) {
        this.look = look;
        this.words = words;
    }

    /** Where along the horizontal axis a trial stands, from its position in the list. */
    interface Position {
        double of(int index);
    }

    /** Puts the trials into the plot, one series a state, each with its legend words and its tip. */
    void addTrials(XYPlot plot, List<TrialPoint> trials, Position position, FactorAxis axis) {
        Map<State, List<String>> tips = new EnumMap<>(State.class);
        Map<State, XYSeries> series = new EnumMap<>(State.class);
        TrialTip tip = new TrialTip(words);
        for (State state : State.values()) {
            tips.put(state, new ArrayList<>());
            series.put(state, new XYSeries(state.name(), false, true));
        }
        for (int i = 0; i < trials.size(); i++) {
            TrialPoint trial = trials.get(i);
            State state = trial.state();
            series.getOrDefault(state, new XYSeries(state.name()))
                    .add(position.of(i), trial.factorPercent().orElse(axis.foot()));
            tips.getOrDefault(state, new ArrayList<>()).add(tip.of(trial));
        }
        XYSeriesCollection dataset = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        renderer.setUseFillPaint(false);
        series.forEach((state, points) -> {
            int index = dataset.getSeriesCount();
            dataset.addSeries(points);
            renderer.setSeriesShape(index, shape(state));
            renderer.setSeriesShapesFilled(index, StateShape.isFilled(state));
            renderer.setSeriesPaint(index, look.of(state));
            renderer.setSeriesOutlineStroke(index, stroke(1.6));
            renderer.setSeriesStroke(index, stroke(1.6));
            List<String> ofState = tips.getOrDefault(state, List.of());
            renderer.setSeriesToolTipGenerator(index, (data, s, item) -> ofState.get(item));
            if (!points.isEmpty()) {
                addLegendShape(state, word(state));
            }
        });
        if (trials.stream().anyMatch(trial -> trial.factorPercent().isEmpty())) {
            legend.add(new LegendItem(words.get("legend.foot"), look.background()));
        }
        plot.setDataset(TRIALS, dataset);
        plot.setRenderer(TRIALS, renderer);
    }

    private Shape shape(State state) {
        return StateShape.of(state, SHAPE_SIDE * look.scale());
    }

    BasicStroke stroke(double pixels) {
        return new BasicStroke(look.width(pixels));
    }

    BasicStroke dashes() {
        return new BasicStroke(
                look.width(1.8),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {look.width(7), look.width(4)},
                0);
    }

    BasicStroke dots() {
        return new BasicStroke(
                look.width(1.2),
                BasicStroke.CAP_BUTT,
                BasicStroke.JOIN_MITER,
                10,
                new float[] {look.width(2), look.width(3)},
                0);
    }

    /** Says what points with the shape and colour of a state are. */
    void addLegendShape(State state, String word) {
        legend.add(shapeItem(state, word));
    }

    private String word(State state) {
        return words.get(
                switch (state) {
                    case COUNTED -> "legend.counted";
                    case STRUCK -> "legend.struck";
                    case VOID -> "legend.void";
                });
    }

    private LegendItem shapeItem(State state, String word) {
        Shape shape = shape(state);
        return StateShape.isFilled(state)
                ? new LegendItem(word, null, null, null, shape, look.of(state))
                : new LegendItem(word, null, null, null, shape, look.background(), stroke(1.6), look.of(state));
    }

    void addLegendLine(String word, BasicStroke stroke, Paint paint) {
        double length = 24 * look.scale();
        legend.add(new LegendItem(
                word, null, null, null, new Line2D.Double(-length / 2, 0, length / 2, 0), stroke, paint));
    }

    void addLegendBand(String word, Paint paint) {
        double side = 14 * look.scale();
        legend.add(new LegendItem(
                word, null, null, null, new Rectangle2D.Double(-side / 2, -side / 3, side, side * 2 / 3), paint));
    }

    NumberAxis factorAxis(FactorAxis range) {
        NumberAxis axis = new NumberAxis(words.get("axis.factor"));
        axis.setStandardTickUnits(NumberAxis.createStandardTickUnits(words.locale()));
        axis.setRange(range.low(), range.high());
        dress(axis);
        return axis;
    }

    void dress(ValueAxis axis) {
        axis.setLabelFont(look.font());
        axis.setTickLabelFont(look.font());
        axis.setLabelPaint(look.text());
        axis.setTickLabelPaint(look.text());
        axis.setAxisLinePaint(look.grid());
        axis.setTickMarkPaint(look.grid());
    }

    private RectangleInsets insets(double top, double left, double bottom, double right) {
        double scale = look.scale();
        return new RectangleInsets(scale * top, scale * left, scale * bottom, scale * right);
    }

    /** Says what bars filled so are. */
    void addLegendBox(String word, Paint filling) {
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
    JFreeChart chart(CategoryPlot plot) {
        plot.setRangeGridlinePaint(look.grid());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setFixedLegendItems(legend);
        return framed(plot, plot);
    }

    /** Makes a chart of a plot in the theme's look, its legend below. */
    JFreeChart chart(XYPlot plot) {
        plot.setDomainGridlinePaint(look.grid());
        plot.setRangeGridlinePaint(look.grid());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setFixedLegendItems(legend);
        return framed(plot, plot);
    }

    private JFreeChart framed(Plot plot, LegendItemSource items) {
        plot.setBackgroundPaint(look.background());
        plot.setOutlinePaint(look.grid());
        plot.setNoDataMessage(words.get("nothing"));
        plot.setNoDataMessageFont(look.font());
        plot.setNoDataMessagePaint(look.text());
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
        return chart;
    }
}
