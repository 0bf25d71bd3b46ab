package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The volume of a bowl and how well it is known.
 *
 * @param litres the volume, in L, greater than 0
 * @param standardUncertaintyLitres in L, at least 0
 * @param degreesOfFreedom at least 0.5; infinite when it rests on steps of scales alone
 * @param isWeighed whether it was found by weighing, rather than stated
 */
public record Bowl(double litres, double standardUncertaintyLitres, double degreesOfFreedom, boolean isWeighed) {
    public Bowl {
        Require.positive("litres", litres);
        Require.atLeastZero("standardUncertaintyLitres", standardUncertaintyLitres);
    }

    /** Returns a volume that was stated and not found by weighing: nothing is known but its last digit. */
    public static Bowl stated(double litres, double stepLitres) {
        return new Bowl(litres, stepLitres / Math.sqrt(12), Double.POSITIVE_INFINITY, false);
    }
}
