package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** The likelihood that is passed on from group to group is that of the whole matrix V, however the groups are filled. */
class NestedLikelihoodTest {
    private static final double[] VARIANCES = {0.4, 0.03, 0.2, 1.5};

    /** Returns the paths of as many values a meter, operator and day as the numbers say. */
    private static List<List<String>> paths(int[][][] sizes) {
        List<List<String>> paths = new ArrayList<>();
        for (int day = 0; day < sizes.length; day++) {
            for (int operator = 0; operator < sizes[day].length; operator++) {
                for (int meter = 0; meter < sizes[day][operator].length; meter++) {
                    for (int value = 0; value < sizes[day][operator][meter]; value++) {
                        paths.add(List.of("day " + day, "operator " + operator, "meter " + meter));
                    }
                }
            }
        }
        return paths;
    }

    @Test
    void alikeGroupsAreThatOfTheWholeMatrix() {
        isThatOfTheMatrix(paths(new int[][][] {{{2, 2}, {2, 2}}, {{2, 2}, {2, 2}}, {{2, 2}, {2, 2}}}));
    }

    @Test
    void mixedGroupsAreThatOfTheWholeMatrix() {
        isThatOfTheMatrix(paths(new int[][][] {{{2, 3}, {1}}, {{2, 2}, {2, 2}, {4}}, {{1}}, {{3, 2}, {1}}}));
    }

    @Test
    void mixedGroupsInOneLayerAndAlikeOnesInTheNextAreThatOfTheWholeMatrix() {
        isThatOfTheMatrix(paths(new int[][][] {{{2, 3}, {3, 2}}, {{2, 3}, {2, 3}}}));
    }

    /** The same name in another place of the file is the same group. */
    @Test
    void groupsNeedNotStandTogether() {
        List<List<String>> paths = paths(new int[][][] {{{2, 3}, {1}}, {{2, 2}, {2, 2}}, {{3}}});
        List<List<String>> dealt = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            dealt.add(paths.get(i * 5 % paths.size()));
        }
        isThatOfTheMatrix(dealt);
    }

    /** Ten thousand groups of which none is like any other but by its size hold few forms. */
    @Test
    void whatIsAlikeIsHeldOnce() {
        List<List<String>> paths = new ArrayList<>();
        for (int i = 0; i < 60_000; i++) {
            paths.add(List.of("day " + i / 6, "operator " + i / 3));
        }
        List<AlikeGroups> layers = AlikeGroups.of(NestedValues.of(paths, new double[paths.size()]));
        assertThat(layers).extracting(layer -> layer.forms().size()).containsExactly(1, 1, 1);
        assertThat(layers.get(1).forms().get(0).count()).isEqualTo(10_000);
        assertThat(layers.get(2).forms().get(0).parts()).isEqualTo(3);
    }

    private static void isThatOfTheMatrix(List<List<String>> paths) {
        SplittableRandom random = new SplittableRandom(11);
        double[] values =
                paths.stream().mapToDouble(path -> 5 + random.nextDouble()).toArray();
        int n = values.length;
        RealMatrix v = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double shared = i == j ? VARIANCES[3] : 0;
                for (int layer = 0; layer < 3; layer++) {
                    boolean isSame = paths.get(i)
                            .subList(0, layer + 1)
                            .equals(paths.get(j).subList(0, layer + 1));
                    shared += isSame ? VARIANCES[layer] : 0;
                }
                v.setEntry(i, j, shared);
            }
        }
        LUDecomposition parts = new LUDecomposition(v);
        RealMatrix inverse = parts.getSolver().getInverse();
        double[] sums = new double[n];
        double precision = 0;
        double weighted = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                sums[i] += inverse.getEntry(i, j);
            }
            precision += sums[i];
            weighted += sums[i] * (values[i] - values[0]);
        }
        double mean = weighted / precision;
        double residue = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                residue += (values[i] - values[0] - mean) * inverse.getEntry(i, j) * (values[j] - values[0] - mean);
            }
        }
        RestrictedLikelihood.At at = new NestedLikelihood(NestedValues.of(paths, values)).at(VARIANCES);
        assertThat(at.minusTwiceLog().value())
                .isCloseTo(Math.log(parts.getDeterminant()) + Math.log(precision) + residue, within(1e-9));
        assertThat(at.mean()).isCloseTo(mean, within(1e-12));
        assertThat(at.varianceOfMean()).isCloseTo(1 / precision, within(1e-12));
    }
}
