package porebench.chart.look;

import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;

/** Measured points with the bar of their uncertainty: a disc passes, a cross does not. */
public final class Bars {
    private static final double SIDE = 11;
    private static final double CAP = 6;

    private final PlotDrawing drawing;
    private final XYIntervalSeries passed = new XYIntervalSeries("passed", false, true);
    private final XYIntervalSeries failed = new XYIntervalSeries("failed", false, true);
    private final List<String> passedTips = new ArrayList<>();
    private final List<String> failedTips = new ArrayList<>();
    private final List<String> passedIds = new ArrayList<>();
    private final List<String> failedIds = new ArrayList<>();

    public Bars(PlotDrawing drawing) {
        this.drawing = drawing;
    }

    /**
     * Adds a point, its bar reaching as far down as up.
     *
     * @param id what opens when it is clicked
     */
    public void add(double x, double y, double halfBar, boolean passes, String tip, String id) {
        (passes ? passed : failed).add(x, x, x, y, y - halfBar, y + halfBar);
        (passes ? passedTips : failedTips).add(tip);
        (passes ? passedIds : failedIds).add(id);
    }

    /** Puts the points into a plot, and what they are into its legend. */
    public void addTo(XYPlot plot, int dataset, String passWord, String failWord) {
        XYIntervalSeriesCollection points = new XYIntervalSeriesCollection();
        points.addSeries(passed);
        points.addSeries(failed);
        XYErrorRenderer renderer = new XYErrorRenderer();
        renderer.setDrawXError(false);
        renderer.setCapLength(drawing.look.width(CAP));
        renderer.setErrorStroke(drawing.stroke(1.4));
        dress(renderer, 0, PointLook.COUNTED, passedTips);
        dress(renderer, 1, PointLook.VOID, failedTips);
        renderer.setURLGenerator(new PointIds(List.of(passedIds, failedIds)));
        if (!passed.isEmpty()) {
            drawing.addLegendShape(PointLook.COUNTED, passWord);
        }
        if (!failed.isEmpty()) {
            drawing.addLegendShape(PointLook.VOID, failWord);
        }
        plot.setDataset(dataset, points);
        plot.setRenderer(dataset, renderer);
    }

    private void dress(XYErrorRenderer renderer, int series, PointLook point, List<String> tips) {
        renderer.setSeriesShape(series, point.shape(SIDE * drawing.look.scale()));
        renderer.setSeriesShapesFilled(series, true);
        renderer.setSeriesPaint(series, point.colour(drawing.look));
        renderer.setSeriesStroke(series, drawing.stroke(1.6));
        renderer.setSeriesToolTipGenerator(series, (data, at, item) -> tips.get(item));
    }
}
