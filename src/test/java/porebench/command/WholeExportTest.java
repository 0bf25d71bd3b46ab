package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.command.Terminal.Said;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.store.Books;
import porebench.store.SqliteShelf;

/** A whole export of the demo book with corrections reads back to the same chain, or is refused with the place. */
class WholeExportTest {
    private static final String NASTY = "=1+2 \\ \\e \\u0000 \"a\", b;\ttab\r\nline \u200D \u00E4\u7802\uD83E\uDEA8 '";

    @TempDir
    Path folder;

    private Terminal terminal;
    private Head head;

    @BeforeEach
    void exportTheDemoBookWithCorrections() {
        terminal = new Terminal(folder);
        assertThat(terminal.json("demo", "--book", "one.book").status()).isZero();
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("one.book"))) {
            for (String text : List.of(NASTY, "", "'=x", " ")) {
                Version<Source> version = book.latest(Source.class).get(0);
                Source before = version.value();
                Source after = new Source(
                        before.id(),
                        before.name(),
                        before.role(),
                        before.place(),
                        before.ledge(),
                        before.relativeDensity(),
                        before.absorptionPercent(),
                        text);
                assertThat(book.keep(List.of(Draft.correcting(version, after)), "=Ada", "-because \\ " + text))
                        .isEmpty();
            }
            head = book.head();
        }
        assertThat(terminal.json("export", "--whole", "--book", "one.book", "out")
                        .status())
                .isZero();
    }

    private Said restore() {
        return terminal.json("restore", "--from", "out", "--book", "two.book");
    }

    private List<String> files(String name) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve(name))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Path file(String name) {
        return folder.resolve("out").resolve(name);
    }

    private void change(String name, UnaryOperator<List<String>> lines) throws IOException {
        List<String> changed =
                lines.apply(new ArrayList<>(List.of(Files.readString(file(name)).split("\r\n"))));
        Files.writeString(file(name), String.join("\r\n", changed) + "\r\n");
    }

    private void refused(String code, String place, int line) throws IOException {
        Said said = restore();
        assertThat(said.status()).isEqualTo(1);
        Map<String, Object> problem = said.list("problems").get(0);
        assertThat(problem.get("code") + " " + problem.get("file") + ":" + problem.get("line"))
                .isEqualTo(code + " " + place + ":" + line);
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left.map(path -> path.getFileName().toString()))
                    .doesNotContain("two.book")
                    .noneMatch(name -> name.contains(".part"));
        }
    }

    /** A book of the fourth step holds names with line breaks, which nobody could keep today. */
    @Test
    void anOldBookWithNamesOfBeforeReadsBackToTheSameChain() throws IOException {
        Path old = folder.resolve("old.book");
        try (InputStream stream = Books.class.getResourceAsStream("books/book-of-step-4.porebench")) {
            Files.copy(stream, old);
        }
        Head then;
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(old)) {
            assertThat(book.ids(RecordKind.SOURCE)).anyMatch(id -> id.contains("\n"));
            then = book.head();
        }
        assertThat(terminal.json("export", "--whole", "--book", "old.book", "old")
                        .status())
                .isZero();
        Said said = terminal.json("restore", "--from", "old", "--book", "again.book");
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("head", then.shortHash());
    }

    @Test
    void readsBackToTheSameChain() throws IOException {
        Said said = restore();
        assertThat(said.status()).as(said.out()).isZero();
        assertThat(said.json()).containsEntry("head", head.shortHash());
        assertThat(((Number) said.json().get("entries")).longValue()).isEqualTo(head.entries());
        try (LabBook book = new SqliteShelf(Terminal.CLOCK).open(folder.resolve("two.book"))) {
            assertThat(book.head()).isEqualTo(head);
            assertThat(book.verify()).isEmpty();
            String id = book.latest(Source.class).get(0).value().recordId();
            assertThat(book.history(Source.class, id).stream()
                            .map(version -> version.value().remarks()))
                    .endsWith(NASTY, "", "'=x", " ");
            assertThat(book.history(Source.class, id).stream()
                            .map(version -> version.stamp().who()))
                    .endsWith("=Ada", "=Ada");
        }
        assertThat(terminal.json("export", "--whole", "--book", "two.book", "again")
                        .status())
                .isZero();
        assertThat(files("again")).isEqualTo(files("out")).contains("book.csv", "book-entry.csv", "book-trial.csv");
        for (String name : files("out")) {
            assertThat(folder.resolve("again").resolve(name)).hasSameBinaryContentAs(file(name));
        }
    }

    @Test
    void noCellOfTheFilesIsAFormulaAndEveryRowIsOneLine() throws IOException {
        for (String name : files("out")) {
            assertThat(Files.readString(file(name)).split("\r\n"))
                    .noneMatch(line -> line.matches("(?s)(.*,)?\"?[=@].*"));
        }
        assertThat(Files.readString(file("book-source.csv"))).contains("'=1+2 \\\\ \\\\e \\\\u0000 \"\"a\"\"");
    }

    @ParameterizedTest
    @CsvSource({
        "book-trial.csv, T-003, T-03, whole.record-changed, 4",
        "book-meter.csv, ',1,', ',0,', whole.record-changed, 2",
        "book-mix_constituent.csv, granite, limestone, whole.record-changed, 2",
        "book-entry.csv, demo, domo, whole.entry-changed, 2"
    })
    void aChangedCellIsNamed(String name, String from, String to, String code, int line) throws IOException {
        String text = Files.readString(file(name));
        assertThat(text).contains(from);
        Files.writeString(file(name), text.replaceFirst(from, to));
        Said said = restore();
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly(code);
        assertThat(said.list("problems").get(0).get("line")).isNotNull();
        assertThat(folder.resolve("two.book")).doesNotExist();
    }

    @Test
    void aMissingLineIsNamed() throws IOException {
        change("book-trial.csv", lines -> {
            lines.remove(3);
            return lines;
        });
        long number = Long.parseLong(Files.readString(file("book-trial.csv"))
                        .split("\r\n")[2]
                        .split(",")[0])
                + 1;
        refused("whole.record-missing", "book-entry.csv", (int) number + 1);
    }

    @Test
    void aMissingEntryIsNamedWithItsColumn() throws IOException {
        change("book-entry.csv", lines -> {
            lines.remove(3);
            return lines;
        });
        refused("whole.entry-order", "book-entry.csv", 4);
        assertThat(restore().list("problems").get(0)).containsEntry("column", 1);
    }

    @Test
    void aTailThatWasCutWithItsLinesIsSeen() throws IOException {
        change("book-entry.csv", lines -> lines.subList(0, lines.size() - 1));
        change("book-source.csv", lines -> lines.subList(0, lines.size() - 1));
        refused("whole.end", "book.csv", 4);
    }

    @ParameterizedTest
    @CsvSource({"book-entry.csv, whole.entry-order, 5", "book-trial.csv, whole.line-order, 6"})
    void swappedLinesAreNamed(String name, String code, int line) throws IOException {
        change(name, lines -> {
            Collections.swap(lines, 4, 5);
            return lines;
        });
        refused(code, name, line);
    }

    @Test
    void aLineOfNoEntryIsNamed() throws IOException {
        change("book-trial.csv", lines -> {
            lines.add(lines.get(lines.size() - 1).replaceFirst("\\d+", "9999"));
            return lines;
        });
        Said said = restore();
        assertThat(said.codes()).containsExactly("whole.without-entry");
        assertThat(said.list("problems").get(0)).containsEntry("file", "book-trial.csv");
    }

    @Test
    void swappedLinesOfOneRecordAreNamed() throws IOException {
        change("book-mix_constituent.csv", lines -> {
            Collections.swap(lines, 1, 2);
            return lines;
        });
        refused("whole.parts-order", "book-mix_constituent.csv", 2);
    }

    @Test
    void nothingAndAnEmptyTextAreNotTheSame() throws IOException {
        change("book-source.csv", lines -> {
            lines.replaceAll(line -> line.replace(",\\e,", ",,"));
            return lines;
        });
        assertThat(restore().codes()).containsExactly("whole.record-changed");
    }

    @Test
    void aCellOfAnotherFormAndAnUnknownColumnAreNamedWithTheirColumn() throws IOException {
        String trials = Files.readString(file("book-trial.csv"));
        Files.writeString(file("book-trial.csv"), trials.replaceFirst("T-001", "T-\\\\q"));
        Said said = restore();
        assertThat(said.codes()).containsExactly("whole.cell-unreadable");
        assertThat(said.list("problems").get(0)).containsEntry("line", 2).containsEntry("column", 2);
        Files.writeString(file("book-trial.csv"), trials.replaceFirst("operator", "x) VALUES (1); --"));
        Said injected = restore();
        assertThat(injected.codes()).containsExactly("whole.column-unknown");
        assertThat(injected.list("problems").get(0)).containsEntry("line", 1);
        assertThat(folder.resolve("two.book")).doesNotExist();
    }

    @Test
    void whatIsNoWholeExportAndABookThatIsThereAreRefused() throws IOException {
        assertThat(terminal.json("restore", "--from", ".", "--book", "two.book").codes())
                .containsExactly("whole.not-whole");
        assertThat(terminal.json("restore", "--from", "out", "--book", "one.book")
                        .codes())
                .containsExactly("book.file-exists");
        change("book.csv", lines -> {
            lines.replaceAll(line -> line.startsWith("schema_step") ? "schema_step,999" : line);
            return lines;
        });
        refused("book.newer", "book.csv", 4);
        Files.delete(file("book-trial.csv"));
        assertThat(restore().codes()).containsExactly("csv.file-missing");
    }
}
