package porebench.desk.form;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import porebench.quantity.Spelling;
import porebench.record.column.CellWriter;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.Part;

/**
 * A record as typed into a form, column by column: what stands in the field, and the unit beside it.
 *
 * @param texts what was typed, and the symbols of units and of what was chosen; what is empty is left out
 * @param parts the things of which the record has several, as typed, under the field of their column
 */
public record TypedDraft(Map<String, String> texts, Map<String, List<TypedDraft>> parts) {
    /** A draft in which nothing is typed. */
    public static final TypedDraft BLANK = new TypedDraft(Map.of(), Map.of());

    private static final String YES = "yes";

    public TypedDraft {
        texts = Map.copyOf(texts);
        parts = Map.copyOf(parts);
    }

    /** Returns a record as it would be typed, digits and units as they were. */
    public static <R> TypedDraft of(Columns<R> columns, R record, Numbers numbers) {
        Shown shown = new Shown(numbers);
        columns.write(record, shown);
        return new TypedDraft(shown.texts, shown.parts);
    }

    /** Returns what stands in a column's field; empty text where nothing does. */
    public String text(Column<?, ?> column) {
        return texts.getOrDefault(column.field(), "");
    }

    /** Returns the symbol of the unit beside a column's number; empty text where none was chosen. */
    public String unit(Column<?, ?> column) {
        return texts.getOrDefault(column.unitField(), "");
    }

    /** Returns what is chosen in a column, in which one of its things always is. */
    public <V> V chosen(Column<?, V> column) {
        return column.read(new DraftReader(this, new Numbers(Locale.ROOT), Column::name))
                .orElseThrow();
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

    /** Returns this draft with the unit that a number brings along in its field, as in {@code 1735 lb}, beside it instead. */
    public TypedDraft parted(Column<?, ?> column, Numbers numbers) {
        return parted(column, column.type().units(), numbers);
    }

    /**
     * Returns this draft with one of some units that a number brings along in its field beside it instead.
     *
     * @param units the symbols of the units
     */
    public TypedDraft parted(Column<?, ?> column, List<String> units, Numbers numbers) {
        Spelling.Halves halves = Spelling.halves(text(column));
        return numbers.parse(halves.number()).isEmpty()
                ? this
                : units.stream()
                        .filter(unit -> Spelling.means(halves.unit(), unit))
                        .findFirst()
                        .map(unit -> with(column, halves.number()).withUnit(column, unit))
                        .orElse(this);
    }

    /** Returns this draft with nothing in some fields. */
    public TypedDraft without(Collection<String> fields) {
        Map<String, String> left = new HashMap<>(texts);
        left.keySet().removeAll(fields);
        return new TypedDraft(left, parts);
    }

    /** Returns this draft with nothing in the fields that a word leads. */
    public TypedDraft without(String lead) {
        Map<String, String> left = new HashMap<>(texts);
        left.keySet().removeIf(field -> field.startsWith(lead));
        return new TypedDraft(left, parts);
    }

    /** Returns this draft, with what another says where this one says nothing. */
    public TypedDraft orFrom(TypedDraft other) {
        Map<String, String> all = new HashMap<>(other.texts);
        all.putAll(texts);
        Map<String, List<TypedDraft>> things = new HashMap<>(other.parts);
        things.putAll(parts);
        return new TypedDraft(all, things);
    }

    /** Returns this draft with what another says differently from the one that it was made from. */
    public TypedDraft withChanges(TypedDraft before, TypedDraft after) {
        Map<String, String> all = new HashMap<>(texts);
        Set<String> fields = new HashSet<>(before.texts.keySet());
        fields.addAll(after.texts.keySet());
        fields.removeIf(field -> Objects.equals(before.texts.get(field), after.texts.get(field)));
        for (String field : fields) {
            all.remove(field);
            Optional.ofNullable(after.texts.get(field)).ifPresent(text -> all.put(field, text));
        }
        Map<String, List<TypedDraft>> things = new HashMap<>(parts);
        after.parts.forEach((field, rows) -> {
            if (!rows.equals(before.parts.get(field))) {
                things.put(field, rows);
            }
        });
        return new TypedDraft(all, things);
    }

    /** Returns the things of which the record has several in a column. */
    public List<TypedDraft> rows(Column<?, ?> column) {
        return parts.getOrDefault(column.field(), List.of());
    }

    /** Returns this draft with other things in a column. */
    public TypedDraft with(Column<?, ?> column, List<TypedDraft> rows) {
        Map<String, List<TypedDraft>> changed = new HashMap<>(parts);
        changed.put(column.field(), List.copyOf(rows));
        return new TypedDraft(texts, changed);
    }

    /** Returns this draft with one of the things in a column changed, counted from 0. */
    public TypedDraft with(Column<?, ?> column, int row, TypedDraft thing) {
        List<TypedDraft> changed = new ArrayList<>(rows(column));
        changed.set(row, thing);
        return with(column, changed);
    }

    private TypedDraft with(String key, String text) {
        Map<String, String> changed = new HashMap<>(texts);
        if (text.isEmpty()) {
            changed.remove(key);
        } else {
            changed.put(key, text);
        }
        return new TypedDraft(changed, parts);
    }

    /** Puts what a record states as a person would type it. */
    private static final class Shown implements CellWriter {
        private final Map<String, String> texts = new HashMap<>();
        private final Map<String, List<TypedDraft>> parts = new HashMap<>();
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
            // What an empty cell means is not typed.
            if (column.blank().filter(number::equals).isEmpty()) {
                text(column, numbers.show(number));
            }
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
            text(column, Days.show(moment));
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
            parts.put(
                    column.field(),
                    things.stream()
                            .map(thing -> TypedDraft.of(part.columns(), thing, numbers))
                            .toList());
        }
    }
}
