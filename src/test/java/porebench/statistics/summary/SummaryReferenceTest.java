package porebench.statistics.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against the certified values of NIST StRD, univariate summary statistics (seen), and exact arithmetic. */
class SummaryReferenceTest {
    /** Certified to 15 digits; a binary double is good for little more. */
    private static final double FLOOR_OF_MEAN = 14;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "strd-lew.csv",
                "strd-lottery.csv",
                "strd-mavro.csv",
                "strd-michelso.csv",
                "strd-numacc1.csv",
                "strd-numacc2.csv",
                "strd-numacc3.csv",
                "strd-numacc4.csv"
            })
    void reachesTheCertifiedDigits(String file) {
        ReferenceFile.Row certified = ReferenceFile.read("strd-certified.csv").rows().stream()
                .filter(row -> row.text("file").equals(file))
                .findFirst()
                .orElseThrow();
        Summary summary = Summary.of(ReferenceFile.read(file).column("y"));

        assertThat(summary.count()).isEqualTo(certified.whole("count"));
        assertThat(digits(summary.mean(), certified.number("mean")))
                .as("digits of the mean")
                .isGreaterThanOrEqualTo(FLOOR_OF_MEAN);
        assertThat(digits(summary.standardDeviation().orElseThrow(), certified.number("standardDeviation")))
                .as("digits of the standard deviation")
                .isGreaterThanOrEqualTo(certified.number("floorOfStandardDeviation"));
        assertThat(digits(summary.lag1Autocorrelation().orElseThrow(), certified.number("lag1Autocorrelation")))
                .as("digits of the lag-1 autocorrelation")
                .isGreaterThanOrEqualTo(certified.number("floorOfLag1"));
    }

    /** The log relative error of NIST: how many digits agree. */
    private static double digits(double value, double certified) {
        double relative = Math.abs(value - certified) / Math.abs(certified);
        return relative == 0 ? 17 : -Math.log10(relative);
    }

    /** The one-pass formula gives a variance of -204.8 for the last of these. */
    @Test
    void keepsASmallSpreadOnALargeOffset() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("small-spread-large-offset.csv").rows()) {
            double offset = row.number("offset");
            double[] values = Arrays.stream(new double[] {0.4, 0.5, 0.4, 0.3, 0.4, 0.6})
                    .map(value -> value + offset)
                    .toArray();
            double deviation = Summary.of(values).standardDeviation().orElseThrow();
            assertThat(deviation * deviation).isCloseTo(row.number("variance"), withPercentage(1e-10));
        }
    }

    @Test
    void summarisesReadingsOfADividedScale() {
        for (ReferenceFile.Row row : ReferenceFile.read("small-samples.csv").rows()) {
            Summary summary = Summary.of(row.numbers("values"));
            assertThat(summary.mean()).isCloseTo(row.number("mean"), withPercentage(1e-8));
            assertThat(summary.standardDeviation().orElseThrow())
                    .isCloseTo(row.number("standardDeviation"), within(1e-12));
            assertThat(summary.standardError().orElseThrow()).isCloseTo(row.number("standardError"), within(1e-12));
            MeanInterval interval = MeanInterval.of(summary, 0.95).orElseThrow();
            assertThat(interval.low()).isCloseTo(row.number("low95"), within(1e-11));
            assertThat(interval.high()).isCloseTo(row.number("high95"), within(1e-11));
        }
    }
}
