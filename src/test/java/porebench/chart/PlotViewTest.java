package porebench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Point;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.title.TextTitle;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;
import porebench.chart.look.ChartLook;
import porebench.chart.look.PlotPoint;
import porebench.port.Picture;

class PlotViewTest {
    private static PlotView view() {
        PlotView view = new PlotView("plot", Locale.ENGLISH);
        view.show(PlotData.mixed(), PlotData.LOOK);
        return view;
    }

    @Test
    void aPictureIsOnWhiteWhateverTheWindowLooksLike() {
        PlotView view = new PlotView("plot", Locale.ENGLISH);
        view.show(PlotData.mixed(), PlotData.DARK);
        BufferedImage picture = drawn(view.picture("K7: factor by trial", ChartLook.onPaper(PlotData.LOOK.font())));
        assertThat(picture.getRGB(1, 1)).isEqualTo(Color.WHITE.getRGB());
        int counted = ChartLook.onPaper(PlotData.LOOK.font()).counted().getRGB();
        assertThat(pixels(picture)).contains(counted).doesNotContain(Color.BLACK.getRGB());
    }

    @Test
    void aPictureOfSimulatedTrialsSaysSoAndOneOfRealTrialsDoesNot() {
        assertThat(subtitles(PlotData.simulated().chart(PlotData.LOOK, Locale.ENGLISH)))
                .containsExactly("SIMULATED for training: nothing here was measured");
        assertThat(subtitles(PlotData.mixed().chart(PlotData.LOOK, Locale.ENGLISH)))
                .isEmpty();
        assertThat(PlotData.legend(PlotData.simulated()
                        .chart(PlotData.LOOK, Locale.ENGLISH)
                        .getXYPlot()))
                .contains("counts, simulated", "struck")
                .doesNotContain("counts");
    }

    private static List<String> subtitles(JFreeChart chart) {
        List<String> texts = new ArrayList<>();
        for (Object title : chart.getSubtitles()) {
            if (title instanceof TextTitle text) {
                texts.add(text.getText());
            }
        }
        return texts;
    }

    private static BufferedImage drawn(Picture picture) {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_INT_RGB);
        picture.drawing().accept(image.createGraphics());
        return image;
    }

    private static List<Integer> pixels(BufferedImage picture) {
        return Arrays.stream(picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth()))
                .distinct()
                .boxed()
                .toList();
    }

    @Test
    void aClickOnAPointOpensItsTrialAndBesideItNone() {
        PlotView view = painted();
        List<String> opened = new ArrayList<>();
        view.onOpen(opened::add);
        click(view, place(view, "K7-2"), 0, 0);
        click(view, place(view, "K7-3"), 4, 4);
        click(view, place(view, "K7-2"), 40, 30);
        assertThat(opened).containsExactly("K7-2", "K7-3");
        assertThat(view.marked()).get().asString().contains("Trial K7-3").contains("spilled <half> the water");
    }

    @Test
    void theKeysWalkFromPointToPointAndOpenOne() {
        PlotView view = painted();
        List<String> opened = new ArrayList<>();
        view.onOpen(opened::add);
        press(view, "RIGHT");
        press(view, "RIGHT");
        press(view, "ENTER");
        press(view, "LEFT");
        press(view, "LEFT");
        press(view, "ENTER");
        assertThat(opened).containsExactly("K7-2", "K7-1");
        assertThat(view.component().getAccessibleContext().getAccessibleDescription())
                .contains("Trial K7-1");
    }

    @Test
    void zoomsAndShowsAllAgain() {
        PlotView view = painted();
        List<Boolean> told = new ArrayList<>();
        view.onChange(() -> told.add(view.isZoomed()));
        Range before = range(view);
        press(view, "PLUS");
        assertThat(range(view).getLength()).isLessThan(before.getLength());
        assertThat(view.isZoomed()).isTrue();
        view.show(PlotData.mixed(), PlotData.LOOK);
        assertThat(view.isZoomed()).as("the same data leave the view as it is").isTrue();
        view.showAll();
        assertThat(range(view)).isEqualTo(before);
        press(view, "MINUS");
        press(view, "0");
        assertThat(range(view)).isEqualTo(before);
        assertThat(told).contains(true).endsWith(false);
        view.show(PlotData.simulated(), PlotData.LOOK);
        assertThat(view.isZoomed()).isFalse();
    }

    @Test
    void theWheelZoomsOnlyWithCtrlAndElseMovesThePage() {
        PlotView view = painted();
        JPanel page = new JPanel();
        page.add(view.component());
        List<Integer> moved = new ArrayList<>();
        page.addMouseWheelListener(event -> moved.add(event.getWheelRotation()));
        Range before = range(view);
        wheel(view, 0, 1);
        assertThat(range(view)).isEqualTo(before);
        assertThat(moved).containsExactly(1);
        wheel(view, InputEvent.CTRL_DOWN_MASK, -1);
        assertThat(range(view).getLength()).isLessThan(before.getLength());
        assertThat(moved).hasSize(1);
    }

    private static Range range(PlotView view) {
        return ((ChartPanel) view.component())
                .getChart()
                .getXYPlot()
                .getDomainAxis()
                .getRange();
    }

    private static PlotView painted() {
        PlotView view = view();
        view.component().setSize(600, 400);
        view.component().paint(new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB).createGraphics());
        return view;
    }

    private static Point place(PlotView view, String id) {
        PlotCanvas canvas = (PlotCanvas) view.component();
        Point2D drawn = canvas.known(id)
                .orElseThrow()
                .place(
                        canvas.getChart(),
                        canvas.getChartRenderingInfo().getPlotInfo().getDataArea());
        return new Point((int) Math.round(drawn.getX()), (int) Math.round(drawn.getY()));
    }

    private static void click(PlotView view, Point place, int right, int below) {
        view.component()
                .dispatchEvent(new MouseEvent(
                        view.component(),
                        MouseEvent.MOUSE_CLICKED,
                        0,
                        InputEvent.BUTTON1_DOWN_MASK,
                        place.x + right,
                        place.y + below,
                        1,
                        false,
                        MouseEvent.BUTTON1));
    }

    private static void wheel(PlotView view, int modifiers, int turns) {
        view.component()
                .dispatchEvent(new MouseWheelEvent(
                        view.component(),
                        MouseEvent.MOUSE_WHEEL,
                        0,
                        modifiers,
                        300,
                        150,
                        0,
                        false,
                        MouseWheelEvent.WHEEL_UNIT_SCROLL,
                        1,
                        turns));
    }

    private static void press(PlotView view, String stroke) {
        JComponent component = view.component();
        Object key = component.getInputMap().get(KeyStroke.getKeyStroke(stroke));
        component.getActionMap().get(key).actionPerformed(new ActionEvent(component, 0, stroke));
    }

    @Test
    void neverDrawsThroughAScaledBitmap() {
        ChartPanel panel = (ChartPanel) view().component();
        assertThat(panel.getMinimumDrawWidth()).isEqualTo(1);
        assertThat(panel.getMinimumDrawHeight()).isEqualTo(1);
        assertThat(panel.getMaximumDrawWidth()).isGreaterThan(7680);
        assertThat(panel.getMaximumDrawHeight()).isGreaterThan(4320);
    }

    @Test
    void tellsTheTrialUnderThePointer() {
        PlotView view = view();
        view.component().setSize(600, 400);
        view.component().paint(new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB).createGraphics());
        assertThat(IntStream.range(0, 600 * 400 / 9)
                        .mapToObj(i -> tip(view, (i % 200) * 3, (i / 200) * 3))
                        .flatMap(Optional::stream)
                        .distinct())
                .hasSize(4)
                .anyMatch(tip -> tip.contains("the meter leaked"));
    }

    private static Optional<String> tip(PlotView view, int x, int y) {
        return view.tipAt(new MouseEvent(view.component(), MouseEvent.MOUSE_MOVED, 0, 0, x, y, 0, false));
    }

    /** A point between the extremes of its column is not drawn, and is told and opened like any other. */
    @Test
    void aPointThatIsNotDrawnIsFoundUnderThePointer() {
        PlotView view = new PlotView("plot", Locale.ENGLISH);
        view.show(PlotData.many(), PlotData.LOOK);
        view.component().setSize(1000, 480);
        view.component().paint(new BufferedImage(1000, 480, BufferedImage.TYPE_INT_RGB).createGraphics());
        PlotCanvas canvas = (PlotCanvas) view.component();
        assertThat(canvas.pointAt(place(view, "T-50001")))
                .map(PlotPoint::tip)
                .get()
                .asString()
                .contains("Trial 5");
        view.mark("T-50001");
        assertThat(view.marked()).contains("Trial 50001");
    }
}
