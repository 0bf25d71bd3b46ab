package porebench.record.column;

import java.util.function.Function;

/**
 * What a record has several of, each a row of a table beside that of its kind.
 *
 * @param columns the columns of one of them
 * @param isOrdered whether their order counts; a column {@code position} then numbers them from 1
 * @param <P> the things
 */
public record Part<P>(Columns<P> columns, boolean isOrdered) {
    /** The column that numbers things whose order counts. */
    public static final Column<Integer, Integer> POSITION =
            Column.needed("position", CellType.whole(1), Function.identity());

    /** Returns the name of their table. */
    public String table() {
        return columns.table();
    }
}
