package porebench.statistics.outlier;

import org.apache.commons.math3.special.Beta;
import porebench.quantity.Require;

/**
 * The share that one of several equal normal variances has of their sum.
 *
 * <p>With p variances of n values each it follows a beta distribution with (n - 1) / 2 and (p - 1)(n - 1) / 2, which is the
 * F distribution of one variance over the others in another form, F = (p - 1) share / (1 - share).
 *
 * <p>Source: the relation of F and beta: Abramowitz and Stegun (1964), 26.6.2; recalled.
 */
public final class VarianceShare {
    private static final int HALVINGS = 200;

    private final double own;
    private final double others;

    public VarianceShare(int variances, int valuesOfEach) {
        Require.atLeast("variances", variances, 2);
        Require.atLeast("valuesOfEach", valuesOfEach, 2);
        own = (valuesOfEach - 1) / 2.0;
        others = (variances - 1) * own;
    }

    /** Returns the probability that a share chosen beforehand is larger than given. */
    double upperTail(double share) {
        return Beta.regularizedBeta(1 - Require.within("share", share, 0, 1), others, own);
    }

    /** Returns the share that is exceeded with a probability. */
    public double upperPoint(double tail) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (middle == low || middle == high) {
                break;
            }
            if (upperTail(middle) > tail) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
