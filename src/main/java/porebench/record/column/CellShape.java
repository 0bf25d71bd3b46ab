package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.Problem;

/**
 * What a cell of a column may hold, found by asking the column to read and hearing what it asks for: so it is said where the
 * column is stated, and nowhere else.
 *
 * @param kind what it is
 * @param range the bounds of a number; empty where it is none
 * @param isBlankRefused whether a cell that is read must not be empty
 * @param words the words of which one is chosen; none where none is
 */
public record CellShape(Kind kind, Optional<NumberRange> range, boolean isBlankRefused, List<String> words) {
    public CellShape {
        words = List.copyOf(words);
    }

    /** What a cell may hold. */
    public enum Kind {
        TEXT,
        NUMBER,
        WHOLE,
        YES_NO,
        DAY,
        MOMENT,
        CHOICE,
        /** Several things with semicolons between. */
        SEVERAL
    }

    /** Returns what a cell of a column may hold; of a number with its unit beside it, the number. */
    public static <V> CellShape of(Column<?, V> column) {
        Listener listener = new Listener(column);
        column.type().read(column, listener);
        return listener.heard.orElseThrow(() ->
                new IllegalStateException("column must ask for something, but asks for nothing: " + column.name()));
    }

    /** Returns the numbers that this or another one holds; what both say besides is the same. */
    public CellShape or(CellShape other) {
        return new CellShape(
                kind,
                range.flatMap(own -> other.range.map(its -> new NumberRange(
                        own.lowInclusive().min(its.lowInclusive()),
                        own.highInclusive().max(its.highInclusive())))),
                isBlankRefused && other.isBlankRefused,
                words);
    }

    /** A reader that has nothing to give and notes what the one column is asked for. */
    private static final class Listener implements CellReader {
        private final Column<?, ?> asked;
        private Optional<CellShape> heard = Optional.empty();

        Listener(Column<?, ?> asked) {
            this.asked = asked;
        }

        /** The first question counts: a text that must be there is asked for as a word first. */
        private void hear(Column<?, ?> column, CellShape shape) {
            if (column == asked && heard.isEmpty()) {
                heard = Optional.of(shape);
            }
        }

        private void hear(Column<?, ?> column, Kind kind) {
            hear(column, new CellShape(kind, Optional.empty(), kind != Kind.SEVERAL, List.of()));
        }

        @Override
        public boolean states(Column<?, ?> column) {
            return false;
        }

        @Override
        public String text(Column<?, ?> column) {
            hear(column, new CellShape(Kind.TEXT, Optional.empty(), false, List.of()));
            return "";
        }

        @Override
        public Optional<String> word(Column<?, ?> column) {
            hear(column, Kind.TEXT);
            return Optional.empty();
        }

        @Override
        public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
            hear(column, new CellShape(Kind.NUMBER, Optional.of(range), true, List.of()));
            return Optional.empty();
        }

        @Override
        public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
            NumberRange range =
                    new NumberRange(BigDecimal.valueOf(lowInclusive), BigDecimal.valueOf(Integer.MAX_VALUE));
            hear(column, new CellShape(Kind.WHOLE, Optional.of(range), true, List.of()));
            return Optional.empty();
        }

        @Override
        public Optional<LocalDate> day(Column<?, ?> column) {
            hear(column, Kind.DAY);
            return Optional.empty();
        }

        @Override
        public Optional<LocalDateTime> moment(Column<?, ?> column) {
            hear(column, Kind.MOMENT);
            return Optional.empty();
        }

        @Override
        public Optional<Boolean> yesNo(Column<?, ?> column) {
            hear(column, Kind.YES_NO);
            return Optional.empty();
        }

        @Override
        public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
            hear(
                    column,
                    new CellShape(
                            Kind.CHOICE,
                            Optional.empty(),
                            true,
                            things.stream().map(word).toList()));
            return Optional.empty();
        }

        @Override
        public boolean refuses(Column<?, ?> column, Problem problem) {
            return true;
        }

        @Override
        public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part) {
            hear(column, Kind.SEVERAL);
            return Optional.empty();
        }

        @Override
        public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
            return Optional.empty();
        }
    }
}
