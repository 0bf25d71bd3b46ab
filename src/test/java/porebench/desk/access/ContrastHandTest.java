package porebench.desk.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Font;
import org.junit.jupiter.api.Test;

/** The ratio by which the other tests judge colours, worked with a pencil. */
class ContrastHandTest {
    @Test
    void blackOnWhiteStandsApartMost() {
        // (1 + 0.05) / (0 + 0.05)
        assertThat(Contrast.of(Color.BLACK, Color.WHITE)).isEqualTo(21, within(1e-9));
        assertThat(Contrast.of(Color.WHITE, Color.BLACK)).isEqualTo(21, within(1e-9));
        assertThat(Contrast.of(Color.RED, Color.RED)).isEqualTo(1, within(1e-9));
    }

    @Test
    void eachColourWeighsAsTheDefinitionSays() {
        // pure red is 0.2126, green 0.7152, blue 0.0722: on white 1.05 / (weight + 0.05)
        assertThat(Contrast.of(Color.RED, Color.WHITE)).isEqualTo(1.05 / 0.2626, within(1e-9));
        assertThat(Contrast.of(Color.GREEN, Color.WHITE)).isEqualTo(1.05 / 0.7652, within(1e-9));
        assertThat(Contrast.of(Color.BLUE, Color.WHITE)).isEqualTo(1.05 / 0.1222, within(1e-9));
    }

    @Test
    void aMiddleGreyIsWorkedThroughItsPower() {
        // 0x80 / 255 = 0.50196; (0.55696 / 1.055) ^ 2.4 = 0.52793 ^ 2.4 = exp(2.4 x -0.63880) = exp(-1.53311) =
        // 0.21586;
        // 1.05 / 0.26586 = 3.949
        assertThat(Contrast.of(new Color(0x808080), Color.WHITE)).isEqualTo(3.949, within(0.001));
    }

    @Test
    void whatLetsThroughIsMixed() {
        // Half of black over white: 255 x (1 - 128 / 255) = 127
        assertThat(Contrast.over(new Color(0, 0, 0, 128), Color.WHITE)).isEqualTo(new Color(127, 127, 127));
    }

    @Test
    void largeTextIsEighteenPointsOrFourteenInBold() {
        // 18 points are 24 pixels, 14 points 18.67.
        assertThat(Contrast.least(new Font("SansSerif", Font.PLAIN, 23))).isEqualTo(4.5);
        assertThat(Contrast.least(new Font("SansSerif", Font.PLAIN, 24))).isEqualTo(3);
        assertThat(Contrast.least(new Font("SansSerif", Font.BOLD, 18))).isEqualTo(4.5);
        assertThat(Contrast.least(new Font("SansSerif", Font.BOLD, 19))).isEqualTo(3);
    }
}
