package porebench.desk.bench;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;

/**
 * What one line of a balance says.
 *
 * @param kind whether it is a mass that can be taken
 * @param number its digits, the decimal sign a point; empty where it is none
 * @param unit the symbol of its unit; empty where the line states none
 * @param line the line as it came
 */
public record BalanceReading(Kind kind, String number, String unit, String line) {
    private static final int GRAMS_DECIMALS = 3;

    /** What a line is. */
    public enum Kind {
        MASS,
        NOT_AT_REST,
        NO_MASS
    }

    /**
     * Returns the digits in a unit: those of the balance where it is the same, or moved by the decimal sign alone between grams and
     * kilograms. Empty where the digits would not stay those that the balance showed, or they are no number.
     */
    public Optional<BigDecimal> in(MassUnit wanted) {
        return Typed.parseNumber(number).flatMap(digits -> {
            if (unit.isEmpty() || unit.equals(wanted.symbol())) {
                return Optional.of(digits);
            }
            if (unit.equals("kg") && wanted == MassUnit.GRAM) {
                return Optional.of(plain(digits.movePointRight(GRAMS_DECIMALS)));
            }
            return unit.equals("g") && wanted == MassUnit.KILOGRAM
                    ? Optional.of(plain(digits.movePointLeft(GRAMS_DECIMALS)))
                    : Optional.empty();
        });
    }

    private static BigDecimal plain(BigDecimal digits) {
        return digits.scale() < 0 ? digits.setScale(0) : digits;
    }
}
