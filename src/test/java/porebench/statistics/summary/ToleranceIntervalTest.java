package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against the factors as R integrates them another way, and by pencil. */
class ToleranceIntervalTest {
    @Test
    void hasTheExactFactors() {
        for (ReferenceFile.Row row : ReferenceFile.read("tolerance-factors.csv").rows()) {
            double expected = row.number("factor");
            assertThat(ToleranceInterval.factor(
                            (int) row.number("count"), row.number("content"), row.number("confidence")))
                    .as(row.toString())
                    .isCloseTo(expected, within(1e-6 * expected));
        }
    }

    /** e-Handbook 7.2.6.3 (recalled): 43 values, 90 % with 99 %: 2.217 by an approximation. */
    @Test
    void isTheHandbooksWithinItsApproximation() {
        assertThat(ToleranceInterval.factor(43, 0.9, 0.99)).isCloseTo(2.217, within(0.01));
    }

    /** Mean 0.4, s 0.1; k of 3 values, 90 % with 95 %, is in the reference file. */
    @Test
    void reachesAsFarToBothSides() {
        double k = ToleranceInterval.factor(3, 0.9, 0.95);
        ToleranceInterval interval = ToleranceInterval.of(Summary.of(0.3, 0.4, 0.5), 0, 0.9, 0.95);
        assertThat(interval.count()).isEqualTo(3);
        assertThat(interval.low()).isCloseTo(0.4 - 0.1 * k, within(1e-9));
        assertThat(interval.high()).isCloseTo(0.4 + 0.1 * k, within(1e-9));
    }

    @Test
    void equalValuesScatterAsMuchAsTheLeastThatIsBelieved() {
        double k = ToleranceInterval.factor(3, 0.9, 0.95);
        assertThat(ToleranceInterval.of(Summary.of(0.4, 0.4, 0.4), 0.03, 0.9, 0.95)
                        .high())
                .isCloseTo(0.4 + 0.03 * k, within(1e-9));
        assertThatIllegalArgumentException().isThrownBy(() -> ToleranceInterval.of(Summary.of(0.4), 0.03, 0.9, 0.95));
    }
}
