package porebench.store.rows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.column.CellReader;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;

/** The rows of one record while they are read; what is not as it must be is damage, and fails. */
final class ReadCells implements CellReader {
    private final StoredRow row;
    private final List<StoredRow> parts;

    ReadCells(StoredRow row, List<StoredRow> parts) {
        this.row = row;
        this.parts = parts;
    }

    /** What every record states is there, or its row is damaged: what an empty cell of a file means is no matter here. */
    @Override
    public boolean states(Column<?, ?> column) {
        return column.isNeeded()
                || row.has(column.name())
                || column.type().partOf().isPresent();
    }

    @Override
    public String text(Column<?, ?> column) {
        return row.text(column.name());
    }

    @Override
    public Optional<String> word(Column<?, ?> column) {
        return Optional.of(text(column));
    }

    /** Older books may hold what is refused today: the bounds are those of what comes in. */
    @Override
    public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
        return Optional.of(new BigDecimal(text(column)));
    }

    @Override
    public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
        return Optional.of(Integer.valueOf(text(column)));
    }

    @Override
    public Optional<LocalDate> day(Column<?, ?> column) {
        return Optional.of(LocalDate.parse(text(column)));
    }

    @Override
    public Optional<LocalDateTime> moment(Column<?, ?> column) {
        return Optional.of(StoredTimes.moment(text(column)));
    }

    @Override
    public Optional<Boolean> yesNo(Column<?, ?> column) {
        return whole(column, 0).map(yes -> yes == 1);
    }

    @Override
    public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
        return Optional.of(thing(column.name(), things, word));
    }

    @Override
    public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
        return Optional.of(thing(column.unitName(), units, symbol));
    }

    private <E> E thing(String column, List<E> things, Function<E, String> wordOf) {
        String word = row.text(column);
        for (E thing : things) {
            if (wordOf.apply(thing).equals(word)) {
                return thing;
            }
        }
        throw new NoSuchElementException(row.table() + "." + column + " says " + word);
    }

    @Override
    public boolean refuses(Column<?, ?> column, Problem problem) {
        return false;
    }

    @Override
    public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part) {
        Stream<StoredRow> own = parts.stream().filter(one -> one.table().equals(part.table()));
        Stream<StoredRow> inOrder = part.isOrdered()
                ? own.sorted(Comparator.comparingInt(
                        one -> Part.POSITION.read(new ReadCells(one, List.of())).orElseThrow()))
                : own;
        return Optional.of(inOrder.map(one ->
                        part.columns().read(new ReadCells(one, List.of())).orElseThrow())
                .toList());
    }
}
