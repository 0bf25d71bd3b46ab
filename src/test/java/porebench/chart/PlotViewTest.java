package porebench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Dimension;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.jfree.chart.ChartPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlotViewTest {
    @TempDir
    Path folder;

    private static PlotView view() {
        PlotView view = new PlotView("plot", Locale.ENGLISH);
        view.show(PlotData.mixed(), PlotData.LOOK);
        return view;
    }

    @Test
    void savesAPictureOfTheSizeAskedFor() throws IOException {
        Path file = folder.resolve("plot.png");
        view().savePng(file, new Dimension(800, 450));
        BufferedImage picture = ImageIO.read(file.toFile());
        assertThat(picture.getWidth()).isEqualTo(800);
        assertThat(picture.getHeight()).isEqualTo(450);
        int counted = PlotData.LOOK.counted().getRGB();
        boolean drawn = IntStream.range(0, 800)
                .anyMatch(x -> IntStream.range(0, 450).anyMatch(y -> picture.getRGB(x, y) == counted));
        assertThat(drawn).isTrue();
    }

    @Test
    void saysWhichPictureCouldNotBeSaved() {
        Path nowhere = folder.resolve("missing").resolve("plot.png");
        PlotView view = view();
        assertThatThrownBy(() -> view.savePng(nowhere, new Dimension(80, 45)))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessageContaining("plot.png");
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
}
