package porebench.exchange.sheet;

import java.util.List;
import java.util.Optional;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.method.Problem;
import porebench.record.Kept;
import porebench.record.column.Columns;

/**
 * A format in which each row states one record, by its columns.
 *
 * @param type the class of the records
 * @param fileName the usual name of a file
 * @param of the columns
 * @param key the headings that together name a record; none when a file can hold only one record
 * @param <T> the records
 */
public record RowFormat<T extends Kept>(Class<T> type, String fileName, Columns<T> of, List<String> key)
        implements Format.RowByRow<T> {
    public RowFormat {
        key = List.copyOf(key);
    }

    @Override
    public Headings columns() {
        return Headings.of(of);
    }

    @Override
    public Stated stated() {
        return Stated.of(of);
    }

    @Override
    public Optional<T> read(HeadedRow entry) {
        Optional<T> value = of.read(SheetReader.of(entry));
        if (entry.isGood()) {
            value.ifPresent(record -> check(record, entry));
        }
        return value;
    }

    private void check(T record, HeadedRow entry) {
        of.check().apply(record).stream()
                .filter(Problem::isError)
                .forEach(problem -> entry.error(
                        of.ofField(problem.field())
                                .map(column -> column.heading())
                                .orElse(problem.field()),
                        problem));
    }

    @Override
    public List<String> row(T value) {
        SheetCells cells = new SheetCells();
        of.write(value, cells);
        return cells.under(columns().all());
    }
}
