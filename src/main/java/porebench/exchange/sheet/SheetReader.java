package porebench.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.method.Problem;
import porebench.quantity.Spelling;
import porebench.record.column.CellReader;
import porebench.record.column.Column;
import porebench.record.column.FixedUnit;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;

/** The cells of a record in a file; what is wrong is noted in the row where it stands. */
public final class SheetReader implements CellReader {
    private final Function<String, HeadedRow> stating;

    private final Optional<List<?>> rows;

    private SheetReader(Function<String, HeadedRow> stating, Optional<List<?>> rows) {
        this.stating = stating;
        this.rows = rows;
    }

    /** Reads a record that one row states. */
    public static SheetReader of(HeadedRow entry) {
        return new SheetReader(any -> entry, Optional.empty());
    }

    /**
     * Reads a record that several rows state.
     *
     * @param rows what they state one by one, as far as it could be read
     */
    public static SheetReader of(RowGroup group, List<?> rows) {
        return new SheetReader(group::stating, Optional.of(rows));
    }

    private HeadedRow row(Column<?, ?> column) {
        return stating.apply(column.heading());
    }

    @Override
    public boolean states(Column<?, ?> column) {
        return rows.isPresent() && column.type().partOf().isPresent()
                || row(column).optionalWord(column.heading()).isPresent();
    }

    @Override
    public String text(Column<?, ?> column) {
        return row(column).text(column.heading());
    }

    @Override
    public Optional<String> word(Column<?, ?> column) {
        return row(column).word(column.heading());
    }

    @Override
    public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
        String heading = column.heading();
        HeadedRow row = row(column);
        Optional<FixedUnit> fixed = FixedUnit.of(column);
        Optional<FixedUnit.Other> other = fixed.flatMap(
                unit -> unit.other(Spelling.halves(row.text(heading)).unit()));
        if (other.isEmpty()) {
            return row.number(heading, column.unitsTyped(), range);
        }
        Optional<BigDecimal> kept = row.number(heading, column.unitsTyped(), NumberRange.ANY)
                .map(typed -> fixed.get().kept(typed, other.get()));
        kept.filter(number -> !range.holds(number))
                .ifPresent(number -> row.error(
                        heading, "csv.out-of-range", heading, number, range.lowInclusive(), range.highInclusive()));
        return kept.filter(range::holds);
    }

    @Override
    public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
        return row(column).whole(column.heading(), lowInclusive);
    }

    @Override
    public Optional<LocalDate> day(Column<?, ?> column) {
        return row(column).date(column.heading());
    }

    @Override
    public Optional<LocalDateTime> moment(Column<?, ?> column) {
        return row(column).dateTime(column.heading());
    }

    @Override
    public Optional<Boolean> yesNo(Column<?, ?> column) {
        return row(column).yesNo(column.heading());
    }

    @Override
    public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
        return row(column).choice(column.heading(), things, word);
    }

    @Override
    public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
        List<String> headings = column.unitHeadings();
        Optional<String> stated = headings.stream()
                .filter(each -> stating.apply(each).optionalWord(each).isPresent())
                .findFirst();
        Optional<U> behind = row(column).unitBehind(column.heading(), units, symbol);
        // A unit that columns share does not speak against one of them that carries its own.
        boolean isShared = stated.filter(heading -> heading.equals(column.heading() + "_unit"))
                .isEmpty();
        if (isShared && behind.isPresent()) {
            return behind;
        }
        String heading = stated.orElse(headings.get(headings.size() - 1));
        Optional<U> beside = stating.apply(heading).unit(heading, units, symbol);
        if (behind.isPresent() && beside.isPresent() && !behind.equals(beside)) {
            row(column)
                    .error(
                            column.heading(),
                            "csv.two-units",
                            column.heading(),
                            symbol.apply(behind.get()),
                            heading,
                            symbol.apply(beside.get()));
            return Optional.empty();
        }
        return beside;
    }

    @Override
    public boolean refuses(Column<?, ?> column, Problem problem) {
        row(column).error(column.heading(), problem);
        return true;
    }

    @Override
    @SuppressWarnings("unchecked") // the rows of a group state the things of its record
    public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part) {
        if (rows.isPresent()) {
            return rows.map(things -> (List<P>) things);
        }
        return Optional.of(ListedCell.read(row(column), column.heading(), part));
    }
}
