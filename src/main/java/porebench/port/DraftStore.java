package porebench.port;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * Where what was typed and not saved yet outlives the program, one text a name, apart for each lab book. It is a person's own
 * and no record of the laboratory: nothing of it stands in the lab book.
 */
public interface DraftStore extends AutoCloseable {
    /**
     * Returns everything kept for a lab book, by name: by this program, and by those that do not run any more. What another program
     * keeps that runs, and what cannot be read, is left where it is and is not among it.
     *
     * @param book where the lab book is kept
     */
    SortedMap<String, String> all(String book);

    /**
     * Keeps a text, or nothing any more, under a name. Returns at once; it is written beside the caller, in the order of the
     * calls, and is whole or not there whenever the program ends.
     *
     * @param book where the lab book is kept
     */
    void keep(String book, String name, Optional<String> text);

    /**
     * Tells from now on that what is typed cannot be kept: once, until something is written again.
     *
     * @param told takes what went wrong; on any thread
     */
    default void onFailure(Consumer<Exception> told) {}

    /** Waits until everything is written; another program may go on with it then. */
    @Override
    void close();

    /** Keeps nothing beyond the program. */
    static DraftStore none() {
        return new DraftStore() {
            @Override
            public SortedMap<String, String> all(String book) {
                return new TreeMap<>(Map.of());
            }

            @Override
            public void keep(String book, String name, Optional<String> text) {}

            @Override
            public void close() {}
        };
    }
}
