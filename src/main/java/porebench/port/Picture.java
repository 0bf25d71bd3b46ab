package porebench.port;

import java.awt.Graphics2D;
import java.util.function.Consumer;
import porebench.quantity.Require;

/**
 * A drawing that a {@link Press} puts into a file.
 *
 * @param title what it shows, in words; not blank, as it also stands where a program reads it to somebody who cannot see
 * @param width its width in points of 1/72 in., at least 1
 * @param height its height in points of 1/72 in., at least 1
 * @param drawing draws it, from the upper left corner and in points; the same each time
 */
public record Picture(String title, int width, int height, Consumer<Graphics2D> drawing) {
    public Picture {
        Require.notBlank("title", title);
        Require.atLeast("width", width, 1);
        Require.atLeast("height", height, 1);
    }
}
