package porebench.store.rows;

import java.util.NoSuchElementException;
import java.util.SortedMap;
import java.util.TreeMap;
import porebench.method.Place;
import porebench.record.chain.ChainRow;

/** One row of a table as it stands in the file: text and whole numbers by column; a column that is null is left out. */
public final class StoredRow {
    private final String table;
    private final SortedMap<String, Object> cells = new TreeMap<>();

    public StoredRow(String table) {
        this.table = table;
    }

    public String table() {
        return table;
    }

    /** Returns what stands in the columns, in the order of the columns' names. */
    public SortedMap<String, Object> cells() {
        return cells;
    }

    /** Puts a text or a whole number into a column. */
    public StoredRow cell(String column, Object content) {
        cells.put(column, content);
        return this;
    }

    /** Returns the row with everything in it as text. */
    public ChainRow chained() {
        TreeMap<String, String> texts = new TreeMap<>();
        cells.forEach((column, content) -> texts.put(column, content.toString()));
        return new ChainRow(table, texts, Place.of(table));
    }

    boolean has(String column) {
        return cells.containsKey(column);
    }

    String text(String column) {
        Object content = cells.get(column);
        if (content == null) {
            throw new NoSuchElementException(table + "." + column + " is empty");
        }
        return content.toString();
    }
}
