package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/** Where the cells of one record are put: a row of the lab book, a row of a file. */
public interface CellWriter {
    /** Puts a text, exactly as it is. */
    void text(Column<?, ?> column, String text);

    /** Puts a number with all its digits. */
    void number(Column<?, ?> column, BigDecimal number);

    /** Puts a whole number. */
    void whole(Column<?, ?> column, int number);

    /** Puts a day. */
    void day(Column<?, ?> column, LocalDate day);

    /** Puts a day and time. */
    void moment(Column<?, ?> column, LocalDateTime moment);

    /** Puts yes or no. */
    void yesNo(Column<?, ?> column, boolean yes);

    /** Puts several things that belong to the record, in their order. */
    <P> void several(Column<?, ?> column, Part<P> part, List<P> things);

    /** Puts the symbol of a unit beside the number of a column, which stands there already. */
    void unit(Column<?, ?> column, String symbol);
}
