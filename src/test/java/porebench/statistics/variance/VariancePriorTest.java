package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.ReferenceFile;
import porebench.statistics.summary.PooledDeviation;

/** Against squeezeVar of R's package limma, and by pencil. */
class VariancePriorTest {
    /** Smaller than every variance of the sets, so that it changes none. */
    private static final double NO_FLOOR = 1e-12;

    @Test
    void agreesWithTheReferenceLibrary() {
        for (ReferenceFile.Row row : ReferenceFile.read("shrunk-variances.csv").rows()) {
            double[] variances = row.numbers("variances");
            double[] degrees = row.numbers("degrees");
            double[] shrunk = row.numbers("shrunk");
            VariancePrior prior =
                    VariancePrior.of(sets(variances, degrees), NO_FLOOR).orElseThrow();
            assertThat(prior.variance())
                    .as(row.text("set"))
                    .isCloseTo(row.number("priorVariance"), withPercentage(1e-7));
            assertThat(prior.sets()).isEqualTo(variances.length);
            if (row.text("priorDegrees").equals("Infinity")) {
                assertThat(prior.degreesOfFreedom()).isInfinite();
            } else {
                assertThat(prior.degreesOfFreedom()).isCloseTo(row.number("priorDegrees"), withPercentage(1e-7));
            }
            for (int i = 0; i < variances.length; i++) {
                assertThat(prior.shrink(variances[i], (int) degrees[i]).variance())
                        .isCloseTo(shrunk[i], withPercentage(1e-7));
            }
        }
    }

    private static List<PooledDeviation> sets(double[] variances, double[] degrees) {
        List<PooledDeviation> sets = new ArrayList<>();
        for (int i = 0; i < variances.length; i++) {
            sets.add(new PooledDeviation(1, (int) degrees[i], Math.sqrt(variances[i])));
        }
        return sets;
    }

    private static VariancePrior prior(double floor, double... variances) {
        double[] degrees = new double[variances.length];
        Arrays.fill(degrees, 3);
        return VariancePrior.of(sets(variances, degrees), floor).orElseThrow();
    }

    /** Four equal variances differ by less than chance: the mean of them, and what the sets really have of freedom. */
    @Test
    void aScatterSharedByAllIsKnownNoBetterThanAllSetsKnowIt() {
        VariancePrior prior = prior(NO_FLOOR, 0.0025, 0.0025, 0.0025, 0.0025);
        VariancePrior.Shrunk shrunk = prior.shrink(0.01, 2);
        assertThat(shrunk.variance()).isCloseTo(0.0025, offset(1e-12));
        assertThat(Math.sqrt(shrunk.variance())).isCloseTo(0.05, offset(1e-12));
        assertThat(shrunk.degreesOfFreedom()).isEqualTo(14);
    }

    /** (d0 s0^2 + d s^2) / (d0 + d) with d0 = 4, s0^2 = 0.002, d = 2 and s^2 = 0.008: (0.008 + 0.016) / 6 = 0.004. */
    @Test
    void drawsByDegreesOfFreedom() {
        VariancePrior.Shrunk shrunk = new VariancePrior(5, 15, 0.002, 4).shrink(0.008, 2);
        assertThat(shrunk.variance()).isCloseTo(0.004, offset(1e-15));
        assertThat(shrunk.degreesOfFreedom()).isEqualTo(6);
        assertThat(new VariancePrior(2, 3, 0.002, 4).shrink(0.008, 2).degreesOfFreedom())
                .isEqualTo(5);
        assertThat(new VariancePrior(5, 15, 0.002, 4).shrink(0.5, 0).variance()).isCloseTo(0.002, offset(1e-15));
    }

    /** Equal readings count with the floor, 0.1^2 / 12, and so do not make the sets look unlike. */
    @Test
    void equalReadingsCountWithTheFloor() {
        double floor = 0.01 / 12;
        assertThat(prior(floor, 0, 0, 0, 0).variance()).isCloseTo(floor, offset(1e-15));
        assertThat(prior(floor, 0, 0, 0.0025, 0.0033, 0).degreesOfFreedom()).isInfinite();
        assertThat(prior(NO_FLOOR, 0, 0, 0.0025, 0.0033, 0).degreesOfFreedom()).isLessThan(1);
    }

    /** Variances that differ a thousandfold leave hardly any trust in the others, those that hardly differ nearly all. */
    @Test
    void bearsTheExtremes() {
        assertThat(prior(NO_FLOOR, 1e-200, 1, 1e-100, 1e200).degreesOfFreedom()).isBetween(1e-6, 0.1);
        assertThat(prior(NO_FLOOR, 1, 1.0001, 11.6, 1).degreesOfFreedom()).isGreaterThan(1);
    }

    @Test
    void needsTwoSetsAndAFloor() {
        assertThat(VariancePrior.of(sets(new double[] {0.01}, new double[] {3}), NO_FLOOR))
                .isEmpty();
        assertThat(VariancePrior.of(List.of(), NO_FLOOR)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> VariancePrior.of(List.of(), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new VariancePrior(5, 15, 0.002, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new VariancePrior(5, 15, 0.002, 4).shrink(-0.1, 2));
    }
}
