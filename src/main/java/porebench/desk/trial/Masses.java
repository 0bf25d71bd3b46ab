package porebench.desk.trial;

import java.math.RoundingMode;
import porebench.desk.form.Numbers;
import porebench.method.RoundingRule;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/** Masses of the bench as they are shown. */
final class Masses {
    private Masses() {}

    /** Returns a mass to the gram or nearly so, whatever the unit. */
    static String show(Mass mass, MassUnit unit, Numbers numbers) {
        return numbers.show(mass.in(unit), decimals(unit));
    }

    /** Returns a limit of a mass in the same decimals, rounded inward, so that a mass just at the figure is within. */
    static String limit(Mass limit, MassUnit unit, Numbers numbers, RoundingMode inward) {
        return numbers.show(RoundingRule.withoutNoise(limit.in(unit)).setScale(decimals(unit), inward));
    }

    /** Returns a typed mass: its own digits where its unit is the one asked for, and otherwise converted. */
    static String typedIn(Typed<Mass> typed, MassUnit unit, Numbers numbers) {
        return typed.unit() == unit ? numbers.show(typed.number()) : show(typed.value(), unit, numbers);
    }

    private static int decimals(MassUnit unit) {
        return switch (unit) {
            case GRAM -> 0;
            case KILOGRAM, POUND -> 3;
            case OUNCE -> 2;
        };
    }
}
