package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BigDigitsTest {
    /** Where messages take their room the number is smaller, and never cut. */
    @ParameterizedTest
    @CsvSource({"600, 160", "600, 90", "600, 50", "150, 160"})
    void noDigitNorUnitIsCutWhereTheRoomIsSmall(int width, int height) {
        BigDigits digits = new BigDigits();
        digits.setFont(digits.getFont().deriveFont(150f));
        digits.setSize(width, height);
        digits.show("6964", "g", true);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = image.createGraphics();
        digits.paint(pen);
        pen.dispose();
        assertThat(isBlank(image, 0)).isTrue();
        assertThat(isBlank(image, height - 1)).isTrue();
        assertThat(digits.digitHeight()).isGreaterThan(0.3 * Math.min(height, width / 4.0));
    }

    private static boolean isBlank(BufferedImage image, int row) {
        return IntStream.range(0, image.getWidth()).allMatch(x -> image.getRGB(x, row) >>> 24 == 0);
    }
}
