package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.Problem;

/**
 * The cells of one record, wherever they stand: a row of the lab book, a row of a file, a form. What stands in a cell and is
 * not as it must be gives nothing back; the reader notes it, or fails where nothing can be wrong without damage.
 */
public interface CellReader {
    /** Returns whether anything stands in a column. */
    boolean states(Column<?, ?> column);

    /** Returns a text exactly as it stands; empty text where nothing does. */
    String text(Column<?, ?> column);

    /** Returns a text without white space around it, which must be there. */
    Optional<String> word(Column<?, ?> column);

    /** Returns a number with its digits as typed, which must be there and within bounds. */
    Optional<BigDecimal> number(Column<?, ?> column, NumberRange range);

    /** Returns a whole number, which must be there and at least a bound. */
    Optional<Integer> whole(Column<?, ?> column, int lowInclusive);

    /** Returns a day, which must be there. */
    Optional<LocalDate> day(Column<?, ?> column);

    /** Returns a day and time by the laboratory's clock, which must be there. */
    Optional<LocalDateTime> moment(Column<?, ?> column);

    /** Returns whether it says yes rather than no; it must say one of them. */
    Optional<Boolean> yesNo(Column<?, ?> column);

    /** Returns the one of some things whose word stands in a column; it must be one of them. */
    <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word);

    /**
     * Notes that a value cannot be, and returns whether it is refused for that; what the lab book holds already is not.
     *
     * @param column the column
     * @param problem what is wrong
     */
    boolean refuses(Column<?, ?> column, Problem problem);

    /** Returns several things that belong to the record, in their order; none where there are none. */
    <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part);

    /** Returns the one of some units whose symbol stands in the column beside a number; it must be one of them. */
    <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol);
}
