package porebench.record;

import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.budget.Origin;
import porebench.method.profile.Profiles;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;

/** How far cylinder, balance and vessel may be wrong, by the figures of a profile. */
record MeasureLimits(Profile profile) {
    /** Returns the limit of what measures water in a unit, in mL, in g or in % of the bowl. */
    double of(Withdrawal.Unit unit) {
        return profile.number(figure(unit));
    }

    /** Returns where the limit of what measures water in a unit was taken from. */
    Origin origin(Withdrawal.Unit unit) {
        return origin(figure(unit));
    }

    /** Returns the limit of the balance. */
    Mass balance() {
        return Mass.of(profile.number(FigureName.BALANCE_LIMIT), MassUnit.GRAM);
    }

    /** Returns where the limit of the balance was taken from. */
    Origin balanceOrigin() {
        return origin(FigureName.BALANCE_LIMIT);
    }

    /** A figure that is still as a named standard has it was never stated by anybody in the laboratory. */
    private Origin origin(FigureName name) {
        return profile.basedOn()
                .flatMap(Profiles::find)
                .filter(standard -> !standard.figure(name).equals(profile.figure(name)))
                .map(changed -> Origin.LABORATORY)
                .orElse(Origin.ASSUMED);
    }

    private static FigureName figure(Withdrawal.Unit unit) {
        return switch (unit) {
            case MILLILITRE -> FigureName.CYLINDER_LIMIT;
            case GRAM -> FigureName.BALANCE_LIMIT;
            case PERCENT -> FigureName.VESSEL_LIMIT;
        };
    }
}
