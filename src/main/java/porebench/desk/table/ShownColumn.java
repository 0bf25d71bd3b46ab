package porebench.desk.table;

import java.awt.Color;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.Icon;
import javax.swing.table.TableCellEditor;
import porebench.method.Problem;
import porebench.method.ProblemText;

/**
 * A column of a table, stated once: its heading, its width, what it says of a row, and what else it can do.
 *
 * @param <R> what stands in a row
 */
public final class ShownColumn<R> {
    private final Supplier<String> heading;
    private final int widthPixels;
    private final Function<R, String> words;
    private Function<R, String> typed;
    private boolean isNumber;
    private boolean isWrapped;
    private boolean isSorted = true;
    private String tip = "";
    private Optional<BiFunction<R, Optional<Color>, Icon>> mark = Optional.empty();
    private Optional<Function<R, ? extends Comparable<?>>> order = Optional.empty();
    private Function<R, List<Problem>> problems = row -> List.of();
    private Optional<ProblemText> problemText = Optional.empty();
    private Predicate<R> isOpen = row -> false;
    private Optional<BiPredicate<R, String>> taking = Optional.empty();
    private Optional<TableCellEditor> editor = Optional.empty();

    /**
     * States a column.
     *
     * @param heading its heading; asked anew whenever rows are shown, as it may name a unit
     * @param widthPixels its preferred width at 100 %, widened where the heading would be cut off
     * @param words what it says of a row
     */
    public ShownColumn(Supplier<String> heading, int widthPixels, Function<R, String> words) {
        this.heading = heading;
        this.widthPixels = widthPixels;
        this.words = words;
        this.typed = words;
    }

    /** States a column whose heading always stays the same. */
    public ShownColumn(String heading, int widthPixels, Function<R, String> words) {
        this(() -> heading, widthPixels, words);
    }

    /** Sets digits and their heading to the right. */
    public ShownColumn<R> number() {
        isNumber = true;
        return this;
    }

    /** Breaks the lines of its words at its width; its rows are as high as that takes. */
    public ShownColumn<R> wrapped() {
        isWrapped = true;
        return this;
    }

    /** Puts a shape before the words; it is given the colour of words in a selected row, nothing for any other row. */
    public ShownColumn<R> mark(BiFunction<R, Optional<Color>, Icon> shape) {
        mark = Optional.of(shape);
        return this;
    }

    /** Lets a person sort by this column, by a value instead of its words. */
    public ShownColumn<R> sortedBy(Function<R, ? extends Comparable<?>> value) {
        order = Optional.of(value);
        return this;
    }

    /** Leaves its rows in the order in which they are shown: it is the order of the work, or sums stand below them. */
    public ShownColumn<R> unsorted() {
        isSorted = false;
        return this;
    }

    /** Says what the heading means when it is pointed at; may be empty. */
    public ShownColumn<R> tip(String meaning) {
        tip = meaning;
        return this;
    }

    /** Marks the cells with a problem, and says it when one of them is pointed at. */
    public ShownColumn<R> problems(Function<R, List<Problem>> ofCell, ProblemText saying) {
        problems = ofCell;
        problemText = Optional.of(saying);
        return this;
    }

    /**
     * Lets a person type in its cells.
     *
     * @param open whether the cell of a row can be typed in
     * @param text what stands in the cell while it is typed in
     * @param taken takes what was typed, and returns whether it did
     */
    public ShownColumn<R> edited(Predicate<R> open, Function<R, String> text, BiPredicate<R, String> taken) {
        isOpen = open;
        typed = text;
        taking = Optional.of(taken);
        return this;
    }

    /** Lets its cells be typed in with something else than a plain field. */
    public ShownColumn<R> editor(TableCellEditor other) {
        editor = Optional.of(other);
        return this;
    }

    String heading() {
        return heading.get();
    }

    int widthPixels() {
        return widthPixels;
    }

    boolean isNumber() {
        return isNumber;
    }

    boolean isWrapped() {
        return isWrapped;
    }

    String tip() {
        return tip;
    }

    String words(R row) {
        return words.apply(row);
    }

    /** Returns what is typed or chosen in the cell of a row; of a column to read its words. */
    String typed(R row) {
        return typed.apply(row);
    }

    Optional<Icon> mark(R row, Optional<Color> selected) {
        return mark.map(shape -> shape.apply(row, selected));
    }

    /** Returns whether a person may sort by it; rows that are typed stay where they are typed. */
    boolean isSorted() {
        return isSorted && !isEdited();
    }

    /** Returns what the cell of a row is sorted by: the value stated, else its words. */
    Comparable<?> order(R row, Locale locale) {
        return order.<Comparable<?>>map(value -> value.apply(row)).orElseGet(() -> SortedWords.of(words(row), locale));
    }

    List<Problem> problems(R row) {
        return problems.apply(row);
    }

    /** Says the problems of a cell in words. */
    String said(List<Problem> ofCell) {
        return problemText
                .map(saying -> String.join(" ", ofCell.stream().map(saying::say).toList()))
                .orElse("");
    }

    boolean isEdited() {
        return taking.isPresent();
    }

    boolean isOpen(R row) {
        return isEdited() && isOpen.test(row);
    }

    /** Takes what was typed or pasted, and returns whether it was taken. */
    boolean take(R row, String text) {
        return taking.map(known -> known.test(row, text)).orElse(false);
    }

    Optional<TableCellEditor> editor() {
        return editor;
    }
}
