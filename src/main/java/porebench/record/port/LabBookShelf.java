package porebench.record.port;

import java.nio.file.Path;
import porebench.record.LabBook;

/** Where lab books are opened and begun. */
public interface LabBookShelf {
    /**
     * Opens a lab book. One of an older version is first copied aside, then brought up to date.
     *
     * @throws OpeningRefused if the file is not there, is not a lab book, or is of a newer version; it is then untouched
     */
    LabBook open(Path file);

    /**
     * Begins a lab book in a file that is not there yet.
     *
     * @throws OpeningRefused if the file is there already
     */
    LabBook create(Path file);
}
