package porebench.quantity;

/**
 * A mass per volume.
 *
 * @param kilogramsPerCubicMetre the value in kilograms per cubic metre; finite
 */
public record Density(double kilogramsPerCubicMetre) implements Comparable<Density> {
    public Density {
        Require.finite("kilogramsPerCubicMetre", kilogramsPerCubicMetre);
    }

    /**
     * Returns this many of a unit.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Density of(double number, DensityUnit unit) {
        return unit.of(number);
    }

    /** Returns the value in the given unit. */
    public double in(DensityUnit unit) {
        return unit.in(this);
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
    }
}
