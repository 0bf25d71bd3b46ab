package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;
import porebench.record.FactorIssue;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** The demo lab book, and the whole job on it in text; the day is 25 November 2026, for which the demo is made. */
class DemoTest {
    @TempDir
    Path folder;

    private Terminal terminal;
    private Path book;
    private Path cards;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder).on("2026-11-25");
        book = folder.resolve("data").resolve("demo.porebench");
        cards = folder.resolve("data").resolve("cards");
    }

    private List<FactorIssue> issuedByDemo() {
        try (LabBook opened = new SqliteShelf(Terminal.CLOCK).open(book)) {
            return opened.latest(FactorIssue.class).stream()
                    .map(version -> version.value())
                    .filter(issue -> issue.issuedBy().equals("demo"))
                    .toList();
        }
    }

    /** The counts asked of the demo laboratory: at least 6 sources, 8 mixes, 3 meters and 60 trials. */
    @Test
    @SuppressWarnings("unchecked")
    void theDemoCommandFillsANewLabBook() {
        Said said = terminal.json("demo", "--book", "demo.book");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys("path", "counts", "problems")
                .containsEntry("path", folder.resolve("demo.book").toString());
        Map<String, Integer> counts = (Map<String, Integer>) said.json().get("counts");
        assertThat(counts.get("source")).isGreaterThanOrEqualTo(6);
        assertThat(counts.get("mix")).isGreaterThanOrEqualTo(8);
        assertThat(counts.get("meter")).isGreaterThanOrEqualTo(3);
        assertThat(counts.get("trial")).isGreaterThanOrEqualTo(60);
        assertThat(terminal.json("verify", "--book", "demo.book").json()).containsEntry("intact", true);
    }

    @Test
    void everyStateOfAFactorIsInTheDemosRegister() {
        assertThat(terminal.run("demo", "--book", "demo.book").out()).startsWith("Demo lab book written to ");
        assertThat(terminal.json("register", "--book", "demo.book").list("rows"))
                .extracting(row -> row.get("state"))
                .contains("in force", "recheck due", "lapsed", "source changed", "no factor", "withdrawn");
    }

    @Test
    void theDemoCommandDoesNotTouchAFileThatIsThere() throws IOException {
        LabFiles.write(folder, "demo.book", "mine");
        Said said = terminal.json("demo", "--book", "demo.book");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("book.file-exists");
        assertThat(folder.resolve("demo.book")).hasContent("mine");
    }

    @Test
    void theNewcomersMixComesFromItsDesignToItsCard() throws IOException {
        Said said = terminal.demoRun(book, cards);
        assertThat(said.status()).isZero();
        assertThat(said.out())
                .contains("There is no display")
                .contains("Correction sample of mix ")
                .contains("Determination HG-108/1 of mix HG-108")
                .contains("Factor G as reported")
                .contains("Revision 1: subtract G = ");
        Path card = Path.of(said.out()
                .lines()
                .filter(line -> line.startsWith("Card: "))
                .findFirst()
                .orElseThrow()
                .substring("Card: ".length()));
        assertThat(card).hasParent(cards);
        assertThat(Files.readAllBytes(card)).startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(issuedByDemo()).hasSize(1).allMatch(issue -> !issue.reason().isBlank());
    }

    @Test
    void runningAgainPrintsTheSameCardBesideTheFirstAndIssuesNothing() {
        Said first = terminal.demoRun(book, cards);
        Said again = terminal.on("2026-12-24").demoRun(book, cards);
        assertThat(again.status()).isZero();
        assertThat(again.out().replace("-2.pdf", ".pdf")).isEqualTo(first.out());
        assertThat(again.out()).contains("-2.pdf");
        assertThat(issuedByDemo()).hasSize(1);
    }

    @Test
    void aFactorThatLapsedIsIssuedAgain() {
        terminal.demoRun(book, cards);
        Said later = terminal.on("2028-01-10").demoRun(book, cards);
        assertThat(later.status()).isZero();
        assertThat(later.out()).contains("Revision 2: subtract G = ");
        assertThat(issuedByDemo()).hasSize(2);
    }

    @Test
    void saysWhenTheDemoLabBookIsSomethingElse() {
        LabFiles.write(folder, "other.csv", "a,b\n1,2\n");
        Said said = terminal.demoRun(folder.resolve("other.csv"), cards);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).startsWith("error: other.csv is not a Porebench lab book");
    }

    @Test
    void saysWhenNoMixIsReady() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX);
        terminal.run("import", "--book", "small.book", "--new", "mix.csv");
        Said said = terminal.demoRun(folder.resolve("small.book"), cards);
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.err()).contains("has no mix with enough trials for a factor");
    }
}
