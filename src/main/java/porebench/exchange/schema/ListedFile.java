package porebench.exchange.schema;

import java.util.List;
import java.util.Map;
import porebench.record.column.StatedColumn;

/**
 * A file that holds no records as they are imported, and is described all the same.
 *
 * @param path its name, or an example of one
 * @param section the heading under which {@code docs/formats.md} describes it
 * @param columns its columns
 * @param key the columns that together name a row; none where they may be the same in two
 * @param othersAtMost how many columns of other names it may have
 * @param shape whether it is a table of a whole export, and of which records
 */
public record ListedFile(
        String path, String section, List<StatedColumn> columns, List<String> key, int othersAtMost, Shape shape) {
    public ListedFile {
        columns = List.copyOf(columns);
        key = List.copyOf(key);
    }

    /** How its cells are written. */
    public sealed interface Shape {}

    /** A list that is written, which says in a training book that it comes from one. */
    public record Written() implements Shape {}

    /** A table of numbers that is read. */
    public record Read() implements Shape {}

    /**
     * A table of a whole export.
     *
     * @param file the file of the same records in an export, which describes what the columns mean; empty where there is none
     * @param headings what its columns are called there
     */
    public record Stored(String file, Map<String, String> headings) implements Shape {
        public Stored {
            headings = Map.copyOf(headings);
        }
    }
}
