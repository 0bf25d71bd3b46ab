package porebench.store;

import java.math.BigDecimal;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import porebench.quantity.Typed;
import porebench.quantity.Unit;

/** One row of a table as it stands in the file: text and whole numbers by column; a column that is null is left out. */
final class StoredRow {
    private final String table;
    private final SortedMap<String, Object> cells = new TreeMap<>();

    StoredRow(String table) {
        this.table = table;
    }

    String table() {
        return table;
    }

    /** Returns what stands in the columns, in the order of the columns' names. */
    SortedMap<String, Object> cells() {
        return cells;
    }

    /** Puts a text or a whole number into a column. */
    StoredRow cell(String column, Object content) {
        cells.put(column, content);
        return this;
    }

    StoredRow flag(String column, boolean content) {
        return cell(column, content ? 1 : 0);
    }

    /** Puts a text into a column, or leaves it null. */
    StoredRow text(String column, Optional<String> content) {
        content.ifPresent(text -> cell(column, text));
        return this;
    }

    /** Puts a number into a column with all its digits. */
    StoredRow number(String column, BigDecimal content) {
        return cell(column, content.toString());
    }

    /** Puts a number into a column with all its digits, or leaves it null. */
    StoredRow number(String column, Optional<BigDecimal> content) {
        content.ifPresent(number -> number(column, number));
        return this;
    }

    /** Puts the digits of a quantity into a column and its unit into the one beside it. */
    StoredRow typed(String column, Typed<?> content) {
        return number(column, content.number())
                .cell(unitOf(column), content.unit().symbol());
    }

    private static String unitOf(String column) {
        return column + "_unit";
    }

    boolean has(String column) {
        return cells.containsKey(column);
    }

    String text(String column) {
        return content(column).toString();
    }

    Optional<String> textIfAny(String column) {
        return Optional.ofNullable(cells.get(column)).map(Object::toString);
    }

    BigDecimal number(String column) {
        return new BigDecimal(text(column));
    }

    Optional<BigDecimal> numberIfAny(String column) {
        return textIfAny(column).map(BigDecimal::new);
    }

    int count(String column) {
        return Integer.parseInt(text(column));
    }

    boolean flag(String column) {
        return count(column) == 1;
    }

    /** Reads a quantity out of a column and its unit's. */
    <Q> Typed<Q> typed(String column, Unit<Q>[] units) {
        return new Typed<>(number(column), word(unitOf(column), units, Unit::symbol));
    }

    /** Reads a word that stands for one of some things. */
    <E> E word(String column, E[] things, Function<E, String> wordOf) {
        String word = text(column);
        for (E thing : things) {
            if (wordOf.apply(thing).equals(word)) {
                return thing;
            }
        }
        throw new NoSuchElementException(table + "." + column + " says " + word);
    }

    private Object content(String column) {
        Object content = cells.get(column);
        if (content == null) {
            throw new NoSuchElementException(table + "." + column + " is empty");
        }
        return content;
    }
}
