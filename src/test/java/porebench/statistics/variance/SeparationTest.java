package porebench.statistics.variance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import porebench.statistics.Judged;

class SeparationTest {
    private static RegressorColumns columns(double[]... amounts) {
        RegressorColumns.Builder built = new RegressorColumns.Builder(amounts[0].length);
        for (double[] row : amounts) {
            int[] places = java.util.stream.IntStream.range(0, row.length)
                    .filter(k -> row[k] != 0)
                    .toArray();
            built.outer()
                    .group(
                            new double[] {1, 1.1, row[0]},
                            places,
                            java.util.stream.IntStream.of(places)
                                    .mapToDouble(k -> row[k])
                                    .toArray());
        }
        return built.build();
    }

    @Test
    void whatIsAlwaysTogetherIsToldTogetherOnly() {
        Separation separation = Separation.of(columns(
                new double[] {2, 3, 0}, new double[] {4, 6, 1}, new double[] {6, 9, 0}, new double[] {2, 3, 5}));
        assertThat(separation.rank()).isEqualTo(2);
        assertThat(separation.degreesOfFreedom()).isEqualTo(2);
        assertThat(separation.isApart(2)).isTrue();
        assertThat(separation.isApart(0)).isFalse();
        assertThat(separation.with(0)).containsExactly(1);
        assertThat(separation.with(1)).containsExactly(0);
        assertThat(separation.with(2)).isEmpty();
        assertThat(separation.tells(4, 6, 0)).isTrue();
        assertThat(separation.tells(4, 6, 9)).isTrue();
        assertThat(separation.tells(4, 5, 0)).isFalse();
        assertThat(separation.tells(1, 0, 0)).isFalse();
    }

    /** Three that add up to a fourth: each of them is together with the others. */
    @Test
    void whatAddsUpIsTogether() {
        Separation separation = Separation.of(columns(
                new double[] {1, 2, 3}, new double[] {2, 1, 3}, new double[] {3, 1, 4}, new double[] {1, 1, 2}));
        assertThat(separation.rank()).isEqualTo(2);
        assertThat(separation.with(0)).containsExactly(1, 2);
        assertThat(separation.tells(5, 1, 6)).isTrue();
        assertThat(separation.tells(5, 1, 5)).isFalse();
    }

    /** Either side of a hundredth of the length: 0.005 of it varies by itself, or 0.02. */
    @Test
    void lessThanAHundredthByItselfIsNothing() {
        Separation less = Separation.of(columns(
                new double[] {1, 1.005}, new double[] {1, 0.995}, new double[] {1, 1.005}, new double[] {1, 0.995}));
        assertThat(less.rank()).isEqualTo(1);
        Separation more = Separation.of(columns(
                new double[] {1, 1.02}, new double[] {1, 0.98}, new double[] {1, 1.02}, new double[] {1, 0.98}));
        assertThat(more.rank()).isEqualTo(2);
    }

    @Test
    void aRegressorWithoutAnyAmountIsNotApart() {
        Separation separation = Separation.of(columns(new double[] {1, 0}, new double[] {2, 0}));
        assertThat(separation.rank()).isEqualTo(1);
        assertThat(separation.isApart(1)).isFalse();
        assertThat(separation.tells(1, 0)).isTrue();
        assertThat(separation.tells(1, 1)).isFalse();
    }

    @Test
    void asManyOuterGroupsAsRegressorsAreWithheld() {
        RegressorColumns columns = columns(new double[] {1, 2}, new double[] {2, 1});
        assertThat(PooledRegression.of(columns, Separation.of(columns), 0).whyWithheld())
                .contains(Judged.Reason.TOO_FEW);
    }

    @Test
    void withoutScatterNothingIsSaidUnlessAScaleSaysHowFarValuesMayBeOff() {
        RegressorColumns.Builder built = new RegressorColumns.Builder(1);
        for (int outer = 1; outer <= 3; outer++) {
            built.outer().group(new double[] {2.0 * outer, 2.0 * outer}, new int[] {0}, new double[] {outer});
        }
        RegressorColumns columns = built.build();
        assertThat(PooledRegression.of(columns, Separation.of(columns), 0).whyWithheld())
                .contains(Judged.Reason.NO_SPREAD);
        assertThat(PooledRegression.of(columns, Separation.of(columns), 0.01)
                        .meaningful()
                        .map(PooledRegression::variances))
                .contains(new PooledVariances(0, 0, 0.01));
    }

    @Test
    void columnsAreChecked() {
        RegressorColumns.Builder built = new RegressorColumns.Builder(2);
        assertThatThrownBy(() -> built.group(new double[] {1}, new int[] {0}, new double[] {1}))
                .hasMessageContaining("outerGroups");
        built.outer();
        assertThatThrownBy(() -> built.group(new double[] {1}, new int[] {0}, new double[] {1, 2}))
                .hasMessageContaining("amounts must be one a regressor, but are 2 for 1");
        assertThatThrownBy(() -> built.group(new double[] {1}, new int[] {2}, new double[] {1}))
                .hasMessageContaining("regressor");
        assertThatThrownBy(() -> built.group(new double[0], new int[] {0}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
