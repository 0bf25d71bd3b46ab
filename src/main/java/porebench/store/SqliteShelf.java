package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteDataSource;
import porebench.method.Problem;
import porebench.record.LabBook;
import porebench.record.port.ChainSource;
import porebench.record.port.LabBookShelf;
import porebench.record.port.OpeningRefused;
import porebench.store.StoreException.Task;

/**
 * Opens and begins lab books that are SQLite files.
 *
 * <p>A file is first known by its header alone, so that one that is refused is not touched, not even by a companion file.
 */
public final class SqliteShelf implements LabBookShelf {
    private final Clock clock;
    private final Steps steps;

    /** Makes a shelf whose books stamp what is kept by a clock. */
    public SqliteShelf(Clock clock) {
        this(clock, Steps.ALL);
    }

    SqliteShelf(Clock clock, Steps steps) {
        this.clock = clock;
        this.steps = steps;
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook open(Path file) {
        String name = nameOf(file);
        int version = versionOf(file, name);
        try {
            if (version < steps.newest()) {
                bringUpToDate(file, name);
            }
            return opened(file, name);
        } catch (SQLException failure) {
            throw new StoreException(Task.OPEN, name, failure);
        }
    }

    private int versionOf(Path file, String name) {
        if (!Files.exists(file)) {
            throw refused("book.missing", file);
        }
        Header header;
        try {
            header = Header.read(file).filter(Header::isLabBook).orElse(null);
        } catch (IOException failure) {
            throw new StoreException(Task.OPEN, name, failure);
        }
        if (header == null) {
            throw refused("book.not-a-lab-book", name);
        }
        refuseNewer(header.version(), name);
        return header.version();
    }

    private LabBook opened(Path file, String name) throws SQLException {
        Connection connection = SqliteFile.existing(file).getConnection();
        try {
            // The header misses what another window's write-ahead log still holds.
            refuseNewer(SqliteFile.version(connection), name);
            return new SqliteLabBook(name, new Session(connection), clock, steps.newest());
        } catch (SQLException | RuntimeException failure) {
            connection.close();
            throw failure;
        }
    }

    private void bringUpToDate(Path file, String name) throws SQLException {
        SQLiteDataSource source = SqliteFile.existing(file);
        @Nullable Path aside = null;
        try (Connection connection = source.getConnection()) {
            int version = SqliteFile.version(connection);
            refuseNewer(version, name);
            if (version < steps.newest()) {
                aside = copyAside(connection, file, name, version + 1);
            }
        }
        if (aside != null) {
            try {
                steps.take(source);
            } catch (FlywayException failure) {
                throw new StoreException(Task.BRING_UP_TO_DATE, name, nameOf(aside), failure);
            }
        }
    }

    private static Path copyAside(Connection connection, Path file, String name, int firstStep) {
        String wanted = name + ".before-step-" + firstStep;
        Path aside = file.resolveSibling(wanted);
        for (int number = 2; Files.exists(aside); number++) {
            aside = file.resolveSibling(wanted + "-" + number);
        }
        try {
            SqliteFile.copy(connection, aside);
            return aside;
        } catch (SQLException | IOException failure) {
            throw new StoreException(Task.COPY_ASIDE, name, nameOf(aside), failure);
        }
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook create(Path file) {
        String name = nameOf(file);
        if (Files.exists(file)) {
            throw refused("book.file-exists", file);
        }
        try {
            Path part = SqliteFile.partOf(file);
            try {
                steps.take(SqliteFile.fresh(part));
                SqliteFile.moveIntoPlace(part, file);
            } finally {
                SqliteFile.delete(part);
            }
            return opened(file, name);
        } catch (IOException | SQLException | FlywayException failure) {
            throw new StoreException(Task.CREATE, name, failure);
        }
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook rebuild(Path file, ChainSource source) {
        String name = nameOf(file);
        if (Files.exists(file)) {
            throw refused("book.file-exists", file);
        }
        int step = source.outline().step();
        if (step > steps.newest()) {
            throw new OpeningRefused(
                    Problem.error("file", "book.newer", source.outline().place().file(), step, steps.newest())
                            .at(source.outline().place()));
        }
        try {
            Path part = SqliteFile.partOf(file);
            try {
                steps.take(SqliteFile.fresh(part));
                fill(part, source);
                SqliteFile.moveIntoPlace(part, file);
            } finally {
                SqliteFile.delete(part);
            }
            return opened(file, name);
        } catch (IOException | SQLException | FlywayException | JdbiException failure) {
            throw new StoreException(Task.CREATE, name, failure);
        }
    }

    private static void fill(Path part, ChainSource source) throws SQLException {
        try (Session session = new Session(SqliteFile.fresh(part).getConnection())) {
            session.write(handle -> {
                Rebuilding rebuilding = new Rebuilding(handle);
                rebuilding.checkTables(source.outline());
                rebuilding.take(source);
                return true;
            });
        }
    }

    private void refuseNewer(int version, String name) {
        if (version > steps.newest()) {
            throw refused("book.newer", name, version, steps.newest());
        }
    }

    private static String nameOf(Path file) {
        Path name = file.toAbsolutePath().getFileName();
        return name == null ? file.toString() : name.toString();
    }

    private static OpeningRefused refused(String code, Path file) {
        return refused(code, file.toString());
    }

    private static OpeningRefused refused(String code, Object... values) {
        return new OpeningRefused(Problem.error("file", code, values));
    }
}
