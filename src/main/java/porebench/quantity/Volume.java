package porebench.quantity;

/**
 * A volume; negative values are differences.
 *
 * @param cubicMetres the value in cubic metres; finite
 */
public record Volume(double cubicMetres) implements Comparable<Volume> {
    public Volume {
        Require.finite("cubicMetres", cubicMetres);
    }

    /**
     * Returns this many of a unit.
     *
     * @throws IllegalArgumentException if the number is not finite
     */
    public static Volume of(double number, VolumeUnit unit) {
        return unit.of(number);
    }

    /** Returns the value in the given unit. */
    public double in(VolumeUnit unit) {
        return unit.in(this);
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }

    /** Returns the sum of the two volumes. */
    public Volume plus(Volume other) {
        return new Volume(cubicMetres + other.cubicMetres);
    }

    /** Returns this volume less the other. */
    public Volume minus(Volume other) {
        return new Volume(cubicMetres - other.cubicMetres);
    }

    /** Returns this volume multiplied by a plain number. */
    public Volume times(double factor) {
        return new Volume(cubicMetres * factor);
    }

    /** Returns the mass of this volume at a density. */
    public Mass at(Density density) {
        return new Mass(cubicMetres * density.kilogramsPerCubicMetre());
    }
}
