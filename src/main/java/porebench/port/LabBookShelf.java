package porebench.port;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Predicate;
import porebench.method.Answer;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;

/**
 * Where lab books are opened and begun, backed up and restored.
 *
 * <p>When the file or its folder fails, all methods throw an exception that is {@link Spoken}.
 */
public interface LabBookShelf {
    /**
     * Opens a lab book. One of an older version is first copied aside, then brought up to date. One that may only be read
     * (its file or folder is write-protected) is opened for reading. What is found wrong by a quick look stands in
     * {@link LabBook#warnings}, and {@link LabBook#notWritable} says when nothing can be kept in it.
     *
     * @throws OpeningRefused if the file is not there, is not a lab book, is of a newer version, or has a log beside it that
     *     does not belong to it; it is then untouched
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

    /**
     * Begins a lab book and fills it under another name beside its place; it gets its own name when it is filled and on the
     * disk. Whatever stops the program before that leaves no lab book of that name.
     *
     * @param filling fills the empty lab book and returns whether it is to be kept; it must not close it
     * @return the lab book, open; empty when it was not to be kept, and then no file is left
     * @throws OpeningRefused if the file is there already
     */
    Optional<LabBook> create(Path file, Predicate<LabBook> filling);

    /**
     * Backs up a lab book into a new file in a folder, named after the lab book and the moment, while it may be open here or
     * elsewhere. The backup holds what the log beside the file holds too; it is checked in full and safely on the disk before
     * it gets its name, and never takes the place of another file.
     *
     * @param book the lab book's file
     * @param folder the folder, made when it is not there
     * @param progress hears how far the check is; where it ends the work, there is no backup
     * @return the backup and how far it reaches; refused with every fault and its place when the backup does not stand the
     *     check: then there is none
     * @throws OpeningRefused as {@link #open}
     */
    Answer<BookCopy> backUp(Path book, Path folder, Progress progress);

    /** Backs up a lab book while nobody listens. */
    default Answer<BookCopy> backUp(Path book, Path folder) {
        return backUp(book, folder, Progress.UNHEARD);
    }

    /**
     * Puts a backup in the place of a lab book. The backup is checked in full first and is not changed. A lab book that is in
     * the place, and its log, are moved aside under a dated name, never removed. Nobody may have it open: close it here before.
     *
     * @param backup the backup's file
     * @param book the lab book's file; need not be there
     * @param progress hears how far the check is; where it ends the work, nothing was changed
     * @return the restored lab book, how far it reaches and where the one before is now; refused when the backup is damaged
     *     (with every fault and its place), when somebody has the lab book open, or when both are the same file: then nothing
     *     was changed
     * @throws OpeningRefused if the backup cannot be opened as a lab book, as {@link #open}
     */
    Answer<BookCopy> restore(Path backup, Path book, Progress progress);

    /** Puts a backup in the place of a lab book while nobody listens. */
    default Answer<BookCopy> restore(Path backup, Path book) {
        return restore(backup, book, Progress.UNHEARD);
    }

    /**
     * Moves what stands in the place of a lab book, whole or damaged, and its log aside under a dated name, so that another can
     * be begun there. Nothing is removed. Nobody may have it open: close it here before.
     *
     * @return where it is now; refused when nothing is there, or somebody has it open: then nothing was changed
     */
    Answer<Path> setAside(Path book);
}
