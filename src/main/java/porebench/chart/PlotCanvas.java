package porebench.chart;

import java.awt.BasicStroke;
import java.awt.Cursor;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.panel.Overlay;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotPoint;
import porebench.chart.look.PlotPoints;

/**
 * Where a plot is drawn in the window: zoomed by dragging and by the wheel with Ctrl, its points opened by a click or, from
 * the keyboard, by the arrow keys and Enter.
 *
 * <p>The wheel without Ctrl moves the page around the plot. The keys are: left and right to the next point, Enter to open
 * it, plus and minus to zoom, 0 or Escape to show all.
 */
final class PlotCanvas extends ChartPanel {
    private static final long serialVersionUID = 1L;
    private static final int LARGEST = 20_000;
    private static final double REACH = 10;
    private static final double STEP = 1.25;

    private transient Optional<PlotPoints> points = Optional.empty();
    private transient Optional<PlotPoint> marked = Optional.empty();
    private transient Consumer<String> opener = id -> {};
    private transient Runnable restore = () -> {};
    private transient Runnable changed = () -> {};
    private transient double scale = 1;
    private String said = "";
    private boolean opens;
    private boolean zoomed;

    PlotCanvas() {
        // Without limits below and above, the plot is drawn at the size it has on the screen.
        super(null, LARGEST, LARGEST, 1, 1, LARGEST, LARGEST, true, false, false, false, false, true);
        setPopupMenu(null);
        setInitialDelay(100);
        setDismissDelay(60_000);
        setFocusable(true);
        addOverlay(new Marks());
        addMouseWheelListener(this::wheel);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                requestFocusInWindow();
                if (SwingUtilities.isLeftMouseButton(event)) {
                    pointAt(event.getPoint()).ifPresent(PlotCanvas.this::open);
                }
            }
        });
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        keys();
    }

    private void keys() {
        key("LEFT", () -> walk(-1));
        key("RIGHT", () -> walk(1));
        key("ENTER", () -> marked.ifPresent(this::open));
        key("PLUS", () -> zoomBy(1 / STEP, middle()));
        key("ADD", () -> zoomBy(1 / STEP, middle()));
        key("EQUALS", () -> zoomBy(1 / STEP, middle()));
        key("MINUS", () -> zoomBy(STEP, middle()));
        key("SUBTRACT", () -> zoomBy(STEP, middle()));
        key("0", this::restoreAutoBounds);
        key("ESCAPE", this::restoreAutoBounds);
    }

    private void key(String stroke, Runnable doing) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                doing.run();
            }
        });
    }

    /** Shows a chart; the point marked before stays marked if it is there again. */
    void show(JFreeChart chart, ChartLook look) {
        scale = look.scale();
        setBackground(look.background());
        setChart(chart);
        // Bars are few and have nothing to look at more closely.
        setMouseZoomable(chart.getPlot() instanceof XYPlot);
        points = Optional.of(PlotPoints.of(chart));
        zoomed = false;
        mark(marked.flatMap(before -> known(before.id())));
    }

    /**
     * Says what to do.
     *
     * @param restorer shows the whole plot again
     * @param listener is called after every change of what is marked or zoomed
     */
    void answer(Runnable restorer, Runnable listener) {
        restore = restorer;
        changed = listener;
    }

    /** Says what opens a point. */
    void openWith(Consumer<String> newOpener) {
        opener = newOpener;
        opens = true;
    }

    boolean isZoomed() {
        return zoomed;
    }

    Optional<PlotPoint> marked() {
        return marked;
    }

    /** Returns the points that can be opened, from left to right. */
    List<PlotPoint> points() {
        return points.<List<PlotPoint>>map(all -> all).orElse(List.of());
    }

    Optional<PlotPoint> known(String id) {
        return points.flatMap(all -> all.known(id));
    }

    /** Takes what the plot shows in words. */
    void say(String words) {
        said = words;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }

    void mark(Optional<PlotPoint> point) {
        marked = point;
        // The point first: with the arrow keys that is what is new.
        getAccessibleContext()
                .setAccessibleDescription(
                        point.map(known -> known.words() + "\n" + said).orElse(said));
        changed.run();
        repaint();
    }

    private void open(PlotPoint point) {
        mark(Optional.of(point));
        opener.accept(point.id());
    }

    private void walk(int step) {
        List<PlotPoint> all = points();
        if (all.isEmpty()) {
            return;
        }
        int before = marked.map(all::indexOf).orElse(step > 0 ? -1 : all.size());
        mark(Optional.of(all.get(Math.max(0, Math.min(all.size() - 1, before + step)))));
    }

    /** Returns the point that can be opened at a place, the nearest within reach; none before the first painting. */
    Optional<PlotPoint> pointAt(Point place) {
        if (getChart() == null || points.isEmpty()) {
            return Optional.empty();
        }
        List<XYPlot> parts = PlotPoint.parts(getChart());
        Optional<PlotPoints.Near> nearest = Optional.empty();
        for (int part = 0; part < parts.size(); part++) {
            Rectangle2D area = area(part);
            if (area != null) {
                Optional<PlotPoints.Near> before = nearest;
                double reach = before.map(PlotPoints.Near::distance).orElse(REACH * scale);
                nearest = points.get()
                        .nearest(parts.get(part), part, area, place, reach)
                        .or(() -> before);
            }
        }
        return nearest.map(near -> points.get().get(near.index()));
    }

    /** Says what there is to say about the point under the pointer, which need not be one that is drawn of many. */
    @Override
    public @org.jspecify.annotations.Nullable String getToolTipText(MouseEvent event) {
        String tip = super.getToolTipText(event);
        return tip != null
                ? tip
                : pointAt(event.getPoint())
                        .map(PlotPoint::tip)
                        .filter(said -> !said.isEmpty())
                        .orElse(null);
    }

    /** Returns where a point is drawn; nothing while it is out of sight. */
    private Optional<Point2D> drawn(PlotPoint point) {
        Rectangle2D area = area(point.part());
        if (area == null || getChart() == null) {
            return Optional.empty();
        }
        return Optional.of(point.place(getChart(), area)).filter(place -> area.outcode(place) == 0);
    }

    private @org.jspecify.annotations.Nullable Rectangle2D area(int part) {
        PlotRenderingInfo info = getChartRenderingInfo().getPlotInfo();
        return info.getSubplotCount() > part ? info.getSubplotInfo(part).getDataArea() : info.getDataArea();
    }

    @Override
    public void mouseMoved(MouseEvent event) {
        super.mouseMoved(event);
        boolean over = opens && pointAt(event.getPoint()).isPresent();
        setCursor(over ? Cursor.getPredefinedCursor(Cursor.HAND_CURSOR) : null);
    }

    @Override
    public void zoom(Rectangle2D selection) {
        super.zoom(selection);
        zoomed = true;
        changed.run();
    }

    /** Shows the whole plot again: also when somebody drags to the left or upwards. */
    @Override
    public void restoreAutoBounds() {
        restore.run();
    }

    private void wheel(MouseWheelEvent event) {
        if (event.isControlDown()) {
            zoomBy(event.getWheelRotation() < 0 ? 1 / STEP : STEP, event.getPoint());
        } else if (getParent() != null) {
            getParent().dispatchEvent(SwingUtilities.convertMouseEvent(this, event, getParent()));
        }
    }

    private Point2D middle() {
        return new Point2D.Double(getWidth() / 2.0, getHeight() / 2.0);
    }

    /** Shows more or less about a place, which stays where it is. */
    void zoomBy(double factor, Point2D about) {
        if (getChart() == null || area(0) == null || !(getChart().getPlot() instanceof XYPlot plot)) {
            return;
        }
        PlotRenderingInfo info = getChartRenderingInfo().getPlotInfo();
        plot.zoomDomainAxes(factor, info, about, true);
        if (!(plot instanceof CombinedDomainXYPlot)) {
            plot.zoomRangeAxes(factor, info, about, true);
        }
        zoomed = true;
        changed.run();
    }

    /** The ring around the marked point, and the edge that tells where the keyboard is. */
    private final class Marks implements Overlay {
        @Override
        public void paintOverlay(Graphics2D graphics, ChartPanel panel) {
            if (getChart() == null) {
                return;
            }
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHints(getChart().getRenderingHints());
            g.setPaint(getChart().getPlot().getNoDataMessagePaint());
            g.setStroke(new BasicStroke((float) (2 * scale)));
            marked.flatMap(PlotCanvas.this::drawn).ifPresent(place -> {
                double radius = 9 * scale;
                g.draw(new Ellipse2D.Double(place.getX() - radius, place.getY() - radius, 2 * radius, 2 * radius));
            });
            if (isFocusOwner()) {
                g.setStroke(new BasicStroke((float) scale));
                g.draw(new Rectangle2D.Double(scale, scale, getWidth() - 2 * scale, getHeight() - 2 * scale));
            }
            g.dispose();
        }

        @Override
        public void addChangeListener(org.jfree.chart.event.OverlayChangeListener listener) {
            // It is painted with every repaint, and the canvas asks for those itself.
        }

        @Override
        public void removeChangeListener(org.jfree.chart.event.OverlayChangeListener listener) {
            // None was added.
        }
    }
}
