package porebench.command.reply;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import porebench.method.Texts;

/**
 * What is said of a thing, stated once: the fields of a JSON object for programs, and for people cells of a table, or of one
 * thing alone rows and lines.
 *
 * <p>A heading is the key of its text with what is filled into it, empty for a column without one. A number that is not finite
 * is {@code null} for programs and {@link NumberText#NONE} for people. What has no heading only programs read.
 *
 * @param <T> the kind of thing
 */
public final class ReportLayout<T> {
    private final Texts words;
    private final NumberText numbers;
    private final List<BiConsumer<JsonFields, T>> fields = new ArrayList<>();
    private final List<Cell<T>> cells = new ArrayList<>();
    private final List<BiConsumer<TextPage, T>> alone = new ArrayList<>();

    private record Cell<T>(String head, Function<T, String> text, String unit) {
        void row(TextPage page, T one) {
            page.row(head, text.apply(one), unit);
        }
    }

    public ReportLayout(Texts words, NumberText numbers) {
        this.words = words;
        this.numbers = numbers;
    }

    /** Adds what only programs read. */
    public ReportLayout<T> field(BiConsumer<JsonFields, T> field) {
        fields.add(field);
        return this;
    }

    public ReportLayout<T> text(String name, Function<T, String> text) {
        return field((json, one) -> json.text(name, text.apply(one)));
    }

    public ReportLayout<T> flag(String name, Predicate<T> is) {
        return field((json, one) -> json.flag(name, is.test(one)));
    }

    public ReportLayout<T> whole(String name, ToLongFunction<T> number) {
        return field((json, one) -> json.whole(name, number.applyAsLong(one)));
    }

    public ReportLayout<T> number(String name, ToDoubleFunction<T> number) {
        return field((json, one) -> json.number(name, number.applyAsDouble(one)));
    }

    /** Adds what only people read. */
    public ReportLayout<T> cell(String head, Function<T, String> text, Object... filled) {
        int place = cells.size();
        cells.add(new Cell<>(head.isEmpty() ? "" : words.get(head, filled), text, ""));
        alone.add((page, one) -> cells.get(place).row(page, one));
        return this;
    }

    /** Says the unit of the last cell, which stands behind it in a row; a table has it in the heading. */
    public ReportLayout<T> in(String unit) {
        Cell<T> last = cells.get(cells.size() - 1);
        cells.set(cells.size() - 1, new Cell<>(last.head, last.text, unit));
        return this;
    }

    /** Adds a text that both read alike. */
    public ReportLayout<T> text(String name, String head, Function<T, String> text) {
        return text(name, text).cell(head, text);
    }

    /** Adds a whole number. */
    public ReportLayout<T> whole(String name, String head, ToLongFunction<T> number) {
        return whole(name, number).cell(head, one -> Long.toString(number.applyAsLong(one)));
    }

    /** Adds a computed number, six digits of it for people. */
    public ReportLayout<T> number(String name, String head, ToDoubleFunction<T> number) {
        return number(name, head, number, numbers::sixDigits);
    }

    /** Adds a computed number, shown to people in a way of its own. */
    public ReportLayout<T> number(
            String name, String head, ToDoubleFunction<T> number, DoubleFunction<String> shown, Object... filled) {
        return number(name, number).number(head, number, shown, filled);
    }

    /** Adds a computed number that only people read. */
    public ReportLayout<T> number(
            String head, ToDoubleFunction<T> number, DoubleFunction<String> shown, Object... filled) {
        return cell(
                head,
                one -> {
                    double value = number.applyAsDouble(one);
                    return Double.isFinite(value) ? shown.apply(value) : NumberText.NONE;
                },
                filled);
    }

    /** Adds a number with all its digits for both. */
    public ReportLayout<T> exact(String name, String head, Function<T, BigDecimal> number) {
        return field((json, one) -> json.number(name, number.apply(one)))
                .cell(head, one -> numbers.exact(number.apply(one)));
    }

    /** Adds a line about a thing that stands alone. */
    public ReportLayout<T> line(Function<T, String> text) {
        return alone((page, one) -> page.line(text.apply(one)));
    }

    /** Adds an empty line between what is said of a thing that stands alone. */
    public ReportLayout<T> gap() {
        return alone((page, one) -> page.gap());
    }

    /** Adds what people read of a thing that stands alone. */
    public ReportLayout<T> alone(BiConsumer<TextPage, T> text) {
        alone.add(text);
        return this;
    }

    /** Adds several parts: objects for programs, and a table for people. */
    public <S> ReportLayout<T> list(String name, Function<T, List<S>> parts, ReportLayout<S> layout) {
        return field((json, one) -> json.list(name, parts.apply(one), layout::json))
                .alone((page, one) -> layout.table(page, parts.apply(one)));
    }

    /** Returns the same for things that have one of these. */
    public <S> ReportLayout<S> of(Function<S, T> part) {
        ReportLayout<S> whole = new ReportLayout<>(words, numbers);
        fields.forEach(field -> whole.fields.add((json, one) -> field.accept(json, part.apply(one))));
        cells.forEach(cell -> whole.cells.add(new Cell<>(cell.head, part.andThen(cell.text), cell.unit)));
        alone.forEach(text -> whole.alone.add((page, one) -> text.accept(page, part.apply(one))));
        return whole;
    }

    /** Writes the fields of one thing. */
    public void json(JsonFields json, T one) {
        fields.forEach(field -> field.accept(json, one));
    }

    /** Writes things as a table, a line each. */
    public void table(TextPage page, List<T> all) {
        page.table(
                cells.stream().map(Cell::head).toList(),
                all.stream()
                        .map(one ->
                                cells.stream().map(cell -> cell.text.apply(one)).toList())
                        .toList());
    }

    /** Writes one thing alone: rows of heading, value and unit, and the lines between them. */
    public void rows(TextPage page, T one) {
        alone.forEach(text -> text.accept(page, one));
    }

    /** Returns what a command has to say that is about one thing. */
    public Report report(T one) {
        return new Report() {
            @Override
            public void json(JsonFields json) {
                ReportLayout.this.json(json, one);
            }

            @Override
            public void text(TextPage page) {
                rows(page, one);
            }
        };
    }
}
