package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;
import porebench.statistics.variance.VarianceLayers.Standing;

class VarianceLayersTest {
    private static List<List<String>> paths(String... paths) {
        return Arrays.stream(paths).map(path -> List.of(path.split("/"))).toList();
    }

    private static VarianceLayers layers(List<List<String>> paths, double... values) {
        return VarianceLayers.of(paths, 0.95, values).meaningful().orElseThrow();
    }

    /** By hand: means 1.5 and 5.5, MS between 16 with 1, within 0.5 with 2; variance between (16 - 0.5) / 2 = 7.75. */
    @Test
    void agreesWithAPencil() {
        VarianceLayers found = layers(paths("a", "a", "b", "b"), 1, 2, 5, 6);
        assertThat(found.isBalanced()).isTrue();
        assertThat(found.layers().get(0).squares()).isEqualTo(new MeanSquare(1, 16));
        assertThat(found.layers().get(0).variance().orElseThrow()).isEqualTo(7.75, within(1e-6));
        assertThat(found.layers().get(0).byAnova()).hasValue(7.75);
        assertThat(found.values().variance().orElseThrow()).isEqualTo(0.5, within(1e-7));
        assertThat(found.mean()).isEqualTo(3.5, within(1e-12));
        assertThat(found.meanVariance()).isEqualTo(4, within(1e-6));
        assertThat(found.share(0.5)).isEqualTo(0.5 / 8.25, within(1e-7));
    }

    @Test
    void doesNotDependOnOffsetOrUnit() {
        List<List<String>> paths = paths("a", "a", "b", "b", "b", "c");
        VarianceLayers near = layers(paths, 0.4, 0.5, 0.6, 0.8, 0.7, 0.3);
        VarianceLayers far = layers(paths, 4004, 4005, 4006, 4008, 4007, 4003);
        for (int i = 0; i < 1; i++) {
            assertThat(far.layers().get(i).variance().orElseThrow())
                    .isEqualTo(100 * near.layers().get(i).variance().orElseThrow(), within(1e-6));
        }
        assertThat(far.values().variance().orElseThrow())
                .isEqualTo(100 * near.values().variance().orElseThrow(), within(1e-6));
    }

    /** Wafer 1 of one lot is not wafer 1 of the other. */
    @Test
    void nestsNamesWithinTheGroupAround() {
        VarianceLayers found = layers(paths("a/1", "a/1", "a/2", "b/1", "b/2", "b/2"), 1, 2, 3, 4, 5, 7);
        assertThat(found.layers().get(1).groups()).isEqualTo(4);
        assertThat(found.layers().get(1).squares().degreesOfFreedom()).isEqualTo(2);
        assertThat(found.isBalanced()).isFalse();
    }

    /** One operator a day: what days and operators do comes out as one. */
    @Test
    void estimatesNoLayerThatCannotBeToldApart() {
        VarianceLayers found =
                layers(paths("d1/Ada", "d1/Ada", "d2/Bo", "d2/Bo", "d3/Ada", "d3/Ada"), 1, 2, 5, 6, 2, 2);
        assertThat(found.layers().get(1).standing()).isEqualTo(Standing.NOT_TOLD_APART);
        assertThat(found.layers().get(1).variance()).isEmpty();
        assertThat(found.layers().get(1).interval()).isEmpty();
        assertThat(found.layers().get(0).standing()).isEqualTo(Standing.ESTIMATED);
        VarianceLayers alone = layers(paths("d1", "d1", "d2", "d2", "d3", "d3"), 1, 2, 5, 6, 2, 2);
        assertThat(found.layers().get(0).variance())
                .isEqualTo(alone.layers().get(0).variance());
    }

    @Test
    void estimatesNoOutermostLayerOfOneGroup() {
        VarianceLayers found = layers(paths("m/a", "m/a", "m/b", "m/b"), 1, 2, 5, 6);
        assertThat(found.layers().get(0).standing()).isEqualTo(Standing.NOT_TOLD_APART);
        assertThat(found.layers().get(1).variance().orElseThrow()).isEqualTo(7.75, within(1e-6));
    }

    /** One value a group: the sample variance of 1, 2, 6 is 7, and whose it is cannot be told. */
    @Test
    void putsSingleValuesIntoTheLayerAroundThem() {
        VarianceLayers found = layers(paths("a", "b", "c"), 1, 2, 6);
        assertThat(found.values().standing()).isEqualTo(Standing.NOT_TOLD_APART);
        assertThat(found.values().variance()).isEmpty();
        assertThat(found.layers().get(0).variance().orElseThrow()).isEqualTo(7, within(1e-7));
        assertThat(found.largest()).isEmpty();
        assertThat(layers(paths("a/x", "a/y", "b/x", "b/y"), 1, 1.1, 7, 7.1).largest())
                .isEmpty();
    }

    @Test
    void namesTheLayerThatVariesMost() {
        VarianceLayers between = layers(paths("a", "a", "b", "b"), 1, 2, 5, 6);
        assertThat(between.largest()).contains(between.layers().get(0));
        VarianceLayers within = layers(paths("a", "a", "b", "b"), 1, 3, 1.9, 2.1);
        assertThat(within.largest()).contains(within.values());
        VarianceLayers still = layers(paths("a", "a", "b", "b"), 1, 1, 2, 2);
        assertThat(still.largest()).contains(still.layers().get(0));
    }

    /** Repeats of a 0.1 % dial that are all equal would drive the likelihood out of bounds; means 1, 2, 6 are left. */
    @Test
    void saysThatTheReadingStoodStill() {
        VarianceLayers found = layers(paths("a", "a", "b", "b", "b", "c"), 1, 1, 2, 2, 2, 6);
        assertThat(found.values().standing()).isEqualTo(Standing.STOOD_STILL);
        assertThat(found.values().variance()).isEmpty();
        assertThat(found.layers().get(0).variance().orElseThrow()).isEqualTo(7, within(1e-7));
        assertThat(found.layers().get(0).test().meaningful()).isEmpty();
    }

    @Test
    void estimatesNothingOfEqualOrSingleValues() {
        assertThat(VarianceLayers.of(paths("a", "b"), 0.95, 0.4, 0.4).whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
        assertThat(VarianceLayers.of(paths("a"), 0.95, 0.4).whyWithheld()).contains(Judged.Reason.TOO_FEW);
    }

    @Test
    void keepsAVarianceAtItsBoundAndTheRawOneBesideIt() {
        VarianceLayers found = layers(paths("a", "a", "b", "b"), 1, 3, 1.9, 2.1);
        assertThat(found.layers().get(0).standing()).isEqualTo(Standing.AT_ZERO);
        assertThat(found.layers().get(0).variance()).hasValue(0);
        assertThat(found.layers().get(0).byAnova().orElseThrow()).isEqualTo(-0.505, within(1e-12));
        assertThat(found.layers().get(0).interval().orElseThrow().low()).isZero();
    }

    /** The same data in another order are the same data. */
    @Test
    void doesNotDependOnTheOrderOfRows() {
        List<List<String>> paths = paths("a/1", "a/2", "b/1", "a/1", "b/2", "b/2", "c/1", "c/1");
        double[] values = {1, 3, 4, 1.5, 6, 5, 9, 8.5};
        VarianceLayers one = layers(paths, values);
        List<Integer> back = IntStream.range(0, 8).map(i -> 7 - i).boxed().toList();
        VarianceLayers other = layers(
                back.stream().map(paths::get).toList(),
                back.stream().mapToDouble(i -> values[i]).toArray());
        for (int i = 0; i < 2; i++) {
            assertThat(other.layers().get(i).variance().orElseThrow())
                    .isEqualTo(one.layers().get(i).variance().orElseThrow(), within(1e-6));
        }
    }

    @Test
    void refusesPathsThatDoNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VarianceLayers.of(paths("a"), 0.95, 1, 2))
                .withMessage("count of paths must be 2, but is 1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VarianceLayers.of(paths("a/b", "a"), 0.95, 1, 2))
                .withMessage("path must have 2 names, but is [a]");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VarianceLayers.of(paths("a", "a"), 0.95, 1, Double.NaN))
                .withMessage("values[1] must be a finite number, but is NaN");
    }

    /**
     * 200 unbalanced studies of 12 groups from a fixed seed: profile intervals of 95 % hold the truth in 91 to 99 % of them. The
     * standard error of such a rate is 1.5 %.
     */
    @Test
    void coversTheTruthAboutAsOftenAsItSays() {
        Random random = new Random(1971);
        int studies = 200;
        int heldBetween = 0;
        int heldWithin = 0;
        List<List<String>> paths = IntStream.range(0, 48)
                .mapToObj(i -> List.of("g" + (i < 24 ? i % 6 : i % 12)))
                .toList();
        for (int study = 0; study < studies; study++) {
            double[] groups =
                    random.doubles(12).map(u -> random.nextGaussian() * 0.2).toArray();
            double[] values = paths.stream()
                    .mapToDouble(
                            path -> groups[Integer.parseInt(path.get(0).substring(1))] + random.nextGaussian() * 0.1)
                    .toArray();
            VarianceLayers found = layers(paths, values);
            heldBetween += holds(found.layers().get(0), 0.04);
            heldWithin += holds(found.values(), 0.01);
        }
        assertThat(heldBetween / (double) studies).isBetween(0.91, 0.99);
        assertThat(heldWithin / (double) studies).isBetween(0.91, 0.99);
    }

    private static int holds(VarianceLayers.Layer layer, double truth) {
        VarianceInterval interval = layer.interval().orElseThrow();
        return interval.low() <= truth && truth <= interval.high() ? 1 : 0;
    }

    /** The variances alone are those that come with intervals, in the same order; what is not told apart is empty in both. */
    @Test
    void givesTheVariancesAlone() {
        List<List<String>> paths = List.of(
                List.of("a", "a1"), List.of("a", "a1"), List.of("b", "b1"), List.of("b", "b1"), List.of("c", "c1"));
        double[] values = {1.0, 1.2, 2.0, 2.3, 1.6};
        VarianceLayers whole =
                VarianceLayers.of(paths, 0.95, values).meaningful().orElseThrow();
        List<OptionalDouble> alone =
                VarianceLayers.variances(paths, values).meaningful().orElseThrow();
        assertThat(alone)
                .containsExactly(
                        whole.layers().get(0).variance(),
                        whole.layers().get(1).variance(),
                        whole.values().variance());
        assertThat(alone.get(1)).isEmpty();
        assertThat(VarianceLayers.variances(paths.subList(0, 1), 1).whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
        assertThat(VarianceLayers.variances(paths.subList(0, 2), 1, 1).whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
    }
}
