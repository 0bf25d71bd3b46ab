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
import java.util.List;
import java.util.Locale;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Ports;
import porebench.command.Surroundings;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoLaboratory;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

class StartTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final List<Path> opened = new ArrayList<>();

    private int start(BooleanSupplier display, String... arguments) {
        Surroundings here = new Surroundings(
                CLOCK,
                ZoneOffset.UTC,
                Locale.ENGLISH,
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder,
                "Ada Test");
        Ports ports = new Ports(
                CsvSheets::new,
                () -> new SqliteShelf(CLOCK),
                () -> new PdfPress("Porebench", CLOCK, ZoneOffset.UTC),
                DemoLaboratory::new);
        Window window = (where, what, demoBook) -> opened.add(demoBook);
        return new Start(here, ports, new DataFolder(folder.resolve("data")), display, window).run(arguments);
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
    void theWindowOpensOnTheDemoLabBook() {
        assertThat(start(() -> true)).isZero();
        assertThat(opened).containsExactly(folder.resolve("data").resolve("demo.porebench"));
        assertThat(opened.get(0)).isNotEmptyFile();
        assertThat(out.size()).isZero();
    }

    @Test
    void saysWhyTheDemoLabBookCannotBeMade() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder should be", StandardCharsets.UTF_8);
        assertThat(start(() -> true)).isEqualTo(1);
        assertThat(opened).isEmpty();
        assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("error: making the folder ");
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
