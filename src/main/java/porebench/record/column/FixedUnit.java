package porebench.record.column;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import porebench.quantity.LengthUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Spelling;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Unit;

/**
 * The unit in which a column keeps plain numbers, as the end of its name says it, and the others they may be typed in.
 *
 * @param kept the symbol of the unit kept
 * @param decimals to how many a number typed in another unit is kept: what is read on a scale of that unit comes back the same
 * @param others the other units
 */
public record FixedUnit(String kept, int decimals, List<Other> others) {
    private static final Map<String, FixedUnit> ALL = Map.of(
            "c", of(2, TemperatureUnit.CELSIUS, TemperatureUnit.FAHRENHEIT),
            "kpa",
                    of(
                            3,
                            PressureUnit.KILOPASCAL,
                            PressureUnit.MILLIBAR,
                            PressureUnit.POUND_PER_SQUARE_INCH,
                            PressureUnit.INCH_OF_MERCURY),
            "mm", of(3, LengthUnit.MILLIMETRE, LengthUnit.INCH),
            "m", of(2, LengthUnit.METRE, LengthUnit.FOOT),
            "pct", new FixedUnit("pct", 0, List.of()),
            "minutes", new FixedUnit("min", 0, List.of()));

    public FixedUnit {
        others = List.copyOf(others);
    }

    /**
     * Another unit for the numbers of a column.
     *
     * @param symbol its symbol
     * @param toKept makes a number of the unit kept out of one of it
     * @param fromKept makes a number of it out of one of the unit kept
     */
    public record Other(String symbol, DoubleUnaryOperator toKept, DoubleUnaryOperator fromKept) {}

    @SafeVarargs
    private static <Q> FixedUnit of(int decimals, Unit<Q> kept, Unit<Q>... others) {
        return new FixedUnit(
                kept.symbol(),
                decimals,
                Stream.of(others)
                        .map(other -> new Other(
                                other.symbol(),
                                number -> kept.in(other.of(number)),
                                number -> other.in(kept.of(number))))
                        .toList());
    }

    /** Returns the unit in which a column keeps plain numbers; empty where its name does not say one. */
    public static Optional<FixedUnit> of(Column<?, ?> column) {
        String name = column.name();
        return column.hasUnit() || column.type().isYesNo()
                ? Optional.empty()
                : Optional.ofNullable(ALL.get(name.substring(name.lastIndexOf('_') + 1)));
    }

    /** Returns the symbols of all units, the one kept first. */
    public List<String> symbols() {
        return Stream.concat(Stream.of(kept), others.stream().map(Other::symbol))
                .toList();
    }

    /** Returns the other unit that a person wrote, in whatever spelling; empty when it is the one kept, or none. */
    public Optional<Other> other(String typed) {
        return others.stream()
                .filter(other -> Spelling.means(typed, other.symbol()))
                .findFirst();
    }

    /** Returns a number typed in another unit as it is kept. */
    public BigDecimal kept(BigDecimal typed, Other unit) {
        return rounded(unit.toKept(), typed);
    }

    /** Returns a number that is kept as it is in another unit. */
    public BigDecimal in(BigDecimal number, Other unit) {
        return rounded(unit.fromKept(), number);
    }

    private BigDecimal rounded(DoubleUnaryOperator conversion, BigDecimal number) {
        return BigDecimal.valueOf(conversion.applyAsDouble(number.doubleValue()))
                .setScale(decimals, RoundingMode.HALF_EVEN);
    }
}
