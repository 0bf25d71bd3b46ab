package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Strokes of Enter as a wet hand makes them. */
class EnterStrokesHandTest {
    private final EnterStrokes enters = new EnterStrokes();

    @Test
    void aKeyHeldDownIsOneStrokeUntilItIsLetGo() {
        assertThat(enters.goesDown(1000, false)).isTrue();
        assertThat(enters.goesDown(1500, false)).isFalse();
        assertThat(enters.goesDown(9000, false)).isFalse();
        enters.comesUp();
        assertThat(enters.goesDown(9001, false)).isTrue();
    }

    @Test
    void anAnswerCountsHalfASecondAfterTheStrokeThatAsked() {
        assertThat(enters.goesDown(1000, false)).isTrue();
        enters.comesUp();
        assertThat(enters.goesDown(1499, true)).isFalse();
        enters.comesUp();
        assertThat(enters.goesDown(1500, true)).isTrue();
    }

    @Test
    void aStrokeThatAnswersNothingMayFollowAtOnce() {
        assertThat(enters.taps(1000, false)).isTrue();
        assertThat(enters.taps(1040, false)).isTrue();
        assertThat(enters.taps(1080, true)).isFalse();
    }

    @Test
    void theFirstStrokeOfAllCounts() {
        assertThat(enters.taps(0, true)).isTrue();
    }
}
