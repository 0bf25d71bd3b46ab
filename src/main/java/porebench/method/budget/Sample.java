package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The aggregate of a correction sample and how well it was weighed.
 *
 * @param kilograms fine and coarse aggregate together, in kg, greater than 0
 * @param standardUncertaintyKilograms in kg, at least 0
 * @param origin where the limit of the balance was taken from
 */
public record Sample(double kilograms, double standardUncertaintyKilograms, Origin origin) {
    public Sample {
        Require.positive("kilograms", kilograms);
        Require.atLeastZero("standardUncertaintyKilograms", standardUncertaintyKilograms);
    }
}
