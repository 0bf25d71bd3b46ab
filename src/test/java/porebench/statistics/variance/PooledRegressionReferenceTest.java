package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.ReferenceFile;

/** Against lme4 1.1-31 in R 4.2.2, REML, and the whole matrix of variances. */
class PooledRegressionReferenceTest {
    private static final ReferenceFile DATA = ReferenceFile.read("pooled-regression-data.csv");
    private static final ReferenceFile EXPECTED = ReferenceFile.read("pooled-regression-reml.csv");
    private static final double IN_PERCENT = 2e-3;
    private static final double DEGREES_IN_PERCENT = 0.5;

    static RegressorColumns columns(String set) {
        RegressorColumns.Builder built = null;
        String outer = "";
        for (ReferenceFile.Row row : DATA.rows()) {
            if (row.text("set").equals(set)) {
                double[] amounts = row.numbers("amounts");
                built = built == null ? new RegressorColumns.Builder(amounts.length) : built;
                if (!row.text("outer").equals(outer)) {
                    outer = row.text("outer");
                    built.outer();
                }
                int[] places = IntStream.range(0, amounts.length)
                        .filter(k -> amounts[k] > 0)
                        .toArray();
                built.group(
                        row.numbers("values"),
                        places,
                        IntStream.of(places).mapToDouble(k -> amounts[k]).toArray());
            }
        }
        return built.build();
    }

    static PooledRegression fit(RegressorColumns columns) {
        return PooledRegression.of(columns, Separation.of(columns), 0)
                .meaningful()
                .orElseThrow();
    }

    private static ReferenceFile.Row expected(String set) {
        return EXPECTED.rows().stream()
                .filter(row -> row.text("set").equals(set))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-sources", "five-sources", "quiet-mixes", "one-a-mix", "below-nothing"})
    void agreesWithRemlOfRegressors(String set) {
        ReferenceFile.Row expected = expected(set);
        PooledRegression found = fit(columns(set));
        double[] variances = expected.numbers("variances");
        assertThat(found.variances().outer()).isCloseTo(variances[0], withPercentage(5 * IN_PERCENT));
        assertThat(found.variances().group()).isCloseTo(variances[1], withPercentage(5 * IN_PERCENT));
        assertThat(found.variances().value()).isCloseTo(variances[2], withPercentage(IN_PERCENT));
        double[] shares = expected.numbers("shares");
        double[] errors = expected.numbers("standardErrors");
        for (int k = 0; k < shares.length; k++) {
            assertThat(found.share(k).orElseThrow()).isCloseTo(shares[k], withPercentage(IN_PERCENT));
            assertThat(Math.sqrt(found.covariance(k, k).orElseThrow()))
                    .isCloseTo(errors[k], withPercentage(IN_PERCENT));
            assertThat(found.isAtZero(k)).isEqualTo(shares[k] == 0);
        }
        PooledRegression.Prediction ahead =
                found.predict(expected.numbers("amounts"), (int) expected.number("values"), 0.95);
        assertThat(ahead.mean()).isCloseTo(expected.number("mean"), withPercentage(IN_PERCENT));
        assertThat(ahead.variance()).isCloseTo(expected.number("variance"), withPercentage(IN_PERCENT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-sources", "five-sources", "quiet-mixes", "one-a-mix", "below-nothing"})
    void knowsTheVarianceOfAPredictionAsWellAsTheCurveOfTheCriterionSays(String set) {
        ReferenceFile.Row expected = expected(set);
        PooledRegression.Prediction ahead =
                fit(columns(set)).predict(expected.numbers("amounts"), (int) expected.number("values"), 0.95);
        assertThat(ahead.degreesOfFreedom())
                .isCloseTo(expected.number("degreesOfFreedom"), withPercentage(DEGREES_IN_PERCENT));
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-sources", "five-sources", "quiet-mixes", "one-a-mix", "below-nothing"})
    void foretellsAnOuterGroupFromTheOthers(String set) {
        ReferenceFile.Row expected = expected(set);
        RegressorColumns columns = columns(set);
        LeftOut without = fit(columns).leftOut();
        int outer = Integer.parseInt(expected.text("leftOut").substring(1)) - 1;
        double[] figures = expected.numbers("foretoldWithout");
        assertThat(columns.outerStarts[outer + 1] - columns.outerStarts[outer]).isEqualTo(figures.length);
        for (int i = 0; i < figures.length; i++) {
            assertThat(without.foretold(columns.outerStarts[outer] + i))
                    .isCloseTo(figures[i], withPercentage(IN_PERCENT));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"two-sources", "five-sources", "one-a-mix", "below-nothing"})
    void solvesByProductsAsByReflections(String set) {
        RegressorColumns columns = columns(set);
        PooledRegression found = fit(columns);
        RegressorColumns taken = columns.with(found.separation().taken());
        double[] even = PooledSolution.even(taken);
        PooledSolution one = PooledSolution.byReflections(taken, found.variances());
        PooledSolution other =
                PooledSolution.byProducts(taken, even, PooledSolution.rest(taken, even), found.variances());
        for (int k = 0; k < one.shares().length; k++) {
            assertThat(other.shares()[k]).isCloseTo(one.shares()[k], withPercentage(1e-9));
            assertThat(other.wide()[k]).usingComparatorWithPrecision(1e-12).containsExactly(one.wide()[k]);
        }
    }
}
