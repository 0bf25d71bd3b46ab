package porebench.port;

import porebench.record.book.Progress;

/** Something that is laid out and ready to leave, and waits until it is written down that it does; closed, it never leaves. */
public interface Waiting extends AutoCloseable {
    /**
     * Lets it leave: the file takes its place, the printer prints.
     *
     * @throws OutputRefused if something came to the file's place meanwhile
     */
    void release();

    /**
     * Lets it leave and tells how far it is.
     *
     * @throws java.util.concurrent.CancellationException if the person ended it and nothing left
     */
    default void release(Progress progress) {
        release();
    }

    /** Returns how many copies of it leave: what the person chose of the printer, else one. */
    default int copies() {
        return 1;
    }

    /** Removes what was made ready, if it was not released. */
    @Override
    void close();
}
