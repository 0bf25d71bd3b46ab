package porebench.statistics.variance;

import porebench.statistics.distribution.ChiSquare;
import porebench.statistics.distribution.FRatio;
import porebench.statistics.distribution.StudentT;

/**
 * Confidence intervals of variances that are sums and differences of mean squares, by the modified large-sample method.
 *
 * <p>One mean square gives the exact chi-square interval. Of a sum or a difference the ends are where the exact interval
 * of each part would put them were the others known, added up by squares, with a term that makes a difference right when
 * its true value is 0. Ends below 0 are set to 0.
 *
 * <p>Source: F. A. Graybill and C.-M. Wang, J. Amer. Statist. Assoc. 75 (1980), for sums; N. Ting et al., J. Statist.
 * Comput. Simul. 35 (1990), for differences; both as used in R. K. Burdick, C. M. Borror and D. C. Montgomery, Design and
 * Analysis of Gauge R and R Studies (2005), chapter 3; recalled. Differences from the source: none. That they cover what
 * they promise is shown by simulation.
 */
public final class MeanSquareIntervals {
    private final double confidence;
    private final double tail;

    public MeanSquareIntervals(double confidence) {
        StudentT.requireProbability("confidence", confidence);
        this.confidence = confidence;
        this.tail = (1 - confidence) / 2;
    }

    /** A mean square with the weight it has in a sum. */
    public record Weighted(double weight, MeanSquare of) {
        double value() {
            return weight * of.meanSquare().orElseThrow();
        }

        int degrees() {
            return of.degreesOfFreedom();
        }
    }

    /** Returns the interval of a sum of parts, each with a weight greater than 0. */
    public VarianceInterval sum(Weighted... parts) {
        double value = 0;
        double below = 0;
        double above = 0;
        for (Weighted part : parts) {
            value += part.value();
            below += square(down(part.degrees()) * part.value());
            above += square(up(part.degrees()) * part.value());
        }
        return interval(value, below, above);
    }

    /** Returns the interval of one part less another, both with weights greater than 0. */
    VarianceInterval difference(Weighted more, Weighted less) {
        double f = new FRatio(more.degrees(), less.degrees()).upperPoint(tail);
        double inverse = new FRatio(more.degrees(), less.degrees()).upperPoint(1 - tail);
        double downMore = down(more.degrees());
        double upMore = up(more.degrees());
        double downLess = down(less.degrees());
        double upLess = up(less.degrees());
        double crossBelow = (square(f - 1) - square(downMore * f) - square(upLess)) / f;
        double crossAbove = (square(1 - inverse) - square(upMore * inverse) - square(downLess)) / inverse;
        double product = more.value() * less.value();
        double below = square(downMore * more.value()) + square(upLess * less.value()) + crossBelow * product;
        double above = square(upMore * more.value()) + square(downLess * less.value()) + crossAbove * product;
        return interval(more.value() - less.value(), below, above);
    }

    private VarianceInterval interval(double value, double below, double above) {
        double low = Math.max(0, value - Math.sqrt(Math.max(0, below)));
        double high = Math.max(low, value + Math.sqrt(Math.max(0, above)));
        return new VarianceInterval(low, high, confidence);
    }

    /** Returns by what share of a mean square the low end of its variance lies below it. */
    private double down(int degrees) {
        return 1 - degrees / new ChiSquare(degrees).upperPoint(tail);
    }

    /** Returns by what share of a mean square the high end of its variance lies above it. */
    private double up(int degrees) {
        return degrees / new ChiSquare(degrees).upperPoint(1 - tail) - 1;
    }

    private static double square(double number) {
        return number * number;
    }
}
