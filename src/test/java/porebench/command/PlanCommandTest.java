package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;

/** {@code plan} as a person runs it. */
class PlanCommandTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void beginBook() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
    }

    @Test
    void saysWhichMixesHowOftenAndWhatToFetch() {
        Said said = terminal.json("plan", "--book", "lab.book");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsOnlyKeys("from", "until", "tests", "left", "sources", "problems")
                .containsEntry("from", "2026-07-01")
                .containsEntry("until", "2026-07-07")
                .containsEntry("left", 0);
        Map<String, Object> test = said.list("tests").get(0);
        assertThat(test)
                .containsOnlyKeys(
                        "mixId",
                        "need",
                        "title",
                        "plant",
                        "state",
                        "withoutFactorSince",
                        "recheckBy",
                        "cardsOut",
                        "determinationId",
                        "trials",
                        "meterId",
                        "components",
                        "doubts")
                .containsEntry("mixId", "M-1")
                .containsEntry("need", "never-tested")
                .containsEntry("state", "no factor")
                .containsEntry("cardsOut", 0);
        Said later = terminal.json("plan", "--book", "lab.book", "--from", "2026-08-03", "--spare", "0");
        assertThat(later.json()).containsEntry("until", "2026-08-09");
        assertThat(terminal.run("plan", "--book", "lab.book").out())
                .startsWith("Tests from 2026-07-01 to 2026-07-07")
                .contains("never tested");
    }

    @Test
    void nothingToTestIsSaid() {
        Said none = terminal.run("plan", "--book", "lab.book", "--without", "M-1");
        assertThat(none.status()).isZero();
        assertThat(none.out()).contains("No mix asks for a test in these days.");
    }

    @Test
    void printsTheSheet() throws IOException {
        assertThat(terminal.run("plan", "--book", "lab.book", "--out", "plan.pdf", "--paper", "letter")
                        .status())
                .isZero();
        assertThat(Files.readAllBytes(folder.resolve("plan.pdf")))
                .startsWith("%PDF".getBytes(StandardCharsets.US_ASCII));
        assertThat(terminal.run("plan", "--book", "lab.book", "--out", "plan.pdf")
                        .status())
                .isEqualTo(1);
    }

    @Test
    void whatCannotBePlannedIsRefusedAllAtOnce() {
        Said said = terminal.json(
                "plan",
                "--book",
                "lab.book",
                "--most",
                "0",
                "--spare",
                "201",
                "--mix-id",
                "M-9",
                "--without",
                "M-9",
                "--out",
                "plan.txt");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes())
                .containsExactly(
                        "command.not-positive",
                        "command.spare-out-of-range",
                        "plan.not-pdf",
                        "book.not-there",
                        "plan.added-and-left-out");
        assertThat(terminal.run("plan", "--book", "lab.book", "--paper", "A6").status())
                .isEqualTo(2);
    }
}
