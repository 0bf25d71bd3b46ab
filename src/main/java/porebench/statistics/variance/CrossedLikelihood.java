package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The restricted likelihood of variances of layers that cross one another.
 *
 * <p>V = v I + v1 Z1 Z1' + Z2 D Z2'. The layer with most groups, Z1, alone with the values has an inverse that can be
 * written down; that of the other layers together is found by Woodbury's identity from a matrix as large as their groups
 * are many. The derivatives are exact: of -2 ln L with P = V^-1 - V^-1 1 1' V^-1 / 1' V^-1 1 they are tr(P Zi Zi') - y' P Zi
 * Zi' P y and, for two, 2 y' P Zi Zi' P Zj Zj' P y - tr(P Zi Zi' P Zj Zj'); those of the values follow from P V P = P.
 *
 * <p>Source: S. R. Searle, G. Casella and C. E. McCulloch, Variance Components (1992), chapter 6; recalled. Differences from
 * the source: none.
 */
final class CrossedLikelihood implements RestrictedLikelihood {
    /** Below this share of the largest variance, that of values is where no likelihood is looked for. */
    private static final double LEAST_OF_VALUES = 1e-11;

    private final CrossedGroups data;
    private final int[] order;
    private final CrossedGroups.Layer widest;

    /** The other layers' groups follow one another. */
    private final List<CrossedGroups.Layer> others = new ArrayList<>();

    private final int[] starts;
    private final int otherGroups;
    private final double[][] shared;
    private final double[][] sharedByOthers;

    CrossedLikelihood(CrossedGroups data) {
        this.data = data;
        this.order = IntStream.range(0, data.layers().size())
                .boxed()
                .sorted(Comparator.comparing(place -> -data.layers().get(place).groups()))
                .mapToInt(Integer::intValue)
                .toArray();
        this.widest = data.layers().get(order[0]);
        this.starts = new int[order.length];
        int groups = 0;
        for (int i = 1; i < order.length; i++) {
            others.add(data.layers().get(order[i]));
            starts[i] = groups;
            groups += others.get(i - 1).groups();
        }
        this.otherGroups = groups;
        this.shared = new double[widest.groups()][groups];
        this.sharedByOthers = new double[groups][groups];
        for (int value = 0; value < data.count(); value++) {
            for (int i = 1; i < order.length; i++) {
                int group = other(i, value);
                shared[widest.groupOf()[value]][group]++;
                for (int j = 1; j < order.length; j++) {
                    sharedByOthers[group][other(j, value)]++;
                }
            }
        }
    }

    private int other(int place, int value) {
        return starts[place] + others.get(place - 1).groupOf()[value];
    }

    /** Where the layers explain every digit the likelihood grows without end: a wall stands before that. */
    @Override
    public At at(double... variances) {
        double largest = Arrays.stream(variances).max().orElseThrow();
        int count = variances.length;
        return variances[count - 1] < LEAST_OF_VALUES * largest
                ? new At(Jet.of(Double.POSITIVE_INFINITY, new double[count], new double[count][count]), 0, 0)
                : new Evaluation(variances).at();
    }

    /** What is worked out for one set of variances; layers stand in the order of this class, the values last. */
    private final class Evaluation {
        private final int layers = order.length;
        private final double[] variances = new double[layers + 1];
        private final double ofValues;

        /** Of each group of the widest layer, v + v1 n. */
        private final double[] widened = new double[widest.groups()];

        /** Of each group of the other layers, the root of its variance. */
        private final double[] roots = new double[otherGroups];

        private final RealMatrix fromWidest;
        private final RealMatrix amongOthers;
        private final CholeskyDecomposition decomposition;
        private final double[] ones;
        private final double precision;

        Evaluation(double... given) {
            for (int i = 0; i < layers; i++) {
                variances[i] = given[order[i]];
            }
            ofValues = given[layers];
            variances[layers] = ofValues;
            for (int group = 0; group < widened.length; group++) {
                widened[group] = ofValues + variances[0] * widest.sizes()[group];
            }
            for (int i = 1; i < layers; i++) {
                Arrays.fill(roots, starts[i], starts[i] + others.get(i - 1).groups(), Math.sqrt(variances[i]));
            }
            fromWidest = new Array2DRowRealMatrix(widened.length, Math.max(1, otherGroups));
            amongOthers = new Array2DRowRealMatrix(Math.max(1, otherGroups), Math.max(1, otherGroups));
            fillOthers();
            RealMatrix inner = new Array2DRowRealMatrix(amongOthers.getRowDimension(), amongOthers.getRowDimension());
            for (int i = 0; i < inner.getRowDimension(); i++) {
                for (int j = 0; j < inner.getRowDimension(); j++) {
                    double scaled = i < otherGroups && j < otherGroups
                            ? roots[i] * roots[j] * amongOthers.getEntry(Math.max(i, j), Math.min(i, j))
                            : 0;
                    inner.setEntry(i, j, scaled + (i == j ? 1 : 0));
                }
            }
            decomposition = new CholeskyDecomposition(inner);
            double[] one = new double[data.count()];
            Arrays.fill(one, 1);
            ones = solved(one);
            precision = Arrays.stream(ones).sum();
        }

        /** Z1' R Z2 and Z2' R Z2, R being the inverse of values and widest layer alone. */
        private void fillOthers() {
            for (int group = 0; group < widened.length; group++) {
                for (int i = 0; i < otherGroups; i++) {
                    fromWidest.setEntry(group, i, shared[group][i] / widened[group]);
                }
            }
            for (int i = 0; i < otherGroups; i++) {
                for (int j = 0; j < otherGroups; j++) {
                    double taken = 0;
                    for (int group = 0; group < widened.length; group++) {
                        taken += shared[group][i] * shared[group][j] * variances[0] / widened[group];
                    }
                    amongOthers.setEntry(i, j, (sharedByOthers[i][j] - taken) / ofValues);
                }
            }
        }

        /** Returns V^-1 x. */
        private double[] solved(double... x) {
            double[] first = withWidest(x);
            if (otherGroups == 0) {
                return first;
            }
            RealVector right = new ArrayRealVector(scaled(sumsOfOthers(first)));
            double[] back = scaled(decomposition.getSolver().solve(right).toArray());
            double[] spread = new double[x.length];
            for (int value = 0; value < x.length; value++) {
                for (int i = 1; i < layers; i++) {
                    spread[value] += back[other(i, value)];
                }
            }
            return minus(first, 1, withWidest(spread));
        }

        private double[] scaled(double... byGroup) {
            double[] scaled = new double[otherGroups];
            for (int i = 0; i < otherGroups; i++) {
                scaled[i] = roots[i] * byGroup[i];
            }
            return scaled;
        }

        private double[] withWidest(double... x) {
            double[] sums = sums(widest, x);
            double[] solved = new double[x.length];
            for (int value = 0; value < x.length; value++) {
                int group = widest.groupOf()[value];
                solved[value] = (x[value] - variances[0] * sums[group] / widened[group]) / ofValues;
            }
            return solved;
        }

        private double[] sumsOfOthers(double... x) {
            double[] sums = new double[otherGroups];
            for (int value = 0; value < x.length; value++) {
                for (int i = 1; i < layers; i++) {
                    sums[other(i, value)] += x[value];
                }
            }
            return sums;
        }

        /** Returns P x. */
        private double[] projected(double... x) {
            double[] solved = solved(x);
            return minus(solved, Arrays.stream(solved).sum() / precision, ones);
        }

        At at() {
            double logarithms = (data.count() - widened.length) * Math.log(ofValues)
                    + Arrays.stream(widened).map(Math::log).sum()
                    + 2 * logDiagonal()
                    + Math.log(precision);
            double[] y = data.left();
            double[] away = projected(y);
            double value = logarithms + dot(y, away);
            double mean = dot(ones, y) / precision;
            double[] slopes = new double[layers + 1];
            double[][] curves = new double[layers + 1][layers + 1];
            derive(away, slopes, curves);
            double[] inOrder = new double[layers + 1];
            double[][] curvesInOrder = new double[layers + 1][layers + 1];
            for (int i = 0; i <= layers; i++) {
                inOrder[place(i)] = slopes[i];
                for (int j = 0; j <= layers; j++) {
                    curvesInOrder[place(i)][place(j)] = curves[i][j];
                }
            }
            return new At(Jet.of(value, inOrder, curvesInOrder), mean, 1 / precision);
        }

        private int place(int i) {
            return i < layers ? order[i] : layers;
        }

        private double logDiagonal() {
            RealMatrix root = decomposition.getL();
            return IntStream.range(0, root.getRowDimension())
                    .mapToDouble(i -> Math.log(root.getEntry(i, i)))
                    .sum();
        }

        private void derive(double[] away, double[] slopes, double[][] curves) {
            Traces traces = new Traces(this);
            double[][] moved = new double[layers + 1][];
            double[][] answered = new double[layers + 1][];
            for (int i = 0; i <= layers; i++) {
                moved[i] = i < layers ? spread(i, away) : away;
                answered[i] = projected(moved[i]);
                slopes[i] = traces.one(i) - dot(away, moved[i]);
            }
            for (int i = 0; i <= layers; i++) {
                for (int j = 0; j <= i; j++) {
                    curves[i][j] = 2 * dot(moved[i], answered[j]) - traces.two(i, j);
                    curves[j][i] = curves[i][j];
                }
            }
        }

        /** Returns Zi Zi' x. */
        private double[] spread(int layer, double... x) {
            CrossedGroups.Layer one = data.layers().get(order[layer]);
            double[] sums = sums(one, x);
            return Arrays.stream(one.groupOf())
                    .mapToDouble(group -> sums[group])
                    .toArray();
        }
    }

    /** The traces of products of P with the patterns of the layers. */
    private final class Traces {
        private final Evaluation with;
        private final double[] one;
        private final double[][] two;

        Traces(Evaluation with) {
            this.with = with;
            int layers = with.layers;
            one = new double[layers + 1];
            two = new double[layers + 1][layers + 1];
            fill();
            double ofAll = data.count() - 1.0;
            for (int i = 0; i < layers; i++) {
                ofAll -= with.variances[i] * one[i];
                double ofOne = one[i];
                for (int j = 0; j < layers; j++) {
                    ofOne -= with.variances[j] * two[Math.max(i, j)][Math.min(i, j)];
                }
                two[layers][i] = ofOne / with.ofValues;
            }
            one[layers] = ofAll / with.ofValues;
            double ofValues = one[layers];
            for (int i = 0; i < layers; i++) {
                ofValues -= with.variances[i] * two[layers][i];
            }
            two[layers][layers] = ofValues / with.ofValues;
        }

        double one(int i) {
            return one[i];
        }

        double two(int i, int j) {
            return two[Math.max(i, j)][Math.min(i, j)];
        }

        /** Z' P Z block by block; the widest layer's own block is a diagonal less something of low rank. */
        private void fill() {
            double[] sums = sums(widest, with.ones);
            double[] diagonal = new double[with.widened.length];
            for (int group = 0; group < diagonal.length; group++) {
                diagonal[group] = widest.sizes()[group] / with.widened[group];
            }
            RealMatrix low = low(with.fromWidest, sums);
            for (int group = 0; group < diagonal.length; group++) {
                double square = squared(low.getRow(group));
                one[0] += diagonal[group] - square;
                two[0][0] += diagonal[group] * (diagonal[group] - 2 * square);
            }
            two[0][0] += squares(low.transpose().multiply(low));
            if (otherGroups == 0) {
                return;
            }
            RealMatrix lowOthers = low(with.amongOthers, with.sumsOfOthers(with.ones));
            RealMatrix others = with.amongOthers.subtract(lowOthers.multiply(lowOthers.transpose()));
            RealMatrix mixed = with.fromWidest.subtract(low.multiply(lowOthers.transpose()));
            for (int i = 1; i < with.layers; i++) {
                two[i][0] = squares(mixed.getSubMatrix(0, diagonal.length - 1, first(i), last(i)));
                for (int j = first(i); j <= last(i); j++) {
                    one[i] += others.getEntry(j, j);
                }
                for (int j = 1; j <= i; j++) {
                    two[i][j] = squares(others.getSubMatrix(first(i), last(i), first(j), last(j)));
                }
            }
        }

        private int first(int layer) {
            return starts[layer];
        }

        private int last(int layer) {
            return starts[layer] + CrossedLikelihood.this.others.get(layer - 1).groups() - 1;
        }

        /** Returns F with Z' P Z = Z' R Z - F F': the share of the other layers, and as a last column that of the mean. */
        private RealMatrix low(RealMatrix block, double... sums) {
            int rows = block.getRowDimension();
            RealMatrix low = new Array2DRowRealMatrix(rows, otherGroups + 1);
            double[][] root = with.decomposition.getL().getData();
            for (int row = 0; row < rows; row++) {
                for (int i = 0; i < otherGroups; i++) {
                    double left = block.getEntry(row, i) * with.roots[i];
                    for (int k = 0; k < i; k++) {
                        left -= root[i][k] * low.getEntry(row, k);
                    }
                    low.setEntry(row, i, left / root[i][i]);
                }
                low.setEntry(row, otherGroups, sums[row] / Math.sqrt(with.precision));
            }
            return low;
        }
    }

    private static double[] sums(CrossedGroups.Layer layer, double... x) {
        double[] sums = new double[layer.groups()];
        for (int value = 0; value < x.length; value++) {
            sums[layer.groupOf()[value]] += x[value];
        }
        return sums;
    }

    private static double[] minus(double[] x, double factor, double... other) {
        double[] less = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            less[i] = x[i] - factor * other[i];
        }
        return less;
    }

    private static double dot(double[] one, double... other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    private static double squared(double... row) {
        return dot(row, row);
    }

    private static double squares(RealMatrix matrix) {
        return Arrays.stream(matrix.getData())
                .mapToDouble(CrossedLikelihood::squared)
                .sum();
    }
}
