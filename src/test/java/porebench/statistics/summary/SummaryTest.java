package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SummaryTest {
    /**
     * 1 2 4: mean 7/3; deviations -4/3 -1/3 5/3; squares 16/9 + 1/9 + 25/9 = 42/9; s = sqrt(42/18) = sqrt(7/3); lag-1
     * sum 4/9 - 5/9 = -1/9, r1 = -1/42.
     */
    @Test
    void agreesWithThePencil() {
        Summary summary = Summary.of(1, 2, 4);
        assertThat(summary.count()).isEqualTo(3);
        assertThat(summary.mean()).isEqualTo(7.0 / 3);
        assertThat(summary.standardDeviation().orElseThrow()).isCloseTo(Math.sqrt(7.0 / 3), offset(1e-15));
        assertThat(summary.low()).isEqualTo(1);
        assertThat(summary.high()).isEqualTo(4);
        assertThat(summary.range()).isEqualTo(3);
        assertThat(summary.lag1Autocorrelation().orElseThrow()).isCloseTo(-1.0 / 42, offset(1e-15));
        assertThat(summary.standardError().orElseThrow()).isCloseTo(Math.sqrt(7.0) / 3, offset(1e-15));
    }

    @Test
    void leavesTheSpreadOfOneValueUndefined() {
        Summary summary = Summary.of(0.4);
        assertThat(summary.mean()).isEqualTo(0.4);
        assertThat(summary.range()).isZero();
        assertThat(summary.standardDeviation()).isEmpty();
        assertThat(summary.standardError()).isEmpty();
        assertThat(summary.lag1Autocorrelation()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7, 10, 97})
    void givesEqualValuesNoSpreadAndTheirOwnMean(int count) {
        double[] values = new double[count];
        java.util.Arrays.fill(values, 0.1 + 0.2);
        Summary summary = Summary.of(values);
        assertThat(summary.mean()).isEqualTo(0.1 + 0.2);
        assertThat(summary.standardDeviation()).hasValue(0);
        assertThat(summary.standardError()).hasValue(0);
        assertThat(summary.lag1Autocorrelation()).isEmpty();
    }

    @Test
    void refusesNoValues() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Summary.of())
                .withMessage("count of values must be at least 1, but is 0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesAValueThatIsNotFiniteAndNamesItsPlace(double value) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Summary.of(1, 2, value))
                .withMessage("values[2] must be a finite number, but is " + value);
    }

    @Test
    void refusesValuesWhoseRangeIsNotFinite() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Summary.of(Double.MAX_VALUE, -Double.MAX_VALUE))
                .withMessage("range of values must be a finite number, but is Infinity");
    }

    @Test
    void refusesAMeanOutsideLowAndHigh() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Summary(2, 3, OptionalDouble.of(1), 1, 2, OptionalDouble.empty()))
                .withMessage("mean must be from 1.0 to 2.0, but is 3.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Summary(2, 1, OptionalDouble.of(-1), 1, 2, OptionalDouble.empty()))
                .withMessageStartingWith("standardDeviation must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Summary(2, 1, OptionalDouble.of(1), 1, 2, OptionalDouble.of(Double.NaN)))
                .withMessageStartingWith("lag1Autocorrelation must be from -1.0 to 1.0");
    }

    @Test
    void measuresNeighbouringDoubles() {
        double value = 0.3;
        double next = Math.nextUp(value);
        // Two values differing by d have s = d / sqrt(2) and r1 = -1/2.
        Summary summary = Summary.of(value, next);
        assertThat(summary.standardDeviation().orElseThrow())
                .isCloseTo((next - value) / Math.sqrt(2), withPercentage(1e-10));
        assertThat(summary.mean()).isBetween(value, next);
    }

    /** Squares of these overflow or vanish unless scaled. */
    @ParameterizedTest
    @ValueSource(doubles = {1e300, 1e-300, 1e-320, 8e307})
    void measuresVeryLargeAndVerySmallValues(double unit) {
        Summary summary = Summary.of(unit, 2 * unit, unit * 2);
        // 1 2 2 units: s = 1 / sqrt(3) units.
        assertThat(summary.standardDeviation().orElseThrow()).isCloseTo(unit / Math.sqrt(3), withPercentage(0.1));
        assertThat(summary.mean()).isBetween(unit, 2 * unit);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void followsTranslationScaleAndOrder(long seed) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(30);
        double[] values = random.doubles(count, 0, 1).toArray();
        double[] moved = new double[count];
        double[] scaled = new double[count];
        double[] reversed = new double[count];
        for (int i = 0; i < count; i++) {
            moved[i] = values[i] + 1024;
            scaled[i] = -values[i] * 8;
            reversed[count - 1 - i] = values[i];
        }
        Summary summary = Summary.of(values);
        double spread = summary.standardDeviation().orElseThrow();
        double lag = summary.lag1Autocorrelation().orElseThrow();

        Summary away = Summary.of(moved);
        assertThat(away.mean()).isCloseTo(summary.mean() + 1024, offset(1e-12));
        assertThat(away.standardDeviation().orElseThrow()).isCloseTo(spread, offset(1e-12));
        assertThat(away.lag1Autocorrelation().orElseThrow()).isCloseTo(lag, offset(1e-10));

        // A power of two and a change of sign are exact.
        Summary larger = Summary.of(scaled);
        assertThat(larger.mean()).isEqualTo(-8 * summary.mean());
        assertThat(larger.standardDeviation().orElseThrow()).isEqualTo(8 * spread);
        assertThat(larger.lag1Autocorrelation().orElseThrow()).isEqualTo(lag);
        assertThat(larger.range()).isEqualTo(8 * summary.range());

        Summary back = Summary.of(reversed);
        assertThat(back.mean()).isCloseTo(summary.mean(), offset(1e-15));
        assertThat(back.standardDeviation().orElseThrow()).isCloseTo(spread, offset(1e-15));
        assertThat(back.lag1Autocorrelation().orElseThrow()).isCloseTo(lag, offset(1e-14));
    }

    /** 0.4 and what 5.4 - 5.0 leaves in binary differ by some 1e-16: readings that stood still, not a fault. */
    @Test
    void bearsValuesThatDifferInTheirLastBitsOnly() {
        for (double[] values : new double[][] {
            {0.4, 5.4 - 5.0, 0.4},
            {0.1 + 0.2, 0.3, 0.3, 0.1 + 0.2},
            {Math.nextUp(0.4), 0.4, 0.4, 0.4, Math.nextUp(0.4)},
            {Math.nextUp(0.45), 0.45}
        }) {
            Summary summary = Summary.of(values);
            assertThat(summary.standardDeviation().orElseThrow()).isBetween(0.0, 1e-15);
            summary.lag1Autocorrelation().ifPresent(value -> assertThat(value).isBetween(-1.0, 1.0));
        }
    }
}
