package porebench.chart.look;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import porebench.method.RoundingRule;
import porebench.port.DataTable;

/**
 * The columns of the table behind a plot, each with its heading and what stands in it.
 *
 * @param <T> what a row is about
 */
public final class TableColumns<T> {
    private final List<String> heading = new ArrayList<>();
    private final List<Function<T, String>> cells = new ArrayList<>();

    /** Adds a column of words. */
    public TableColumns<T> text(String name, Function<T, String> cell) {
        heading.add(name);
        cells.add(cell);
        return this;
    }

    /** Adds a column of numbers. */
    public TableColumns<T> number(String name, ToDoubleFunction<T> number) {
        return text(name, one -> TableColumns.number(number.applyAsDouble(one)));
    }

    /** Adds a column of numbers that are not always known. */
    public TableColumns<T> known(String name, Function<T, OptionalDouble> number) {
        return text(name, one -> TableColumns.number(number.apply(one)));
    }

    /** Adds a column of whole numbers. */
    public TableColumns<T> whole(String name, ToIntFunction<T> number) {
        return text(name, one -> Integer.toString(number.applyAsInt(one)));
    }

    /** Adds a column that says yes or no. */
    public TableColumns<T> yes(String name, Predicate<T> is) {
        return text(name, one -> TableColumns.yes(is.test(one)));
    }

    /** Returns the table of some things, a row each. */
    public DataTable table(List<T> all) {
        return new DataTable(
                heading,
                all.stream()
                        .map(one -> cells.stream().map(cell -> cell.apply(one)).toList())
                        .toList());
    }

    public static String number(double number) {
        return RoundingRule.withoutNoise(number).stripTrailingZeros().toPlainString();
    }

    public static String number(OptionalDouble number) {
        return number.isPresent() ? number(number.getAsDouble()) : "";
    }

    public static String yes(boolean is) {
        return is ? "yes" : "no";
    }
}
