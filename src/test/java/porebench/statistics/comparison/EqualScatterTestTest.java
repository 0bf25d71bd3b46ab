package porebench.statistics.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;
import porebench.statistics.summary.PooledDeviation;

/** Against Bartlett's test where the scale is fine, and by pencil. */
class EqualScatterTestTest {
    private static PooledDeviation set(int degrees, double deviation) {
        return new PooledDeviation(1, degrees, deviation);
    }

    private static EqualScatterTest test(double division, PooledDeviation... sets) {
        return EqualScatterTest.judge(division, false, List.of(sets))
                .meaningful()
                .orElseThrow();
    }

    /**
     * Variances 0.01, 0.02 and 0.09 with 10 degrees of freedom each: pooled 0.04, 30 ln 0.04 - 10 (ln 0.01 + ln 0.02 + ln 0.09) = 12.6851.
     * Bartlett's factor 1 + (3/10 - 1/30) / 6 = 1.04444 makes it 12.145, and chi-square with 2 degrees of freedom exp(-12.145 / 2) =
     * 0.0023; of 1000 draws about two are as large.
     */
    @Test
    void isBartlettsOnAFineScale() {
        EqualScatterTest test = test(1e-6, set(10, 0.1), set(10, Math.sqrt(0.02)), set(10, 0.3));
        assertThat(test.sets()).isEqualTo(3);
        assertThat(test.statistic()).isCloseTo(12.6851, within(1e-4));
        assertThat(test.p()).isBetween(0.001, 0.006);
    }

    /** Statistic 20 ln 0.03 - 10 (ln 0.02 + ln 0.04) = 1.1778; factor 1 + (2/10 - 1/20) / 3 = 1.05; P(chi-square(1) > 1.1217) = 0.290. */
    @Test
    void givesTheProbabilityThatChiSquareDoes() {
        EqualScatterTest test = test(1e-6, set(10, Math.sqrt(0.02)), set(10, Math.sqrt(0.04)));
        assertThat(test.statistic()).isCloseTo(1.1778, within(1e-4));
        assertThat(test.p()).isCloseTo(0.290, within(0.045));
    }

    /** Two of three stand still on a scale divided to 0.1: their variances count for 0.01 / 12, not for 0. */
    @Test
    void setsThatStandStillScatterAsTheScaleDoes() {
        double floor = 0.01 / 12;
        EqualScatterTest test = test(0.1, set(2, 0), set(2, 0), set(2, 0.1));
        assertThat(test.statistic())
                .isCloseTo(
                        6 * Math.log((2 * floor + 0.01) / 3) - 2 * (2 * Math.log(floor) + Math.log(0.01)),
                        within(1e-9));
    }

    /** Three readings of each set, none more than two divisions apart, one set standing still: without ties that would be infinite. */
    @Test
    void tiesAreNoDifference() {
        double one = 0.1 / Math.sqrt(3);
        EqualScatterTest test = test(0.1, set(2, 0.1), set(2, 0), set(2, 2 * one), set(2, one), set(2, 0.1));
        assertThat(test.p()).isGreaterThan(0.2);
    }

    @Test
    void saysNothingOfFewerThanTwoSetsOrOfAScaleThatShowsNothing() {
        assertThat(EqualScatterTest.judge(0.1, false, List.of(set(2, 0.1))).whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        double floor = 0.1 / Math.sqrt(12);
        assertThat(EqualScatterTest.judge(0.1, false, List.of(set(2, 0), set(2, floor)))
                        .whyWithheld())
                .contains(Judged.Reason.SCALE_TOO_COARSE);
        assertThat(EqualScatterTest.judge(0.1, true, List.of(set(2, 0), set(2, 0.04)))
                        .whyWithheld())
                .contains(Judged.Reason.SCALE_TOO_COARSE);
    }

    @Test
    void theSameSetsGiveTheSameProbability() {
        PooledDeviation[] sets = {set(2, 0.1), set(4, 0.05), set(7, 0.12)};
        assertThat(EqualScatterTest.judge(0.05, true, Arrays.asList(sets)))
                .isEqualTo(EqualScatterTest.judge(0.05, true, Arrays.asList(sets)));
    }
}
