package porebench.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.SQLiteDataSource;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.port.BookCopy;
import porebench.port.OpenBooks;
import porebench.port.OutputFile;
import porebench.record.book.BookCheck;
import porebench.record.book.Progress;
import porebench.store.check.Faults;
import porebench.store.check.Inspection;
import porebench.store.check.PagesCheck;
import porebench.store.check.SchemaCheck;
import porebench.store.file.Header;
import porebench.store.file.Reason;
import porebench.store.file.Session;
import porebench.store.file.SqliteFile;
import porebench.store.file.Steps;
import porebench.store.file.StoreException;
import porebench.store.file.StoreException.Task;

/** Backs lab books up and restores them; each copy is checked in full before it gets its name. */
final class Backups {
    private static final String EXTENSION = ".porebench";
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss", Locale.ROOT);

    private final Clock clock;
    private final Steps steps;

    Backups(Clock clock, Steps steps) {
        this.clock = clock;
        this.steps = steps;
    }

    Answer<BookCopy> backUp(Path book, Path folder, Progress progress) {
        String name = OpenFile.nameOf(book);
        try {
            Files.createDirectories(folder);
            Path backup = SqliteShelf.free(folder.resolve(plain(name) + "-" + moment() + EXTENSION));
            Path part = SqliteFile.partOf(backup);
            try {
                copy(book, part);
                BookCheck check = check(SqliteFile.fresh(part), progress);
                if (!check.isIntact()) {
                    return refused("book.not-backed-up", name, check.faults());
                }
                SqliteFile.moveIntoPlace(part, backup);
                return Answer.of(new BookCopy(backup, check.head(), Optional.empty()), check.doubts());
            } finally {
                SqliteFile.delete(part);
            }
        } catch (IOException | SQLException failure) {
            throw new StoreException(Task.BACK_UP, name, folder.toString(), failure);
        }
    }

    private static String plain(String name) {
        return name.endsWith(EXTENSION) ? name.substring(0, name.length() - EXTENSION.length()) : name;
    }

    private String moment() {
        return MOMENT.format(LocalDateTime.now(clock));
    }

    private static Answer<BookCopy> refused(String code, String name, List<BookCheck.Fault> faults) {
        List<Problem> problems = new ArrayList<>();
        problems.add(Problem.error("file", code, name, faults.size()));
        faults.forEach(fault -> problems.add(fault.problem()));
        return Answer.refused(problems);
    }

    /** Writes what a file and its log hold together into a new file; neither is changed. */
    private static void copy(Path from, Path part) throws SQLException, IOException {
        try (Connection connection = toRead(from).getConnection()) {
            SqliteFile.copyInto(connection, part);
        }
    }

    private static SQLiteDataSource toRead(Path file) throws IOException {
        boolean isAlone = FileIdentity.logBeside(file).isEmpty() && !OpenBooks.contains(file);
        return isAlone && !Opening.mayWrite(file) ? SqliteFile.alone(file) : SqliteFile.readOnly(file);
    }

    private BookCheck check(SQLiteDataSource source, Progress progress) throws SQLException {
        try (Connection connection = source.getConnection();
                Session session = new Session(connection)) {
            return session.read(handle -> Inspection.full(handle, steps, Optional.empty(), progress));
        }
    }

    /** Returns what is wrong with pages, indexes and definitions of a file as it is: a copy would have its indexes made anew. */
    private List<BookCheck.Fault> damage(SQLiteDataSource source) throws SQLException {
        try (Connection connection = source.getConnection();
                Session session = new Session(connection)) {
            return session.read(handle -> {
                Faults faults = new Faults();
                PagesCheck.full(handle, faults);
                SchemaCheck.run(handle.getConnection(), steps, faults);
                return faults.found();
            });
        }
    }

    Answer<BookCopy> restore(Path backup, Path book, Progress progress) {
        String name = OpenFile.nameOf(book);
        try {
            if (Files.exists(book) && Files.isSameFile(backup, book)) {
                return Answer.refused(List.of(Problem.error("file", "book.same-file", name)));
            }
            SqliteShelf.refuseByGate(OutputFile.replacing(book));
            List<BookCheck.Fault> damage = damage(toRead(backup));
            if (!damage.isEmpty()) {
                return refused("book.backup-damaged", OpenFile.nameOf(backup), damage);
            }
            Path part = SqliteFile.partOf(book);
            try {
                copy(backup, part);
                steps.take(SqliteFile.fresh(part));
                BookCheck check = check(SqliteFile.fresh(part), progress);
                return check.isIntact()
                        ? put(part, book, check)
                        : refused("book.backup-damaged", OpenFile.nameOf(backup), check.faults());
            } finally {
                SqliteFile.delete(part);
            }
        } catch (IOException | SQLException | FlywayException failure) {
            throw new StoreException(Task.RESTORE, name, OpenFile.nameOf(backup), failure);
        }
    }

    /** Sets aside what stands in a place, so that nothing stands there. */
    Answer<Path> clear(Path book) {
        String name = OpenFile.nameOf(book);
        try {
            if (isOpenSomewhere(book)) {
                return Answer.refused(List.of(Problem.error("file", "book.in-use", name)));
            }
            Optional<Path> aside = setAside(book);
            if (aside.isEmpty()) {
                return Answer.refused(List.of(Problem.error("file", "book.missing", book.toString())));
            }
            // What stood there has its second name by now, or has been moved to it.
            Files.deleteIfExists(book);
            return Answer.of(aside.get(), List.of());
        } catch (IOException failure) {
            throw new StoreException(Task.SET_ASIDE, name, failure);
        }
    }

    private Answer<BookCopy> put(Path part, Path book, BookCheck check) throws IOException {
        if (isOpenSomewhere(book)) {
            return Answer.refused(List.of(Problem.error("file", "book.in-use", OpenFile.nameOf(book))));
        }
        Optional<Path> aside = setAside(book);
        if (Files.exists(book)) {
            SqliteFile.moveOver(part, book);
        } else {
            SqliteFile.moveIntoPlace(part, book);
        }
        return Answer.of(new BookCopy(book, check.head(), aside), check.doubts());
    }

    /** Folds the log into a lab book, which takes it for oneself; a file or log that is damaged is left as it is. */
    private static boolean isOpenSomewhere(Path book) throws IOException {
        if (!Files.exists(book)) {
            return false;
        }
        if (OpenBooks.contains(book)) {
            return true;
        }
        if (Header.read(book).filter(Header::isLabBook).isEmpty()
                || LogCheck.foreign(book).isPresent()) {
            return false;
        }
        try (Connection connection = SqliteFile.existing(book).getConnection();
                Statement statement = connection.createStatement();
                ResultSet mode = statement.executeQuery("PRAGMA journal_mode = DELETE")) {
            return !mode.next() || !mode.getString(1).equalsIgnoreCase("delete");
        } catch (SQLException failure) {
            return Reason.of(failure) == Reason.LOCKED;
        }
    }

    /**
     * Gives what stands in the place a second, dated name, its log and index with it. The file keeps its own name beside until
     * the backup takes it, so that there is a lab book in the place at every moment.
     */
    private Optional<Path> setAside(Path book) throws IOException {
        List<Path> companions =
                SqliteFile.companionsOf(book).stream().filter(Files::exists).toList();
        if (!Files.exists(book) && companions.isEmpty()) {
            return Optional.empty();
        }
        Path aside = SqliteShelf.free(SqliteFile.beside(book, ".replaced-" + moment()));
        for (Path companion : companions) {
            String ending =
                    OpenFile.nameOf(companion).substring(OpenFile.nameOf(book).length());
            Files.move(companion, SqliteFile.beside(aside, ending));
        }
        if (Files.exists(book)) {
            try {
                Files.createLink(aside, book);
            } catch (UnsupportedOperationException | IOException noLinks) {
                Files.move(book, aside);
            }
        }
        return Optional.of(aside);
    }
}
