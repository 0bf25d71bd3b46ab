package porebench.statistics;

/**
 * A number that depends on some variables, with its first and second derivatives in them.
 *
 * <p>Arithmetic on such numbers carries the derivatives along exactly, so that a likelihood written once can be climbed by
 * Newton's method. Source: forward differentiation by the chain rule.
 */
final class Jet {
    final double value;
    final double[] slope;
    final double[][] curve;

    private Jet(double value, double[] slope, double[][] curve) {
        this.value = value;
        this.slope = slope;
        this.curve = curve;
    }

    static Jet constant(double value, int variables) {
        return new Jet(value, new double[variables], new double[variables][variables]);
    }

    /** Returns one of the variables themselves. */
    static Jet variable(double value, int index, int variables) {
        Jet variable = constant(value, variables);
        variable.slope[index] = 1;
        return variable;
    }

    Jet plus(Jet other) {
        Jet sum = constant(value + other.value, slope.length);
        for (int i = 0; i < slope.length; i++) {
            sum.slope[i] = slope[i] + other.slope[i];
            for (int j = 0; j <= i; j++) {
                sum.curve[i][j] = curve[i][j] + other.curve[i][j];
            }
        }
        return sum;
    }

    Jet minus(Jet other) {
        return plus(other.times(-1));
    }

    Jet times(double factor) {
        return chain(value * factor, factor, 0);
    }

    Jet plus(double number) {
        return chain(value + number, 1, 0);
    }

    Jet times(Jet other) {
        Jet product = constant(value * other.value, slope.length);
        for (int i = 0; i < slope.length; i++) {
            product.slope[i] = slope[i] * other.value + value * other.slope[i];
            for (int j = 0; j <= i; j++) {
                product.curve[i][j] = curve[i][j] * other.value
                        + slope[i] * other.slope[j]
                        + slope[j] * other.slope[i]
                        + value * other.curve[i][j];
            }
        }
        return product;
    }

    Jet inverse() {
        double inverse = 1 / value;
        return chain(inverse, -inverse * inverse, 2 * inverse * inverse * inverse);
    }

    Jet log() {
        return chain(Math.log(value), 1 / value, -1 / (value * value));
    }

    /** Returns a function of this number, of which the value and both derivatives are given. */
    private Jet chain(double result, double first, double second) {
        Jet made = constant(result, slope.length);
        for (int i = 0; i < slope.length; i++) {
            made.slope[i] = first * slope[i];
            for (int j = 0; j <= i; j++) {
                made.curve[i][j] = first * curve[i][j] + second * slope[i] * slope[j];
            }
        }
        return made;
    }
}
