package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteDataSource;
import porebench.method.Problem;
import porebench.port.OpenBooks;
import porebench.record.book.LabBook;
import porebench.store.check.ChainCheck;
import porebench.store.check.Inspection;
import porebench.store.file.Reason;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;
import porebench.store.file.StoreException.Task;

/** Opens the file of a lab book of this version, to be written when it may be and else to be read, and looks it over quickly. */
final class Opening {
    private final Clock clock;
    private final Steps steps;
    private final Predicate<Path> mayWrite;

    Opening(Clock clock, Steps steps, Predicate<Path> mayWrite) {
        this.clock = clock;
        this.steps = steps;
        this.mayWrite = mayWrite;
    }

    /** Returns whether a lab book can be written: its file, and its folder for the log. */
    static boolean mayWrite(Path file) {
        return Files.isWritable(file) && Files.isWritable(file.toAbsolutePath().getParent());
    }

    LabBook open(Path file) {
        String name = OpenFile.nameOf(file);
        try {
            if (mayWrite.test(file)) {
                try {
                    return opened(file, SqliteFile.existing(file), true);
                } catch (SQLException failure) {
                    // A medium may be write-protected where the permissions do not say so.
                    if (Reason.of(failure) != Reason.READ_ONLY) {
                        throw failure;
                    }
                }
            }
            return opened(
                    file,
                    FileIdentity.logBeside(file).isEmpty() ? SqliteFile.alone(file) : SqliteFile.readOnly(file),
                    false);
        } catch (SQLException | IOException failure) {
            throw new StoreException(Task.OPEN, name, failure);
        }
    }

    private LabBook opened(Path file, SQLiteDataSource source, boolean toWrite) throws SQLException, IOException {
        String name = OpenFile.nameOf(file);
        Optional<FileIdentity> identity = toWrite ? Optional.of(new FileIdentity(file)) : Optional.empty();
        @Nullable Path noted = null;
        Connection connection = source.getConnection();
        try {
            noted = OpenBooks.opened(file);
            // The header misses what another window's log still holds.
            SqliteShelf.refuseNewer(SqliteFile.version(connection), name, steps);
            Session session = new Session(connection);
            Path known = noted;
            session.whenClosed(() -> OpenBooks.closed(known));
            return new SqliteLabBook(looked(name, session, identity, toWrite), session, clock);
        } catch (SQLException | IOException | RuntimeException failure) {
            connection.close();
            if (noted != null) {
                OpenBooks.closed(noted);
            }
            throw failure;
        }
    }

    private OpenFile looked(String name, Session session, Optional<FileIdentity> identity, boolean toWrite)
            throws IOException {
        Inspection.Quick quick = session.read(handle -> Inspection.quick(handle, steps, name));
        if (identity.isPresent()) {
            identity.get().remember(session.read(handle -> Inspection.headOf(handle)));
        }
        List<Problem> warnings = new ArrayList<>(quick.problems());
        session.read(handle -> Inspection.newest(handle))
                .flatMap(newest -> ChainCheck.clockBehind(newest, clock.instant()))
                .ifPresent(warnings::add);
        if (toWrite) {
            return new OpenFile(name, identity, warnings, quick.notWritable(), steps);
        }
        warnings.add(Problem.warning("file", "book.read-only", name));
        return new OpenFile(
                name, identity, warnings, Optional.of(Problem.error("file", "book.read-only", name)), steps);
    }
}
