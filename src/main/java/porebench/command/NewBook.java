package porebench.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import porebench.record.LabBook;
import porebench.record.port.LabBookShelf;

/** Begins lab books, and takes them away again when what they were begun for did not come about. */
final class NewBook {
    private NewBook() {}

    /** Begins a lab book and fills it; when filling fails, no file is left. */
    static LabBook begin(LabBookShelf shelf, Path file, Consumer<LabBook> filling) {
        LabBook book = shelf.create(file);
        boolean filled = false;
        try {
            filling.accept(book);
            filled = true;
            return book;
        } finally {
            if (!filled) {
                takeAway(book, file);
            }
        }
    }

    /** Closes a lab book that was begun in this run and takes its file away. */
    static void takeAway(LabBook book, Path file) {
        book.close();
        try {
            Files.deleteIfExists(file);
        } catch (IOException failure) {
            throw new UncheckedIOException("taking away the empty lab book " + file, failure);
        }
    }
}
