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

    /**
     * Builds a lab book anew, in a file that is not there yet, from everything that another one held. Each entry must be what
     * its hashes say, and the last one what the outline says; the new lab book then has the same chain.
     *
     * @return the lab book, open
     * @throws OpeningRefused with the place, if the file is there already or an entry is not what it must be; nothing is left
     */
    LabBook rebuild(Path file, ChainSource source);
}
