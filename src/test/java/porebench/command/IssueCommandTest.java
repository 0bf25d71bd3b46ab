package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;

/** From trials to a card on the command line, on a small lab book; the day is 1 July 2026. */
class IssueCommandTest {
    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void begin() {
        terminal = new Terminal(folder);
        LabFiles.beginBook(folder, terminal);
    }

    private Said issue(String... more) {
        List<String> arguments = new ArrayList<>(List.of("issue", "--book", "lab.book", "--mix-id", "M-1"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    @Test
    void issuesTheNextRevisionFromTheOpenDetermination() {
        Said said = issue("--reason", "first factor", "--who", "R. Vale", "--approved-by", "M. Ash");
        assertThat(said.status()).isZero();
        assertThat(said.json())
                .containsEntry("mixId", "M-1")
                .containsEntry("revision", 1)
                .containsEntry("factorPercent", new BigDecimal("0.4"))
                .containsEntry("inForceFrom", "2026-07-01")
                .containsEntry("recheckBy", "2027-07-01")
                .containsEntry("issuedBy", "R. Vale");
        assertThat(terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "card.pdf")
                        .status())
                .isZero();
        assertThat(folder.resolve("card.pdf")).exists();
    }

    @Test
    void saysInOneLineWhatWasIssued() {
        Said said = terminal.run(
                "issue",
                "--book",
                "lab.book",
                "--mix-id",
                "M-1",
                "--reason",
                "first",
                "--who",
                "R. Vale",
                "--from",
                "2026-08-01",
                "--recheck-by",
                "2026-12-31");
        assertThat(said.out().strip())
                .isEqualTo("Revision 1: subtract G = 0.4 % air, in force from 2026-08-01, recheck by 2026-12-31, "
                        + "issued by R. Vale");
    }

    @Test
    void refusesAMixAReasonADateOrADeterminationThatCannotBe() {
        assertThat(terminal.json("issue", "--book", "lab.book", "--mix-id", "M-9", "--reason", "first")
                        .codes())
                .containsExactly("book.not-there");
        assertThat(issue("--reason", " ").codes()).containsExactly("form.required");
        assertThat(issue("--reason", "first", "--recheck-by", "2026-06-30").codes())
                .containsExactly("issue.recheck-before-start");
        assertThat(issue("--reason", "first", "--determination", "M-1/9").codes())
                .containsExactly("issue.determination-unknown");
        assertThat(issue("--reason", "first", "--from", "1.7.2026").status()).isEqualTo(2);
        assertThat(issue().status()).isEqualTo(2);
    }

    @Test
    void theDeterminationOfAFactorIsNotOpenAnyMoreButCanBeNamed() {
        assertThat(issue("--reason", "first").status()).isZero();
        assertThat(issue("--reason", "again").codes()).containsExactly("issue.no-trial-counts");
        Said again = issue("--reason", "again", "--determination", "M-1/1");
        assertThat(again.status()).isZero();
        assertThat(again.json()).containsEntry("revision", 2);
    }
}
