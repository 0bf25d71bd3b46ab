package porebench.method.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;

/** By pencil; t from the printed tables of Student's distribution (recalled). */
class NextDeterminationTest {
    /** Mean 0.5, s 0.1, t(2) 4.303: 4.303 x 0.1 x sqrt(4/3) = 0.4969. */
    @Test
    void rangesOverTAndTheScatterOfTheMeans() {
        NextDetermination next =
                NextDetermination.of(List.of(0.4, 0.5, 0.6), MeterType.B, 0.01).orElseThrow();
        assertThat(next.determinations()).isEqualTo(3);
        assertThat(next.lowPercent()).isCloseTo(0.5 - 0.4969, within(1e-4));
        assertThat(next.highPercent()).isCloseTo(0.5 + 0.4969, within(1e-4));
    }

    /** Four equal means: s is 0.1 / sqrt(12) = 0.02887, t(3) 3.182, sqrt(5/4): 0.1027; on Type A root of 2 times that. */
    @Test
    void equalMeansLeaveWhatTheScaleCannotShow() {
        List<Double> means = List.of(0.4, 0.4, 0.4, 0.4);
        assertThat(NextDetermination.of(means, MeterType.B, 0.1).orElseThrow().highPercent())
                .isCloseTo(0.4 + 0.1027, within(1e-4));
        assertThat(NextDetermination.of(means, MeterType.A, 0.1).orElseThrow().highPercent())
                .isCloseTo(0.4 + 0.1453, within(1e-4));
    }

    @Test
    void twoDeterminationsAreTooFew() {
        assertThat(NextDetermination.of(List.of(0.4, 0.5), MeterType.B, 0.1)).isEmpty();
    }
}
