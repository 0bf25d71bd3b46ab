package porebench.method.meter;

import java.util.ArrayList;
import java.util.List;
import porebench.method.Answer;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.method.WaterDensity;
import porebench.quantity.Density;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * The volume of a measuring bowl, from weighing it empty and full of water under a glass plate.
 *
 * <p>V = (full - empty - plate) / rho, masses in kg, rho the density of water at its temperature in kg/m3, V in m3.
 *
 * <p>Source: JIS A 1128, clause 5.1 (seen): masses to 1 g, water to 1 C. Differences from the source: none; the buoyancy
 * of air is left out, which makes the volume about 0.1 % low.
 *
 * @param volume the volume of the bowl
 * @param waterDensity the density of the water that filled it
 */
public record BowlVolume(Volume volume, Density waterDensity) {
    /**
     * Computes the bowl volume.
     *
     * @param empty mass of the empty bowl
     * @param plate mass of the glass plate, 0 when the bowl was filled without one
     * @param full mass of the bowl full of water, plate on
     * @param water temperature of the water, from 0 to 40 C
     * @return the volume, or what is wrong with the weighings
     */
    public static Answer<BowlVolume> of(Mass empty, Mass plate, Mass full, Temperature water) {
        List<Problem> problems = new ArrayList<>();
        checkPositive(problems, "empty", "empty-bowl", empty);
        checkPositive(problems, "full", "full-bowl", full);
        if (plate.kilograms() < 0) {
            problems.add(Problem.error("plate", "bowl.mass-negative", new Problem.Word("plate"), plate.kilograms()));
        }
        if (!WaterDensity.covers(water)) {
            problems.add(Problem.error(
                    "waterTemperature",
                    "water.temperature-out-of-range",
                    water.celsius(),
                    WaterDensity.LOWEST_CELSIUS,
                    WaterDensity.HIGHEST_CELSIUS));
        }
        Mass content = full.minus(empty).minus(plate);
        if (problems.isEmpty() && content.kilograms() <= 0) {
            problems.add(Problem.error(
                    "full",
                    "bowl.full-too-light",
                    full.kilograms(),
                    empty.plus(plate).kilograms()));
        }
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        Density density = WaterDensity.at(water);
        double litres = content.at(density).in(VolumeUnit.LITRE);
        if (!Limit.VESSEL.holds(litres)) {
            return Answer.refused(List.of(Problem.error(
                    "full",
                    "bowl.vessel-impossible",
                    litres,
                    Limit.VESSEL.lowInclusive(),
                    Limit.VESSEL.highInclusive())));
        }
        return Answer.of(new BowlVolume(content.at(density), density), List.of());
    }

    private static void checkPositive(List<Problem> problems, String field, String word, Mass mass) {
        if (mass.kilograms() <= 0) {
            problems.add(Problem.error(field, "bowl.mass-not-positive", new Problem.Word(word), mass.kilograms()));
        }
    }
}
