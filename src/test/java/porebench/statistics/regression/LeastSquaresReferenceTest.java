package porebench.statistics.regression;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.ReferenceFile;

/** Against the certified values of NIST StRD: how many digits of every coefficient and standard error agree. */
class LeastSquaresReferenceTest {
    private static final ReferenceFile DATA = ReferenceFile.read("strd-regression.csv");
    private static final ReferenceFile CERTIFIED = ReferenceFile.read("strd-regression-certified.csv");

    static Stream<String> sets() {
        return CERTIFIED.rows().stream().map(row -> row.text("set"));
    }

    private static double agreeing(double found, double certified) {
        double off = certified == 0 ? Math.abs(found) : Math.abs((found - certified) / certified);
        return off == 0 ? 15 : -Math.log10(off);
    }

    @ParameterizedTest
    @MethodSource("sets")
    void agreesWithTheCertifiedValues(String set) {
        ReferenceFile.Row certified = CERTIFIED.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
        List<ReferenceFile.Row> rows =
                DATA.rows().stream().filter(row -> row.text("set").equals(set)).toList();
        double[] values = rows.stream().mapToDouble(row -> row.number("y")).toArray();
        double[][] columns = Arrays.stream(certified.numbers("powers"))
                .mapToObj(power -> rows.stream()
                        .mapToDouble(row -> Math.pow(row.number("x"), power))
                        .toArray())
                .toArray(double[][]::new);
        LeastSquares found = LeastSquares.of(values, columns);
        double deviation = Math.sqrt(found.squares() / (values.length - columns.length));
        double[] coefficients = certified.numbers("coefficients");
        double[] errors = certified.numbers("standardErrors");
        double floor = certified.number("floor");
        for (int j = 0; j < coefficients.length; j++) {
            assertThat(agreeing(found.coefficients()[j], coefficients[j]))
                    .as("digits of coefficient %d of %s", j, set)
                    .isGreaterThanOrEqualTo(floor);
            assertThat(agreeing(deviation * Math.sqrt(found.inverse()[j][j]), errors[j]))
                    .as("digits of standard error %d of %s", j, set)
                    .isGreaterThanOrEqualTo(floor);
        }
        assertThat(agreeing(deviation, certified.number("residualDeviation"))).isGreaterThanOrEqualTo(floor);
    }
}
