package porebench.statistics.variance;

/**
 * A number that depends on some variables, with its first and second derivatives in them.
 *
 * <p>Arithmetic on such numbers carries the derivatives along exactly, so that a likelihood written once can be climbed by
 * Newton's method. Source: forward differentiation by the chain rule.
 */
final class Jet {
    private final int variables;

    /** The value, the first derivatives, and the lower triangle of the second ones, row by row. */
    private final double[] parts;

    private Jet(int variables, double[] parts) {
        this.variables = variables;
        this.parts = parts;
    }

    static Jet constant(double value, int variables) {
        Jet constant = new Jet(variables, new double[parts(variables)]);
        constant.parts[0] = value;
        return constant;
    }

    /**
     * Returns a number whose derivatives are known.
     *
     * @param slopes the first derivatives
     * @param curves the second ones, symmetric
     */
    static Jet of(double value, double[] slopes, double[][] curves) {
        Jet known = constant(value, slopes.length);
        int place = 1 + slopes.length;
        for (int i = 0; i < slopes.length; i++) {
            known.parts[1 + i] = slopes[i];
            for (int j = 0; j <= i; j++) {
                known.parts[place++] = curves[i][j];
            }
        }
        return known;
    }

    /** Returns the number that stands at a place of some columns, one a part. */
    static Jet at(double[][] columns, int place) {
        double[] parts = new double[columns.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = columns[i][place];
        }
        int variables = 0;
        while (parts(variables) < parts.length) {
            variables++;
        }
        return new Jet(variables, parts);
    }

    /** Returns one of the variables themselves. */
    static Jet variable(double value, int index, int variables) {
        Jet variable = constant(value, variables);
        variable.parts[1 + index] = 1;
        return variable;
    }

    double value() {
        return parts[0];
    }

    /** Returns how many parts a number of some variables has: itself, and its first and second derivatives. */
    static int parts(int variables) {
        return 1 + variables + variables * (variables + 1) / 2;
    }

    /** Adds this number, times a factor, to the one that stands at a place of some columns, one a part. */
    void addTo(double[][] columns, int place, double factor) {
        for (int i = 0; i < parts.length; i++) {
            columns[i][place] += factor * parts[i];
        }
    }

    /** Returns the derivative in a variable. */
    double slope(int index) {
        return parts[1 + index];
    }

    /** Returns the second derivative in two variables. */
    double curve(int one, int other) {
        int high = Math.max(one, other);
        return parts[1 + variables + high * (high + 1) / 2 + Math.min(one, other)];
    }

    Jet plus(Jet other) {
        return plusTimes(1, other);
    }

    Jet minus(Jet other) {
        return plusTimes(-1, other);
    }

    /** Returns this number and another one, that times a plain factor. */
    Jet plusTimes(double factor, Jet other) {
        double[] sum = new double[parts.length];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = parts[i] + factor * other.parts[i];
        }
        return new Jet(variables, sum);
    }

    Jet times(double factor) {
        double[] product = new double[parts.length];
        for (int i = 0; i < product.length; i++) {
            product[i] = factor * parts[i];
        }
        return new Jet(variables, product);
    }

    Jet plus(double number) {
        double[] sum = parts.clone();
        sum[0] += number;
        return new Jet(variables, sum);
    }

    Jet times(Jet other) {
        double[] product = new double[parts.length];
        double mine = parts[0];
        double its = other.parts[0];
        product[0] = mine * its;
        int place = 1 + variables;
        for (int i = 1; i <= variables; i++) {
            product[i] = parts[i] * its + mine * other.parts[i];
            for (int j = 1; j <= i; j++) {
                product[place] = parts[place] * its
                        + parts[i] * other.parts[j]
                        + parts[j] * other.parts[i]
                        + mine * other.parts[place];
                place++;
            }
        }
        return new Jet(variables, product);
    }

    Jet inverse() {
        double inverse = 1 / parts[0];
        return chain(inverse, -inverse * inverse, 2 * inverse * inverse * inverse);
    }

    Jet log() {
        return chain(Math.log(parts[0]), 1 / parts[0], -1 / (parts[0] * parts[0]));
    }

    /** Returns a function of this number, of which the value and both derivatives are given. */
    private Jet chain(double result, double first, double second) {
        double[] made = new double[parts.length];
        made[0] = result;
        int place = 1 + variables;
        for (int i = 1; i <= variables; i++) {
            made[i] = first * parts[i];
            for (int j = 1; j <= i; j++) {
                made[place] = first * parts[place] + second * parts[i] * parts[j];
                place++;
            }
        }
        return new Jet(variables, made);
    }
}
