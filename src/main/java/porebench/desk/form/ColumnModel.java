package porebench.desk.form;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Texts;
import porebench.record.column.Column;
import porebench.record.column.FixedUnit;

/**
 * The draft of one record in a form, and the words of its columns.
 *
 * <p>The bundle has of each column its label under the key of the column, and its name in a sentence under {@code .plain},
 * which also names the step of changing it where there is no {@code .step};
 * of one with units the name of the unit under the key and {@code Unit}; of one that says yes or no {@code .tick},
 * {@code .yes} and {@code .no}; of one with choices each by its symbol; and of one whose unit cannot be chosen {@code .unit}.
 * What differs between two drafts is said by {@code change}, and by {@code change.nothing} where one is empty.
 */
public interface ColumnModel {
    /** Returns the draft as it is now. */
    TypedDraft draft();

    /**
     * Takes a draft that a person changed.
     *
     * @param label what was changed, for undoing it
     */
    void update(String label, TypedDraft changed);

    /** Returns what day it is, from which a day is chosen; empty where days are only typed. */
    default Optional<LocalDate> today() {
        return Optional.empty();
    }

    /** Returns the words of the form. */
    Texts texts();

    /** Returns the key of a column's texts. */
    String key(Column<?, ?> column);

    /** Takes whether a box was ticked. */
    default void tick(Column<?, ?> column, boolean yes) {
        update(step(column), draft().with(column, yes));
    }

    /** Takes what was typed into a field. */
    default void type(Column<?, ?> column, String text) {
        update(step(column), draft().with(column, text));
    }

    /** Takes that a field is left: a unit that its number brings along goes into the box beside it. */
    default void leave(Column<?, ?> column) {
        TypedDraft parted = draft().parted(column, units(column), new Numbers(texts().locale()));
        if (!parted.equals(draft())) {
            update(step(column), parted);
        }
    }

    /** Takes the unit that was chosen beside a field. */
    default void chooseUnit(Column<?, ?> column, String symbol) {
        update(unitName(column), draft().withUnit(column, symbol));
    }

    /** Returns what stands before a field, its mnemonic after an ampersand. */
    default String label(Column<?, ?> column) {
        return texts().get(key(column));
    }

    /** Returns what stands beside the box of a column that says yes or no, the mnemonic after an ampersand. */
    default String tickWords(Column<?, ?> column) {
        return texts().get(key(column) + ".tick");
    }

    /** Returns what changing a column is called, for undoing it. */
    default String step(Column<?, ?> column) {
        return texts().find(key(column) + ".step").orElseGet(() -> words(column));
    }

    /** Returns how a column is called in a sentence. */
    default String words(Column<?, ?> column) {
        return texts().get(key(column) + ".plain");
    }

    /** Returns how the unit beside a column's number is called. */
    default String unitName(Column<?, ?> column) {
        String key = key(column);
        return texts().get(key.substring(0, key.length() - column.field().length()) + column.unitField());
    }

    /** Returns whether a column's thing is chosen rather than typed. */
    default boolean isChosen(Column<?, ?> column) {
        return !column.type().choices().isEmpty();
    }

    /** Returns what there is to choose from in a column. */
    default List<String> choices(Column<?, ?> column) {
        return column.type().choices();
    }

    /** Returns one of a column's choices in words. */
    default String choiceWords(Column<?, ?> column, String symbol) {
        return texts().get(key(column) + "." + symbol);
    }

    /** Returns the symbols of the units beside a column's number; none where there is no choice. */
    default List<String> units(Column<?, ?> column) {
        return column.unitsTyped().size() > 1 ? column.unitsTyped() : List.of();
    }

    /** Returns how a unit is written. */
    default String unitWords(String symbol) {
        return symbol.equals("C") || symbol.equals("F") ? "°" + symbol : symbol;
    }

    /** Returns what stands beside a field without units to choose from; may be empty. */
    default String beside(Column<?, ?> column, TypedDraft draft) {
        return texts().find(key(column) + ".unit").orElse("");
    }

    /** Returns the unit that is said with a number where it is not chosen; may be empty. */
    default String spokenUnit(Column<?, ?> column, TypedDraft draft) {
        return "";
    }

    /** Returns what an empty field says in pale letters; may be empty. */
    default String hint(Column<?, ?> column) {
        return "";
    }

    /** Returns what a field shows of the draft. */
    default String shown(Column<?, ?> column) {
        return draft().text(column);
    }

    /** Returns the symbol of the unit that is shown beside a number. */
    default String shownUnit(Column<?, ?> column) {
        return unit(column, draft());
    }

    /** Returns the unit that a draft says; the one kept where it says none of a number that has one unit. */
    private String unit(Column<?, ?> column, TypedDraft draft) {
        return draft.unit(column).isEmpty()
                ? FixedUnit.of(column).map(FixedUnit::kept).orElse("")
                : draft.unit(column);
    }

    /** Returns whether a field shows its text and takes no other. */
    default boolean isFixed(Column<?, ?> column) {
        return false;
    }

    /** Returns what a draft says in a column, in words. */
    default String said(Column<?, ?> column, TypedDraft draft) {
        String text = draft.text(column);
        if (column.type().isYesNo()) {
            String end = draft.isYes(column) ? ".yes" : ".no";
            return texts().get(key(column) + end);
        }
        if (!column.type().choices().isEmpty()) {
            return text.isEmpty() ? text : choiceWords(column, text);
        }
        String unit = units(column).isEmpty() ? spokenUnit(column, draft) : unitWords(unit(column, draft));
        return text.isEmpty() || unit.isEmpty() ? text : text + " " + unit;
    }

    /** Returns what one draft says differently from the one before, a sentence a column. */
    default List<String> changes(List<? extends Column<?, ?>> columns, TypedDraft before, TypedDraft after) {
        Texts words = texts();
        List<String> changes = new ArrayList<>();
        for (Column<?, ?> column : columns) {
            String was = said(column, before);
            String now = said(column, after);
            if (!was.equals(now)) {
                String nothing = words.get("change.nothing");
                changes.add(words.get(
                        "change", words(column), was.isEmpty() ? nothing : was, now.isEmpty() ? nothing : now));
            }
        }
        return changes;
    }
}
