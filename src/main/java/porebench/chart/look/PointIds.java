package porebench.chart.look;

import java.util.List;
import org.jfree.chart.urls.XYURLGenerator;
import org.jfree.data.xy.XYDataset;

/**
 * What the points of a dataset stand for, by their ids; a point with an id can be opened.
 *
 * <p>The plots' library has a place for a link of every point, and ids are kept there.
 */
public final class PointIds implements XYURLGenerator {
    private final List<List<String>> bySeries;

    public PointIds(List<List<String>> bySeries) {
        this.bySeries = bySeries.stream().map(List::copyOf).toList();
    }

    @Override
    public String generateURL(XYDataset dataset, int series, int item) {
        return bySeries.get(series).get(item);
    }
}
