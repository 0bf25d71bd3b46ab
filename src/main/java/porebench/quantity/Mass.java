package porebench.quantity;

/**
 * A mass; negative values are differences.
 *
 * @param kilograms the value in kilograms; finite
 */
public record Mass(double kilograms) implements Comparable<Mass> {
    public Mass {
        Require.finite("kilograms", kilograms);
    }

    /**
     * Returns this many of a unit.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Mass of(double number, MassUnit unit) {
        return unit.of(number);
    }

    /** Returns the value in the given unit. */
    public double in(MassUnit unit) {
        return unit.in(this);
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }

    /** Returns the sum of the two masses. */
    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    /** Returns this mass less the other. */
    public Mass minus(Mass other) {
        return new Mass(kilograms - other.kilograms);
    }

    /** Returns this mass multiplied by a plain number. */
    public Mass times(double factor) {
        return new Mass(kilograms * factor);
    }

    /** Returns the volume that this mass takes at a density greater than 0. */
    public Volume at(Density density) {
        return new Volume(kilograms / Require.positive("density", density.kilogramsPerCubicMetre()));
    }
}
