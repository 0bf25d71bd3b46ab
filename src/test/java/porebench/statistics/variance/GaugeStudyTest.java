package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;

class GaugeStudyTest {
    private static final double[][][] SMALL = {{{1, 2}, {5, 6}}, {{2, 3}, {7, 6}}};

    /**
     * By hand, in halves: cells 1.5 5.5 / 2.5 6.5, mean 4; operators 3.5 4.5, samples 2 6; SS operators 4 (0.25 + 0.25) = 2,
     * samples 4 (4 + 4) = 32, interaction 0, repeats 4 x 0.5 = 2; MS repeats 0.5; with interaction vO = (2 - 0) / 4, vS = 32 /
     * 4, vI = (0 - 0.5) / 2 = -0.25; pooled MS 2 / 5 = 0.4, vO = 1.6 / 4, vS = 31.6 / 4.
     */
    @Test
    void agreesWithAPencil() {
        GaugeStudy whole = GaugeStudy.of(SMALL, true, 0.95, 1);
        assertThat(whole.operatorSquares()).isEqualTo(new MeanSquare(1, 2));
        assertThat(whole.sampleSquares()).isEqualTo(new MeanSquare(1, 32));
        assertThat(whole.interactionSquares()).contains(new MeanSquare(1, 0));
        assertThat(whole.repeatabilitySquares()).isEqualTo(new MeanSquare(4, 2));
        assertThat(whole.totalSquares()).isEqualTo(new MeanSquare(7, 36));
        assertThat(whole.interaction().orElseThrow().raw()).isEqualTo(-0.25);
        assertThat(whole.gauge()).isEqualTo(0.5 + 0.5);
        assertThat(whole.total()).isEqualTo(9);
        assertThat(whole.gaugeShareOfVariation().orElseThrow()).isEqualTo(1.0 / 3, within(1e-12));
        assertThat(whole.distinctCategories()).contains(3);
        // A mean square of 0 is nothing to hold another one against.
        assertThat(whole.operatorTest().whyWithheld()).contains(Judged.Reason.NO_SPREAD);

        GaugeStudy pooled = GaugeStudy.of(SMALL, false, 0.95, 1);
        assertThat(pooled.interaction()).isEmpty();
        assertThat(pooled.interactionSquares()).isEmpty();
        assertThat(pooled.repeatability().raw()).isEqualTo(0.4, within(1e-12));
        assertThat(pooled.operator().raw()).isEqualTo(0.4, within(1e-12));
        assertThat(pooled.sample().raw()).isEqualTo(7.9, within(1e-12));
        assertThat(pooled.operatorTest().meaningful().orElseThrow().statistic()).isEqualTo(5, within(1e-12));
    }

    @Test
    void withholdsWhatEqualReadingsDoNotTell() {
        double[][][] still = {{{0.4, 0.4}, {0.4, 0.4}}, {{0.4, 0.4}, {0.4, 0.4}}};
        GaugeStudy study = GaugeStudy.of(still, true, 0.95, 1);
        assertThat(study.total()).isZero();
        assertThat(study.share(study.gauge())).isEmpty();
        assertThat(study.gaugeShareInterval()).isEmpty();
        assertThat(study.gaugeShareOfVariation()).isEmpty();
        assertThat(study.distinctCategories()).isEmpty();
        assertThat(study.sampleTest().whyWithheld()).contains(Judged.Reason.NO_SPREAD);
        assertThat(study.suggestsInteraction(GaugeStudy.POOLING_LEVEL)).isFalse();
    }

    /** Samples alike, repeats not: the gauge makes up all of the spread and tells no kinds apart. */
    @Test
    void tellsNoKindsApartWhereSamplesAreAlike() {
        double[][][] alike = {{{1, 2}, {1, 2}}, {{2, 1}, {2, 1}}};
        GaugeStudy study = GaugeStudy.of(alike, false, 0.95, 1);
        assertThat(study.sample().isAtZero()).isTrue();
        assertThat(study.gaugeShareOfVariation()).hasValue(1);
        assertThat(study.distinctCategories()).contains(0);
        assertThat(study.sample().interval().low()).isZero();
    }

    /** Repeats that never differ while samples do: nothing limits the gauge but its division, and no number says so. */
    @Test
    void countsNoKindsWhereReadingShowsNoSpread() {
        double[][][] exact = {{{1, 1}, {2, 2}}, {{1, 1}, {2, 2}}};
        GaugeStudy study = GaugeStudy.of(exact, true, 0.95, 1);
        assertThat(study.gauge()).isZero();
        assertThat(study.distinctCategories()).isEmpty();
        assertThat(study.gaugeShareOfVariation()).hasValue(0);
    }

    @Test
    void doesNotDependOnAnOffset() {
        double[][][] far = {{{1e9 + 1, 1e9 + 2}, {1e9 + 5, 1e9 + 6}}, {{1e9 + 2, 1e9 + 3}, {1e9 + 7, 1e9 + 6}}};
        assertThat(GaugeStudy.of(far, true, 0.95, 1).totalSquares().sumOfSquares())
                .isEqualTo(36, within(1e-9));
    }

    @Test
    void refusesWhatIsNoCrossedStudy() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}, {1, 2}}}, true, 0.95, 1))
                .withMessage("count of operators must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}}, {{1, 2}}}, true, 0.95, 1))
                .withMessage("count of samples must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1}, {2}}, {{1}, {2}}}, true, 0.95, 1))
                .withMessage("count of repeats must be at least 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}, {1}}, {{1, 2}, {1, 2}}}, true, 0.95, 1))
                .withMessage("count of repeats of operator 0 with sample 1 must be 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GaugeStudy.of(new double[][][] {{{1, 2}, {1, 2}}, {{1, 2}}}, true, 0.95, 1))
                .withMessage("count of samples of operator 1 must be 2, but is 1");
    }

    /**
     * Five operators, eight samples, three repeats, 500 studies from a fixed seed with known variances: 95 % intervals hold the
     * truth in 92.5 to 98.5 % of them. The standard error of such a rate is 1 %.
     */
    @Test
    void coversTheTruthAsOftenAsItSays() {
        Random random = new Random(5725);
        int studies = 500;
        double[] truth = {0.04, 0.03, 0.02, 0.25};
        int[] held = new int[6];
        for (int i = 0; i < studies; i++) {
            GaugeStudy study = GaugeStudy.of(simulated(random, 5, 8, 3, truth), true, 0.95, i);
            VarianceInterval[] found = {
                study.repeatability().interval(),
                study.operator().interval(),
                study.interaction().orElseThrow().interval(),
                study.sample().interval(),
                study.gaugeInterval(),
                study.gaugeShareInterval().orElseThrow()
            };
            double[] true6 = {truth[0], truth[1], truth[2], truth[3], 0.09, 0.09 / 0.34};
            for (int k = 0; k < found.length; k++) {
                held[k] += found[k].low() <= true6[k] && true6[k] <= found[k].high() ? 1 : 0;
            }
        }
        for (int count : held) {
            assertThat(count / (double) studies).isBetween(0.925, 0.985);
        }
    }

    private static double[][][] simulated(Random random, int operators, int samples, int repeats, double[] variances) {
        double[] ofSample = random.doubles(samples, 0, 1)
                .map(u -> random.nextGaussian() * Math.sqrt(variances[3]))
                .toArray();
        double[][][] readings = new double[operators][samples][repeats];
        for (double[][] operator : readings) {
            double own = random.nextGaussian() * Math.sqrt(variances[1]);
            for (int s = 0; s < samples; s++) {
                double together = random.nextGaussian() * Math.sqrt(variances[2]);
                for (int r = 0; r < repeats; r++) {
                    operator[s][r] = own + ofSample[s] + together + random.nextGaussian() * Math.sqrt(variances[0]);
                }
            }
        }
        return readings;
    }
}
