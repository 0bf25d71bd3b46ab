package porebench.statistics.uncertainty;

import porebench.quantity.Require;

/**
 * Whether an interval from the law of propagation agrees with one that was drawn.
 *
 * <p>The ends may differ by half a unit of the last place of the standard uncertainty, written with one significant digit.
 *
 * <p>Source: JCGM 101:2008, 7.9.2 and 8.1; recalled. Differences from the source: one significant digit, where it allows one
 * or two.
 *
 * @param tolerance by how much an end may differ, in the unit of the result
 * @param lowDifference by how much the drawn interval begins lower; negative when it begins higher
 * @param highDifference by how much the drawn interval ends higher; negative when it ends lower
 */
public record IntervalCheck(double tolerance, double lowDifference, double highDifference) {
    /**
     * Compares value plus and minus expanded uncertainty with the drawn interval of equal tails.
     *
     * @param value the result by the law of propagation
     * @param combined its standard uncertainty, at least 0
     * @param expanded its expanded uncertainty, at least 0
     * @param drawn the result by drawing, at the same confidence
     */
    public static IntervalCheck of(double value, double combined, double expanded, MonteCarlo drawn) {
        Require.atLeastZero("combined", combined);
        Require.atLeastZero("expanded", expanded);
        double tolerance = toleranceOf(combined);
        return new IntervalCheck(
                tolerance,
                value - expanded - drawn.symmetric().low(),
                drawn.symmetric().high() - (value + expanded));
    }

    /** Returns by how much an end may differ for a standard uncertainty, in its unit. */
    public static double toleranceOf(double combined) {
        return Require.atLeastZero("combined", combined) == 0 ? 0 : 0.5 * Math.pow(10, place(combined));
    }

    /** Returns the power of ten of the first significant digit, once the number is rounded to it. */
    private static int place(double number) {
        int place = (int) Math.floor(Math.log10(number));
        return number / Math.pow(10, place) >= 9.5 ? place + 1 : place;
    }

    /** Returns by how much the ends differ, the larger difference, without its sign. */
    public double largestDifference() {
        return Math.max(Math.abs(lowDifference), Math.abs(highDifference));
    }

    /** Returns whether both ends agree. */
    public boolean agrees() {
        return largestDifference() <= tolerance;
    }

    /** Returns whether the drawn interval is the wider one. */
    public boolean isDrawnWider() {
        return lowDifference + highDifference > 0;
    }
}
