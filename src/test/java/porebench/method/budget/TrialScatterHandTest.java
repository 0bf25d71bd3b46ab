package porebench.method.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.method.MeterType;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

class TrialScatterHandTest {
    private static final Summary TWO = Summary.of(0.3, 0.5);

    private static List<PooledDeviation> others(int count, double deviation) {
        return Collections.nCopies(count, new PooledDeviation(1, 2, deviation));
    }

    private static TrialScatter of(Summary trials, MeterType type, List<PooledDeviation> others) {
        return TrialScatter.of(trials, type, 0.1, 0.14, others);
    }

    /** Own variance 0.02 with one degree of freedom, the others' 0.01 with two: (2 x 0.01 + 0.02) / 3 = 0.0133333. */
    @Test
    void drawsTowardsTheLaboratory() {
        TrialScatter scatter = of(TWO, MeterType.B, others(5, 0.1));
        assertThat(scatter.standardDeviationPercent()).isCloseTo(0.115470, offset(1e-6));
        assertThat(scatter.degreesOfFreedom()).isEqualTo(3);
        assertThat(scatter.origin()).isEqualTo(Origin.LABORATORY_SCATTER);
        TrialScatter one = of(Summary.of(0.4), MeterType.B, others(5, 0.1));
        assertThat(one.standardDeviationPercent()).isCloseTo(0.1, offset(1e-12));
        assertThat(one.degreesOfFreedom()).isEqualTo(2);
    }

    /** Four others are too few, and so are five pairs with five degrees of freedom: s = 0.2 / sqrt(2). */
    @Test
    void standsAloneWhereTheLaboratoryHasTooFew() {
        for (List<PooledDeviation> few :
                List.of(others(4, 0.1), Collections.nCopies(5, new PooledDeviation(1, 1, 0.1)))) {
            TrialScatter own = of(TWO, MeterType.B, few);
            assertThat(own.standardDeviationPercent()).isCloseTo(0.2 / Math.sqrt(2), offset(1e-12));
            assertThat(own.degreesOfFreedom()).isEqualTo(1);
            assertThat(own.origin()).isEqualTo(Origin.SCATTER);
        }
        TrialScatter single = of(Summary.of(0.4), MeterType.B, List.of());
        assertThat(single.standardDeviationPercent()).isEqualTo(0.14);
        assertThat(single.degreesOfFreedom()).isInfinite();
        assertThat(single.origin()).isEqualTo(Origin.PROFILE);
    }

    /** Equal trials: 0.1 / sqrt(12) on Type B, the root of 2 times that on Type A; of others that stood still as well. */
    @Test
    void neverFallsBelowTheDivision() {
        Summary still = Summary.of(0.4, 0.4);
        assertThat(of(still, MeterType.B, List.of()).standardDeviationPercent()).isCloseTo(0.0288675, offset(5e-8));
        assertThat(of(still, MeterType.A, List.of()).standardDeviationPercent()).isCloseTo(0.0408248, offset(5e-8));
        assertThat(of(still, MeterType.B, others(6, 0)).standardDeviationPercent())
                .isCloseTo(0.0288675, offset(5e-8));
        assertThatIllegalArgumentException().isThrownBy(() -> TrialScatter.of(still, MeterType.B, 0, 0.14, List.of()));
    }
}
