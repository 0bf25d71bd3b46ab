package porebench.statistics.outlier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

class GrubbsPairTestTest {
    /**
     * 0 0 1 7 8: without 7 and 8 the mean is 1/3, squares 2/3; the whole has mean 3.2, squares 114 - 51.2 = 62.8. The share
     * 0.0106 lies between the critical 0.0090 of 2.5 % and 0.0183 of 5 % for one end (ISO 5725-2, recalled).
     */
    @Test
    void agreesWithThePencil() {
        GrubbsPairTest test = GrubbsPairTest.of(7, 0, 8, 1, 0).orElseThrow();
        assertThat(test.count()).isEqualTo(5);
        assertThat(test.statistic()).isCloseTo(2.0 / 3 / 62.8, offset(1e-14));
        assertThat(test.isHigh()).isTrue();
        assertThat(test.gap()).isEqualTo(6);
        assertThat(test.p()).isBetween(0.05, 0.1);
    }

    /** Every sample has a pair of highest values, and its share is between 0 and 1. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6, 9, 20, 50, 100})
    void hasAProbabilityThatRisesFromNoneToAll(int n) {
        PairDistribution distribution = PairDistribution.of(n);
        assertThat(distribution.oneSided(0)).isCloseTo(0, offset(1e-9));
        assertThat(distribution.oneSided(1)).isCloseTo(1, offset(2e-4));
        double previous = 0;
        for (double share = 0.05; share <= 1; share += 0.05) {
            assertThat(distribution.oneSided(share)).isGreaterThan(previous - 1e-4);
            previous = distribution.oneSided(share);
        }
    }

    @Test
    void hasTheSignificanceAtItsCriticalValue() {
        for (int n : new int[] {5, 8, 30, 100}) {
            double critical = PairDistribution.of(n).lowerPoint(0.025);
            assertThat(PairDistribution.of(n).oneSided(critical)).isCloseTo(0.025, offset(1e-6));
        }
    }

    @Test
    void isNotDefinedOutsideItsCountsOrForEqualValues() {
        assertThat(GrubbsPairTest.of(1, 2, 3)).isEmpty();
        assertThat(GrubbsPairTest.of(1, 1, 1, 1, 1)).isEmpty();
        assertThat(GrubbsPairTest.of(new Random(1).doubles(101).toArray())).isEmpty();
    }

    @Test
    void saysWhyItJudgesNothing() {
        assertThat(GrubbsPairTest.judge(0.1, 0.4, 0.4, 0.4, 0.4, 0.4).whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
        assertThat(GrubbsPairTest.judge(0.1, 0.4).whyWithheld()).contains(Judged.Reason.TOO_FEW);
        assertThat(GrubbsPairTest.judge(0.1, 0.4, 0.4, 0.9, 0.9)).isEqualTo(Judged.withheld(Judged.Reason.TOO_FEW, 0));
        assertThat(GrubbsPairTest.judge(0.1, new Random(1).doubles(101).toArray())
                        .whyWithheld())
                .contains(Judged.Reason.TOO_MANY);
    }

    /** Two values one division apart: G2 is 0 and p would be 0 however small the division. */
    @Test
    void doesNotTakeOneStepOfTheScaleForTwoOutliers() {
        double[] ties = {0.4, 0.5, 0.4, 0.5, 0.4, 0.4};
        assertThat(GrubbsPairTest.of(ties).orElseThrow().p()).isZero();
        assertThat(GrubbsPairTest.judge(0.1, ties)).isEqualTo(Judged.withheld(Judged.Reason.WITHIN_ONE_DIVISION, 0));
        assertThat(GrubbsPairTest.judge(0, ties).meaningful()).isPresent();
        assertThat(GrubbsPairTest.judge(0.1, 0.4, 0.7, 0.4, 0.7, 0.4, 0.4).meaningful())
                .isPresent();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void followsTranslationScaleAndOrder(long seed) {
        Random random = new Random(seed);
        int count = 5 + random.nextInt(10);
        double[] values = random.doubles(count).toArray();
        double[] changed = new double[count];
        for (int i = 0; i < count; i++) {
            changed[count - 1 - i] = 64 - 8 * values[i];
        }
        GrubbsPairTest test = GrubbsPairTest.of(values).orElseThrow();
        GrubbsPairTest other = GrubbsPairTest.of(changed).orElseThrow();
        assertThat(other.statistic()).isCloseTo(test.statistic(), offset(1e-11));
        assertThat(other.p()).isCloseTo(test.p(), offset(1e-9));
        assertThat(other.isHigh()).isNotEqualTo(test.isHigh());
        assertThat(other.gap()).isCloseTo(8 * test.gap(), offset(1e-11));
    }

    /** Simulated with a fixed seed: normal values without outlier fall below the critical value as often as they should. */
    @Test
    void keepsItsSignificance() {
        Random random = new Random(20260701);
        double critical = PairDistribution.of(7).lowerPoint(0.05);
        int below = 0;
        int cases = 20_000;
        for (int i = 0; i < cases; i++) {
            double[] sorted =
                    random.doubles(7).map(u -> random.nextGaussian()).sorted().toArray();
            double rest = Summary.of(java.util.Arrays.copyOf(sorted, 5))
                    .standardDeviation()
                    .orElseThrow();
            double all = Summary.of(sorted).standardDeviation().orElseThrow();
            below += 4 * rest * rest / (6 * all * all) < critical ? 1 : 0;
        }
        assertThat(below / (double) cases).isCloseTo(0.05, offset(0.005));
    }

    @Test
    void refusesWhatCannotBeTested() {
        assertThatIllegalArgumentException().isThrownBy(() -> GrubbsPairTest.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairDistribution.of(3).lowerPoint(0.05))
                .withMessageStartingWith("n must be from 4");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PairDistribution.of(5).lowerPoint(0))
                .withMessageStartingWith("significance must be");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GrubbsPairTest.judge(-1, 1, 2, 3))
                .withMessageStartingWith("division must be at least 0");
    }
}
