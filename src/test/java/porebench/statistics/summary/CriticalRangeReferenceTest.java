package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against computed points of the studentised range and the multipliers of ASTM C670 and ISO 5725-6 (recalled). */
class CriticalRangeReferenceTest {
    @Test
    void computesTheStudentisedRange() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("critical-range-factors.csv").rows()) {
            assertThat(CriticalRange.factor(row.whole("n")))
                    .as("n = %s", row.text("n"))
                    .isCloseTo(row.number("factor"), withPercentage(1e-8));
        }
    }

    @Test
    void roundsToThePrintedMultipliers() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("critical-range-printed.csv").rows()) {
            assertThat(CriticalRange.printedFactor(row.whole("n")))
                    .as("n = %s", row.text("n"))
                    .isEqualTo(row.number("multiplier"))
                    .isEqualTo(CriticalRange.rounded(row.whole("n")));
        }
    }

    @Test
    void judgesByThePrintedMultiplier() {
        for (ReferenceFile.Row row : ReferenceFile.read("range-checks.csv").rows()) {
            double[] results = row.numbers("results");
            double range = Arrays.stream(results).max().orElseThrow()
                    - Arrays.stream(results).min().orElseThrow();
            CriticalRange.RangeCheck verdict = CriticalRange.check(range, results.length, row.number("repeatability"));
            assertThat(verdict.range()).isEqualTo(range);
            assertThat(verdict.limit()).isCloseTo(row.number("limit"), withPercentage(1e-10));
            assertThat(verdict.passes())
                    .as(row.text("results"))
                    .isEqualTo(row.text("verdict").equals("PASS"));
        }
    }
}
