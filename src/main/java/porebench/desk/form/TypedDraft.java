package porebench.desk.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import porebench.record.column.CellWriter;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.Part;

/**
 * A record as typed into a form, column by column: what stands in the field, and the unit beside it.
 *
 * @param texts what was typed, and the symbols of units and of what was chosen; what is empty is left out
 */
public record TypedDraft(Map<String, String> texts) {
    /** A draft in which nothing is typed. */
    public static final TypedDraft BLANK = new TypedDraft(Map.of());

    private static final String YES = "yes";

    public TypedDraft {
        texts = Map.copyOf(texts);
    }

    /** Returns a record as it would be typed, digits and units as they were. */
    public static <R> TypedDraft of(Columns<R> columns, R record, Numbers numbers) {
        Shown shown = new Shown(numbers);
        columns.write(record, shown);
        return new TypedDraft(shown.texts);
    }

    /** Returns what stands in a column's field; empty text where nothing does. */
    public String text(Column<?, ?> column) {
        return texts.getOrDefault(column.field(), "");
    }

    /** Returns the symbol of the unit beside a column's number; empty text where none was chosen. */
    public String unit(Column<?, ?> column) {
        return texts.getOrDefault(column.unitField(), "");
    }

    /** Returns whether a column says yes. */
    public boolean isYes(Column<?, ?> column) {
        return text(column).equals(YES);
    }

    /** Returns this draft with another text in a column's field. */
    public TypedDraft with(Column<?, ?> column, String text) {
        return with(column.field(), text);
    }

    /** Returns this draft with another unit beside a column's number. */
    public TypedDraft withUnit(Column<?, ?> column, String symbol) {
        return with(column.unitField(), symbol);
    }

    /** Returns this draft with yes or no in a column. */
    public TypedDraft with(Column<?, ?> column, boolean yes) {
        return with(column, yes ? YES : "");
    }

    private TypedDraft with(String key, String text) {
        Map<String, String> changed = new HashMap<>(texts);
        if (text.isEmpty()) {
            changed.remove(key);
        } else {
            changed.put(key, text);
        }
        return new TypedDraft(changed);
    }

    /** Puts what a record states as a person would type it. */
    private static final class Shown implements CellWriter {
        private final Map<String, String> texts = new HashMap<>();
        private final Numbers numbers;

        Shown(Numbers numbers) {
            this.numbers = numbers;
        }

        @Override
        public void text(Column<?, ?> column, String text) {
            if (!text.isEmpty()) {
                texts.put(column.field(), text);
            }
        }

        @Override
        public void number(Column<?, ?> column, BigDecimal number) {
            text(column, numbers.show(number));
        }

        @Override
        public void whole(Column<?, ?> column, int number) {
            text(column, Integer.toString(number));
        }

        @Override
        public void day(Column<?, ?> column, LocalDate day) {
            text(column, Days.show(day));
        }

        @Override
        public void moment(Column<?, ?> column, LocalDateTime moment) {
            text(column, Moments.show(moment));
        }

        @Override
        public void yesNo(Column<?, ?> column, boolean yes) {
            text(column, yes ? YES : "");
        }

        @Override
        public void unit(Column<?, ?> column, String symbol) {
            texts.put(column.unitField(), symbol);
        }

        @Override
        public <P> void several(Column<?, ?> column, Part<P> part, List<P> things) {
            throw DraftReader.notTyped(column);
        }
    }
}
