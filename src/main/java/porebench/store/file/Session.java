package porebench.store.file;

import java.sql.Connection;
import java.util.Optional;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * One window's connection to a lab book.
 *
 * <p>Transactions are begun in words, not by the driver: it would begin the next one with each commit, and with it take the
 * write lock again.
 */
public final class Session implements AutoCloseable {
    private static final Logger LOG = Logger.getLogger(Session.class.getName());

    private final Handle handle;
    private Runnable afterClosing = () -> {};

    public Session(Connection connection) {
        this.handle = Jdbi.open(connection);
    }

    /**
     * Reads several things as they stood at one moment. What was read counts even where the transaction cannot be ended in order:
     * SQLite ends it by itself when it meets a damaged page, which the reading may have told and passed over.
     */
    public <R> R read(Function<Handle, R> reading) {
        handle.execute("BEGIN");
        try {
            R result = reading.apply(handle);
            undo().ifPresent(alreadyEnded -> LOG.log(Level.FINE, "a reading ended by itself", alreadyEnded));
            return result;
        } catch (RuntimeException failure) {
            undo().ifPresent(failure::addSuppressed);
            throw failure;
        }
    }

    /** Reads and writes while nobody else writes; all is undone when it fails. */
    public <R> R write(Function<Handle, R> writing) {
        handle.execute("BEGIN IMMEDIATE");
        try {
            R result = writing.apply(handle);
            handle.execute("COMMIT");
            return result;
        } catch (RuntimeException failure) {
            undo().ifPresent(failure::addSuppressed);
            throw failure;
        }
    }

    private Optional<RuntimeException> undo() {
        try {
            handle.execute("ROLLBACK");
            return Optional.empty();
        } catch (RuntimeException alreadyUndone) {
            return Optional.of(alreadyUndone);
        }
    }

    /** Returns the connection, for what is no query. */
    public Connection connection() {
        return handle.getConnection();
    }

    public boolean isClosed() {
        return handle.isClosed();
    }

    /** Says what is to be done once the connection is closed. */
    public void whenClosed(Runnable done) {
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
