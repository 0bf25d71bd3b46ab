package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.api.Test;

class MeanIntervalTest {
    /** 0.4 and 0.5: mean 0.45, s / sqrt(n) = 0.05; t of 1 degree of freedom for 50 % is tan(pi / 4) = 1. */
    @Test
    void agreesWithThePencil() {
        MeanInterval interval = MeanInterval.of(Summary.of(0.4, 0.5), 0.5).orElseThrow();
        assertThat(interval.mean()).isCloseTo(0.45, offset(1e-15));
        assertThat(interval.halfWidth()).isCloseTo(0.05, offset(1e-15));
        assertThat(interval.low()).isCloseTo(0.40, offset(1e-15));
        assertThat(interval.high()).isCloseTo(0.50, offset(1e-15));
        assertThat(interval.confidence()).isEqualTo(0.5);
        assertThat(interval.halfWidth() == 0).isFalse();
    }

    @Test
    void isEmptyForOneValue() {
        assertThat(MeanInterval.of(Summary.of(0.4), 0.95)).isEmpty();
    }

    @Test
    void saysWhenEqualValuesMakeItCollapse() {
        MeanInterval interval =
                MeanInterval.of(Summary.of(0.4, 0.4, 0.4, 0.4), 0.95).orElseThrow();
        assertThat(interval.halfWidth() == 0).isTrue();
        assertThat(interval.low()).isEqualTo(0.4);
        assertThat(interval.high()).isEqualTo(0.4);
    }

    @Test
    void widensWithTheConfidence() {
        Summary summary = Summary.of(0.3, 0.4, 0.4, 0.6);
        double before = 0;
        for (double confidence : new double[] {0.5, 0.9, 0.95, 0.99, 0.999}) {
            double halfWidth =
                    MeanInterval.of(summary, confidence).orElseThrow().halfWidth();
            assertThat(halfWidth).isGreaterThan(before);
            before = halfWidth;
        }
    }

    @Test
    void refusesAConfidenceOutsideZeroToOne() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeanInterval.of(Summary.of(0.3, 0.4), 95))
                .withMessageStartingWith("confidence must be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MeanInterval(0.4, -1, 0.95))
                .withMessage("halfWidth must be at least 0, but is -1.0");
    }
}
