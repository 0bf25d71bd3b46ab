package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;

/** Against Shapiro and Wilk (1965), NIST data and reference libraries. */
class NormalityReferenceTest {
    private static final ReferenceFile SAMPLES = ReferenceFile.read("normality-samples.csv");

    @Test
    void findsShapiroAndWilksW() {
        for (ReferenceFile.Row row : SAMPLES.rows()) {
            ShapiroWilkTest test = ShapiroWilkTest.of(row.numbers("values")).orElseThrow();
            assertThat(test.statistic()).as(row.text("sample")).isCloseTo(row.number("w"), withPercentage(1e-6));
            assertThat(test.p()).as(row.text("sample")).isCloseTo(row.number("wP"), withPercentage(1e-6));
        }
    }

    @Test
    void findsAndersonAndDarlingsA() {
        for (ReferenceFile.Row row : SAMPLES.rows()) {
            double[] values = row.numbers("values");
            double unadjusted = AndersonDarlingTest.unadjusted(values, Summary.of(values));
            assertThat(unadjusted).as(row.text("sample")).isCloseTo(row.number("squared"), withPercentage(1e-6));
            if (!row.text("adjusted").isEmpty()) {
                assertThat(AndersonDarlingTest.adjusted(unadjusted, values.length))
                        .as(row.text("sample"))
                        .isCloseTo(row.number("adjusted"), withPercentage(1e-6));
            }
            if (!row.text("adjustedP").isEmpty()) {
                AndersonDarlingTest test = AndersonDarlingTest.of(values).orElseThrow();
                assertThat(test.unadjusted()).isEqualTo(unadjusted);
                assertThat(test.p()).as(row.text("sample")).isCloseTo(row.number("adjustedP"), withPercentage(1e-6));
            }
        }
    }
}
