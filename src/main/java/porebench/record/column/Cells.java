package porebench.record.column;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

/** What the columns of one record state, each value under its column. */
public final class Cells {
    private final Map<Column<?, ?>, Object> values;

    /** Makes cells that state nothing yet. */
    Cells(int columns) {
        values = new IdentityHashMap<>(columns);
    }

    <V> void put(Column<?, V> column, V value) {
        values.put(column, value);
    }

    boolean has(Column<?, ?> column) {
        return values.containsKey(column);
    }

    /** Returns what a column states that every record states. */
    public <V> V get(Column<?, V> column) {
        return any(column).orElseThrow(() -> new NoSuchElementException(column.name() + " is empty"));
    }

    /** Returns what a column states; empty when it states nothing. */
    @SuppressWarnings("unchecked") // put under the column by its own type
    public <V> Optional<V> any(Column<?, V> column) {
        return Optional.ofNullable((V) values.get(column));
    }

    /** Returns whether a mark is set. */
    public boolean is(Column<?, Boolean> mark) {
        return any(mark).orElse(false);
    }

    /** Returns several things; none where there are none. */
    public <P> List<P> list(Column<?, List<P>> column) {
        return any(column).orElse(List.of());
    }
}
