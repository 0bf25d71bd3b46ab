package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;

class CrossedVariancesTest {
    /** Operators, meters, determinations as they come in a lab book, and factors read to 0.01. */
    private static final List<List<String>> NAMES = new ArrayList<>();

    private static final double[] FACTORS = new double[48];

    static {
        Random random = new Random(20261127);
        double[] operators = {0.05, -0.02, -0.06};
        double[] meters = {-0.04, 0.05};
        for (int i = 0; i < FACTORS.length; i++) {
            int operator = random.nextInt(3);
            int meter = random.nextInt(2);
            NAMES.add(List.of("operator " + operator, "meter " + meter, "determination " + i / 4));
            double factor =
                    0.4 + operators[operator] + meters[meter] + 0.02 * (i / 4 % 5) + 0.03 * random.nextGaussian();
            FACTORS[i] = Math.round(100 * factor) / 100.0;
        }
    }

    private static CrossedVariances found(List<List<String>> names, double... values) {
        return CrossedVariances.of(names, 0.95, values).meaningful().orElseThrow();
    }

    private static List<Double> variances(CrossedVariances found) {
        List<Double> variances = new ArrayList<>(
                found.layers().stream().map(CrossedVariances.Layer::variance).toList());
        variances.add(found.values().variance());
        return variances;
    }

    private static void same(List<Double> one, List<Double> other) {
        assertThat(one).hasSameSizeAs(other);
        IntStream.range(0, one.size())
                .forEach(i -> assertThat(one.get(i)).isCloseTo(other.get(i), withPercentage(1e-4)));
    }

    @Test
    void oneLayerIsTheSameAsOneLayerOfGroupsWithinGroups() {
        List<List<String>> paths =
                NAMES.stream().map(all -> List.of(all.get(2))).toList();
        CrossedVariances crossed = found(paths, FACTORS);
        VarianceLayers nested =
                VarianceLayers.of(paths, 0.95, FACTORS).meaningful().orElseThrow();
        same(
                variances(crossed),
                List.of(
                        nested.layers().get(0).variance().orElseThrow(),
                        nested.values().variance().orElseThrow()));
        assertThat(crossed.layers().get(0).interval().high())
                .isCloseTo(nested.layers().get(0).interval().orElseThrow().high(), withPercentage(1e-4));
        assertThat(crossed.mean()).isCloseTo(nested.mean(), within(1e-9));
        assertThat(crossed.meanVariance()).isCloseTo(nested.meanVariance(), withPercentage(1e-4));
        assertThat(crossed.layers().get(0).groups()).isEqualTo(12);
        assertThat(crossed.values().groups()).isEqualTo(48);
        assertThat(crossed.count()).isEqualTo(48);
    }

    @Test
    void groupsWithinGroupsOfNamesOfTheirOwnAreTheSameBothWays() {
        List<List<String>> paths = IntStream.range(0, FACTORS.length)
                .mapToObj(i -> List.of("mix " + i / 12, "determination " + i / 4, "day " + i / 2))
                .toList();
        VarianceLayers nested =
                VarianceLayers.of(paths, 0.95, FACTORS).meaningful().orElseThrow();
        List<Double> expected = new ArrayList<>(nested.layers().stream()
                .map(layer -> layer.variance().orElseThrow())
                .toList());
        expected.add(nested.values().variance().orElseThrow());
        same(variances(found(paths, FACTORS)), expected);
    }

    @Test
    void theOrderOfLayersAndOfValuesChangesNothing() {
        List<Double> before = variances(found(NAMES, FACTORS));
        List<Integer> places =
                new ArrayList<>(IntStream.range(0, FACTORS.length).boxed().toList());
        Collections.shuffle(places, new Random(3));
        List<List<String>> turned = places.stream()
                .map(i -> List.of(
                        NAMES.get(i).get(2), NAMES.get(i).get(0), NAMES.get(i).get(1)))
                .toList();
        List<Double> after = variances(
                found(turned, places.stream().mapToDouble(i -> FACTORS[i]).toArray()));
        same(List.of(after.get(1), after.get(2), after.get(0), after.get(3)), before);
    }

    @Test
    void aConstantChangesNothingAndAScaleGoesInWithItsSquare() {
        CrossedVariances before = found(NAMES, FACTORS);
        CrossedVariances after = found(
                NAMES, Arrays.stream(FACTORS).map(value -> 1000 + 10 * value).toArray());
        same(
                variances(after),
                variances(before).stream().map(variance -> 100 * variance).toList());
        assertThat(after.mean()).isCloseTo(1000 + 10 * before.mean(), within(1e-6));
        assertThat(after.layers().get(0).interval().high())
                .isCloseTo(100 * before.layers().get(0).interval().high(), withPercentage(1e-4));
        assertThat(after.total()).isCloseTo(100 * before.total(), withPercentage(1e-4));
    }

    @Test
    void theSlopesAndCurvesOfTheLikelihoodAreThoseOfItsDifferences() {
        CrossedLikelihood likelihood = new CrossedLikelihood(CrossedGroups.of(NAMES, FACTORS));
        double[] at = {0.002, 0.003, 0.001, 0.0015};
        Jet here = likelihood.at(at).minusTwiceLog();
        double step = 1e-7;
        for (int i = 0; i < at.length; i++) {
            double[] above = at.clone();
            double[] below = at.clone();
            above[i] += step;
            below[i] -= step;
            Jet more = likelihood.at(above).minusTwiceLog();
            Jet less = likelihood.at(below).minusTwiceLog();
            assertThat(here.slope(i)).isCloseTo((more.value() - less.value()) / (2 * step), within(1e-2));
            for (int j = 0; j < at.length; j++) {
                assertThat(here.curve(i, j))
                        .isCloseTo(
                                (more.slope(j) - less.slope(j)) / (2 * step),
                                within(1e-4 * Math.abs(here.curve(i, j)) + 1));
            }
        }
    }

    @Test
    void metersOfOneOperatorEachAreNotToldFromTheOperators() {
        List<List<String>> names = IntStream.range(0, 12)
                .mapToObj(i -> List.of("operator " + i % 3, "day " + i / 4, "meter " + i % 3))
                .toList();
        assertThat(CrossedVariances.notToldApart(names)).containsExactly(0, 2);
        assertThatThrownBy(() -> CrossedVariances.of(
                        names, 0.95, IntStream.range(0, 12).mapToDouble(i -> i).toArray()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("[0, 2]");
    }

    @Test
    void oneChangedTrialTellsMetersFromOperators() {
        List<List<String>> names = new ArrayList<>(IntStream.range(0, 12)
                .mapToObj(i -> List.of("operator " + i % 3, "meter " + i % 3))
                .toList());
        assertThat(CrossedVariances.notToldApart(names)).containsExactly(0, 1);
        names.set(0, List.of("operator 0", "meter 1"));
        assertThat(CrossedVariances.notToldApart(names)).isEmpty();
    }

    @Test
    void aLayerOfOneGroupIsNotToldFromTheMean() {
        List<List<String>> names = IntStream.range(0, 12)
                .mapToObj(i -> List.of("operator " + i % 3, "the meter"))
                .toList();
        assertThat(CrossedVariances.notToldApart(names)).containsExactly(1);
    }

    @Test
    void aLayerWithAGroupForEachValueIsNotToldFromWhatIsLeft() {
        List<List<String>> names = IntStream.range(0, 12)
                .mapToObj(i -> List.of("operator " + i % 3, "trial " + i))
                .toList();
        assertThat(CrossedVariances.notToldApart(names)).containsExactly(1, 2);
    }

    @Test
    void twoHalvesThatOnlyTogetherMakeUpAThirdAreAllNamed() {
        // Each of four cells once: what is left is what only the pairing of both layers could explain, and it can be
        // told.
        List<List<String>> cells = List.of(List.of("a", "x"), List.of("a", "y"), List.of("b", "x"), List.of("b", "y"));
        assertThat(CrossedVariances.notToldApart(cells)).isEmpty();
        // With the pairs as a layer of their own each value is a group of it.
        List<List<String>> withPairs = cells.stream()
                .map(cell -> List.of(cell.get(0), cell.get(1), cell.get(0) + cell.get(1)))
                .toList();
        assertThat(CrossedVariances.notToldApart(withPairs)).containsExactly(2, 3);
    }

    @Test
    void equalValuesHaveNothingToDivideUp() {
        double[] equal = new double[FACTORS.length];
        Arrays.fill(equal, 0.4);
        assertThat(CrossedVariances.of(NAMES, 0.95, equal).whyWithheld()).contains(Judged.Reason.NO_SPREAD);
    }

    @Test
    void whereTheLayersExplainEveryDigitNothingIsSaid() {
        double[] explained = NAMES.stream()
                .mapToDouble(all -> all.get(0).endsWith("1") ? 0.5 : 0.4)
                .toArray();
        assertThat(CrossedVariances.of(NAMES, 0.95, explained).whyWithheld()).contains(Judged.Reason.SCALE_TOO_COARSE);
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatThrownBy(() -> CrossedVariances.of(List.of(), 0.95)).hasMessageContaining("count of values");
        assertThatThrownBy(() -> CrossedVariances.of(List.of(List.of("a")), 0.95, 1, 2))
                .hasMessage("count of names must be 2, but is 1");
        assertThatThrownBy(() -> CrossedVariances.of(List.of(List.of("a"), List.of("a", "b")), 0.95, 1, 2))
                .hasMessage("names must be 1, but are [a, b]");
        assertThatThrownBy(() -> CrossedVariances.of(List.of(List.of("a"), List.of("b")), 0.95, 1, Double.NaN))
                .hasMessageContaining("values[1]");
        assertThatThrownBy(() -> CrossedVariances.of(NAMES, 1, FACTORS)).hasMessageContaining("confidence");
    }
}
