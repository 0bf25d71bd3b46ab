package porebench.statistics.variance;

import java.util.Arrays;
import porebench.quantity.Require;
import porebench.statistics.summary.Summary;

/**
 * Repeat values in groups, each group within an outer one, with the amounts of some regressors that go with each group: columns
 * of primitives.
 *
 * <p>Of the values of a group only how many there are, their mean and the sum of squares about it are kept: with amounts that are
 * the same for all of them nothing more is to be learnt.
 */
public final class RegressorColumns {
    final int regressors;
    final int outerGroups;
    final int groups;

    /** Where the groups of each outer one begin, and last where all end. */
    final int[] outerStarts;

    final int[] counts;
    final double[] means;
    final double[] squares;

    /** Where the amounts of each group begin, and last where all end. */
    final int[] starts;

    final int[] places;
    final double[] amounts;

    private RegressorColumns(Builder built) {
        regressors = built.regressors;
        outerGroups = built.outerGroups;
        groups = built.groups;
        outerStarts = Arrays.copyOf(built.outerStarts, outerGroups + 1);
        outerStarts[outerGroups] = groups;
        counts = Arrays.copyOf(built.counts, groups);
        means = Arrays.copyOf(built.means, groups);
        squares = Arrays.copyOf(built.squares, groups);
        starts = Arrays.copyOf(built.starts, groups + 1);
        starts[groups] = built.filled;
        places = Arrays.copyOf(built.places, built.filled);
        amounts = Arrays.copyOf(built.amounts, built.filled);
    }

    /** Gathers groups, one after the other. */
    public static final class Builder {
        private static final int FIRST_ROOM = 64;
        private final int regressors;
        private int outerGroups;
        private int groups;
        private int filled;
        private int[] outerStarts = new int[FIRST_ROOM];
        private int[] counts = new int[FIRST_ROOM];
        private double[] means = new double[FIRST_ROOM];
        private double[] squares = new double[FIRST_ROOM];
        private int[] starts = new int[FIRST_ROOM];
        private int[] places = new int[FIRST_ROOM];
        private double[] amounts = new double[FIRST_ROOM];

        /**
         * Begins with none.
         *
         * @param regressors how many there are, at least 1
         */
        public Builder(int regressors) {
            this.regressors = Require.atLeast("regressors", regressors, 1);
        }

        /** Begins an outer group: what is added next belongs to it. */
        public Builder outer() {
            if (outerGroups + 1 == outerStarts.length) {
                outerStarts = Arrays.copyOf(outerStarts, 2 * outerStarts.length);
            }
            outerStarts[outerGroups++] = groups;
            return this;
        }

        /**
         * Adds a group to the outer one begun last.
         *
         * @param values its repeat values, at least one, finite
         * @param ofRegressors which regressors have an amount in it, each from 0, none twice
         * @param amountsOfThem how much of each, finite
         * @throws IllegalArgumentException if there are no values, no outer group is begun, or amounts are not one a regressor
         */
        public Builder group(double[] values, int[] ofRegressors, double[] amountsOfThem) {
            Require.atLeast("outerGroups", outerGroups, 1);
            if (ofRegressors.length != amountsOfThem.length) {
                throw new IllegalArgumentException("amounts must be one a regressor, but are " + amountsOfThem.length
                        + " for " + ofRegressors.length);
            }
            makeRoom(ofRegressors.length);
            Summary summary = Summary.of(values);
            counts[groups] = values.length;
            means[groups] = Require.finite("mean", summary.mean());
            double sum = 0;
            for (double value : values) {
                sum += (value - summary.mean()) * (value - summary.mean());
            }
            squares[groups] = sum;
            starts[groups] = filled;
            for (int k = 0; k < ofRegressors.length; k++) {
                places[filled] = (int) Require.within("regressor", ofRegressors[k], 0, regressors - 1);
                amounts[filled++] = Require.finite("amount", amountsOfThem[k]);
            }
            groups++;
            return this;
        }

        private void makeRoom(int more) {
            if (groups + 1 == counts.length) {
                counts = Arrays.copyOf(counts, 2 * groups + 2);
                means = Arrays.copyOf(means, 2 * groups + 2);
                squares = Arrays.copyOf(squares, 2 * groups + 2);
                starts = Arrays.copyOf(starts, 2 * groups + 2);
            }
            if (filled + more > places.length) {
                places = Arrays.copyOf(places, 2 * (filled + more));
                amounts = Arrays.copyOf(amounts, 2 * (filled + more));
            }
        }

        /** Returns the columns. */
        public RegressorColumns build() {
            return new RegressorColumns(this);
        }
    }

    /** Returns the sum of the amounts of a group, each times a number of its regressor. */
    double dot(int group, double[] ofRegressors) {
        double sum = 0;
        for (int k = starts[group]; k < starts[group + 1]; k++) {
            sum += amounts[k] * ofRegressors[places[k]];
        }
        return sum;
    }

    /** Returns the same groups with some regressors only, in that order. */
    RegressorColumns with(int... chosen) {
        int[] newPlace = new int[regressors];
        Arrays.fill(newPlace, -1);
        for (int k = 0; k < chosen.length; k++) {
            newPlace[chosen[k]] = k;
        }
        Builder built = new Builder(Math.max(1, chosen.length));
        built.outerGroups = outerGroups;
        built.outerStarts = outerStarts;
        built.groups = groups;
        built.counts = counts;
        built.means = means;
        built.squares = squares;
        built.starts = new int[groups + 1];
        built.places = new int[places.length];
        built.amounts = new double[places.length];
        for (int group = 0; group < groups; group++) {
            built.starts[group] = built.filled;
            for (int k = starts[group]; k < starts[group + 1]; k++) {
                if (newPlace[places[k]] >= 0) {
                    built.places[built.filled] = newPlace[places[k]];
                    built.amounts[built.filled++] = amounts[k];
                }
            }
        }
        return new RegressorColumns(built);
    }
}
