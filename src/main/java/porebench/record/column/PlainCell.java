package porebench.record.column;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A type whose value stands in one cell.
 *
 * @param reading how it is read
 * @param writing how it is written
 * @param isWhole whether the lab book holds it as a whole number
 * @param isYesNo whether it says yes or no
 * @param choices the words of the things of which one is chosen
 * @param <V> the values
 */
record PlainCell<V>(
        BiFunction<CellReader, Column<?, V>, Optional<V>> reading,
        Writing<V> writing,
        boolean isWhole,
        boolean isYesNo,
        List<String> choices)
        implements CellType<V> {
    PlainCell {
        choices = List.copyOf(choices);
    }

    PlainCell(BiFunction<CellReader, Column<?, V>, Optional<V>> reading, Writing<V> writing) {
        this(reading, writing, false, false, List.of());
    }

    /** Puts a value into the cell of a column. */
    interface Writing<V> {
        void write(CellWriter to, Column<?, V> column, V value);
    }

    @Override
    public void write(Column<?, V> column, V value, CellWriter to) {
        writing.write(to, column, value);
    }

    @Override
    public Optional<V> read(Column<?, V> column, CellReader from) {
        return reading.apply(from, column);
    }
}
