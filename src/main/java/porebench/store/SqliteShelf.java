package porebench.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteDataSource;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.port.LabBookShelf;
import porebench.port.OpenBooks;
import porebench.port.OpeningRefused;
import porebench.port.OutputFile;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.store.chain.Rebuilding;
import porebench.store.file.Header;
import porebench.store.file.OpenHere;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;
import porebench.store.file.StoreException.Task;

/**
 * Opens and begins lab books that are SQLite files.
 *
 * <p>A file is first known by its header alone, so that one that is refused is not touched, not even by a companion file.
 */
public final class SqliteShelf implements LabBookShelf {
    /** What the gate for files says of a place, and a lab book is put there all the same: it is moved aside first. */
    private static final Set<Problem.Kind> ALLOWED = Set.of(Problem.Kind.LAB_BOOK, Problem.Kind.NO_FOLDER);

    private final Clock clock;
    private final Steps steps;
    private final Predicate<Path> mayWrite;

    /** Makes a shelf whose books stamp what is kept by a clock, and name backups by its zone. */
    public SqliteShelf(Clock clock) {
        this(clock, Steps.ALL);
    }

    SqliteShelf(Clock clock, Steps steps) {
        this(clock, steps, Opening::mayWrite);
    }

    /** Makes a shelf that asks a function whether a file and its folder may be written. */
    SqliteShelf(Clock clock, Steps steps, Predicate<Path> mayWrite) {
        this.clock = clock;
        this.steps = steps;
        this.mayWrite = mayWrite;
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook open(Path file) {
        int version = versionOf(file);
        refuseForeignLog(file);
        if (version < steps.newest()) {
            bringUpToDate(file);
        }
        return new Opening(clock, steps, mayWrite).open(file);
    }

    /** Returns the number of a file's last schema step; refuses what is no lab book that this program knows. */
    int versionOf(Path file) {
        if (!Files.exists(file)) {
            throw refused("book.missing", file.toString());
        }
        Header header;
        try {
            header = OpenHere.header(file).filter(Header::isLabBook).orElse(null);
        } catch (IOException | SQLException failure) {
            throw new StoreException(Task.OPEN, OpenFile.nameOf(file), failure);
        }
        if (header == null) {
            throw refused("book.not-a-lab-book", OpenFile.nameOf(file));
        }
        refuseNewer(header.version(), OpenFile.nameOf(file), steps);
        return header.version();
    }

    static void refuseForeignLog(Path file) {
        try {
            if (OpenBooks.contains(file)) {
                return;
            }
            LogCheck.foreign(file).ifPresent(log -> {
                throw refused("book.foreign-log", OpenFile.nameOf(file), OpenFile.nameOf(log));
            });
        } catch (IOException failure) {
            throw new StoreException(Task.OPEN, OpenFile.nameOf(file), failure);
        }
    }

    private void bringUpToDate(Path file) {
        String name = OpenFile.nameOf(file);
        if (!mayWrite.test(file)) {
            throw refused("book.older-and-read-only", name);
        }
        SQLiteDataSource source = SqliteFile.existing(file);
        @Nullable Path aside = null;
        try (Connection connection = source.getConnection()) {
            int version = SqliteFile.version(connection);
            refuseNewer(version, name, steps);
            if (version < steps.newest()) {
                aside = copyAside(connection, file, version + 1);
            }
        } catch (SQLException failure) {
            throw new StoreException(Task.OPEN, name, failure);
        }
        if (aside != null) {
            try {
                steps.take(source);
            } catch (FlywayException failure) {
                throw new StoreException(Task.BRING_UP_TO_DATE, name, OpenFile.nameOf(aside), failure);
            }
        }
    }

    private static Path copyAside(Connection connection, Path file, int firstStep) {
        Path aside = free(SqliteFile.beside(file, ".before-step-" + firstStep));
        try {
            SqliteFile.copy(connection, aside);
            return aside;
        } catch (SQLException | IOException failure) {
            throw new StoreException(Task.COPY_ASIDE, OpenFile.nameOf(file), OpenFile.nameOf(aside), failure);
        }
    }

    /** Returns a name that no file has: the one wanted, or with the first free number behind it. */
    static Path free(Path wanted) {
        Path free = wanted;
        for (int number = 2; isTaken(free); number++) {
            free = SqliteFile.beside(wanted, "-" + number);
        }
        return free;
    }

    private static boolean isTaken(Path file) {
        return Files.exists(file) || SqliteFile.companionsOf(file).stream().anyMatch(Files::exists);
    }

    /**
     * Refuses a place where a lab book cannot be begun: something is there, the name is that of another lab book's log, or a log
     * was left there, which SQLite would take up into the new lab book.
     */
    static void refuseTaken(Path file) {
        if (Files.exists(file)) {
            throw refused("book.file-exists", file.toString());
        }
        refuseByGate(OutputFile.fresh(file));
        SqliteFile.companionsOf(file).stream().filter(Files::exists).findFirst().ifPresent(left -> {
            throw refused("book.log-left", OpenFile.nameOf(file), OpenFile.nameOf(left));
        });
    }

    /** Refuses what the one gate for files refuses; a folder that is missing is told by the file system. */
    static void refuseByGate(OutputFile wanted) {
        wanted.problems().stream()
                .filter(problem -> !ALLOWED.contains(problem.kind()))
                .findFirst()
                .ifPresent(problem -> {
                    throw new OpeningRefused(problem);
                });
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook create(Path file) {
        return create(file, empty -> true).orElseThrow();
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public Optional<LabBook> create(Path file, Predicate<LabBook> filling) {
        return begun(file, part -> {
            Session session = new Session(SqliteFile.fresh(part).getConnection());
            try (LabBook unnamed = new SqliteLabBook(OpenFile.unnamed(file, steps), session, clock)) {
                return filling.test(unnamed);
            }
        });
    }

    /** Fills a file that has no name yet and returns whether it is to get one. */
    @FunctionalInterface
    private interface Part {
        boolean fill(Path part) throws SQLException;
    }

    private Optional<LabBook> begun(Path file, Part filling) {
        refuseTaken(file);
        try {
            Path part = SqliteFile.partOf(file);
            try {
                steps.take(SqliteFile.fresh(part));
                if (!filling.fill(part)) {
                    return Optional.empty();
                }
                SqliteFile.moveIntoPlace(part, file);
            } finally {
                SqliteFile.delete(part);
            }
        } catch (FileAlreadyExistsException cameBetween) {
            throw refused("book.file-exists", file.toString());
        } catch (IOException | SQLException | FlywayException | JdbiException failure) {
            throw new StoreException(Task.CREATE, OpenFile.nameOf(file), failure);
        }
        return Optional.of(new Opening(clock, steps, mayWrite).open(file));
    }

    /**
     * {@inheritDoc}
     *
     * @throws StoreException if the file or its folder fails
     */
    @Override
    public LabBook rebuild(Path file, ChainSource source) {
        int step = source.outline().step();
        if (step > steps.newest()) {
            throw new OpeningRefused(
                    Problem.error("file", "book.newer", source.outline().place().file(), step, steps.newest())
                            .at(source.outline().place()));
        }
        return begun(file, part -> {
                    fill(part, source);
                    return true;
                })
                .orElseThrow();
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

    @Override
    public Answer<BookCopy> backUp(Path book, Path folder, Progress progress) {
        versionOf(book);
        refuseForeignLog(book);
        return new Backups(clock, steps).backUp(book, folder, progress);
    }

    @Override
    public Answer<BookCopy> restore(Path backup, Path book, Progress progress) {
        versionOf(backup);
        refuseForeignLog(backup);
        return new Backups(clock, steps).restore(backup, book, progress);
    }

    @Override
    public Answer<Path> setAside(Path book) {
        return new Backups(clock, steps).clear(book);
    }

    static void refuseNewer(int version, String name, Steps steps) {
        if (version > steps.newest()) {
            throw refused("book.newer", name, version, steps.newest());
        }
    }

    static OpeningRefused refused(String code, Object... values) {
        return new OpeningRefused(Problem.error("file", code, values));
    }
}
