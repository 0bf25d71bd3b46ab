package porebench.statistics.uncertainty;

import java.util.Random;
import porebench.quantity.Require;
import porebench.statistics.distribution.StudentT;

/**
 * A quantity that is not known exactly: where it is expected, and how its possible values are distributed.
 *
 * <p>Source: JCGM 101:2008, 6.4.2, 6.4.7 and 6.4.9 for what is known by its limits, by a standard uncertainty, and by the mean
 * of a few readings; recalled. Drawing from t: R. W. Bailey, Mathematics of Computation 62 (1994); recalled. Differences from
 * the source: none.
 *
 * @param shape how the values are distributed
 * @param centre the expected value; of t with one degree of freedom or less the middle one
 * @param scale of the rectangle half its width, else the standard uncertainty that the centre was given, at least 0; of t it is
 *     s / sqrt(n), which is less than the standard deviation of the distribution
 * @param degreesOfFreedom of t, at least 0.5; infinite of the other shapes
 */
public record Uncertain(Shape shape, double centre, double scale, double degreesOfFreedom) {
    /** How possible values are distributed. */
    public enum Shape {
        /** Known by a standard uncertainty. */
        NORMAL,
        /** Known to lie between two limits. */
        RECTANGULAR,
        /** The mean of a few normal readings, known by their own scatter. */
        STUDENT
    }

    public Uncertain {
        Require.finite("centre", centre);
        Require.atLeastZero("scale", scale);
        StudentT.requireDegreesOfFreedom("degreesOfFreedom", degreesOfFreedom);
    }

    /** Returns a quantity with a standard uncertainty that is taken as known. */
    public static Uncertain normal(double centre, double standardUncertainty) {
        return new Uncertain(Shape.NORMAL, centre, standardUncertainty, Double.POSITIVE_INFINITY);
    }

    /** Returns a quantity that may lie anywhere up to a distance from the centre. */
    public static Uncertain rectangular(double centre, double halfWidth) {
        return new Uncertain(Shape.RECTANGULAR, centre, halfWidth, Double.POSITIVE_INFINITY);
    }

    /** Returns a quantity with a standard uncertainty of finitely many degrees of freedom; with infinitely many it is normal. */
    public static Uncertain student(double centre, double standardUncertainty, double degreesOfFreedom) {
        return Double.isInfinite(degreesOfFreedom)
                ? normal(centre, standardUncertainty)
                : new Uncertain(Shape.STUDENT, centre, standardUncertainty, degreesOfFreedom);
    }

    /** Returns whether its values have a standard deviation: t with two degrees of freedom or fewer, three readings, has none. */
    public boolean hasStandardDeviation() {
        return scale == 0 || degreesOfFreedom > 2;
    }

    /** Returns whether its values have a mean: t with one degree of freedom or less, two readings, has none. */
    public boolean hasMean() {
        return scale == 0 || degreesOfFreedom > 1;
    }

    /** Draws one possible value. */
    public double draw(Random random) {
        return switch (shape) {
            case NORMAL -> centre + scale * random.nextGaussian();
            case RECTANGULAR -> centre + scale * (2 * random.nextDouble() - 1);
            case STUDENT -> centre + scale * drawT(random);
        };
    }

    private double drawT(Random random) {
        double across;
        double square;
        do {
            across = 2 * random.nextDouble() - 1;
            double up = 2 * random.nextDouble() - 1;
            square = across * across + up * up;
        } while (square >= 1 || square == 0);
        // W^(-2 / nu) - 1 by expm1, which keeps its digits when there are many degrees of freedom.
        double power = Math.expm1(-2 / degreesOfFreedom * Math.log(square));
        return across * Math.sqrt(degreesOfFreedom * power / square);
    }
}
