package porebench.chart;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/**
 * A horizontal axis of points counted from 1, each with a label: of equal neighbours the first, of those that would run
 * into one another the left one, and none that the right edge would cut off.
 */
final class LabelAxis extends NumberAxis {
    private static final long serialVersionUID = 1L;
    private static final String AIR = "\u2007\u2007";

    private final List<String> labels;

    LabelAxis(String title, List<String> labels) {
        super(title);
        this.labels = List.copyOf(labels);
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
        int i = (int) Math.max(0, Math.ceil(getRange().getLowerBound()) - 1);
        while (i < end) {
            String label = labels.get(i);
            double at = valueToJava2D(i + 1.0, area, edge);
            int next = i + 1;
            if (i == 0 || !label.equals(labels.get(i - 1))) {
                double width = metrics.stringWidth(label + AIR);
                if (at - width / 2 < free) {
                    // However short the next labels are, none of those before this place has room.
                    next = Math.max(next, i + (int) Math.floor((free - at) / pixelsAPoint));
                } else if (at + width / 2 <= area.getMaxX() + width / 6) {
                    ticks.add(new NumberTick((double) (i + 1), label, TextAnchor.TOP_CENTER, TextAnchor.TOP_CENTER, 0));
                    free = at + width / 2;
                }
            }
            i = next;
        }
        return ticks;
    }
}
