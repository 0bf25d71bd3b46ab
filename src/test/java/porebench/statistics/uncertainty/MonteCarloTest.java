package porebench.statistics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.statistics.distribution.StudentT;

class MonteCarloTest {
    private static MonteCarlo drawn(Uncertain input, int draws) {
        return MonteCarlo.of(List.of(input), values -> values[0], draws, 7, 0.95);
    }

    @Test
    void givesTheSameResultForTheSameSeed() {
        Uncertain input = Uncertain.student(1, 2, 3.5);
        assertThat(drawn(input, 5000)).isEqualTo(drawn(input, 5000));
        assertThat(MonteCarlo.of(List.of(input), values -> values[0], 5000, 8, 0.95)
                        .symmetric())
                .isNotEqualTo(drawn(input, 5000).symmetric());
        assertThat(drawn(input, 5000).seed()).isEqualTo(7);
    }

    /**
     * 1000 results in order: q = 950, r = (1000 - 950 + 1) / 2, cut to 25: the 25th and the 975th. With 1001: q = 951 (950.95 + 0.5
     * cut), r = (1001 - 951) / 2 = 25, the 25th and the 976th. Results are made by counting calls, 1, 2, 3, ...
     */
    @Test
    void takesTheEndsByTheSourcesRule() {
        for (int draws : new int[] {1000, 1001}) {
            int[] calls = {0};
            MonteCarlo counted = MonteCarlo.of(List.of(Uncertain.normal(0, 1)), values -> ++calls[0], draws, 1, 0.95);
            assertThat(counted.symmetric()).isEqualTo(new MonteCarlo.Interval(25, draws == 1000 ? 975 : 976));
            assertThat(counted.shortest().half()).isEqualTo(draws == 1000 ? 475 : 475.5);
            assertThat(counted.median()).isEqualTo((draws + 1) / 2.0);
        }
    }

    /** Of t the interval is that of the t table, whatever the degrees of freedom; a million draws find the ends to a percent or two. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 2, 2.7, 5, 30, 1e7})
    void drawsStudentsT(double degrees) {
        MonteCarlo result = drawn(Uncertain.student(10, 0.5, degrees), 1_000_000);
        double half = 0.5 * new StudentT(degrees).coverageFactor(0.95);
        assertThat(result.symmetric().low()).isCloseTo(10 - half, offset(0.02 * half));
        assertThat(result.symmetric().high()).isCloseTo(10 + half, offset(0.02 * half));
        assertThat(result.median()).isCloseTo(10, offset(0.01));
    }

    /** Three readings have two degrees of freedom: t has no variance then, and of two readings not even a mean. */
    @Test
    void withholdsWhatTheDistributionDoesNotHave() {
        MonteCarlo two = drawn(Uncertain.student(0, 1, 1), 2000);
        assertThat(two.mean()).isEmpty();
        assertThat(two.standardDeviation()).isEmpty();
        MonteCarlo three = drawn(Uncertain.student(0, 1, 2), 2000);
        assertThat(three.mean()).isPresent();
        assertThat(three.standardDeviation()).isEmpty();
        MonteCarlo four = drawn(Uncertain.student(0, 1, 3), 2000);
        assertThat(four.standardDeviation()).isPresent();
        // No scatter has no distribution either.
        assertThat(drawn(Uncertain.student(0, 0, 1), 2000).standardDeviation()).hasValue(0);
        assertThat(Uncertain.student(0, 1, Double.POSITIVE_INFINITY).shape()).isEqualTo(Uncertain.Shape.NORMAL);
    }

    @Test
    void staysWithinTheRectangle() {
        Uncertain rectangle = Uncertain.rectangular(5, 0.5);
        Random random = new Random(3);
        for (int i = 0; i < 10_000; i++) {
            assertThat(rectangle.draw(random)).isBetween(4.5, 5.5);
        }
        // 95 % of a rectangle is 0.95 of its half width.
        assertThat(drawn(rectangle, 1_000_000).symmetric().half()).isCloseTo(0.475, offset(0.001));
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        Uncertain input = Uncertain.normal(0, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(List.of(), values -> 0, 1000, 1, 0.95))
                .withMessage("count of inputs must be at least 1, but is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> drawn(input, 999))
                .withMessage("draws must be at least 1000, but is 999");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MonteCarlo.of(List.of(input), values -> Double.NaN, 1000, 1, 0.95))
                .withMessage("result of the model must be a finite number, but is NaN");
        assertThatIllegalArgumentException().isThrownBy(() -> MonteCarlo.of(List.of(input), values -> 0, 1000, 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.normal(0, -1));
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.student(0, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Uncertain.normal(Double.NaN, 1));
    }
}
