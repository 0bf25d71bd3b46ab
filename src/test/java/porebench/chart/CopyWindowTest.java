package porebench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.chart.look.ChartLook;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;

/** A plot is copied to the clipboard of a real display. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class CopyWindowTest {
    @Test
    void theClipboardHoldsTheWholePlotOnWhite() throws Exception {
        ChartLook paper = ChartLook.onPaper(PlotData.LOOK.font());
        EventThread.run(() -> {
            PlotView view = new PlotView("plot", Locale.ENGLISH);
            view.show(PlotData.mixed(), PlotData.DARK);
            view.copy("K7: factor by trial", paper);
        });
        Object copied = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
        assertThat(copied).isInstanceOf(BufferedImage.class);
        BufferedImage picture = (BufferedImage) copied;
        assertThat(picture.getWidth()).isEqualTo(1480);
        assertThat(picture.getHeight()).isEqualTo(1000);
        assertThat(picture.getRGB(1, 1)).isEqualTo(Color.WHITE.getRGB());
        assertThat(Arrays.stream(picture.getRGB(0, 0, 1480, 1000, null, 0, 1480))
                        .distinct())
                .contains(paper.counted().getRGB());
    }
}
