package porebench.chart.look;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * A horizontal axis of points counted from 1, each with a label: of equal neighbours the first, of those that would run
 * into one another the left one, and none that the right edge would cut off.
 */
public final class LabelAxis extends NumberAxis {
    private static final long serialVersionUID = 1L;
    private static final String AIR = "\u2007\u2007";

    private final List<String> labels;

    /** The first of every row of equal labels. */
    private final int[] starts;

    /**
     * Makes one.
     *
     * @param labels the label of every point, the first one at 1
     */
    public LabelAxis(String title, List<String> labels) {
        super(title);
        this.labels = List.copyOf(labels);
        this.starts = IntStream.range(0, labels.size())
                .filter(i -> i == 0 || !labels.get(i).equals(labels.get(i - 1)))
                .toArray();
        setAutoTickUnitSelection(false);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D graphics, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        graphics.setFont(getTickLabelFont());
        FontMetrics metrics = graphics.getFontMetrics();
        int end = (int) Math.min(labels.size(), Math.floor(getRange().getUpperBound()));
        double pixelsAPoint = valueToJava2D(2, area, edge) - valueToJava2D(1, area, edge);
        double free = Double.NEGATIVE_INFINITY;
        int place = from((int) Math.max(0, Math.ceil(getRange().getLowerBound()) - 1));
        while (place < starts.length && starts[place] < end) {
            int i = starts[place];
            double at = valueToJava2D(i + 1.0, area, edge);
            double width = metrics.stringWidth(labels.get(i) + AIR);
            place++;
            if (at - width / 2 < free) {
                // However short the next labels are, none of those before this place has room.
                place = Math.max(place, from(i + (int) Math.floor((free - at) / pixelsAPoint)));
            } else if (at + width / 2 <= area.getMaxX() + width / 6) {
                ticks.add(new NumberTick(
                        (double) (i + 1), labels.get(i), TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
                free = at + width / 2;
            }
        }
        return ticks;
    }

    /** Returns which row of equal labels is the first to begin at or after a point. */
    private int from(int point) {
        int found = Arrays.binarySearch(starts, point);
        return found < 0 ? -1 - found : found;
    }
}
