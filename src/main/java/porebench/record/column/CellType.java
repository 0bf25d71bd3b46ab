package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import porebench.method.Limit;
import porebench.method.Problem;
import porebench.quantity.Typed;
import porebench.quantity.Unit;

/**
 * What stands in a column, how it is written into cells and read out of them.
 *
 * @param <V> the values
 */
public interface CellType<V> {
    /** Puts a value into the cells of a column. */
    void write(Column<?, V> column, V value, CellWriter to);

    /** Reads the cells of a column that must state something; empty when what stands there is refused. */
    Optional<V> read(Column<?, V> column, CellReader from);

    /** Returns the symbols of the units that may stand beside a number; none where no unit does. */
    default List<String> units() {
        return List.of();
    }

    /** Returns whether the lab book holds it as a whole number rather than as a text. */
    default boolean isWhole() {
        return false;
    }

    /** Returns the words of the things of which one is chosen; none where none is. */
    default List<String> choices() {
        return List.of();
    }

    /** Returns whether it says yes or no. */
    default boolean isYesNo() {
        return false;
    }

    /** Returns what a record has several of, in a table of its own; empty where its value stands in the table of its kind. */
    default Optional<Part<?>> partOf() {
        return Optional.empty();
    }

    /** Text exactly as typed, which may be blank. */
    static CellType<String> text() {
        return new PlainCell<>(
                (from, column) -> Optional.of(from.text(column)), (to, column, text) -> to.text(column, text));
    }

    /** Text exactly as typed, which must not be blank. */
    static CellType<String> said() {
        return new PlainCell<>(
                (from, column) -> from.word(column).map(any -> from.text(column)),
                (to, column, text) -> to.text(column, text));
    }

    /** A word: what makes a thing of a text without white space around it, and gives it back. */
    static <V> CellType<V> word(Function<String, V> make, Function<V, String> text) {
        return new PlainCell<>(
                (from, column) -> from.word(column).map(make),
                (to, column, value) -> to.text(column, text.apply(value)));
    }

    /** A word as it is. */
    static CellType<String> word() {
        return word(Function.identity(), Function.identity());
    }

    /** A number with its digits as typed, within bounds. */
    static CellType<BigDecimal> number(NumberRange range) {
        return new PlainCell<>((from, column) -> from.number(column, range), CellWriter::number);
    }

    /** A number whose bounds hang on what another column states. */
    static CellType<BigDecimal> number(Function<CellReader, NumberRange> range) {
        return new PlainCell<>((from, column) -> from.number(column, range.apply(from)), CellWriter::number);
    }

    /** A number that is within what its quantity can be at all. */
    static CellType<BigDecimal> number(Limit limit) {
        return number(NumberRange.of(limit));
    }

    /** A whole number of at least a bound. */
    static CellType<Integer> whole(int lowInclusive) {
        return new PlainCell<>(
                (from, column) -> from.whole(column, lowInclusive), CellWriter::whole, true, false, List.of());
    }

    /** Yes or no. */
    static CellType<Boolean> yesNo() {
        return new PlainCell<>(CellReader::yesNo, CellWriter::yesNo, true, true, List.of());
    }

    /** A day. */
    static CellType<LocalDate> day() {
        return new PlainCell<>(CellReader::day, CellWriter::day);
    }

    /** A day and time by the laboratory's clock. */
    static CellType<LocalDateTime> moment() {
        return new PlainCell<>(CellReader::moment, CellWriter::moment);
    }

    /** One of some things, each known by a word. */
    static <E> CellType<E> choice(List<E> things, Function<E, String> word) {
        return new PlainCell<>(
                (from, column) -> from.choice(column, things, word),
                (to, column, thing) -> to.text(column, word.apply(thing)),
                false,
                false,
                things.stream().map(word).toList());
    }

    /** One of some things, each known by a word. */
    static <E> CellType<E> choice(E[] things, Function<E, String> word) {
        return choice(Arrays.asList(things), word);
    }

    /** Several things that belong to a record, each with columns of its own. */
    static <P> CellType<List<P>> several(Part<P> part) {
        return new SeveralCells<>(part);
    }

    /** The same type, its values looked at one by one. */
    default CellType<V> checked(Function<V, Optional<Problem>> wrong) {
        CellType<V> type = this;
        return new CellType<>() {
            @Override
            public void write(Column<?, V> column, V value, CellWriter to) {
                type.write(column, value, to);
            }

            @Override
            public Optional<V> read(Column<?, V> column, CellReader from) {
                return type.read(column, from)
                        .filter(value -> wrong.apply(value)
                                .filter(problem -> from.refuses(column, problem))
                                .isEmpty());
            }

            @Override
            public List<String> units() {
                return type.units();
            }

            @Override
            public List<String> choices() {
                return type.choices();
            }

            @Override
            public boolean isWhole() {
                return type.isWhole();
            }

            @Override
            public boolean isYesNo() {
                return type.isYesNo();
            }
        };
    }

    /** A quantity as typed: a number within bounds, and its unit beside it. */
    static <Q> CellType<Typed<Q>> quantity(Unit<Q>[] units, NumberRange range) {
        return new CellWithUnit<Typed<Q>, Unit<Q>>(
                Arrays.asList(units), Unit::symbol, range, Typed::new, Typed::number, Typed::unit);
    }

    /** A number within bounds and a unit of its own beside it, which together make a value. */
    static <V, U> CellType<V> withUnit(
            U[] units,
            Function<U, String> symbol,
            NumberRange range,
            BiFunction<BigDecimal, U, V> make,
            Function<V, BigDecimal> number,
            Function<V, U> unit) {
        return new CellWithUnit<>(Arrays.asList(units), symbol, range, make, number, unit);
    }
}
