package porebench.evidence.budget;

import java.time.LocalDate;
import porebench.evidence.LaboratoryEquipment;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.method.budget.Omission;
import porebench.method.budget.Origin;
import porebench.method.profile.Profiles;
import porebench.method.trial.Withdrawal;
import porebench.record.EquipmentKind;

/** How far cylinder, balance and vessel may be wrong on a day: by the equipment in use, else by the figures of a profile. */
record MeasureLimits(Profile profile, LaboratoryEquipment equipment) {
    /** Returns the limit of what measures water in a unit, in mL, in g or in % of the bowl. */
    LaboratoryEquipment.Limit of(Withdrawal.Unit unit, LocalDate day) {
        FigureName usual = figure(unit);
        return equipment.limit(kind(unit), day, profile.number(usual), origin(usual));
    }

    /** A figure that is still as a named standard has it was never stated by anybody in the laboratory. */
    private Origin origin(FigureName name) {
        return profile.basedOn()
                .flatMap(Profiles::find)
                .filter(standard -> !standard.figure(name).equals(profile.figure(name)))
                .map(changed -> Origin.LABORATORY)
                .orElse(Origin.ASSUMED);
    }

    /** Returns the origin of several limits together: that of the one least vouched for. */
    static Origin least(Origin one, Origin other) {
        for (Origin origin : new Origin[] {Origin.ASSUMED, Origin.LABORATORY}) {
            if (one == origin || other == origin) {
                return origin;
            }
        }
        return Origin.EQUIPMENT;
    }

    /** Returns what is to be said where a piece in use had no calibration that holds. */
    static Omission wanting(Withdrawal.Unit unit) {
        return switch (unit) {
            case MILLILITRE -> Omission.CYLINDER_NOT_CALIBRATED;
            case GRAM -> Omission.BALANCE_NOT_CALIBRATED;
            case PERCENT -> Omission.VESSEL_NOT_CALIBRATED;
        };
    }

    static EquipmentKind kind(Withdrawal.Unit unit) {
        return switch (unit) {
            case MILLILITRE -> EquipmentKind.CYLINDER;
            case GRAM -> EquipmentKind.BALANCE;
            case PERCENT -> EquipmentKind.VESSEL;
        };
    }

    private static FigureName figure(Withdrawal.Unit unit) {
        return switch (unit) {
            case MILLILITRE -> FigureName.CYLINDER_LIMIT;
            case GRAM -> FigureName.BALANCE_LIMIT;
            case PERCENT -> FigureName.VESSEL_LIMIT;
        };
    }
}
