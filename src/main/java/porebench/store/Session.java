package porebench.store;

import java.sql.Connection;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * One window's connection to a lab book.
 *
 * <p>Transactions are begun in words, not by the driver: it would begin the next one with each commit, and with it take the
 * write lock again.
 */
final class Session implements AutoCloseable {
    private final Handle handle;
    private Runnable afterClosing = () -> {};

    Session(Connection connection) {
        this.handle = Jdbi.open(connection);
    }

    /** Reads several things as they stood at one moment. */
    <R> R read(Function<Handle, R> reading) {
        return within("BEGIN", reading);
    }

    /** Reads and writes while nobody else writes; all is undone when it fails. */
    <R> R write(Function<Handle, R> writing) {
        return within("BEGIN IMMEDIATE", writing);
    }

    private <R> R within(String begin, Function<Handle, R> work) {
        handle.execute(begin);
        R result;
        try {
            result = work.apply(handle);
            handle.execute("COMMIT");
        } catch (RuntimeException failure) {
            try {
                handle.execute("ROLLBACK");
            } catch (RuntimeException alreadyUndone) {
                failure.addSuppressed(alreadyUndone);
            }
            throw failure;
        }
        return result;
    }

    /** Returns the connection, for what is no query. */
    Connection connection() {
        return handle.getConnection();
    }

    boolean isClosed() {
        return handle.isClosed();
    }

    /** Says what is to be done once the connection is closed. */
    void whenClosed(Runnable done) {
        afterClosing = done;
    }

    @Override
    public void close() {
        handle.close();
        Runnable done = afterClosing;
        afterClosing = () -> {};
        done.run();
    }
}
