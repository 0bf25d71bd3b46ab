package porebench.quantity;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A quantity exactly as a person typed or read it: its digits and its unit.
 *
 * <p>The digits are kept so that a record shows later what was read on the day; computing uses {@link #value()}.
 *
 * @param number the digits as typed, trailing zeros included
 * @param unit the unit they were typed in
 * @param <Q> the quantity
 */
public record Typed<Q>(BigDecimal number, Unit<Q> unit) {
    // Two digits of exponent: no unit and no square makes such a number infinite or 0.
    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,2})?");

    /** Returns a quantity typed as a number and a unit. */
    public static <Q> Typed<Q> of(String number, Unit<Q> unit) {
        return new Typed<>(new BigDecimal(number), unit);
    }

    /** Returns the quantity in SI, for computing. */
    public Q value() {
        return unit.of(number.doubleValue());
    }

    /**
     * Reads a number and a unit from one text such as {@code 7.05 L}.
     *
     * @param text what was typed; the decimal sign is a point and there are no thousands separators
     * @param units the units that may be used
     * @return the quantity, or empty when the text is no such number with one of these units
     */
    public static <Q> Optional<Typed<Q>> parse(String text, List<? extends Unit<Q>> units) {
        Spelling.Halves halves = Spelling.halves(text);
        Optional<BigDecimal> number = parseNumber(halves.number());
        Optional<? extends Unit<Q>> unit = parseUnit(halves.unit(), units);
        if (number.isEmpty() || unit.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Typed<>(number.get(), unit.get()));
    }

    /** Reads a unit by its symbol or another spelling of it, letter case not mattering. */
    public static <U extends Unit<?>> Optional<U> parseUnit(String symbol, List<U> units) {
        return units.stream()
                .filter(unit -> Spelling.means(symbol, unit.symbol()))
                .findFirst();
    }

    /** Reads a plain number with a decimal point, the whole text being used; empty for anything else. */
    public static Optional<BigDecimal> parseNumber(String text) {
        String stripped = Spelling.stripped(text);
        if (stripped.length() > 40 || !PLAIN_NUMBER.matcher(stripped).matches()) {
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(stripped));
    }

    /** Returns the symbols of some units, for a message that says which may be used. */
    public static String symbols(Unit<?>... units) {
        return String.join(", ", Arrays.stream(units).map(Unit::symbol).toList());
    }

    /** Returns whether a quantity is what was typed, once it is rounded to as many digits. */
    public boolean agreesWith(Q exact) {
        double halfStep = number.ulp().doubleValue() / 2;
        // What binary fractions add is far below any digit typed.
        return Math.abs(unit.in(exact) - number.doubleValue()) <= Slack.over(halfStep);
    }

    /** Returns the digits and the unit, as in {@code 7.05 L}. */
    @Override
    public String toString() {
        return number.toPlainString() + " " + unit.symbol();
    }
}
