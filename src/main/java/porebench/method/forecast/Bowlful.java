package porebench.method.forecast;

import java.util.Map;
import java.util.TreeMap;
import porebench.quantity.Mass;
import porebench.quantity.Require;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * What a measuring bowl holds of each source.
 *
 * @param masses by source, each at least 0, in the moisture state on the bench
 * @param bowl the bowl volume, greater than 0
 */
public record Bowlful(Map<String, Mass> masses, Volume bowl) {
    public Bowlful {
        masses = Map.copyOf(masses);
        Require.positive("bowl", bowl.cubicMetres());
        masses.forEach((source, mass) -> Require.atLeastZero("mass of " + source, mass.kilograms()));
    }

    /**
     * Returns how much each source counts: 100 times its mass in kg over the bowl volume in mL, so that pore air in mL/kg gives %
     * air. Sources of which there is nothing are left out.
     */
    Map<String, Double> amounts() {
        double millilitres = bowl.in(VolumeUnit.MILLILITRE);
        Map<String, Double> amounts = new TreeMap<>();
        masses.forEach((source, mass) -> {
            if (mass.kilograms() > 0) {
                amounts.put(source, 100 * mass.kilograms() / millilitres);
            }
        });
        return amounts;
    }
}
