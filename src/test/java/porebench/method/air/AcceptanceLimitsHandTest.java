package porebench.method.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Air wanted 6.0 +- 1.5: from 4.5 to 7.5. With u = 0.25 and k = 2 the guard band is 0.5: accepted from 5.0 to 7.0. */
class AcceptanceLimitsHandTest {
    private static final AcceptanceLimits PLAIN = AcceptanceLimits.of(new BigDecimal("6.0"), new BigDecimal("1.5"));
    private static final AcceptanceLimits GUARDED = PLAIN.guarded(2, 0.25).orElseThrow();

    @ParameterizedTest
    @CsvSource({
        "4.45, 4.4, FAILS, FAILS",
        "4.46, 4.5, PASSES, GUARDED",
        "4.5, 4.5, PASSES, GUARDED",
        "4.99, 5.0, PASSES, GUARDED",
        "5.0, 5.0, PASSES, PASSES",
        "7.0, 7.0, PASSES, PASSES",
        "7.01, 7.0, PASSES, GUARDED",
        "7.5, 7.5, PASSES, GUARDED",
        "7.54, 7.5, PASSES, GUARDED",
        "7.56, 7.6, FAILS, FAILS"
    })
    void theReportedAirKeepsToTheToleranceAndTheAirItselfToTheGuardBand(
            BigDecimal air, BigDecimal reported, AirVerdict plain, AirVerdict guarded) {
        assertThat(PLAIN.verdict(air, reported)).isEqualTo(plain);
        assertThat(GUARDED.verdict(air, reported)).isEqualTo(guarded);
    }

    /** 7.5 - 0.3 is 7.2 on paper, 7.2 in binary is a little more than 7.5 less three times 0.1. */
    @Test
    void aLimitOnPaperIsALimitInBinary() {
        AcceptanceLimits limits = PLAIN.guarded(3, 0.1).orElseThrow();
        assertThat(limits.verdict(new BigDecimal("7.2"), new BigDecimal("7.2"))).isEqualTo(AirVerdict.PASSES);
        assertThat(limits.verdict(new BigDecimal("4.8"), new BigDecimal("4.8"))).isEqualTo(AirVerdict.PASSES);
        assertThat(limits.verdict(new BigDecimal("4.79"), new BigDecimal("4.8")))
                .isEqualTo(AirVerdict.GUARDED);
    }

    /** 2 x 0.75 = 1.5 leaves the target alone; 2 x 0.76 leaves nothing. */
    @Test
    void aGuardBandAsWideAsTheToleranceLeavesTheTargetAndAWiderOneNothing() {
        AcceptanceLimits target = PLAIN.guarded(2, 0.75).orElseThrow();
        assertThat(target.acceptedFromPercent()).isEqualTo(6.0);
        assertThat(target.acceptedToPercent()).isEqualTo(6.0);
        assertThat(target.verdict(new BigDecimal("6.0"), new BigDecimal("6.0"))).isEqualTo(AirVerdict.PASSES);
        assertThat(PLAIN.guarded(2, 0.76)).isEmpty();
    }

    /**
     * Tables of the normal distribution (recalled): half of it lies below its middle, 0.1587 beyond 1 and 0.0228 beyond 2 standard
     * deviations. The other limit is 12 and more of them away.
     */
    @Test
    void theRiskAtALimitIsThatOfTheWidthOfItsGuardBand() {
        double u = 0.25;
        assertThat(PLAIN.conforming(7.5, u)).isCloseTo(0.5, within(1e-9));
        assertThat(PLAIN.conforming(7.25, u)).isCloseTo(1 - 0.1587, within(5e-5));
        assertThat(PLAIN.conforming(GUARDED.acceptedToPercent(), u)).isCloseTo(1 - 0.0228, within(5e-5));
        assertThat(PLAIN.conforming(GUARDED.acceptedFromPercent(), u)).isCloseTo(1 - 0.0228, within(5e-5));
        assertThat(PLAIN.conforming(4.0, u)).isCloseTo(0.0228, within(5e-5));
        assertThat(PLAIN.conforming(8.0, u)).isCloseTo(0.0228, within(5e-5));
        assertThat(PLAIN.conforming(-4.0, u)).isBetween(0.0, 1e-200);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> PLAIN.guarded(0, 0.1)).hasMessageContaining("k must");
        assertThatThrownBy(() -> PLAIN.guarded(1, 0)).hasMessageContaining("standard must");
        assertThatThrownBy(() -> PLAIN.conforming(Double.NaN, 0.1)).hasMessageContaining("air must");
        assertThatThrownBy(() -> PLAIN.conforming(5, 0)).hasMessageContaining("standard must");
        assertThatThrownBy(() -> AcceptanceLimits.of(BigDecimal.TEN, BigDecimal.ONE.negate()))
                .hasMessageContaining("tolerance must");
        assertThatThrownBy(() -> new AcceptanceLimits(BigDecimal.ONE, BigDecimal.TEN, -1))
                .hasMessageContaining("guardPercent must");
    }
}
