package porebench.chart;

import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import porebench.quantity.Require;

/** A plot as a component of the window, which can also be saved or copied as a picture. */
public final class PlotView {
    private static final int LARGEST = 20_000;

    private final ChartPanel panel;
    private final Locale locale;

    /**
     * An empty view.
     *
     * @param name the component's name, for tests
     * @param locale the language and number format of axes, legend and tips
     */
    public PlotView(String name, Locale locale) {
        this.locale = locale;
        // Without a buffer, and with no limits below and above, the plot is drawn at the size it has on the screen.
        panel = new ChartPanel(null, false);
        panel.setName(name);
        panel.setMinimumDrawWidth(1);
        panel.setMinimumDrawHeight(1);
        panel.setMaximumDrawWidth(LARGEST);
        panel.setMaximumDrawHeight(LARGEST);
        panel.setPopupMenu(null);
        panel.setMouseZoomable(false);
        panel.setMouseWheelEnabled(false);
        panel.setInitialDelay(100);
        panel.setDismissDelay(60_000);
    }

    /** Shows the trials of a determination in their order. */
    public void show(FactorByTrial data, ChartLook look) {
        put(TrialOrderChart.of(data, look, locale), look);
    }

    /** Shows the trials of a mix and its factor over time. */
    public void show(FactorOverTime data, ChartLook look) {
        put(TrialTimeChart.of(data, look, locale), look);
    }

    /** Shows the error of a dial. */
    public void show(DialErrors data, ChartLook look) {
        put(DialErrorChart.of(data, look, locale), look);
    }

    /** Shows the volume of a bowl over time. */
    public void show(BowlHistory data, ChartLook look) {
        put(BowlHistoryChart.of(data, look, locale), look);
    }

    /** Shows what a Type A meter reads by elevation. */
    public void show(ElevationReadings data, ChartLook look) {
        put(ElevationChart.of(data, look, locale), look);
    }

    /** Shows what the parts of an uncertainty budget contribute. */
    public void show(BudgetBars data, ChartLook look) {
        put(BudgetChart.of(data, look, locale), look);
    }

    private void put(JFreeChart chart, ChartLook look) {
        panel.setBackground(look.background());
        panel.setChart(chart);
    }

    /** Returns the component, always the same. */
    public JComponent component() {
        return panel;
    }

    /** Returns what is said about the place under a point of the component, after it was painted. */
    public Optional<String> tipAt(MouseEvent event) {
        return Optional.ofNullable(panel.getToolTipText(event));
    }

    /** Copies the plot to the clipboard as a picture of the size it has on the screen. */
    public void copy() {
        panel.doCopy();
    }

    /**
     * Saves the plot as a PNG picture, replacing a file that is there.
     *
     * @param size width and height of the picture in pixels, each greater than 0
     * @throws UncheckedIOException if the file cannot be written
     */
    public void savePng(Path file, Dimension size) {
        Require.atLeast("width", size.width, 1);
        Require.atLeast("height", size.height, 1);
        try (OutputStream out = Files.newOutputStream(file)) {
            ImageIO.write(panel.getChart().createBufferedImage(size.width, size.height), "png", out);
        } catch (IOException failure) {
            throw new UncheckedIOException("saving the plot as " + file.getFileName(), failure);
        }
    }
}
