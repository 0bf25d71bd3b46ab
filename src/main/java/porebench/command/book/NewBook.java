package porebench.command.book;

import java.nio.file.Path;
import java.util.function.Consumer;
import porebench.port.LabBookShelf;
import porebench.record.book.LabBook;

/** Begins lab books that are there only when what they were begun for came about. */
public final class NewBook {
    private NewBook() {}

    /** Begins a lab book and fills it; when filling fails, or the program is stopped meanwhile, no file of that name is left. */
    public static LabBook begin(LabBookShelf shelf, Path file, Consumer<LabBook> filling) {
        return shelf.create(file, book -> {
                    filling.accept(book);
                    return true;
                })
                .orElseThrow();
    }
}
