package porebench.chart.look;

import java.util.List;
import org.jfree.chart.labels.XYToolTipGenerator;
import org.jfree.chart.urls.XYURLGenerator;
import org.jfree.data.xy.XYDataset;

/**
 * What the points of a dataset stand for, by their ids, and what there is to say about them; a point with an id can be opened.
 *
 * <p>The plots' library has a place for a link of every point, and ids are kept there.
 */
final class PointNotes implements XYURLGenerator, XYToolTipGenerator {
    private final ThinSeries data;
    private final List<List<PointSeries.Point>> bySeries;

    /**
     * Keeps them.
     *
     * @param bySeries all points of each series, from left to right
     */
    PointNotes(ThinSeries data, List<List<PointSeries.Point>> bySeries) {
        this.data = data;
        this.bySeries = List.copyOf(bySeries);
    }

    @Override
    public String generateURL(XYDataset dataset, int series, int item) {
        return point(series, data.index(series, item)).id();
    }

    @Override
    public String generateToolTip(XYDataset dataset, int series, int item) {
        return point(series, data.index(series, item)).tip().get();
    }

    /** Returns one of all points. */
    PointSeries.Point point(int series, int index) {
        return bySeries.get(series).get(index);
    }
}
