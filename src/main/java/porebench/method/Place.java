package porebench.method;

import java.util.Optional;
import porebench.quantity.Require;

/**
 * Where in a file a problem stands.
 *
 * @param file the name of the file
 * @param line the line, counted from 1; empty when the problem is about the whole file
 * @param column the field within the row, counted from 1; empty when it is about the whole line
 */
public record Place(String file, Optional<Integer> line, Optional<Integer> column) {
    public Place {
        line.ifPresent(number -> Require.atLeast("line", number, 1));
        column.ifPresent(number -> Require.atLeast("column", number, 1));
    }

    /** Returns the whole of a file. */
    public static Place of(String file) {
        return new Place(file, Optional.empty(), Optional.empty());
    }

    /** Returns a line of a file. */
    public static Place of(String file, int line) {
        return new Place(file, Optional.of(line), Optional.empty());
    }

    /** Returns a field of a line. */
    public static Place of(String file, int line, int column) {
        return new Place(file, Optional.of(line), Optional.of(column));
    }
}
