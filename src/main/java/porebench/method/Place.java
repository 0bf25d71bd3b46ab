package porebench.method;

import porebench.quantity.Require;

/**
 * Where in a file a problem stands.
 *
 * @param file the name of the file
 * @param line the line, counted from 1; 0 when the problem is about the whole file
 * @param column the field within the row, counted from 1; 0 when it is about the whole line
 */
public record Place(String file, int line, int column) {
    public Place {
        Require.atLeast("line", line, 0);
        Require.atLeast("column", column, 0);
    }
}
