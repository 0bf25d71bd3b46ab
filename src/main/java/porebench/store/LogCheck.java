package porebench.store;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.sqlite.SQLiteDataSource;
import porebench.record.chain.Head;
import porebench.store.chain.EntryTable;
import porebench.store.check.ChainCheck;
import porebench.store.check.Faults;
import porebench.store.check.Inspection;
import porebench.store.check.PagesCheck;
import porebench.store.file.Reason;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;

/**
 * Whether the log beside a lab book belongs to it, found out before anything is written.
 *
 * <p>SQLite takes up whatever log lies beside a file: one left by another state of the file, or by another lab book, overwrites
 * pages of it. So both are read first, without writing: the file alone, and the file with its log. A log belongs when the two
 * together are whole and hold the newest entry that the file alone holds. When the file alone is not whole (a crash while the
 * log was being folded in) the log may be what makes it whole, and is taken.
 */
final class LogCheck {
    private LogCheck() {}

    /** Returns the log that does not belong to a file, if there is such a one; file and log are not changed. */
    static Optional<Path> foreign(Path file) throws IOException {
        Optional<Path> log = FileIdentity.logBeside(file);
        if (log.isEmpty()) {
            return Optional.empty();
        }
        Optional<Head> alone = soundHead(SqliteFile.alone(file));
        boolean belongs = alone.isEmpty() || holdsSound(file, alone.get());
        return belongs ? Optional.empty() : log;
    }

    /** Returns how far a lab book reaches; empty when it is not whole. */
    private static Optional<Head> soundHead(SQLiteDataSource source) {
        try (Connection connection = source.getConnection();
                Session session = new Session(connection)) {
            return session.read(
                    handle -> isSound(handle) ? Optional.of(new EntryTable(handle).head()) : Optional.empty());
        } catch (SQLException | RuntimeException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean holdsSound(Path file, Head alone) {
        try (Connection connection = SqliteFile.readOnly(file).getConnection();
                Session session = new Session(connection)) {
            return session.read(handle -> isSound(handle) && (alone.entries() == 0 || Inspection.holds(handle, alone)));
        } catch (SQLException | RuntimeException unreadable) {
            if (Reason.of(unreadable) == Reason.NO_INDEX) {
                throw SqliteShelf.refused(
                        "book.log-unreadable-here", OpenFile.nameOf(file), OpenFile.nameOf(SqliteFile.logOf(file)));
            }
            return false;
        }
    }

    private static boolean isSound(Handle handle) {
        Faults faults = new Faults();
        PagesCheck.full(handle, faults);
        if (faults.isEmpty()) {
            ChainCheck.links(handle, faults);
        }
        return faults.isEmpty();
    }
}
