package porebench.statistics.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.summary.Summary;
import porebench.statistics.uncertainty.UncertaintySum.Contribution;

/** Against the two examples of JCGM 100:2008 (GUM) whose inputs err together, H.2 and H.3; recalled. */
class CorrelationReferenceTest {
    private static final long SEED = 20_261_127;

    private static Summary column(String name) {
        return Summary.of(ReferenceFile.read("gum-resistance-readings.csv").rows().stream()
                .mapToDouble(row -> row.number(name))
                .toArray());
    }

    /** The coefficient of two means is that of the readings. */
    private static double coefficient(String one, String other) {
        double products = 0;
        for (ReferenceFile.Row row :
                ReferenceFile.read("gum-resistance-readings.csv").rows()) {
            products += (row.number(one) - column(one).mean())
                    * (row.number(other) - column(other).mean());
        }
        return products
                / 4
                / column(one).standardDeviation().orElseThrow()
                / column(other).standardDeviation().orElseThrow();
    }

    private static double of(String quantity, double[] in) {
        double impedance = in[0] / in[1];
        return switch (quantity) {
            case "R" -> impedance * Math.cos(in[2]);
            case "X" -> impedance * Math.sin(in[2]);
            default -> impedance;
        };
    }

    private static double slope(String quantity, double[] in, int place) {
        double step = 1e-6 * in[place];
        double[] low = in.clone();
        double[] high = in.clone();
        low[place] -= step;
        high[place] += step;
        return (of(quantity, high) - of(quantity, low)) / (2 * step);
    }

    /** Printed coefficients: -0.36, 0.86, -0.65. Five sets: four degrees of freedom, whatever is computed of them. */
    @Test
    void combinesVoltageCurrentAndPhase() {
        List<String> names = List.of("volt", "ampere", "radian");
        List<Correlation> correlations = List.of(
                new Correlation(0, 1, coefficient("volt", "ampere")),
                new Correlation(0, 2, coefficient("volt", "radian")),
                new Correlation(2, 1, coefficient("ampere", "radian")));
        assertThat(correlations.get(0).coefficient()).isCloseTo(-0.36, offset(0.005));
        assertThat(correlations.get(1).coefficient()).isCloseTo(0.86, offset(0.005));
        assertThat(correlations.get(2).coefficient()).isCloseTo(-0.65, offset(0.005));
        double[] means = names.stream().mapToDouble(name -> column(name).mean()).toArray();
        double[] errors = names.stream()
                .mapToDouble(name -> column(name).standardError().orElseThrow())
                .toArray();
        for (ReferenceFile.Row row :
                ReferenceFile.read("gum-resistance-printed.csv").rows()) {
            String quantity = row.text("quantity");
            List<Contribution> parts = List.of(
                    new Contribution("V", errors[0], slope(quantity, means, 0), 4),
                    new Contribution("I", errors[1], slope(quantity, means, 1), 4),
                    new Contribution("phi", errors[2], slope(quantity, means, 2), 4));
            UncertaintySum sum = UncertaintySum.of(parts, correlations);
            assertThat(of(quantity, means)).isCloseTo(row.number("value"), offset(0.001));
            assertThat(sum.combined()).as(quantity).isCloseTo(row.number("uncertainty"), offset(0.001));
            assertThat(sum.apart()).as(quantity).isCloseTo(row.number("apart"), offset(0.001));
            assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(4, offset(1e-9));
            ToDoubleFunction<double[]> model = in -> of(quantity, in);
            MonteCarlo normal = MonteCarlo.of(
                    List.of(
                            Uncertain.normal(means[0], errors[0]),
                            Uncertain.normal(means[1], errors[1]),
                            Uncertain.normal(means[2], errors[2])),
                    correlations,
                    model,
                    200_000,
                    SEED,
                    0.95);
            assertThat(normal.standardDeviation().orElseThrow())
                    .as(quantity)
                    .isCloseTo(sum.combined(), offset(0.01 * sum.combined()));
            // Of the means of five sets: t with four degrees of freedom.
            MonteCarlo student = MonteCarlo.of(
                    List.of(
                            Uncertain.student(means[0], errors[0], 4),
                            Uncertain.student(means[1], errors[1], 4),
                            Uncertain.student(means[2], errors[2], 4)),
                    correlations,
                    model,
                    200_000,
                    SEED,
                    0.95);
            assertThat(student.symmetric().half())
                    .as(quantity)
                    .isCloseTo(sum.expanded(0.95), offset(0.02 * sum.expanded(0.95)));
        }
    }

    /** Intercept and slope of one line err together: -0.930; printed b(30 C) -0.1494 +- 0.0041, 9 degrees of freedom. */
    @Test
    void predictsTheCorrectionOfAThermometer() {
        List<ReferenceFile.Row> rows =
                ReferenceFile.read("gum-thermometer-readings.csv").rows();
        double[] x = rows.stream().mapToDouble(row -> row.number("t") - 20).toArray();
        double[] b = rows.stream().mapToDouble(row -> row.number("b")).toArray();
        double n = x.length;
        Summary across = Summary.of(x);
        double squares = (n - 1) * Math.pow(across.standardDeviation().orElseThrow(), 2);
        double slope = 0;
        for (int i = 0; i < n; i++) {
            slope += (x[i] - across.mean()) * b[i] / squares;
        }
        double start = Summary.of(b).mean() - slope * across.mean();
        double left = 0;
        for (int i = 0; i < n; i++) {
            left += Math.pow(b[i] - start - slope * x[i], 2);
        }
        double s = Math.sqrt(left / (n - 2));
        double ofStart = s * Math.sqrt(1 / n + across.mean() * across.mean() / squares);
        double ofSlope = s / Math.sqrt(squares);
        double together = -across.mean() / Math.sqrt(squares / n + across.mean() * across.mean());
        assertThat(start).isCloseTo(-0.1712, offset(0.00005));
        assertThat(slope).isCloseTo(0.00218, offset(0.000005));
        assertThat(ofStart).isCloseTo(0.0029, offset(0.00005));
        assertThat(ofSlope).isCloseTo(0.00067, offset(0.000005));
        assertThat(together).isCloseTo(-0.930, offset(0.0005));
        List<Correlation> correlations = List.of(new Correlation(0, 1, together));
        UncertaintySum sum = UncertaintySum.of(
                List.of(new Contribution("y1", ofStart, 1, 9), new Contribution("y2", ofSlope, 10, 9)), correlations);
        assertThat(start + 10 * slope).isCloseTo(-0.1494, offset(0.00005));
        assertThat(sum.combined()).isCloseTo(0.0041, offset(0.00005));
        assertThat(sum.effectiveDegreesOfFreedom()).isCloseTo(9, offset(1e-9));
        MonteCarlo drawn = MonteCarlo.of(
                List.of(Uncertain.student(start, ofStart, 9), Uncertain.student(slope, ofSlope, 9)),
                correlations,
                in -> in[0] + 10 * in[1],
                200_000,
                SEED,
                0.95);
        assertThat(drawn.symmetric().half()).isCloseTo(sum.expanded(0.95), offset(0.0001));
    }
}
