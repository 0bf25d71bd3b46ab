package porebench.statistics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.uncertainty.UncertaintySum.Contribution;

/** Against the examples of JCGM 101:2008 (recalled) and H.1 of JCGM 100:2008 (seen). */
class MonteCarloReferenceTest {
    private static final long SEED = 20_260_701;
    private static final int DRAWS = MonteCarlo.USUAL_DRAWS;

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    @Test
    void addsFourQuantities() {
        for (ReferenceFile.Row row : ReferenceFile.read("monte-carlo-sums.csv").rows()) {
            String[] shapes = row.text("shapes").split(";", -1);
            double[] uncertainties = row.numbers("uncertainties");
            List<Uncertain> inputs = IntStream.range(0, shapes.length)
                    .mapToObj(i -> shapes[i].equals("normal")
                            ? Uncertain.normal(0, uncertainties[i])
                            : Uncertain.rectangular(0, uncertainties[i] * Math.sqrt(3)))
                    .toList();
            MonteCarlo result = MonteCarlo.of(inputs, MonteCarloReferenceTest::sum, DRAWS, SEED, 0.95);
            double u = row.number("standardDeviation");
            assertThat(result.standardDeviation().orElseThrow()).isCloseTo(u, offset(0.01 * u));
            assertThat(result.mean().orElseThrow()).isCloseTo(0, offset(0.01 * u));
            assertThat(result.median()).isCloseTo(0, offset(0.01 * u));
            assertThat(result.symmetric().high()).isCloseTo(row.number("half"), offset(0.01 * u));
            assertThat(result.symmetric().low()).isCloseTo(-row.number("half"), offset(0.01 * u));
            assertThat(result.shortest().half()).isCloseTo(row.number("half"), offset(0.01 * u));
        }
    }

    /** First order says 0 at x1 = 0, where the truth is 50e-6: what Monte Carlo is for. */
    @Test
    void findsTheComparisonLoss() {
        for (ReferenceFile.Row row :
                ReferenceFile.read("monte-carlo-comparison-loss.csv").rows()) {
            double uncertainty = row.number("uncertainty");
            double x = row.number("x1");
            MonteCarlo result = MonteCarlo.of(
                    List.of(Uncertain.normal(x, uncertainty), Uncertain.normal(0, uncertainty)),
                    values -> values[0] * values[0] + values[1] * values[1],
                    DRAWS,
                    SEED,
                    0.95);
            double u = row.number("standardDeviation");
            assertThat(result.mean().orElseThrow()).isCloseTo(row.number("mean"), offset(0.01 * u));
            assertThat(result.standardDeviation().orElseThrow()).isCloseTo(u, offset(0.01 * u));
            assertThat(result.shortest().low()).isCloseTo(row.number("shortestLow"), offset(0.06 * u));
            assertThat(result.shortest().high()).isCloseTo(row.number("shortestHigh"), offset(0.06 * u));
            assertThat(new Contribution("x1", uncertainty, 2 * x, Double.POSITIVE_INFINITY).size())
                    .isCloseTo(row.number("firstOrder"), offset(1e-15));
        }
    }

    /** m = (mR + dm) (1 + (a - 1.2) (1 / rhoW - 1 / rhoR)) - 100 000 mg, densities in kg/m3. */
    @Test
    void calibratesTheWeight() {
        ReferenceFile.Row row =
                ReferenceFile.read("monte-carlo-mass.csv").rows().get(0);
        MonteCarlo result = MonteCarlo.of(
                List.of(
                        Uncertain.normal(100_000, 0.05),
                        Uncertain.normal(1.234, 0.02),
                        Uncertain.rectangular(1.2, 0.1),
                        Uncertain.rectangular(8000, 1000),
                        Uncertain.rectangular(8000, 50)),
                x -> (x[0] + x[1]) * (1 + (x[2] - 1.2) * (1 / x[3] - 1 / x[4])) - 100_000,
                DRAWS,
                SEED,
                0.95);
        double u = row.number("standardDeviation");
        assertThat(result.mean().orElseThrow())
                .isCloseTo(row.number("mean"), offset(0.02 * u))
                .isCloseTo(row.number("printedMean"), offset(0.02 * u));
        assertThat(result.standardDeviation().orElseThrow())
                .isCloseTo(u, offset(0.02 * u))
                .isCloseTo(row.number("printedDeviation"), offset(0.02 * u));
        assertThat(result.symmetric().low())
                .isCloseTo(row.number("low"), offset(0.02 * u))
                .isCloseTo(row.number("printedLow"), offset(0.02 * u));
        assertThat(result.symmetric().high())
                .isCloseTo(row.number("high"), offset(0.02 * u))
                .isCloseTo(row.number("printedHigh"), offset(0.02 * u));
    }

    /** y = ls + d - ls (da th + as dt); the sensitivities of expansion and temperature are 0 at first order. */
    @Test
    void calibratesTheEndGaugeByBothWays() {
        List<ReferenceFile.Row> rows =
                ReferenceFile.read("uncertainty-end-gauge.csv").rows();
        double ls = rows.get(0).number("value");
        double expansion = rows.get(2).number("value");
        double temperature = rows.get(3).number("value");
        double[] sensitivities = {1, 1, 0, 0, -ls * temperature, -ls * expansion};
        List<Contribution> parts = new ArrayList<>();
        List<Uncertain> inputs = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            ReferenceFile.Row row = rows.get(i);
            Contribution part = new Contribution(
                    row.text("input"), row.number("uncertainty"), sensitivities[i], row.number("degreesOfFreedom"));
            assertThat(part.size()).isCloseTo(row.number("contribution"), offset(1e-6));
            parts.add(part);
            inputs.add(Uncertain.normal(row.number("value"), row.number("uncertainty")));
        }
        UncertaintySum sum = UncertaintySum.of(parts);
        ReferenceFile.Row first = rows.get(0);
        assertThat(sum.combined()).isCloseTo(first.number("combined"), withPercentage(1e-7));
        assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(first.number("effective"), withPercentage(1e-7));
        // The guide cuts 16.7 to 16.
        assertThat(sum.combined() * new StudentT(16).coverageFactor(0.99))
                .isCloseTo(first.number("expanded99"), withPercentage(1e-7))
                .isCloseTo(93, offset(0.5));
        assertThat(parts.stream().mapToDouble(sum::shareOf).sum()).isCloseTo(1, offset(1e-12));
        MonteCarlo drawn =
                MonteCarlo.of(inputs, x -> x[0] + x[1] - x[0] * (x[4] * x[3] + x[2] * x[5]), DRAWS, SEED, 0.99);
        assertThat(drawn.standardDeviation().orElseThrow()).isCloseTo(first.number("secondOrder"), withPercentage(1));
        assertThat(drawn.mean().orElseThrow()).isCloseTo(50_000_838, offset(0.5));
    }
}
