package porebench.statistics.uncertainty;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import porebench.statistics.uncertainty.Uncertain.Shape;

/**
 * Draws several quantities at once, some of which err together.
 *
 * <p>Normal quantities are drawn from the joint normal distribution; several means of the same few readings, t with the same
 * degrees of freedom, from the joint t distribution. Quantities known by limits can only share their error whole, with a
 * coefficient of 1 or -1.
 *
 * <p>Source: JCGM 101:2008, 6.4.8 and C.5 (joint normal); JCGM 102:2011, 5.3.2 (joint t); gamma by G. Marsaglia and W. W. Tsang,
 * ACM Transactions on Mathematical Software 26 (2000); recalled. Differences from the source: none.
 */
final class JointDraw {
    private static final double ROUNDING = 1e-9;

    private final Uncertain[] inputs;
    private final List<Group> groups = new ArrayList<>();

    /** Quantities that hang together, and how their errors are made of independent ones. */
    private record Group(int[] places, double[][] root) {}

    /**
     * Prepares to draw.
     *
     * @throws IllegalArgumentException if the coefficients contradict one another, or join what cannot be joined
     */
    JointDraw(List<Uncertain> inputs, List<Correlation> correlations) {
        this.inputs = inputs.toArray(Uncertain[]::new);
        int[] group = Correlation.groups(inputs.size(), correlations);
        for (int leader = 0; leader < group.length; leader++) {
            int wanted = leader;
            int[] places = IntStream.range(0, group.length)
                    .filter(i -> group[i] == wanted)
                    .toArray();
            if (places.length > 0) {
                groups.add(group(places, correlations));
            }
        }
    }

    private Group group(int[] places, List<Correlation> correlations) {
        double[][] matrix = Correlation.matrix(places, correlations);
        Uncertain leader = inputs[places[0]];
        for (int place : places) {
            Uncertain one = inputs[place];
            if (one.shape() != leader.shape() || one.degreesOfFreedom() != leader.degreesOfFreedom()) {
                throw new IllegalArgumentException("correlated quantities must be of one shape with the same degrees of"
                        + " freedom, but are " + leader + " and " + one);
            }
        }
        if (leader.shape() == Shape.RECTANGULAR) {
            for (double[] row : matrix) {
                for (double coefficient : row) {
                    if (Math.abs(coefficient) != 1) {
                        throw new IllegalArgumentException(
                                "coefficient of quantities known by limits must be 1 or -1, but is " + coefficient);
                    }
                }
            }
        }
        return new Group(places, root(matrix));
    }

    /** Cholesky's root of the coefficients; a quantity that wholly follows others adds nothing of its own. */
    private static double[][] root(double[][] matrix) {
        int count = matrix.length;
        double[][] root = new double[count][count];
        for (int i = 0; i < count; i++) {
            for (int j = 0; j <= i; j++) {
                double left = matrix[i][j];
                for (int k = 0; k < j; k++) {
                    left -= root[i][k] * root[j][k];
                }
                if (i == j) {
                    root[i][i] = Math.sqrt(Math.max(0, notBelowZero(left)));
                } else if (root[j][j] > 0) {
                    root[i][j] = left / root[j][j];
                } else {
                    notBelowZero(-Math.abs(left));
                }
            }
        }
        return root;
    }

    private static double notBelowZero(double left) {
        if (left < -ROUNDING) {
            throw new IllegalArgumentException(
                    "correlations must not contradict one another, but " + left + " is left");
        }
        return left;
    }

    /** Draws all quantities, one value each in their order. */
    void draw(Random random, double[] values) {
        for (Group group : groups) {
            int[] places = group.places();
            if (places.length == 1) {
                values[places[0]] = inputs[places[0]].draw(random);
            } else {
                draw(group, random, values);
            }
        }
    }

    private void draw(Group group, Random random, double[] values) {
        int[] places = group.places();
        Uncertain leader = inputs[places[0]];
        boolean isLimited = leader.shape() == Shape.RECTANGULAR;
        double[] own = new double[places.length];
        for (int i = 0; i < own.length; i++) {
            own[i] = isLimited ? 2 * random.nextDouble() - 1 : random.nextGaussian();
        }
        double stretch = leader.shape() == Shape.STUDENT
                ? Math.sqrt(leader.degreesOfFreedom() / (2 * gamma(leader.degreesOfFreedom() / 2, random)))
                : 1;
        for (int i = 0; i < places.length; i++) {
            double error = 0;
            for (int j = 0; j <= i; j++) {
                error += group.root()[i][j] * own[j];
            }
            Uncertain one = inputs[places[i]];
            values[places[i]] = one.centre() + one.scale() * stretch * error;
        }
    }

    private static double gamma(double shape, Random random) {
        if (shape < 1) {
            return gamma(shape + 1, random) * Math.pow(1 - random.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        double c = 1 / Math.sqrt(9 * d);
        while (true) {
            double x = random.nextGaussian();
            double v = 1 + c * x;
            if (v > 0) {
                double cube = v * v * v;
                if (Math.log(1 - random.nextDouble()) < 0.5 * x * x + d - d * cube + d * Math.log(cube)) {
                    return d * cube;
                }
            }
        }
    }
}
