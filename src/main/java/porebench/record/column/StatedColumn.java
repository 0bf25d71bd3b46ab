package porebench.record.column;

import java.util.List;

/**
 * A column of a file that holds no records, as it is stated where the file is made or asked for: a list that is written, a table of
 * numbers that is read.
 *
 * @param name its heading
 * @param kind what stands in it
 * @param isFilled whether no cell of it is empty
 * @param unit the unit of its numbers; empty where they have none
 * @param unitField the column in which the unit of each number stands; empty where none does
 * @param words the words of which one stands there; none where it is no choice
 */
public record StatedColumn(
        String name, CellShape.Kind kind, boolean isFilled, String unit, String unitField, List<String> words) {
    public StatedColumn {
        words = List.copyOf(words);
    }

    /** A column in which every cell is filled in. */
    public static StatedColumn filled(CellShape.Kind kind, String name) {
        return new StatedColumn(name, kind, true, "", "", List.of());
    }

    /** A column of which cells may be empty. */
    public static StatedColumn any(CellShape.Kind kind, String name) {
        return new StatedColumn(name, kind, false, "", "", List.of());
    }

    /** Returns the same column, its numbers in a unit. */
    public StatedColumn in(String symbol) {
        return new StatedColumn(name, kind, isFilled, symbol, unitField, words);
    }

    /** Returns the same column, the unit of each number in another column. */
    public StatedColumn unitIn(String column) {
        return new StatedColumn(name, kind, isFilled, unit, column, words);
    }

    /** Returns the same column, in which one of some words stands. */
    public StatedColumn oneOf(List<String> these) {
        return new StatedColumn(name, CellShape.Kind.CHOICE, isFilled, unit, unitField, these);
    }
}
