package porebench.desk.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import porebench.desk.form.Numbers;
import porebench.method.RoundingRule;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;

/** Masses as they are read off a bench balance: whole grams, tenths below 100 g, hundredths of a pound. */
final class MassText {
    private static final double SMALL_KILOGRAMS = 0.1;

    private final Numbers numbers;
    private final MassUnit unit;

    MassText(Numbers numbers, MassUnit unit) {
        this.numbers = numbers;
        this.unit = unit;
    }

    /** Returns a mass without its unit. */
    String show(Mass mass) {
        return numbers.show(mass.in(unit), decimals(mass));
    }

    /** Returns the lower limit of a tolerance, rounded inward, so that a mass just at the figure is within. */
    String showLowest(Mass limit) {
        return show(limit, RoundingMode.CEILING);
    }

    /** Returns the upper limit of a tolerance, rounded inward. */
    String showHighest(Mass limit) {
        return show(limit, RoundingMode.FLOOR);
    }

    private String show(Mass limit, RoundingMode inward) {
        BigDecimal exact = RoundingRule.withoutNoise(limit.in(unit));
        int decimals = decimals(limit);
        return numbers.show(exact.setScale(decimals, inward).doubleValue(), decimals);
    }

    private int decimals(Mass mass) {
        boolean isSmall = Math.abs(mass.kilograms()) < SMALL_KILOGRAMS;
        return switch (unit) {
            case GRAM -> isSmall ? 1 : 0;
            case KILOGRAM -> isSmall ? 4 : 3;
            case POUND -> 2;
            case OUNCE -> 1;
        };
    }
}
