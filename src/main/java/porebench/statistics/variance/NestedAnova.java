package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import porebench.quantity.Slack;
import porebench.statistics.Judged;

/**
 * The analysis of variance of groups within groups, balanced or not, and the variances that fit its mean squares.
 *
 * <p>Each mean square is expected to be a sum of the variances of its own layer and of those within it, with coefficients
 * that the sizes of groups give. Setting observed equal to expected, from the innermost, gives the variances. They may come
 * out below 0.
 *
 * <p>Source: S. R. Searle, G. Casella and C. E. McCulloch, Variance Components (1992), Henderson's method I for nested
 * groups; recalled. Differences from the source: none.
 *
 * @param squares of every layer from the outermost, and last those of the values within innermost groups
 * @param coefficients by mean square and by variance, both in that order
 */
record NestedAnova(List<MeanSquare> squares, double[][] coefficients) {

    static NestedAnova of(NestedValues values) {
        List<MeanSquare> squares = values.squares();
        int count = squares.size();
        double[][] coefficients = new double[count][count];
        for (int row = 0; row < count; row++) {
            int degrees = squares.get(row).degreesOfFreedom();
            for (int column = row; column < count; column++) {
                coefficients[row][column] = degrees == 0
                        ? 0
                        : (weight(values, row + 1, column + 1) - weight(values, row, column + 1)) / degrees;
            }
        }
        return new NestedAnova(List.copyOf(squares), coefficients);
    }

    /** Returns, over the groups of one layer, the squared sizes of the groups of a layer within over their own size. */
    private static double weight(NestedValues values, int outer, int inner) {
        int last = values.depth();
        if (inner > last) {
            return outer > last ? values.count() : values.layers().get(outer).groups();
        }
        if (outer >= inner) {
            return values.count();
        }
        int[] sizes = values.layers().get(inner).sizes();
        int[] ancestors = new int[sizes.length];
        for (int group = 0; group < sizes.length; group++) {
            int place = group;
            for (int layer = inner; layer > outer; layer--) {
                place = values.layers().get(layer).parents()[place];
            }
            ancestors[group] = place;
        }
        double sum = 0;
        for (int group = 0; group < sizes.length; group++) {
            int size = values.layers().get(outer).sizes()[ancestors[group]];
            sum += (double) sizes[group] * sizes[group] / size;
        }
        return sum;
    }

    /** Returns the variances, raw; empty for a layer without degrees of freedom and for those outside of it. */
    List<OptionalDouble> variances() {
        int count = squares.size();
        OptionalDouble[] variances = new OptionalDouble[count];
        for (int row = count - 1; row >= 0; row--) {
            variances[row] = variance(row, variances);
        }
        return List.of(variances);
    }

    private OptionalDouble variance(int row, OptionalDouble[] inner) {
        OptionalDouble square = squares.get(row).meanSquare();
        if (square.isEmpty()) {
            return OptionalDouble.empty();
        }
        double left = square.getAsDouble();
        for (int column = row + 1; column < inner.length; column++) {
            if (inner[column].isEmpty()) {
                return OptionalDouble.empty();
            }
            left -= coefficients[row][column] * inner[column].getAsDouble();
        }
        return OptionalDouble.of(left / coefficients[row][row]);
    }

    /**
     * Tests whether each layer varies by more than the layers within it make it.
     *
     * @return one test a layer, last the one of values, which there is none of; withheld where there is nothing to hold a
     *     mean square against, as in unbalanced data but for the innermost layer
     */
    List<Judged<FTest>> tests() {
        List<Judged<FTest>> tests = new ArrayList<>();
        for (int row = 0; row < squares.size() - 1; row++) {
            tests.add(
                    isNextComparable(row)
                            ? FTest.of(squares.get(row), squares.get(row + 1))
                            : Judged.withheld(Judged.Reason.TOO_FEW));
        }
        tests.add(Judged.withheld(Judged.Reason.TOO_FEW));
        return tests;
    }

    private boolean isNextComparable(int row) {
        for (int column = row + 1; column < squares.size(); column++) {
            double own = coefficients[row][column];
            if (!Slack.isSame(own, coefficients[row + 1][column])) {
                return false;
            }
        }
        return true;
    }
}
