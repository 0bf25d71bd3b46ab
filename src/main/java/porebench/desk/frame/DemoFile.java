package porebench.desk.frame;

import java.nio.file.Path;
import java.util.function.Consumer;

/**
 * The demo lab book.
 *
 * @param file where it is kept
 * @param make makes it in a file when that is not there, and leaves one that is there as it is; reads and writes files
 */
public record DemoFile(Path file, Consumer<Path> make) {}
