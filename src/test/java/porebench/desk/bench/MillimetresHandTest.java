package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Dimension;
import org.junit.jupiter.api.Test;

class MillimetresHandTest {
    private static final Dimension LARGE = new Dimension(1920, 1080);

    /** 40 mm are 40 / 25.4 x 96 = 151 dots. */
    @Test
    void fortyMillimetresOnAUsualScreen() {
        assertThat(Millimetres.of(96, 1, LARGE).of(40)).isEqualTo(151);
        assertThat(Millimetres.of(96, 1, new Dimension(1024, 700)).of(40)).isEqualTo(151);
    }

    /** At scale 2 a display of 192 dots an inch has 96 of the window's own; one that says 96 means them already. */
    @Test
    void theScaleOfTheDisplayIsTakenOut() {
        assertThat(Millimetres.of(192, 2, LARGE).of(40)).isEqualTo(151);
        assertThat(Millimetres.of(96, 2, LARGE).of(40)).isEqualTo(151);
    }

    /** 360 of 700 lines are left: 96 x 360 / 700 = 49.4 dots an inch. */
    @Test
    void whereTheScreenHasNoRoomEverythingIsSmallerAlike() {
        assertThat(Millimetres.of(96, 2, new Dimension(640, 360)).dots() * 25.4).isCloseTo(49.37, within(0.01));
    }
}
