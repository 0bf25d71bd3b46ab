package porebench.desk.frame.book;

import java.nio.file.Path;
import java.util.function.Consumer;
import porebench.port.PracticeBook;

/**
 * The lab books whose laboratories are invented.
 *
 * @param demo where the demo lab book is kept
 * @param makeDemo makes it in a file when that is not there, and leaves one that is there as it is; reads and writes files
 * @param practice what a new training book begins with
 */
public record InventedBooks(Path demo, Consumer<Path> makeDemo, PracticeBook practice) {}
