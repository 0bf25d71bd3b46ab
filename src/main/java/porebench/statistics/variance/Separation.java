package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which of some regressors the groups can tell apart, and which combinations of them.
 *
 * <p>Regressors are taken in one after the other, always the one of which most is left when what the others explain is taken
 * away. A regressor of which less than {@link #NOTHING_LEFT} of its length is left is not taken in: amounts are not known more
 * finely, so that what is left would be an accident of weighing.
 *
 * <p>Source: the Cholesky factor with complete pivoting, as in G. H. Golub and C. F. Van Loan, Matrix Computations (1996), 4.2.9;
 * recalled. Differences from the source: none; the limit is ours.
 */
public final class Separation {
    /** So little of a regressor's length is taken for nothing. */
    public static final double NOTHING_LEFT = 0.01;

    private static final double HALF_A_LIMIT = NOTHING_LEFT / 2;

    private final int[] taken;
    private final int[] left;

    /** How each regressor left out is made up of those taken in: one row a regressor left out. */
    private final double[][] madeUpOf;

    private final double[] scale;
    private final int outerGroups;

    private Separation(int[] taken, int[] left, double[][] madeUpOf, double[] scale, int outerGroups) {
        this.taken = taken;
        this.left = left;
        this.madeUpOf = madeUpOf;
        this.scale = scale;
        this.outerGroups = outerGroups;
    }

    /** Tells the regressors of some groups apart. */
    public static Separation of(RegressorColumns columns) {
        int size = columns.regressors;
        double[][] products = products(columns);
        double[] scale = new double[size];
        for (int i = 0; i < size; i++) {
            scale[i] = products[i][i] > 0 ? 1 / Math.sqrt(products[i][i]) : 0;
        }
        double[][] rows = new double[size][size];
        double[] rest = new double[size];
        for (int i = 0; i < size; i++) {
            rest[i] = scale[i] > 0 ? 1 : 0;
        }
        List<Integer> order = new ArrayList<>();
        boolean[] isTaken = new boolean[size];
        int next = largest(rest, isTaken);
        while (next >= 0 && rest[next] > NOTHING_LEFT * NOTHING_LEFT) {
            int step = order.size();
            order.add(next);
            isTaken[next] = true;
            double root = Math.sqrt(rest[next]);
            for (int i = 0; i < size; i++) {
                double sum = products[Math.max(i, next)][Math.min(i, next)] * scale[i] * scale[next];
                for (int k = 0; k < step; k++) {
                    sum -= rows[i][k] * rows[next][k];
                }
                rows[i][step] = sum / root;
                rest[i] -= rows[i][step] * rows[i][step];
            }
            next = largest(rest, isTaken);
        }
        return of(order, isTaken, rows, scale, columns.outerGroups);
    }

    private static Separation of(
            List<Integer> order, boolean[] isTaken, double[][] rows, double[] scale, int outerGroups) {
        List<Integer> out = new ArrayList<>();
        for (int i = 0; i < isTaken.length; i++) {
            if (!isTaken[i]) {
                out.add(i);
            }
        }
        int[] taken = order.stream().mapToInt(Integer::intValue).toArray();
        int[] left = out.stream().mapToInt(Integer::intValue).toArray();
        double[][] madeUpOf = new double[left.length][taken.length];
        for (int row = 0; row < left.length; row++) {
            for (int k = taken.length - 1; k >= 0; k--) {
                double sum = rows[left[row]][k];
                for (int other = k + 1; other < taken.length; other++) {
                    sum -= madeUpOf[row][other] * rows[taken[other]][k];
                }
                madeUpOf[row][k] = sum / rows[taken[k]][k];
            }
            for (int k = 0; k < taken.length; k++) {
                madeUpOf[row][k] *= scale[left[row]] > 0 ? scale[taken[k]] / scale[left[row]] : 0;
            }
        }
        return new Separation(taken, left, madeUpOf, scale, outerGroups);
    }

    private static int largest(double[] rest, boolean[] isTaken) {
        int best = -1;
        for (int i = 0; i < rest.length; i++) {
            if (!isTaken[i] && (best < 0 || rest[i] > rest[best])) {
                best = i;
            }
        }
        return best;
    }

    private static double[][] products(RegressorColumns columns) {
        double[][] products = new double[columns.regressors][columns.regressors];
        for (int group = 0; group < columns.groups; group++) {
            for (int k = columns.starts[group]; k < columns.starts[group + 1]; k++) {
                double[] row = products[columns.places[k]];
                for (int l = columns.starts[group]; l < columns.starts[group + 1]; l++) {
                    if (columns.places[l] <= columns.places[k]) {
                        row[columns.places[l]] += columns.amounts[k] * columns.amounts[l];
                    }
                }
            }
        }
        return products;
    }

    /** Returns the regressors taken in. */
    int[] taken() {
        return taken.clone();
    }

    /** Returns how many regressors, or combinations of them, are told apart. */
    public int rank() {
        return taken.length;
    }

    /** Returns how many outer groups there are beyond what is told apart: what the scatter between them is judged by. */
    public int degreesOfFreedom() {
        return outerGroups - taken.length;
    }

    /** Returns whether a regressor is told apart from all others. */
    public boolean isApart(int regressor) {
        return with(regressor).length == 0 && place(regressor) >= 0;
    }

    /** Returns the other regressors that one is not told apart from; none where it is, or where no group has any of it. */
    public int[] with(int regressor) {
        int place = place(regressor);
        boolean[] isWith = new boolean[scale.length];
        for (int row = 0; row < left.length; row++) {
            if (left[row] == regressor || (place >= 0 && isPart(row, place))) {
                isWith[left[row]] = true;
                for (int k = 0; k < taken.length; k++) {
                    isWith[taken[k]] |= isPart(row, k);
                }
            }
        }
        return IntStream.range(0, isWith.length)
                .filter(other -> isWith[other] && other != regressor)
                .toArray();
    }

    /** Returns whether a regressor taken in makes up more of one left out than nothing, both over their lengths. */
    private boolean isPart(int row, int place) {
        return Math.abs(madeUpOf[row][place]) * scale[left[row]] > NOTHING_LEFT * scale[taken[place]];
    }

    private int place(int regressor) {
        for (int k = 0; k < taken.length; k++) {
            if (taken[k] == regressor) {
                return k;
            }
        }
        return -1;
    }

    /**
     * Returns whether the groups tell anything of the sum of some amounts: each regressor left out must stand in it as it stood
     * beside the others in the groups.
     *
     * @param amounts one a regressor
     */
    public boolean tells(double... amounts) {
        double all = Arrays.stream(amounts).map(Math::abs).sum();
        for (int row = 0; row < left.length; row++) {
            double sum = 0;
            for (int k = 0; k < taken.length; k++) {
                sum += madeUpOf[row][k] * amounts[taken[k]];
            }
            if (Math.abs(sum - amounts[left[row]]) > HALF_A_LIMIT * all) {
                return false;
            }
        }
        return true;
    }
}
