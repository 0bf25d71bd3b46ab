package porebench.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against the certified values of NIST StRD, linear regression, and predictions of a reference library. */
class LeastSquaresReferenceTest {
    private static final double FLOOR = 14;

    static Stream<ReferenceFile.Row> sets() {
        return ReferenceFile.read("strd-fit-certified.csv").rows().stream();
    }

    static Stream<ReferenceFile.Row> predictions() {
        return ReferenceFile.read("fit-predictions.csv").rows().stream();
    }

    private static LeastSquares fit(String file, int degree) {
        List<ReferenceFile.Row> rows = ReferenceFile.read(file).rows();
        List<BigDecimal> x =
                rows.stream().map(row -> new BigDecimal(row.text("x"))).toList();
        List<BigDecimal> y =
                rows.stream().map(row -> new BigDecimal(row.text("y"))).toList();
        return (degree == 0 ? LeastSquares.throughOrigin(x, y) : LeastSquares.polynomial(degree, x, y)).orElseThrow();
    }

    private static void agrees(String what, double value, double certified) {
        if (certified == 0 || Double.isInfinite(certified)) {
            assertThat(value).as(what).isEqualTo(certified);
        } else {
            double relative = Math.abs(value - certified) / Math.abs(certified);
            assertThat(relative == 0 ? 17 : -Math.log10(relative))
                    .as("digits of " + what)
                    .isGreaterThanOrEqualTo(FLOOR);
        }
    }

    @ParameterizedTest
    @MethodSource("sets")
    void reachesTheCertifiedDigits(ReferenceFile.Row certified) {
        LeastSquares fit = fit(certified.text("file"), certified.whole("degree"));
        assertThat(fit.degreesOfFreedom()).isEqualTo(certified.whole("degreesOfFreedom"));
        agrees(
                "the residual standard deviation",
                fit.residualStandardDeviation().orElseThrow(),
                certified.number("residualStandardDeviation"));
        agrees("R-squared", fit.explainedShare().orElseThrow(), certified.number("explainedShare"));
        agrees("F", fit.ratioF().orElseThrow(), certified.number("ratioF"));
        List<ReferenceFile.Row> coefficients = ReferenceFile.read("strd-fit-coefficients.csv").rows().stream()
                .filter(row -> row.text("file").equals(certified.text("file")))
                .toList();
        assertThat(coefficients).hasSize(certified.whole("degree") == 0 ? 1 : certified.whole("degree") + 1);
        for (ReferenceFile.Row row : coefficients) {
            int power = row.whole("power");
            agrees("b" + power, fit.coefficient(power), row.number("estimate"));
            agrees(
                    "the standard error of b" + power,
                    fit.standardError(power).orElseThrow(),
                    row.number("standardError"));
        }
    }

    /** The names of the data, which the certified values refer to. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "strd-fit-norris.csv",
                "strd-fit-pontius.csv",
                "strd-fit-noint1.csv",
                "strd-fit-noint2.csv",
                "strd-fit-filip.csv",
                "strd-fit-wampler1.csv",
                "strd-fit-wampler2.csv",
                "strd-fit-wampler3.csv",
                "strd-fit-wampler4.csv",
                "strd-fit-wampler5.csv"
            })
    void everySetIsCertified(String file) {
        assertThat(sets().map(row -> row.text("file"))).contains(file);
    }

    @ParameterizedTest
    @MethodSource("predictions")
    void predictsWhatTheReferenceLibraryPredicts(ReferenceFile.Row row) {
        assertThat(row.text("file")).isIn("fit-stopping-distances.csv", "strd-fit-noint1.csv");
        LeastSquares.Prediction next = fit(row.text("file"), row.whole("degree"))
                .at(new BigDecimal(row.text("x")))
                .orElseThrow();
        assertThat(next.value()).isCloseTo(row.number("fit"), withPercentage(1e-6));
        assertThat(next.value() - next.halfWidthOfNext(0.95)).isCloseTo(row.number("low"), withPercentage(1e-6));
        assertThat(next.value() + next.halfWidthOfNext(0.95)).isCloseTo(row.number("high"), withPercentage(1e-6));
    }
}
