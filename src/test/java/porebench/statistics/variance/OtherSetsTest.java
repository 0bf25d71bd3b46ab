package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import porebench.statistics.summary.PooledDeviation;

class OtherSetsTest {
    private static final double FLOOR = 1e-6;

    private static List<PooledDeviation> sets(int count, long seed) {
        Random random = new Random(seed);
        List<PooledDeviation> sets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            sets.add(new PooledDeviation(1, 1 + random.nextInt(9), Math.exp(2 * random.nextGaussian() - 3)));
        }
        return sets;
    }

    /** The estimate without one set is the estimate of a list that never held it. */
    @Test
    void leavesOutOneSetAfterTheOther() {
        List<PooledDeviation> sets = sets(12, 5);
        sets.set(4, new PooledDeviation(1, 2, 1e4));
        OtherSets all = OtherSets.of(sets);
        for (int place = 0; place < sets.size(); place++) {
            List<PooledDeviation> others = new ArrayList<>(sets);
            others.remove(place);
            VariancePrior expected = VariancePrior.of(others, FLOOR).orElseThrow();
            VariancePrior seen = all.without(place).prior(FLOOR).orElseThrow();
            assertThat(seen.sets()).isEqualTo(11);
            assertThat(seen.setDegrees()).isEqualTo(expected.setDegrees());
            assertThat(seen.variance()).isCloseTo(expected.variance(), withPercentage(1e-8));
            assertThat(seen.degreesOfFreedom()).isCloseTo(expected.degreesOfFreedom(), withPercentage(1e-8));
            assertThat(all.without(place).list()).isEqualTo(others);
            assertThat(all.without(place)).isEqualTo(OtherSets.of(others)).hasSameHashCodeAs(OtherSets.of(others));
        }
    }

    /** Three equal sets and one far out: without that one nothing but the three is left, to the last digit. */
    @Test
    void aSetFarOutLeavesNoTraceBehind() {
        PooledDeviation near = new PooledDeviation(1, 3, 0.05);
        OtherSets all = OtherSets.of(List.of(near, new PooledDeviation(1, 3, 5e5), near, near));
        VariancePrior three = VariancePrior.of(List.of(near, near, near), FLOOR).orElseThrow();
        assertThat(all.without(1).prior(FLOOR)).contains(three);
        assertThat(all.without(0).prior(FLOOR).orElseThrow().degreesOfFreedom()).isLessThan(1);
    }

    @Test
    void keepsFloorsApart() {
        OtherSets all = OtherSets.of(sets(5, 7));
        assertThat(all.prior(1).orElseThrow().variance())
                .isNotEqualTo(all.prior(FLOOR).orElseThrow().variance());
        assertThat(all.prior(1)).isEqualTo(VariancePrior.of(sets(5, 7), 1));
    }

    @Test
    void twoSetsLeaveOneAndThatIsTooFew() {
        OtherSets two = OtherSets.of(sets(2, 3));
        assertThat(two.count()).isEqualTo(2);
        assertThat(two.prior(FLOOR)).isPresent();
        assertThat(two.without(1).count()).isEqualTo(1);
        assertThat(two.without(1).prior(FLOOR)).isEmpty();
        assertThat(OtherSets.NONE.prior(FLOOR)).isEmpty();
        assertThatExceptionOfType(IndexOutOfBoundsException.class).isThrownBy(() -> two.without(2));
        assertThatIllegalArgumentException().isThrownBy(() -> two.prior(0));
    }
}
