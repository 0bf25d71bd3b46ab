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
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.jfree.chart.JFreeChart;
import porebench.chart.control.ControlPlot;
import porebench.chart.control.ControlPlotChart;
import porebench.chart.control.ControlTable;
import porebench.chart.factor.BudgetBars;
import porebench.chart.factor.BudgetChart;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.factor.TrialOrderChart;
import porebench.chart.factor.TrialTimeChart;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotParts;
import porebench.chart.look.PlotPoint;
import porebench.chart.meter.BowlHistory;
import porebench.chart.meter.BowlHistoryChart;
import porebench.chart.meter.DialErrorChart;
import porebench.chart.meter.DialErrors;
import porebench.chart.meter.ElevationChart;
import porebench.chart.meter.ElevationReadings;
import porebench.chart.study.ComponentShares;
import porebench.chart.study.ComponentSharesChart;
import porebench.chart.study.MandelChart;
import porebench.chart.study.MandelPlot;
import porebench.chart.study.ReadingsBySample;
import porebench.chart.study.ReadingsBySampleChart;
import porebench.chart.study.StudyTables;
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

    /** What is shown, how it is drawn in a look, and its figures. */
    private record ShownPlot(
            Object data, ChartLook look, Function<ChartLook, JFreeChart> drawn, Supplier<DataTable> table) {
        boolean isSameAs(ShownPlot other) {
            return data.equals(other.data) && look.equals(other.look);
        }
    }

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

    /** Shows the trials of a determination in their order. */
    public void show(FactorByTrial data, ChartLook look) {
        put(data, look, in -> TrialOrderChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows the trials of a mix and its factor over time. */
    public void show(FactorOverTime data, ChartLook look) {
        put(data, look, in -> TrialTimeChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows the error of a dial. */
    public void show(DialErrors data, ChartLook look) {
        put(data, look, in -> DialErrorChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows the volume of a bowl over time. */
    public void show(BowlHistory data, ChartLook look) {
        put(data, look, in -> BowlHistoryChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows what a Type A meter reads by elevation. */
    public void show(ElevationReadings data, ChartLook look) {
        put(data, look, in -> ElevationChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows what the parts of an uncertainty budget contribute. */
    public void show(BudgetBars data, ChartLook look) {
        put(data, look, in -> BudgetChart.of(data, in, locale), () -> PlotTables.of(data));
    }

    /** Shows a control chart. */
    public void show(ControlPlot data, ChartLook look) {
        put(data, look, in -> ControlPlotChart.of(data, in, locale), () -> ControlTable.of(data));
    }

    /** Shows the shares of the components of a variance. */
    public void show(ComponentShares data, ChartLook look) {
        put(data, look, in -> ComponentSharesChart.of(data, in, locale), () -> StudyTables.of(data));
    }

    /** Shows readings of the same samples by several operators. */
    public void show(ReadingsBySample data, ChartLook look) {
        put(data, look, in -> ReadingsBySampleChart.of(data, in, locale), () -> StudyTables.of(data));
    }

    /** Shows Mandel's h or k of laboratories. */
    public void show(MandelPlot data, ChartLook look) {
        put(data, look, in -> MandelChart.of(data, in, locale), () -> StudyTables.of(data));
    }

    /**
     * Shows data as a chart; the same data in the same look stay as they are, zoomed and marked.
     *
     * @param drawn draws the data in a look
     * @param table gives their figures
     */
    private void put(Object data, ChartLook look, Function<ChartLook, JFreeChart> drawn, Supplier<DataTable> table) {
        ShownPlot next = new ShownPlot(data, look, drawn, table);
        if (shown.filter(next::isSameAs).isEmpty()) {
            shown = Optional.of(next);
            canvas.show(drawn.apply(look), look);
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
        shown.ifPresent(known -> canvas.show(known.drawn().apply(known.look()), known.look()));
    }

    /** Marks the first point with an id; with an id that is not there, none. */
    public void mark(String id) {
        canvas.mark(canvas.known(id));
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
        JFreeChart chart = shown.orElseThrow().drawn().apply(paper);
        PlotParts.entitle(chart, title, paper);
        return new Picture(
                title,
                PICTURE_WIDTH,
                PICTURE_HEIGHT,
                graphics -> chart.draw(graphics, new Rectangle(PICTURE_WIDTH, PICTURE_HEIGHT)));
    }

    /** Returns the figures of the plot; something must have been shown. */
    public DataTable table() {
        return shown.orElseThrow().table().get();
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
