package porebench.statistics.regression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LeastSquaresTest {
    @Test
    void columnsMustBeAsLongAsTheValuesAndNoMoreThanThey() {
        assertThatThrownBy(() -> LeastSquares.of(new double[] {1, 2}, new double[] {1, 2, 3}))
                .hasMessageContaining("column must have 2 numbers, but is of 3");
        assertThatThrownBy(() -> LeastSquares.of(new double[] {1}, new double[] {1}, new double[] {2}))
                .hasMessageContaining("values");
    }

    @Test
    void aMatrixThatIsNotPositiveIsRefused() {
        assertThatThrownBy(() -> PositiveMatrix.of(new double[][] {{1, 2}, {2, 4}}))
                .isInstanceOf(ArithmeticException.class)
                .hasMessageContaining("row 1");
        assertThatThrownBy(() -> PositiveMatrix.of(new double[][] {{0}})).isInstanceOf(ArithmeticException.class);
    }

    /** By pencil: the determinant of ((4, 2), (2, 3)) is 8, its inverse ((3, -2), (-2, 4)) / 8. */
    @Test
    void aMatrixOfTwoIsInvertedAsByPencil() {
        PositiveMatrix matrix = PositiveMatrix.of(new double[][] {{4, 2}, {2, 3}});
        assertThat(matrix.logDeterminant()).isCloseTo(Math.log(8), within(1e-12));
        double[][] inverse = matrix.inverse();
        assertThat(inverse[0]).usingComparatorWithPrecision(1e-12).containsExactly(0.375, -0.25);
        assertThat(inverse[1]).usingComparatorWithPrecision(1e-12).containsExactly(-0.25, 0.5);
        assertThat(matrix.solve(4, 2)).usingComparatorWithPrecision(1e-12).containsExactly(1, 0);
        double[][] factor = matrix.factor();
        assertThat(factor[0][0] * factor[1][0] + factor[0][1] * factor[1][1]).isCloseTo(2, within(1e-12));
    }

    /** Karush, Kuhn and Tucker: what is in stands right, and what is out would only be wrong if let in. */
    @Test
    void noShareBelowNothingCouldComeNearer() {
        SplittableRandom random = new SplittableRandom(20_261_128L);
        int bounded = 0;
        for (int run = 0; run < 300; run++) {
            int rows = 6 + random.nextInt(10);
            int size = 1 + random.nextInt(6);
            double[][] columns = new double[size][];
            for (int j = 0; j < size; j++) {
                columns[j] = random.doubles(rows, -0.3, 1).toArray();
            }
            double[] values = random.doubles(rows, -1, 1).toArray();
            double[] shares = NonNegativeLeastSquares.of(values, columns);
            double[] left = IntStream.range(0, rows)
                    .mapToDouble(i -> values[i]
                            - IntStream.range(0, size)
                                    .mapToDouble(j -> shares[j] * columns[j][i])
                                    .sum())
                    .toArray();
            for (int j = 0; j < size; j++) {
                double[] column = columns[j];
                double gain = IntStream.range(0, rows)
                        .mapToDouble(i -> column[i] * left[i])
                        .sum();
                assertThat(shares[j]).isNotNegative();
                if (shares[j] > 0) {
                    assertThat(gain).isCloseTo(0, within(1e-10));
                } else {
                    assertThat(gain).isLessThan(1e-10);
                    bounded++;
                }
            }
        }
        assertThat(bounded).isGreaterThan(100);
    }
}
