package porebench.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

class StartTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final List<Path> demos = new ArrayList<>();
    private final List<Optional<Path>> opened = new ArrayList<>();

    private LogFile log = new LogFile(Path.of("nowhere"), 1);
    private final Logger porebench = Logger.getLogger("porebench");

    @BeforeEach
    void logIntoAFile() {
        log = new LogFile(folder.resolve("logs"), 100_000);
        porebench.addHandler(log);
    }

    @AfterEach
    void logNoMore() {
        porebench.removeHandler(log);
    }

    private int start(BooleanSupplier display, String... arguments) {
        Machine here = new Machine(
                CLOCK,
                ZoneOffset.UTC,
                Locale.ENGLISH,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder,
                "Ada Test",
                log::file,
                Optional.empty());
        Ports ports = new Ports(
                CsvSheets::new,
                () -> new SqliteShelf(CLOCK),
                () -> new PdfPress("Porebench", CLOCK, ZoneOffset.UTC),
                DemoYear::new);
        Window window = (where, what, data, book) -> {
            demos.add(data.demoBook());
            opened.add(book);
        };
        return new Start(here, ports, new DataFolder(folder.resolve("data"), folder.resolve("logs")), display, window)
                .run(arguments);
    }

    private static boolean notAsked() {
        throw new AssertionError("a command asked for the display");
    }

    @Test
    void aCommandRunsWithoutAskingForTheDisplay() {
        assertThat(start(StartTest::notAsked, "air", "--reading", "4.0", "--factor", "0.3", "--json"))
                .isZero();
        assertThat(out.toString(StandardCharsets.UTF_8)).startsWith("{\"airPercent\":3.7,");
        assertThat(start(StartTest::notAsked, "air")).isEqualTo(2);
        assertThat(start(StartTest::notAsked, "stats", "--values", "none.csv")).isEqualTo(1);
        assertThat(opened).isEmpty();
    }

    @Test
    void theWindowOpensWithoutMakingOrReadingAnything() {
        assertThat(start(() -> true)).isZero();
        assertThat(opened).containsExactly(Optional.empty());
        assertThat(demos).containsExactly(folder.resolve("data").resolve("demo.porebench"));
        assertThat(folder).isEmptyDirectory();
        assertThat(out.size()).isZero();
        assertThat(err.size()).isZero();
    }

    @Test
    void anArgumentNamesTheLabBook() {
        assertThat(start(() -> true, "my.porebench")).isZero();
        assertThat(start(() -> true, "--book", "plain")).isZero();
        assertThat(start(() -> true, "--book=plain")).isZero();
        assertThat(start(() -> true, "books/mine")).isZero();
        assertThat(opened)
                .containsExactly(
                        Optional.of(folder.resolve("my.porebench")),
                        Optional.of(folder.resolve("plain")),
                        Optional.of(folder.resolve("plain")),
                        Optional.of(folder.resolve("books/mine")));
    }

    @Test
    void aWordThatIsNoCommandAndNoFileIsWrongUsage() {
        assertThat(start(StartTest::notAsked, "regster")).isEqualTo(2);
        assertThat(start(StartTest::notAsked, "--book")).isEqualTo(2);
        assertThat(start(StartTest::notAsked, "my.porebench", "register")).isEqualTo(2);
        assertThat(start(StartTest::notAsked, "--bok=x.porebench")).isEqualTo(2);
        assertThat(opened).isEmpty();
    }

    @Test
    void withoutADisplayALabBookCannotBeOpenedInTheWindow() {
        assertThat(start(() -> false, "my.porebench")).isEqualTo(1);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualToIgnoringNewLines("error: There is no display, so the window cannot open "
                        + folder.resolve("my.porebench")
                        + ". Use a command that works without one, such as: register --book \""
                        + folder.resolve("my.porebench") + "\".");
    }

    @Test
    void aStartThatFailsEndsInWordsNotInATrace() {
        assertThat(start(() -> {
                    throw new IllegalStateException("the display is odd");
                }))
                .isEqualTo(1);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .isEqualToIgnoringNewLines(
                        "error: the display is oddDetails are in " + folder.resolve("logs/porebench.log") + ".");
        assertThat(folder.resolve("logs/porebench.log"))
                .content()
                .contains("IllegalStateException: the display is odd");
    }

    @Test
    void saysWhyTheDemoLabBookCannotBeMade() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder should be", StandardCharsets.UTF_8);
        assertThat(start(() -> false)).isEqualTo(1);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .startsWith("error: making the folder ")
                .endsWith("Details are in " + folder.resolve("logs/porebench.log") + "." + System.lineSeparator());
    }

    @Test
    void aCommandThatFailsNamesTheLogInTextAndInJson() throws IOException {
        Files.writeString(folder.resolve("file"), "a file where a folder should be", StandardCharsets.UTF_8);
        String[] failing = {"demo", "--book", "file/x.porebench"};
        Path written = folder.resolve("logs/porebench.log");
        assertThat(start(StartTest::notAsked, failing)).isEqualTo(1);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("Details are in " + written + ".");
        String[] asJson = Arrays.copyOf(failing, failing.length + 1);
        asJson[failing.length] = "--json";
        assertThat(start(StartTest::notAsked, asJson)).isEqualTo(1);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"log\":\"" + written + "\"}");
    }

    @Test
    void aRefusalIsNoFailureAndLeavesNoLog() {
        assertThat(start(StartTest::notAsked, "register", "--book", "none.porebench", "--json"))
                .isEqualTo(1);
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("book.missing")
                .doesNotContain("\"log\"");
        assertThat(folder.resolve("logs")).doesNotExist();
    }

    @Test
    void withoutADisplayTheWholeJobRunsInText() {
        assertThat(start(() -> false)).isZero();
        assertThat(opened).isEmpty();
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("There is no display")
                .contains("Card: ");
        assertThat(folder.resolve("data").resolve("demo.porebench")).exists();
    }
}
