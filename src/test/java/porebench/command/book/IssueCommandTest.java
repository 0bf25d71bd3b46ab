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
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.store.Books;

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

    /** Puts mix M-1 under a profile of the laboratory that asks for three people. */
    private void askForThree() {
        try (LabBook book = Books.SHELF.open(folder.resolve("lab.book"))) {
            Books.keep(
                    book,
                    new LaboratoryProfile(Profiles.standard()
                            .copyAs("own", "Own rules")
                            .with(FigureName.FACTOR_STEPS, new Figure("three", "Own choice", Mark.LABORATORY))));
            MixDesign mix = book.latest(MixDesign.class, "M-1").orElseThrow().value();
            Books.correct(
                    book,
                    new MixDesign(
                            mix.id(),
                            mix.title(),
                            mix.batch(),
                            mix.soakMinutes(),
                            mix.airTolerancePercent(),
                            "own",
                            mix.remarks(),
                            mix.plant()));
        }
    }

    @Test
    void threePeopleBringAFactorInForceByTheStepsOfTheCommand() {
        askForThree();
        Said direct = taking("--reason", "first factor", "--who", "R. Vale", "--approved-by", "M. Ash");
        assertThat(direct.status()).isEqualTo(1);
        assertThat(errors(direct)).containsExactly("issue.steps-needed");
        assertThat(issue("--reason", "x", "--step", "stamp").codes()).containsExactly("proposal.no-such-step");
        assertThat(issue("--reason", "x", "--step", "check", "--who", "M. Ash").codes())
                .containsExactly("proposal.none-open");
        Said drafted = taking("--reason", "first factor", "--step", "draft", "--who", "R. Vale", "--at", "14:30");
        assertThat(drafted.status()).isZero();
        assertThat(drafted.json())
                .containsEntry("step", "drafted")
                .containsEntry("draftedBy", "R. Vale")
                .containsEntry("inForceAt", "14:30")
                .containsEntry("revision", null);
        assertThat(terminal.json("register", "--book", "lab.book")
                        .list("rows")
                        .get(0)
                        .get("missing")
                        .toString())
                .contains("register.draft-to-check");
        assertThat(issue("--reason", "x", "--step", "check", "--who", "r. vale").codes())
                .contains("proposal.own-draft-checked");
        Said checked = issue("--reason", "recalculated", "--step", "check", "--who", "M. Ash");
        assertThat(checked.json()).containsEntry("step", "checked").containsEntry("checkedBy", "M. Ash");
        assertThat(issue("--reason", "x", "--step", "put-in-force", "--who", "M. Ash")
                        .codes())
                .contains("proposal.own-check-in-force");
        Said issued = issue("--reason", "agreed", "--step", "put-in-force", "--who", "T. Oak");
        assertThat(issued.status()).isZero();
        assertThat(issued.json())
                .containsEntry("step", "issued")
                .containsEntry("stepBy", "T. Oak")
                .containsEntry("revision", 1);
        assertThat(terminal.json("register", "--book", "lab.book", "--on", "2026-07-01")
                        .list("rows")
                        .get(0))
                .containsEntry("revision", 1)
                .containsEntry("inForceAt", "14:30");
        assertThat(terminal.run("verify", "--book", "lab.book").status()).isZero();
    }

    @Test
    void aDraftIsSentBackAndGivenUpInOneLineEach() {
        askForThree();
        taking("--reason", "first factor", "--step", "draft", "--who", "R. Vale");
        assertThat(terminal.run(
                                "issue",
                                "--book",
                                "lab.book",
                                "--mix-id",
                                "M-1",
                                "--step",
                                "send-back",
                                "--who",
                                "M. Ash",
                                "--reason",
                                "wrong day")
                        .out())
                .contains("Draft 1, sent back by M. Ash: to be drafted again.");
        assertThat(terminal.run(
                                "issue",
                                "--book",
                                "lab.book",
                                "--mix-id",
                                "M-1",
                                "--step",
                                "drop",
                                "--who",
                                "R. Vale",
                                "--reason",
                                "not needed")
                        .out())
                .contains("Draft 1, given up by R. Vale.");
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
                .contains("Doubt overridden by M. Ash: Meter PM-1 was not fully calibrated by that day: its bowl, "
                        + "or its dial or column, had not been checked. Calibrate it, then make the trial "
                        + "again. Reason: looked at");
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
