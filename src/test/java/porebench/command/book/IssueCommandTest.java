package porebench.command.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
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

    /** Issues with M. Ash taking on the doubts: the trials state no masses, and the meter was never calibrated. */
    private Said taking(String... more) {
        List<String> arguments = new ArrayList<>(List.of(more));
        arguments.addAll(List.of("--override-by", "M. Ash", "--override-reason", "looked at"));
        return issue(arguments.toArray(String[]::new));
    }

    /** The codes of a refusal, but for the doubts about the trials. */
    private static List<String> errors(Said said) {
        return said.codes().stream()
                .map(String::valueOf)
                .filter(code -> !code.equals("issue.doubt-of-trial") && !code.startsWith("issue.stop-"))
                .toList();
    }

    @Test
    void issuesNothingWhileADoubtIsOpenAndSaysEachOne() {
        Said said = issue("--reason", "first factor");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).contains("issue.doubt-of-trial", "issue.stop-more-could-change", "issue.doubts-open");
        assertThat(terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "card.pdf")
                        .status())
                .isEqualTo(1);
        assertThat(folder.resolve("card.pdf")).doesNotExist();
        Said taken = taking("--reason", "first factor");
        assertThat(taken.json().get("doubts").toString())
                .contains("trial.meter-never-calibrated", "M. Ash", "looked at");
        assertThat(taken.json().get("stop").toString()).contains("more");
    }

    @Test
    void theSameCommandTwiceMakesOneRevision() {
        assertThat(taking("--reason", "first factor", "--determination", "M-1/1")
                        .status())
                .isZero();
        Said again = taking("--reason", "first factor", "--determination", "M-1/1");
        assertThat(again.status()).isEqualTo(1);
        assertThat(errors(again)).containsExactly("issue.already-issued");
    }

    @Test
    void issuesTheNextRevisionFromTheOpenDetermination() {
        Said said = taking("--reason", "first factor", "--who", "R. Vale", "--approved-by", "M. Ash");
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

    /** What holds now is asked of the minute, a day of its end. */
    @Test
    void issuesFromAnHourOnUnderConditionsThatCardAndRegisterSay() {
        Said wrong = taking("--reason", "first factor", "--at", "half past");
        assertThat(wrong.status()).isEqualTo(1);
        assertThat(wrong.codes()).containsExactly("form.not-a-time");
        Said said = taking("--reason", "first factor", "--at", "7:05", "--conditions", "only with sand Alder");
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsEntry("inForceAt", "07:05").containsEntry("conditions", "only with sand Alder");
        assertThat(terminal.json("register", "--book", "lab.book").list("rows").get(0))
                .containsEntry("inForceAt", "07:05")
                .containsEntry("conditions", "only with sand Alder");
        Said later = taking("--reason", "second factor", "--at", "23:59", "--determination", "M-1/1");
        assertThat(later.status()).isZero();
        assertThat(terminal.json("register", "--book", "lab.book").list("rows").get(0))
                .containsEntry("revision", 1);
        assertThat(terminal.json("register", "--book", "lab.book", "--on", "2026-07-01")
                        .list("rows")
                        .get(0))
                .containsEntry("revision", 2);
        Said card = terminal.json("card", "--book", "lab.book", "--mix-id", "M-1", "--out", "card.pdf");
        assertThat(card.status()).isZero();
        assertThat(card.json())
                .containsEntry("revision", 1)
                .containsEntry("inForceAt", "07:05")
                .containsEntry("conditions", "only with sand Alder");
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
                "2026-12-31",
                "--override-by",
                "M. Ash",
                "--override-reason",
                "looked at");
        assertThat(said.out().lines().map(String::strip).toList())
                .contains(
                        "Taken on by M. Ash: Meter PM-1 was not fully calibrated by that day: its bowl, or its dial or "
                                + "column, had not been checked. Reason: looked at");
        assertThat(said.out().lines().findFirst().orElseThrow().strip())
                .isEqualTo("Revision 1: subtract G = 0.4 % air, in force from 2026-08-01, recheck by 2026-12-31, "
                        + "issued by R. Vale");
    }

    @Test
    void refusesAMixAReasonADateOrADeterminationThatCannotBe() {
        assertThat(terminal.json("issue", "--book", "lab.book", "--mix-id", "M-9", "--reason", "first")
                        .codes())
                .containsExactly("book.not-there");
        assertThat(errors(taking("--reason", " "))).containsExactly("form.required");
        assertThat(errors(taking("--reason", "first", "--recheck-by", "2026-06-30")))
                .containsExactly("issue.recheck-before-start");
        assertThat(errors(issue("--reason", "first", "--determination", "M-1/9")))
                .containsExactly("issue.determination-unknown");
        assertThat(issue("--reason", "first", "--from", "1.7.2026").status()).isEqualTo(2);
        assertThat(issue().status()).isEqualTo(2);
    }

    @Test
    void theDeterminationOfAFactorIsNotOpenAnyMoreButCanBeNamed() {
        assertThat(taking("--reason", "first").status()).isZero();
        assertThat(issue("--reason", "again").codes()).containsExactly("issue.no-trial-counts");
        Said again = taking("--reason", "again", "--determination", "M-1/1");
        assertThat(again.status()).isZero();
        assertThat(again.json()).containsEntry("revision", 2);
    }
}
