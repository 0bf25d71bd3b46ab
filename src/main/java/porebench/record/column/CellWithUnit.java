package porebench.record.column;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/**
 * A type whose value stands in two cells: a number, and its unit beside it.
 *
 * @param unitsOf the units that may stand there
 * @param symbol how a unit is written
 * @param range the bounds of the number, in whatever unit
 * @param make makes a value of both
 * @param number the number of a value
 * @param unit the unit of a value
 * @param <V> the values
 * @param <U> the units
 */
record CellWithUnit<V, U>(
        List<U> unitsOf,
        Function<U, String> symbol,
        NumberRange range,
        BiFunction<BigDecimal, U, V> make,
        Function<V, BigDecimal> number,
        Function<V, U> unit)
        implements CellType<V> {
    @Override
    public void write(Column<?, V> column, V value, CellWriter to) {
        to.number(column, number.apply(value));
        to.unit(column, symbol.apply(unit.apply(value)));
    }

    @Override
    public Optional<V> read(Column<?, V> column, CellReader from) {
        Optional<BigDecimal> typed = from.number(column, range);
        Optional<U> beside = from.unit(column, unitsOf, symbol);
        return typed.isPresent() && beside.isPresent()
                ? Optional.of(make.apply(typed.get(), beside.get()))
                : Optional.empty();
    }

    @Override
    public List<String> units() {
        return unitsOf.stream().map(symbol).toList();
    }
}
