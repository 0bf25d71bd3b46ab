package porebench.statistics;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import porebench.quantity.Require;

/**
 * A polynomial fitted to readings by ordinary least squares; of degree 1 it is a straight line, such as a trend.
 *
 * <p>The normal equations are solved in decimal arithmetic of 100 digits. In binary doubles they lose all digits of a
 * high degree; here the readings enter as they were typed and the rounding of the machine plays no part. A laboratory's
 * table is small, so that the time does not matter.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.1 and 4.5.1 (estimates, standard errors and prediction
 * intervals); recalled. Differences from the source: none.
 */
public final class LeastSquares {
    private static final MathContext DIGITS = new MathContext(100);

    private final int lowestPower;
    private final List<BigDecimal> coefficients;
    private final BigDecimal[][] inverse;
    private final int count;
    private final BigDecimal residualSquares;
    private final BigDecimal totalSquares;

    /**
     * A value read off the fitted curve.
     *
     * @param value what the curve says, in the unit of the responses
     * @param standardError the standard uncertainty of the curve there, in the same unit
     * @param standardErrorOfNext the standard uncertainty of one further reading there, in the same unit
     * @param degreesOfFreedom of both, at least 1
     */
    public record Prediction(double value, double standardError, double standardErrorOfNext, int degreesOfFreedom) {
        /**
         * Returns half the width of the interval in which one further reading lies, in the unit of the responses.
         *
         * @param confidence greater than 0 and less than 1; 0.95 for 95 %
         */
        public double halfWidthOfNext(double confidence) {
            return new StudentT(degreesOfFreedom).coverageFactor(confidence) * standardErrorOfNext;
        }
    }

    private LeastSquares(int lowestPower, int degree, List<BigDecimal> x, List<BigDecimal> y) {
        this.lowestPower = lowestPower;
        this.count = x.size();
        List<BigDecimal[]> rows =
                x.stream().map(at -> powers(at, lowestPower, degree)).toList();
        int terms = degree - lowestPower + 1;
        BigDecimal[][] products = new BigDecimal[terms][terms];
        BigDecimal[] sides = new BigDecimal[terms];
        for (int i = 0; i < terms; i++) {
            sides[i] = BigDecimal.ZERO;
            for (int j = 0; j < terms; j++) {
                products[i][j] = BigDecimal.ZERO;
                for (BigDecimal[] row : rows) {
                    products[i][j] = products[i][j].add(row[i].multiply(row[j], DIGITS), DIGITS);
                }
            }
            for (int k = 0; k < count; k++) {
                sides[i] = sides[i].add(rows.get(k)[i].multiply(y.get(k), DIGITS), DIGITS);
            }
        }
        inverse = inverted(products);
        List<BigDecimal> estimates = new ArrayList<>();
        for (BigDecimal[] line : inverse) {
            estimates.add(dot(line, sides));
        }
        coefficients = List.copyOf(estimates);
        residualSquares = residualSquares(rows, y);
        totalSquares = totalSquares(y);
    }

    /**
     * Fits y = b0 + b1 x + ... up to a power of x.
     *
     * @param degree the highest power, at least 1
     * @param x where the readings were taken, in the order of the responses
     * @param y the responses
     * @return the fit, or empty when there are not more different x than the degree, so that no curve is the best one
     * @throws IllegalArgumentException if the degree is below 1 or the columns differ in length
     */
    public static Optional<LeastSquares> polynomial(int degree, List<BigDecimal> x, List<BigDecimal> y) {
        return fit(0, degree, x, y);
    }

    /**
     * Fits y = b1 x, a line through the origin.
     *
     * @param x where the readings were taken, in the order of the responses
     * @param y the responses
     * @return the fit, or empty when there is no x other than 0
     * @throws IllegalArgumentException if the columns differ in length
     */
    public static Optional<LeastSquares> throughOrigin(List<BigDecimal> x, List<BigDecimal> y) {
        return fit(1, 1, x, y);
    }

    private static Optional<LeastSquares> fit(int lowest, int degree, List<BigDecimal> x, List<BigDecimal> y) {
        Require.atLeast("degree", degree, 1);
        if (x.size() != y.size()) {
            throw new IllegalArgumentException(
                    "count of y must be the count of x, " + x.size() + ", but is " + y.size());
        }
        // By value, not by scale: 1.0 and 1.00 are one place. Each power of x needs a place of its own.
        Set<BigDecimal> places = new HashSet<>();
        x.forEach(at -> places.add(at.stripTrailingZeros()));
        if (lowest > 0) {
            places.removeIf(at -> at.signum() == 0);
        }
        return places.size() < degree - lowest + 1
                ? Optional.empty()
                : Optional.of(new LeastSquares(lowest, degree, x, y));
    }

    private static BigDecimal[] powers(BigDecimal x, int lowest, int highest) {
        BigDecimal[] powers = new BigDecimal[highest - lowest + 1];
        for (int power = lowest; power <= highest; power++) {
            powers[power - lowest] = x.pow(power, DIGITS);
        }
        return powers;
    }

    private static BigDecimal dot(BigDecimal[] left, BigDecimal[] right) {
        BigDecimal sum = BigDecimal.ZERO;
        for (int i = 0; i < left.length; i++) {
            sum = sum.add(left[i].multiply(right[i], DIGITS), DIGITS);
        }
        return sum;
    }

    /** Inverts a symmetric positive definite matrix, whose pivots on the diagonal are greater than 0. */
    private static BigDecimal[][] inverted(BigDecimal[][] matrix) {
        int n = matrix.length;
        BigDecimal[][] left = new BigDecimal[n][];
        BigDecimal[][] right = new BigDecimal[n][n];
        for (int i = 0; i < n; i++) {
            left[i] = matrix[i].clone();
            for (int j = 0; j < n; j++) {
                right[i][j] = i == j ? BigDecimal.ONE : BigDecimal.ZERO;
            }
        }
        for (int i = 0; i < n; i++) {
            BigDecimal pivot = left[i][i];
            for (int j = 0; j < n; j++) {
                left[i][j] = left[i][j].divide(pivot, DIGITS);
                right[i][j] = right[i][j].divide(pivot, DIGITS);
            }
            for (int k = 0; k < n; k++) {
                if (k != i) {
                    BigDecimal factor = left[k][i];
                    takeAway(left[k], left[i], factor);
                    takeAway(right[k], right[i], factor);
                }
            }
        }
        return right;
    }

    private static void takeAway(BigDecimal[] from, BigDecimal[] row, BigDecimal factor) {
        for (int j = 0; j < from.length; j++) {
            from[j] = from[j].subtract(row[j].multiply(factor, DIGITS), DIGITS);
        }
    }

    private BigDecimal residualSquares(List<BigDecimal[]> rows, List<BigDecimal> y) {
        BigDecimal[] estimates = coefficients.toArray(BigDecimal[]::new);
        BigDecimal squares = BigDecimal.ZERO;
        for (int k = 0; k < count; k++) {
            BigDecimal residual = y.get(k).subtract(dot(rows.get(k), estimates), DIGITS);
            squares = squares.add(residual.multiply(residual, DIGITS), DIGITS);
        }
        // Readings on the curve leave only the last of the 100 digits behind.
        BigDecimal scale = y.stream()
                .map(value -> value.multiply(value, DIGITS))
                .reduce(BigDecimal.ZERO, (sum, square) -> sum.add(square, DIGITS));
        return squares.compareTo(scale.scaleByPowerOfTen(-60)) < 0 ? BigDecimal.ZERO : squares;
    }

    /** Returns the squares about the mean, or about 0 for a line through the origin. */
    private BigDecimal totalSquares(List<BigDecimal> y) {
        BigDecimal centre = BigDecimal.ZERO;
        if (lowestPower == 0) {
            for (BigDecimal value : y) {
                centre = centre.add(value, DIGITS);
            }
            centre = centre.divide(BigDecimal.valueOf(count), DIGITS);
        }
        BigDecimal squares = BigDecimal.ZERO;
        for (BigDecimal value : y) {
            BigDecimal deviation = value.subtract(centre, DIGITS);
            squares = squares.add(deviation.multiply(deviation, DIGITS), DIGITS);
        }
        return squares;
    }

    /** Returns the count of readings less the count of coefficients; 0 when the curve has to go through all of them. */
    public int degreesOfFreedom() {
        return count - coefficients.size();
    }

    /**
     * Returns the coefficient of a power of x, in the unit of the responses over that power of the unit of x.
     *
     * @throws IllegalArgumentException if the curve has no such power
     */
    public double coefficient(int power) {
        return coefficients.get(place(power)).doubleValue();
    }

    /**
     * Returns the standard uncertainty of a coefficient; empty without a degree of freedom.
     *
     * @throws IllegalArgumentException if the curve has no such power
     */
    public OptionalDouble standardError(int power) {
        int place = place(power);
        return degreesOfFreedom() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(root(variance().multiply(inverse[place][place], DIGITS)));
    }

    private int place(int power) {
        int highest = lowestPower + coefficients.size() - 1;
        if (power < lowestPower || power > highest) {
            throw new IllegalArgumentException(
                    "power must be from " + lowestPower + " to " + highest + ", but is " + power);
        }
        return power - lowestPower;
    }

    private BigDecimal variance() {
        return residualSquares.divide(BigDecimal.valueOf(degreesOfFreedom()), DIGITS);
    }

    private static double root(BigDecimal square) {
        return square.sqrt(DIGITS).doubleValue();
    }

    /** Returns the scatter of the readings about the curve, in their unit; empty without a degree of freedom. */
    public OptionalDouble residualStandardDeviation() {
        return degreesOfFreedom() == 0 ? OptionalDouble.empty() : OptionalDouble.of(root(variance()));
    }

    /**
     * Returns the share of the squares of the responses that the curve explains, 0 to 1; about their mean, or about 0
     * for a line through the origin; empty when there are no squares to explain.
     */
    public OptionalDouble explainedShare() {
        return totalSquares.signum() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(BigDecimal.ONE
                        .subtract(residualSquares.divide(totalSquares, DIGITS), DIGITS)
                        .doubleValue());
    }

    /**
     * Returns the mean square that the curve explains over the one it leaves, F; positive infinity when it leaves none;
     * empty without a degree of freedom or when there are no squares to explain.
     */
    public OptionalDouble ratioF() {
        if (degreesOfFreedom() == 0 || totalSquares.signum() == 0) {
            return OptionalDouble.empty();
        }
        if (residualSquares.signum() == 0) {
            return OptionalDouble.of(Double.POSITIVE_INFINITY);
        }
        int terms = coefficients.size() - (lowestPower == 0 ? 1 : 0);
        BigDecimal explained = totalSquares.subtract(residualSquares, DIGITS).divide(BigDecimal.valueOf(terms), DIGITS);
        return OptionalDouble.of(explained.divide(variance(), DIGITS).doubleValue());
    }

    /** Reads a value off the curve; empty without a degree of freedom, when nothing is known of its uncertainty. */
    public Optional<Prediction> at(BigDecimal x) {
        if (degreesOfFreedom() == 0) {
            return Optional.empty();
        }
        BigDecimal[] row = powers(x, lowestPower, lowestPower + coefficients.size() - 1);
        BigDecimal leverage = BigDecimal.ZERO;
        for (int i = 0; i < row.length; i++) {
            leverage = leverage.add(row[i].multiply(dot(inverse[i], row), DIGITS), DIGITS);
        }
        BigDecimal ofCurve = variance().multiply(leverage, DIGITS);
        return Optional.of(new Prediction(
                dot(row, coefficients.toArray(BigDecimal[]::new)).doubleValue(),
                root(ofCurve),
                root(ofCurve.add(variance(), DIGITS)),
                degreesOfFreedom()));
    }
}
