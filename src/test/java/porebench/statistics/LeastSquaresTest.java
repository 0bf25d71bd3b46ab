package porebench.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    private static List<BigDecimal> numbers(String... texts) {
        return Stream.of(texts).map(BigDecimal::new).toList();
    }

    /**
     * x 0 1 2 3, y 0.4 0.5 0.5 0.6: mean x 1.5, mean y 0.5; Sxx = 5, Sxy = (-1.5)(-0.1) + (1.5)(0.1) = 0.3;
     * b1 = 0.06, b0 = 0.5 - 0.09 = 0.41. Residuals -0.01 0.03 -0.03 0.01, squares 0.002; s2 = 0.001.
     * u(b1) = sqrt(0.001 / 5) = 0.0141421; squares about the mean 0.02; R2 = 1 - 0.1 = 0.9; F = 0.018 / 0.001 = 18.
     * At x = 4: 0.65, leverage 1/4 + 2.5^2 / 5 = 1.5, u = sqrt(0.0015), of a further reading sqrt(0.0025) = 0.05.
     */
    @Test
    void aLineByPencil() {
        LeastSquares line = LeastSquares.polynomial(1, numbers("0", "1", "2", "3"), numbers("0.4", "0.5", "0.5", "0.6"))
                .orElseThrow();
        assertThat(line.degreesOfFreedom()).isEqualTo(2);
        assertThat(line.coefficient(0)).isEqualTo(0.41);
        assertThat(line.coefficient(1)).isEqualTo(0.06);
        assertThat(line.standardError(1).orElseThrow()).isCloseTo(Math.sqrt(0.0002), within(1e-16));
        assertThat(line.residualStandardDeviation().orElseThrow()).isCloseTo(Math.sqrt(0.001), within(1e-16));
        assertThat(line.explainedShare()).hasValue(0.9);
        assertThat(line.ratioF()).hasValue(18);
        LeastSquares.Prediction next = line.at(new BigDecimal("4")).orElseThrow();
        assertThat(next.value()).isEqualTo(0.65);
        assertThat(next.standardError()).isCloseTo(Math.sqrt(0.0015), within(1e-16));
        assertThat(next.standardErrorOfNext()).isEqualTo(0.05);
        assertThat(next.degreesOfFreedom()).isEqualTo(2);
    }

    @Test
    void oneDayHasNoTrend() {
        assertThat(LeastSquares.polynomial(1, numbers("3", "3.0"), numbers("0.4", "0.5")))
                .isEmpty();
        assertThat(LeastSquares.polynomial(1, List.of(), List.of())).isEmpty();
        assertThat(LeastSquares.throughOrigin(numbers("0.0"), numbers("0.4"))).isEmpty();
        // 0 is a place for a parabola, but says nothing of a slope through the origin.
        assertThat(LeastSquares.polynomial(2, numbers("0", "1", "2"), numbers("0", "1", "4")))
                .isPresent();
    }

    @Test
    void aLineThroughTwoReadingsKnowsNothingOfItsUncertainty() {
        LeastSquares line = LeastSquares.polynomial(1, numbers("1", "2"), numbers("0.4", "0.5"))
                .orElseThrow();
        assertThat(line.coefficient(1)).isEqualTo(0.1);
        assertThat(line.standardError(1)).isEmpty();
        assertThat(line.residualStandardDeviation()).isEmpty();
        assertThat(line.ratioF()).isEmpty();
        assertThat(line.at(BigDecimal.ONE)).isEmpty();
    }

    @Test
    void equalReadingsHaveNoSquaresToExplain() {
        LeastSquares line = LeastSquares.polynomial(1, numbers("1", "2", "3"), numbers("0.4", "0.4", "0.40"))
                .orElseThrow();
        assertThat(line.coefficient(1)).isZero();
        assertThat(line.residualStandardDeviation()).hasValue(0);
        assertThat(line.explainedShare()).isEmpty();
        assertThat(line.ratioF()).isEmpty();
    }

    @Test
    void refusesWhatIsNoTable() {
        assertThatThrownBy(() -> LeastSquares.polynomial(0, numbers("1"), numbers("1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("degree must be at least 1, but is 0");
        assertThatThrownBy(() -> LeastSquares.polynomial(1, numbers("1", "2"), numbers("1")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("count of y must be the count of x, 2, but is 1");
        LeastSquares line =
                LeastSquares.throughOrigin(numbers("1", "2"), numbers("1", "2")).orElseThrow();
        assertThatThrownBy(() -> line.coefficient(0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("power must be from 1 to 1, but is 0");
    }
}
