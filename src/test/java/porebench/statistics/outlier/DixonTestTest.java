package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;

class DixonTestTest {
    /** 0 1 2 6: from the high end (6 - 2) / 6, from the low end 1 / 6. */
    @Test
    void agreesWithThePencil() {
        DixonTest test = DixonTest.of(2, 6, 0, 1).orElseThrow();
        assertThat(test.statistic()).isCloseTo(4.0 / 6, offset(1e-15));
        assertThat(test.index()).isEqualTo(1);
        assertThat(test.gap()).isEqualTo(4);
        assertThat(test.ratio()).isEqualTo(DixonTest.Ratio.R10);
    }

    /** 0 5 6 7 and so on: the gap is 5, from r21 on 6, and the range n + 3 less the values left out of it. */
    @ParameterizedTest
    @CsvSource({"7, R10, 5, 10", "8, R11, 5, 10", "11, R21, 6, 13", "14, R22, 6, 15"})
    void takesTheRatioOfTheCount(int n, DixonTest.Ratio ratio, double gap, double range) {
        double[] values = new double[n];
        for (int i = 1; i < n; i++) {
            values[i] = i + 4;
        }
        DixonTest test = DixonTest.of(values).orElseThrow();
        assertThat(test.ratio()).isEqualTo(ratio);
        assertThat(test.statistic()).isCloseTo(gap / range, offset(1e-12));
        assertThat(test.index()).isZero();
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 7, 8, 11, 14, 30})
    void hasAProbabilityThatFallsFromAllToNone(int n) {
        assertThat(DixonTest.oneSided(n, 0)).isCloseTo(1, offset(1e-7));
        assertThat(DixonTest.oneSided(n, 1)).isCloseTo(0, offset(1e-9));
        assertThat(DixonTest.oneSided(n, 0.4)).isGreaterThan(DixonTest.oneSided(n, 0.5));
    }

    /** Of three values the two gaps share the range: the high one is the larger in half of all cases. */
    @Test
    void isSymmetricForThreeValues() {
        assertThat(DixonTest.oneSided(3, 0.5)).isCloseTo(0.5, offset(1e-10));
        assertThat(DixonTest.oneSided(3, 0.3)).isCloseTo(1 - DixonTest.oneSided(3, 0.7), offset(1e-10));
    }

    @Test
    void isNotDefinedOutsideItsCountsOrForEqualValues() {
        assertThat(DixonTest.of(1, 2)).isEmpty();
        assertThat(DixonTest.of(1, 1, 1, 1)).isEmpty();
        assertThat(DixonTest.of(new Random(1).doubles(31).toArray())).isEmpty();
        // The farthest value is left out of the range of r11, and the others are equal.
        assertThat(DixonTest.of(0, 1, 1, 1, 1, 1, 1, 1).orElseThrow().statistic())
                .isEqualTo(1);
    }

    @Test
    void saysWhyItJudgesNothing() {
        assertThat(DixonTest.judge(0.1, 0.4, 0.4, 0.4, 0.4).whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(DixonTest.judge(0.1, 0.4).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(DixonTest.judge(0.1, 0.4, 0.4, 0.9)).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW, 1));
        assertThat(DixonTest.judge(0.1, 1, 2, 3, 4, 5, 6, 7, 8).whyWithheld()).contains(Judged.Reason.TOO_MANY);
        assertThat(DixonTest.judge(0.1, new Random(1).doubles(31).toArray()))
                .isEqualTo(Judged.withheld(Judged.Reason.TOO_MANY));
    }

    /** All but one value equal: the ratio is 1 and p 0 however small the step. */
    @Test
    void doesNotTakeOneStepOfTheScaleForAnOutlier() {
        double[] ties = {0.4, 0.4, 0.5, 0.4, 0.4};
        assertThat(DixonTest.of(ties).orElseThrow().p()).isCloseTo(0, offset(1e-9));
        assertThat(DixonTest.judge(0.1, ties)).isEqualTo(Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, 1));
        assertThat(DixonTest.judge(0, ties).meaningful()).isPresent();
        assertThat(DixonTest.judge(0.1, 0.4, 0.4, 0.6, 0.4, 0.4).meaningful()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void followsTranslationScaleAndOrder(long seed) {
        Random random = new Random(seed);
        int count = 4 + random.nextInt(12);
        double[] values = random.doubles(count).toArray();
        double[] changed = new double[count];
        for (int i = 0; i < count; i++) {
            changed[count - 1 - i] = 64 - 8 * values[i];
        }
        DixonTest test = DixonTest.of(values).orElseThrow();
        DixonTest other = DixonTest.of(changed).orElseThrow();
        assertThat(other.statistic()).isCloseTo(test.statistic(), offset(1e-11));
        assertThat(other.p()).isCloseTo(test.p(), offset(1e-9));
        assertThat(other.index()).isEqualTo(count - 1 - test.index());
    }

    @Test
    void refusesWhatCannotBeTested() {
        assertThatIllegalArgumentException().isThrownBy(() -> DixonTest.of());
        assertThatIllegalArgumentException().isThrownBy(() -> DixonTest.oneSided(2, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> DixonTest.oneSided(5, 1.5));
        assertThatIllegalArgumentException().isThrownBy(() -> DixonTest.judge(-1, 1, 2, 3, 4));
    }
}
