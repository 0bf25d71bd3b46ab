package porebench.store.rows;

import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import porebench.record.chain.ChainEntry;

/** Reads the rows of one query; its heading is looked at once, and the columns are read in the order of their names. */
final class RowReader {
    private final String table;
    private final ResultSet rows;
    private final List<String> names;
    private final int[] places;

    RowReader(String table, ResultSet rows) throws SQLException {
        this.table = table;
        this.rows = rows;
        ResultSetMetaData heading = rows.getMetaData();
        String[] inTable = new String[heading.getColumnCount()];
        for (int i = 0; i < inTable.length; i++) {
            inTable[i] = heading.getColumnName(i + 1);
        }
        this.places = IntStream.range(0, inTable.length)
                .filter(i -> !inTable[i].equals(ChainEntry.NUMBER))
                .boxed()
                .sorted(Comparator.comparing(i -> inTable[i]))
                .mapToInt(i -> i + 1)
                .toArray();
        this.names = IntStream.of(places).mapToObj(place -> inTable[place - 1]).toList();
    }

    /** Returns the row that the query stands on, the number of the entry apart. */
    StoredRow row() throws SQLException {
        StoredRow row = new StoredRow(table);
        for (int i = 0; i < places.length; i++) {
            Object content = rows.getObject(places[i]);
            if (content != null) {
                row.cell(names.get(i), content);
            }
        }
        return row;
    }
}
