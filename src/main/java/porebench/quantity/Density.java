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

    @Override
    public int compareTo(Density other) {
        return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
    }
}
