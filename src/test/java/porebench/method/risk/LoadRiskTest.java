package porebench.method.risk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LoadRiskTest {
    private static final AirLimits SIX = new AirLimits(6, 1.5);

    private static LoadRisk risk(double mean, double spread, double reading, double error) {
        return LoadRisk.of(SIX, new Loads(mean, spread, reading), error);
    }

    @Test
    void nothingIsWrongWithoutErrorAndScatter() {
        assertThat(risk(6, 0.6, 0, 0)).isEqualTo(new LoadRisk(0, 0));
        assertThat(risk(6, 0, 0, 0)).isEqualTo(new LoadRisk(0, 0));
    }

    /**
     * By a table of the normal distribution (Abramowitz and Stegun, table 26.1): with limits 2.5 spreads out and an error of half a
     * spread, wrongly passed are those from 3.0 to 2.5 below, 0.0062097 - 0.0013499; wrongly failed those from 2.0 to 2.5 above,
     * 0.0227501 - 0.0062097.
     */
    @Test
    void exactReadingsMoveTheLimits() {
        assertThat(risk(6, 0.6, 0, 0.3).wronglyPassed()).isCloseTo(0.0048598, within(1e-7));
        assertThat(risk(6, 0.6, 0, 0.3).wronglyFailed()).isCloseTo(0.0165404, within(1e-7));
        assertThat(risk(6, 0.6, 0, -0.3).wronglyPassed()).isCloseTo(0.0048598, within(1e-7));
        assertThat(risk(6, 0.6, 0, -0.3).wronglyFailed()).isCloseTo(0.0165404, within(1e-7));
    }

    /** An error wider than both limits passes nothing that is right: all that is good fails, 0.9875807. */
    @Test
    void anErrorWiderThanTheLimitsFailsAllThatIsGood() {
        assertThat(risk(6, 0.6, 0, 4).wronglyFailed()).isCloseTo(0.9875807, within(1e-7));
        assertThat(risk(6, 0.6, 0, -4).wronglyFailed()).isCloseTo(0.9875807, within(1e-7));
        assertThat(risk(6, 0.6, 0, 4).wronglyPassed()).isLessThan(1e-4);
    }

    /** Loads that are all alike: 7.4 seen with a scatter of 0.1 fails where it is read 1 scatter too high, 0.1586553. */
    @Test
    void loadsThatAreAllAlikeAreWrongByTheirReadings() {
        assertThat(risk(7.4, 0, 0.1, 0).wronglyFailed()).isCloseTo(0.1586553, within(1e-7));
        assertThat(risk(7.6, 0, 0.1, 0).wronglyPassed()).isCloseTo(0.1586553, within(1e-7));
        assertThat(risk(7.4, 0, 0, 0.2)).isEqualTo(new LoadRisk(0, 1));
        assertThat(risk(7.6, 0, 0, -0.2)).isEqualTo(new LoadRisk(1, 0));
        assertThat(risk(7.5, 0, 0, 0)).isEqualTo(new LoadRisk(0, 0));
    }

    /** However fine the readings become, the shares tend to those of exact ones, and no step of the integral shows. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-3, 1e-6, 1e-9})
    void fineReadingsTendToExactOnes(double reading) {
        LoadRisk exact = risk(6.2, 0.6, 0, 0.25);
        LoadRisk fine = risk(6.2, 0.6, reading, 0.25);
        assertThat(fine.wronglyPassed()).isCloseTo(exact.wronglyPassed(), within(reading));
        assertThat(fine.wronglyFailed()).isCloseTo(exact.wronglyFailed(), within(reading));
    }

    /** Loads far from the limits, and loads that hardly differ, are no trouble. */
    @Test
    void farAwayAndNarrowLoadsAreNumbers() {
        assertThat(risk(60, 0.6, 0.2, 0)).isEqualTo(new LoadRisk(0, 0));
        assertThat(risk(7.4, 1e-9, 0.1, 0).wronglyFailed()).isCloseTo(0.1586553, within(1e-7));
    }

    @Test
    void theCurveIsMirroredWhereTheLoadsLieInTheMiddle() {
        RiskCurve curve = RiskCurve.of(SIX, new Loads(6, 0.6, 0.2), RiskCurve.farthest(SIX, 0.3));
        int last = curve.points().size() - 1;
        assertThat(curve.points().get(0).errorPercent()).isEqualTo(-0.75);
        assertThat(curve.points().get(last).errorPercent()).isEqualTo(0.75);
        assertThat(curve.points().get(last / 2).errorPercent()).isZero();
        assertThat(curve.points().get(3).risk().wronglyPassed())
                .isCloseTo(curve.points().get(last - 3).risk().wronglyPassed(), within(1e-13));
        assertThat(RiskCurve.farthest(SIX, -2)).isEqualTo(2);
    }

    @Test
    void refusesWhatIsNoLimitAndNoLoad() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AirLimits(6, 0))
                .withMessageContaining("tolerancePercent must be greater than 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Loads(6, -0.1, 0))
                .withMessageContaining("spreadPercent");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> risk(6, 0.6, 0.1, Double.NaN))
                .withMessageContaining("errorPercent");
    }
}
