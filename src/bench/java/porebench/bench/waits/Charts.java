package porebench.bench.waits;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import javax.swing.JComponent;
import porebench.chart.PlotView;
import porebench.chart.control.ControlPlot;
import porebench.chart.look.ChartLook;

/**
 * Paints a control chart of as many points as the argument says: made and painted whole, painted anew, and zoomed in and out by a
 * step. Prints the milliseconds of the first, and the medians of the two others.
 */
final class Charts {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 480;
    private static final int FRAMES = 41;

    /** The painting thread's own time: what else the machine does is not the chart's. */
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private Charts() {}

    public static void main(String[] arguments) {
        // What a window painted before any chart of a laboratory: nothing is measured of an unwarmed program.
        for (int i = 0; i < 5; i++) {
            shown(plot(2000));
        }
        ControlPlot data = plot(Integer.parseInt(arguments[0]));
        long before = CLOCK.getCurrentThreadCpuTime();
        JComponent canvas = shown(data);
        double first = since(before);
        double[] again = new double[FRAMES];
        double[] zoomed = new double[FRAMES];
        for (int i = 0; i < FRAMES; i++) {
            before = CLOCK.getCurrentThreadCpuTime();
            paint(canvas);
            again[i] = since(before);
        }
        for (int i = 0; i < FRAMES; i++) {
            before = CLOCK.getCurrentThreadCpuTime();
            // In and out again, so that nearly all points stay in sight.
            canvas.getActionMap().get(i % 2 == 0 ? "PLUS" : "MINUS").actionPerformed(null);
            paint(canvas);
            zoomed[i] = since(before);
        }
        System.out.printf(Locale.ROOT, "%.2f %.2f %.2f%n", first, median(again), median(zoomed));
    }

    private static JComponent shown(ControlPlot data) {
        ChartLook look = ChartLook.onPaper(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        PlotView view = new PlotView("plot", Locale.ENGLISH);
        view.show(data, look);
        JComponent canvas = view.component();
        canvas.setSize(WIDTH, HEIGHT);
        paint(canvas);
        return canvas;
    }

    private static void paint(JComponent canvas) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        canvas.paint(graphics);
        graphics.dispose();
    }

    private static double since(long before) {
        return (CLOCK.getCurrentThreadCpuTime() - before) / 1e6;
    }

    private static double median(double[] times) {
        Arrays.sort(times);
        return times[times.length / 2];
    }

    /** Individual factors about 0.4 % air, one in a thousand a signal. */
    private static ControlPlot plot(int count) {
        SplittableRandom random = new SplittableRandom(20_261_127L);
        List<ControlPlot.Point> points = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double value = 0.4 + 0.1 * random.nextGaussian();
            boolean isSignal = i % 1000 == 500;
            ControlPlot.Plotted level = new ControlPlot.Plotted(
                    value,
                    OptionalDouble.of(0.4),
                    OptionalDouble.of(0.1),
                    OptionalDouble.of(0.7),
                    isSignal ? List.of("1") : List.of());
            points.add(new ControlPlot.Point(
                    "T-" + i, "2026-" + i / 1000, List.of("Trial " + i), 1, level, Optional.empty(), Optional.empty()));
        }
        return new ControlPlot(
                points,
                List.of(),
                "Factor in % air",
                "",
                0,
                Math.min(30, count),
                false,
                List.of(),
                OptionalDouble.empty());
    }
}
