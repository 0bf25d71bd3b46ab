package porebench.command.reply;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import porebench.method.Texts;

/**
 * What is said of each thing of a kind, stated once: the fields of a JSON object for programs, and cells for people.
 *
 * <p>A heading is the key of its text, empty for a column without one. A number that is not finite is {@code null} for
 * programs and {@link NumberText#NONE} for people.
 *
 * @param <T> the kind of thing
 */
public final class Layout<T> {
    private final Texts words;
    private final NumberText numbers;
    private final List<BiConsumer<JsonFields, T>> fields = new ArrayList<>();
    private final List<String> heads = new ArrayList<>();
    private final List<Function<T, String>> cells = new ArrayList<>();

    public Layout(Texts words, NumberText numbers) {
        this.words = words;
        this.numbers = numbers;
    }

    /** Adds what only programs read. */
    public Layout<T> field(BiConsumer<JsonFields, T> field) {
        fields.add(field);
        return this;
    }

    /** Adds what only people read. */
    public Layout<T> cell(String head, Function<T, String> text) {
        heads.add(head.isEmpty() ? "" : words.get(head));
        cells.add(text);
        return this;
    }

    /** Adds a text that both read alike. */
    public Layout<T> text(String name, String head, Function<T, String> text) {
        return field((json, one) -> json.text(name, text.apply(one))).cell(head, text);
    }

    /** Adds a whole number. */
    public Layout<T> whole(String name, String head, ToLongFunction<T> number) {
        return field((json, one) -> json.whole(name, number.applyAsLong(one)))
                .cell(head, one -> Long.toString(number.applyAsLong(one)));
    }

    /** Adds a computed number, six digits of it for people. */
    public Layout<T> number(String name, String head, ToDoubleFunction<T> number) {
        return number(name, head, number, numbers::sixDigits);
    }

    /** Adds a computed number, shown to people in a way of its own. */
    public Layout<T> number(String name, String head, ToDoubleFunction<T> number, DoubleFunction<String> shown) {
        return field((json, one) -> json.number(name, number.applyAsDouble(one)))
                .cell(head, one -> {
                    double value = number.applyAsDouble(one);
                    return Double.isFinite(value) ? shown.apply(value) : NumberText.NONE;
                });
    }

    /** Returns the same for things that have one of these. */
    public <S> Layout<S> of(Function<S, T> part) {
        Layout<S> whole = new Layout<>(words, numbers);
        fields.forEach(field -> whole.fields.add((json, one) -> field.accept(json, part.apply(one))));
        cells.forEach(cell -> whole.cells.add(part.andThen(cell)));
        whole.heads.addAll(heads);
        return whole;
    }

    /** Writes the fields of one thing. */
    public void json(JsonFields json, T one) {
        fields.forEach(field -> field.accept(json, one));
    }

    /** Writes things as a table, a line each. */
    public void table(TextPage page, List<T> all) {
        page.table(
                heads,
                all.stream()
                        .map(one -> cells.stream().map(cell -> cell.apply(one)).toList())
                        .toList());
    }

    /** Writes one thing as rows of heading and value, without a unit. */
    public void rows(TextPage page, T one) {
        for (int i = 0; i < heads.size(); i++) {
            page.row(heads.get(i), cells.get(i).apply(one), "");
        }
    }
}
