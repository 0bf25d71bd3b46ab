package porebench.desk.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.Problem;
import porebench.quantity.Spelling;
import porebench.record.column.CellReader;
import porebench.record.column.Column;
import porebench.record.column.NumberRange;
import porebench.record.column.Part;

/**
 * Spells a draft, typed in one language, as it would be typed in another: its numbers with the decimal sign of that. What could
 * not be read in the one stays as it was typed.
 */
public final class Respelling {
    private final Numbers from;
    private final Numbers to;

    public Respelling(Numbers from, Numbers to) {
        this.from = from;
        this.to = to;
    }

    /** Returns what is typed so far of one number. */
    public String begun(String typed) {
        return from.isSpeltAs(to) ? typed : typed.replace(from.sign(), to.sign());
    }

    /** Returns a draft of some columns, and of others as it is. */
    public TypedDraft of(TypedDraft draft, List<? extends Column<?, ?>> columns) {
        if (from.isSpeltAs(to)) {
            return draft;
        }
        Cells cells = new Cells(draft);
        for (Column<?, ?> column : columns) {
            column.type()
                    .partOf()
                    .ifPresentOrElse(
                            part -> cells.spelt = cells.spelt.with(
                                    column,
                                    draft.rows(column).stream()
                                            .map(row -> of(row, part.columns().all()))
                                            .toList()),
                            () -> column.read(cells));
        }
        return cells.spelt;
    }

    /** Reads the draft as a form does, and spells what is read as a number. */
    private final class Cells implements CellReader {
        private final DraftReader reader;
        private TypedDraft spelt;

        Cells(TypedDraft draft) {
            this.reader = new DraftReader(draft, from, Column::name);
            this.spelt = draft;
        }

        @Override
        public Optional<BigDecimal> number(Column<?, ?> column, NumberRange range) {
            String text = spelt.text(column);
            Spelling.Halves halves = Spelling.halves(text);
            boolean isUnit = column.unitsTyped().stream().anyMatch(unit -> Spelling.means(halves.unit(), unit));
            String number = isUnit ? halves.number() : text;
            from.parse(number, range::holds)
                    .map(to::show)
                    .map(shown -> isUnit ? shown + " " + halves.unit() : shown)
                    .ifPresent(shown -> spelt = spelt.with(column, shown));
            return Optional.empty();
        }

        @Override
        public boolean states(Column<?, ?> column) {
            return reader.states(column);
        }

        @Override
        public String text(Column<?, ?> column) {
            return reader.text(column);
        }

        @Override
        public Optional<String> word(Column<?, ?> column) {
            return Optional.empty();
        }

        @Override
        public Optional<Integer> whole(Column<?, ?> column, int lowInclusive) {
            return Optional.empty();
        }

        @Override
        public Optional<LocalDate> day(Column<?, ?> column) {
            return Optional.empty();
        }

        @Override
        public Optional<LocalDateTime> moment(Column<?, ?> column) {
            return Optional.empty();
        }

        @Override
        public Optional<Boolean> yesNo(Column<?, ?> column) {
            return Optional.empty();
        }

        @Override
        public <E> Optional<E> choice(Column<?, ?> column, List<E> things, Function<E, String> word) {
            return Optional.empty();
        }

        @Override
        public boolean refuses(Column<?, ?> column, Problem problem) {
            return true;
        }

        @Override
        public <P> Optional<List<P>> several(Column<?, ?> column, Part<P> part) {
            return Optional.of(new ArrayList<>());
        }

        /** A number is read behind its unit; which one it is matters to nobody here. */
        @Override
        public <U> Optional<U> unit(Column<?, ?> column, List<U> units, Function<U, String> symbol) {
            return units.stream().findFirst();
        }
    }
}
