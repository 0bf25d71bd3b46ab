package porebench.chart;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.jfree.chart.JFreeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotDrawing;
import porebench.chart.look.PlotPoint;
import porebench.chart.look.Plottable;
import porebench.port.DataTable;
import porebench.port.Picture;

/**
 * A plot as a component of the window, which is also handed out as a picture and as figures.
 *
 * <p>Dragging zooms, and so does the wheel with Ctrl. A point is opened by a click, or marked with the arrow keys and opened
 * with Enter. Pictures always show the whole plot.
 */
public final class PlotView {
    /** Fits A4 and US letter on their sides. */
    private static final int PICTURE_WIDTH = 740;

    private static final int PICTURE_HEIGHT = 500;
    private static final int COPIED_PIXELS_PER_POINT = 2;

    private final PlotCanvas canvas = new PlotCanvas();
    private final Locale locale;
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<ShownPlot> shown = Optional.empty();

    private record ShownPlot(Plottable data, ChartLook look) {}

    /**
     * An empty view.
     *
     * @param name the component's name, for tests
     * @param locale the language and number format of axes, legend and tips
     */
    public PlotView(String name, Locale locale) {
        this.locale = locale;
        canvas.setName(name);
        canvas.answer(this::showAll, () -> List.copyOf(listeners).forEach(Runnable::run));
    }

    /** Shows a plot; the same data in the same look stay as they are, zoomed and marked. */
    public void show(Plottable data, ChartLook look) {
        ShownPlot next = new ShownPlot(data, look);
        if (!shown.equals(Optional.of(next))) {
            shown = Optional.of(next);
            canvas.say(String.join("\n", said()));
            canvas.show(data.chart(look, locale), look);
        }
    }

    /** Returns the component, always the same. */
    public JComponent component() {
        return canvas;
    }

    /** Returns what is said about the place under a point of the component, after it was painted. */
    Optional<String> tipAt(MouseEvent event) {
        return Optional.ofNullable(canvas.getToolTipText(event));
    }

    /** Says what opens a point: it is given the trial's or the calibration's id. */
    public void onOpen(Consumer<String> opener) {
        canvas.openWith(opener);
    }

    /** Calls back after every change of what is zoomed or marked. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Returns whether a part of the plot is shown, or more than it. */
    public boolean isZoomed() {
        return canvas.isZoomed();
    }

    /** Shows the whole plot again. */
    public void showAll() {
        shown.ifPresent(known -> canvas.show(known.data().chart(known.look(), locale), known.look()));
    }

    /** Marks the first point with an id; with an id that is not there, none. */
    public void mark(String id) {
        canvas.mark(canvas.known(id));
    }

    /** Returns what the plot shows in words, a sentence each, for who does not see it; nothing while nothing is shown. */
    public List<String> said() {
        return shown.map(known -> known.data().said(locale)).orElse(List.of());
    }

    /** Returns what there is to say about the marked point, in one line. */
    public Optional<String> marked() {
        return canvas.marked().map(PlotPoint::words);
    }

    /**
     * Returns the whole plot as a picture; something must have been shown.
     *
     * @param title what stands above it: which mix or meter, and what
     * @param paper the look of the picture
     */
    public Picture picture(String title, ChartLook paper) {
        JFreeChart chart = shown.orElseThrow().data().chart(paper, locale);
        PlotDrawing.entitle(chart, title, paper);
        return new Picture(
                title,
                PICTURE_WIDTH,
                PICTURE_HEIGHT,
                graphics -> chart.draw(graphics, new Rectangle(PICTURE_WIDTH, PICTURE_HEIGHT)));
    }

    /** Returns the figures of the plot; something must have been shown. */
    public DataTable table() {
        return shown.orElseThrow().data().table();
    }

    /** Copies the whole plot to the clipboard as a picture. */
    public void copy(String title, ChartLook paper) {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new CopiedPicture(image(title, paper)), null);
    }

    private BufferedImage image(String title, ChartLook paper) {
        BufferedImage image = new BufferedImage(
                COPIED_PIXELS_PER_POINT * PICTURE_WIDTH,
                COPIED_PIXELS_PER_POINT * PICTURE_HEIGHT,
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(COPIED_PIXELS_PER_POINT, COPIED_PIXELS_PER_POINT);
        picture(title, paper).drawing().accept(graphics);
        graphics.dispose();
        return image;
    }
}
