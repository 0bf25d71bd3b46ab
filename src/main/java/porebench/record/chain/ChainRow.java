package porebench.record.chain;

import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import porebench.method.Place;

/**
 * One row of a lab book's tables as it is stored.
 *
 * @param table the table
 * @param cells what stands in its columns, as text; a column that holds nothing is left out, so that an empty text is one that
 *     was said to be empty
 * @param place where it stands when it was read from a file; else the table
 */
public record ChainRow(String table, SortedMap<String, String> cells, Place place) {
    public ChainRow {
        cells = Collections.unmodifiableSortedMap(new TreeMap<>(cells));
    }
}
