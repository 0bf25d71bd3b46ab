package porebench.chart.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.chart.PlotData;
import porebench.chart.look.TrialPoint;

class FactorAxisTest {
    private static FactorAxis of(double... factors) {
        List<TrialPoint> trials = Arrays.stream(factors)
                .mapToObj(factor -> PlotData.counted("t", factor))
                .toList();
        return FactorAxis.of(
                new FactorByTrial(trials, OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 0, 0.05, 0.4, 3})
    void equalPointsAreShownInAtLeastFourTenthsOfAPercent(double factor) {
        FactorAxis one = of(factor);
        FactorAxis equal = of(factor, factor, factor);
        assertThat(one).isEqualTo(equal);
        assertThat(one.high() - one.low()).isGreaterThanOrEqualTo(0.4);
        assertThat(factor).isBetween(one.low(), one.high());
    }

    @Test
    void everyPointStandsInsideTheScale() {
        FactorAxis axis = of(-0.2, 0.4, 2.5);
        assertThat(axis.low()).isLessThan(-0.2);
        assertThat(axis.high()).isGreaterThan(2.5);
    }

    @Test
    void scaleBeginsAtZeroRatherThanBelowWhenNothingIsNegative() {
        assertThat(of(0.1, 0.2).low()).isZero();
    }

    @Test
    void aVeryWideIntervalDoesNotFlattenThePoints() {
        // Two trials 0.4 and 0.5: t(0.975; 1) = 12.706, half width 12.706 x 0.0707 / sqrt(2) = 0.635.
        FactorAxis axis = FactorAxis.of(new FactorByTrial(
                List.of(PlotData.counted("a", 0.4), PlotData.counted("b", 0.5)),
                OptionalDouble.of(0.45),
                Optional.of(new FactorByTrial.Interval(-30, 30)),
                OptionalDouble.of(0.4)));
        // From 0.4 - 0.5 to 0.5 + 0.5, and 12 % of that span of 1.1 around it.
        assertThat(axis.low()).isCloseTo(-0.1 - 0.132, within(1e-12));
        assertThat(axis.high()).isCloseTo(1.0 + 0.132, within(1e-12));
    }

    @Test
    void withoutAnyValueTheScaleRunsFromZeroToOne() {
        assertThat(of()).isEqualTo(new FactorAxis(0, 1));
    }

    @Test
    void theFootStandsJustInsideTheScale() {
        FactorAxis axis = new FactorAxis(0, 1);
        assertThat(axis.foot()).isBetween(0.0, 0.1);
    }
}
