package porebench.store.rows;

import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import porebench.method.Place;
import porebench.record.chain.ChainRow;

/**
 * One row of a table as it stands in the file: text and whole numbers by column; a column that is null is left out.
 *
 * <p>The columns stand in the order of their names, in two arrays: a lab book of many records has many of these.
 */
public final class StoredRow {
    private static final int USUAL = 16;

    private final String table;
    private String[] columns = new String[USUAL];
    private Object[] contents = new Object[USUAL];
    private int size;

    public StoredRow(String table) {
        this.table = table;
    }

    public String table() {
        return table;
    }

    /** Returns how many columns are not null. */
    public int size() {
        return size;
    }

    /** Returns the columns that are not null, in the order of their names. */
    public List<String> columns() {
        return List.of(Arrays.copyOf(columns, size));
    }

    /** Returns what stands in a column, by its place among those that are not null. */
    public Object content(int place) {
        return contents[place];
    }

    /** Hands out what stands in the columns, in the order of the columns' names. */
    public void each(BiConsumer<String, Object> taker) {
        for (int i = 0; i < size; i++) {
            taker.accept(columns[i], contents[i]);
        }
    }

    /** Puts a text or a whole number into a column. */
    public StoredRow cell(String column, Object content) {
        // A row that is read has its columns in order already.
        int place = size == 0 || columns[size - 1].compareTo(column) < 0 ? -size - 1 : place(column);
        if (place >= 0) {
            contents[place] = content;
            return this;
        }
        int at = -place - 1;
        if (size == columns.length) {
            columns = Arrays.copyOf(columns, 2 * size);
            contents = Arrays.copyOf(contents, 2 * size);
        }
        System.arraycopy(columns, at, columns, at + 1, size - at);
        System.arraycopy(contents, at, contents, at + 1, size - at);
        columns[at] = column;
        contents[at] = content;
        size++;
        return this;
    }

    private int place(String column) {
        return Arrays.binarySearch(columns, 0, size, column);
    }

    /** Returns the row with everything in it as text. */
    public ChainRow chained() {
        SortedMap<String, String> texts = new TreeMap<>();
        each((column, content) -> texts.put(column, content.toString()));
        return new ChainRow(table, texts, Place.of(table));
    }

    boolean has(String column) {
        return place(column) >= 0;
    }

    String text(String column) {
        int place = place(column);
        if (place < 0) {
            throw new NoSuchElementException(table + "." + column + " is empty");
        }
        return contents[place].toString();
    }
}
