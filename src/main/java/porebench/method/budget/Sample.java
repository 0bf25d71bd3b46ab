package porebench.method.budget;

import porebench.quantity.Require;

/**
 * The aggregate of a correction sample and how well it was weighed.
 *
 * @param kilograms fine and coarse aggregate together, in kg, greater than 0
 * @param standardUncertaintyKilograms in kg, at least 0
 */
public record Sample(double kilograms, double standardUncertaintyKilograms) {
    public Sample {
        Require.positive("kilograms", kilograms);
        Require.atLeastZero("standardUncertaintyKilograms", standardUncertaintyKilograms);
    }
}
