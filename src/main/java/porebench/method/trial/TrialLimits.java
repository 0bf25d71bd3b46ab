package porebench.method.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Mass;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;

/**
 * What the readings of a trial can never be. Such a trial is refused where it is entered or imported, and void where a lab book
 * of before holds one.
 */
public final class TrialLimits {
    private TrialLimits() {}

    /** Returns an error for each reading that cannot be, by field. */
    public static List<Problem> check(Readings readings) {
        List<Problem> problems = new ArrayList<>();
        double litres = readings.bowl().value().in(VolumeUnit.LITRE);
        if (litres > 0 && !Limit.BOWL.holds(litres)) {
            problems.add(Problem.error(
                    "bowl",
                    "trial.bowl-impossible",
                    readings.bowl(),
                    Limit.BOWL.lowInclusive(),
                    Limit.BOWL.highInclusive()));
        } else if (litres > 0) {
            masses(readings, litres, problems);
        }
        readings.soakMinutes()
                .filter(soak -> soak.compareTo(Limit.TRIAL_SOAK.highInclusive()) > 0)
                .ifPresent(soak -> problems.add(
                        Problem.error("soak", "trial.soak-impossible", soak, Limit.TRIAL_SOAK.highInclusive())));
        readings.waterCelsius()
                .filter(celsius -> !Limit.WATER.holds(celsius))
                .ifPresent(celsius -> problems.add(Problem.error(
                        "waterTemperature",
                        "trial.water-impossible",
                        celsius,
                        Limit.WATER.lowInclusive(),
                        Limit.WATER.highInclusive())));
        return problems;
    }

    /** Even of the heaviest stone there is a bowl cannot hold more than it would hold of that stone without voids. */
    private static void masses(Readings readings, double litres, List<Problem> problems) {
        double fine = kilograms(readings.fine());
        double coarse = kilograms(readings.coarse());
        double most = litres * Limit.RELATIVE_DENSITY.highInclusive().doubleValue();
        if (fine + coarse > most) {
            problems.add(Problem.error(
                    fine > coarse ? "fine" : "coarse",
                    "trial.sample-exceeds-bowl",
                    fine + coarse,
                    readings.bowl(),
                    most));
        }
    }

    private static double kilograms(Optional<Typed<Mass>> mass) {
        return mass.map(typed -> typed.value().kilograms()).orElse(0.0);
    }
}
