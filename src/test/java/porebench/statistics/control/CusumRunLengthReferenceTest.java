package porebench.statistics.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

class CusumRunLengthReferenceTest {
    /** The integral equation gave the figures; the chain of 120 steps comes within a hundredth of them. */
    @Test
    void agreesWithTheIntegralEquation() {
        for (ReferenceFile.Row row : ReferenceFile.read("cusum-run-lengths.csv").rows()) {
            assertThat(CusumRunLength.of(
                            row.number("slack"), row.number("interval"), Double.POSITIVE_INFINITY, row.number("shift")))
                    .as("%s", row)
                    .isCloseTo(row.number("length"), withinPercentage(1));
        }
    }

    @Test
    void bothDirectionsAreSeenAlikeAndALimitLengthensTheRun() {
        assertThat(CusumRunLength.of(0.5, 5, 3, -1)).isEqualTo(CusumRunLength.of(0.5, 5, 3, 1));
        assertThat(CusumRunLength.of(0.5, 5, 2, 0)).isGreaterThan(CusumRunLength.of(0.5, 5, 3, 0));
    }

    /** A shift without end counts 3 each: 2.5, then 5 on the edge of a step of the chain; so the second or the third. */
    @Test
    void aShiftWithoutEndIsSeenAtOnceTheLimitLetsIt() {
        assertThat(CusumRunLength.of(0.5, 5, 3, 30)).isBetween(1.999, 3.001);
    }

    @Test
    void refusesWhatIsNoChart() {
        assertThatThrownBy(() -> CusumRunLength.of(0.5, 5, 0.5, 0)).hasMessageContaining("limit must be above");
        assertThatThrownBy(() -> CusumRunLength.of(0.5, 5, Double.NaN, 0)).hasMessageContaining("limit must be above");
        assertThatThrownBy(() -> CusumRunLength.of(-1, 5, 3, 0)).hasMessageContaining("slack");
        assertThatThrownBy(() -> CusumRunLength.of(0.5, 0, 3, 0)).hasMessageContaining("interval");
        assertThatThrownBy(() -> CusumRunLength.of(0.5, 5, 3, Double.NaN)).hasMessageContaining("shift");
    }
}
