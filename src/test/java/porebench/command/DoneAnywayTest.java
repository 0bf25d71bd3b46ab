package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.port.LabBookShelf;
import porebench.record.FactorIssue;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** A command that fails once what it is for has come about says that it is done, and that only its report is missing. */
class DoneAnywayTest {
    private static final LabBookShelf SHELF = new SqliteShelf(Terminal.CLOCK);

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
        LabFiles.write(folder, "more.csv", LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-4", "M-1", 4, "5.4", "no"));
    }

    /** A real shelf whose real lab books run out of memory at what every report asks last. */
    private static LabBookShelf scarce() {
        InvocationHandler books = (proxy, method, arguments) -> {
            Object answer = called(SHELF, method, arguments);
            return answer instanceof LabBook book ? scarce(book) : answer;
        };
        return (LabBookShelf)
                Proxy.newProxyInstance(LabBookShelf.class.getClassLoader(), new Class<?>[] {LabBookShelf.class}, books);
    }

    private static LabBook scarce(LabBook book) {
        InvocationHandler reports = (proxy, method, arguments) -> {
            if (method.getName().equals("warnings")) {
                throw new OutOfMemoryError("Java heap space");
            }
            return called(book, method, arguments);
        };
        return (LabBook)
                Proxy.newProxyInstance(LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, reports);
    }

    private static Object called(Object real, Method method, Object[] arguments) throws Throwable {
        try {
            return method.invoke(real, arguments);
        } catch (InvocationTargetException failure) {
            throw failure.getCause();
        }
    }

    private Said scarce(String... arguments) {
        Said said = terminal.on(scarce(), arguments);
        assertThat(said.status()).as(said.toString()).isZero();
        assertThat(said.codes()).containsExactly("command.done-without-report");
        return said;
    }

    @Test
    void anImportThatWasKeptIsNotCalledRefused() {
        scarce("import", "--book", "lab.book", "more.csv", "--json");
        try (LabBook book = SHELF.open(folder.resolve("lab.book"))) {
            assertThat(book.latest(Trial.class, "T-4")).isPresent();
        }
        assertThat(terminal.json("import", "--book", "lab.book", "more.csv")
                        .json()
                        .get("alreadyThere"))
                .isEqualTo(1);
    }

    @Test
    void anIssueThatWasKeptIsNotCalledRefused() {
        scarce(
                "issue",
                "--book",
                "lab.book",
                "--mix-id",
                "M-1",
                "--reason",
                "first",
                "--override-by",
                "M. Ash",
                "--override-reason",
                "looked at",
                "--json");
        try (LabBook book = SHELF.open(folder.resolve("lab.book"))) {
            assertThat(book.latest(FactorIssue.class, "M-1/r1")).isPresent();
        }
    }

    @Test
    void anExportThatWasWrittenIsNotCalledRefused() {
        scarce("export", "--book", "lab.book", "csv", "--json");
        assertThat(folder.resolve("csv").resolve("trial-sheet.csv")).isNotEmptyFile();
        scarce("export", "--whole", "--book", "lab.book", "whole", "--json");
        assertThat(folder.resolve("whole")).isNotEmptyDirectory();
    }

    @Test
    void whatWasNotDoneIsRefused() {
        Said said = terminal.on(scarce(), "register", "--book", "lab.book", "--json");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).isEqualTo(List.of("command.failed"));
    }
}
