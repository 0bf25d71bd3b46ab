package porebench.evidence.intake;

import java.util.List;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.record.Kept;

/**
 * What was read from one CSV file: the good rows, and every problem with its line and column.
 *
 * @param file the name of the file
 * @param rows the rows that can be used, in the order of the file
 * @param problems everything wrong or doubtful
 * @param <T> what a row holds
 */
public record Sheet<T>(String file, List<Row<T>> rows, List<Problem> problems) {
    public Sheet {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /**
     * One usable row, or the rows that together state one thing.
     *
     * @param line the first line it stands on, counted from 1; 0 where it was not read from a file
     * @param value what it says
     * @param simulated whether the file says that it comes from a training book
     * @param <T> what a row holds
     */
    public record Row<T>(int line, T value, boolean simulated) {
        /** Makes a row of which the file says no such thing. */
        public Row(int line, T value) {
            this(line, value, false);
        }
    }

    /** Returns the records of a sheet on their way into a lab book, each with its place. */
    public static List<Incoming> incoming(Sheet<? extends Kept> sheet) {
        return sheet.rows().stream()
                .map(row -> new Incoming(sheet.place(row), row.value(), row.simulated()))
                .toList();
    }

    /** Returns where a row stands; the whole, where it is of no file. */
    public Place place(Row<?> row) {
        return row.line() == 0 ? Place.of(file) : Place.of(file, row.line());
    }

    /** Returns what the rows hold, without their lines. */
    public List<T> values() {
        return rows.stream().map(Row::value).toList();
    }
}
