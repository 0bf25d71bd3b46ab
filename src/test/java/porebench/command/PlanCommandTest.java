package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
                .containsOnlyKeys("from", "until", "arranged", "tests", "leftOut", "left", "sources", "problems")
                .containsEntry("from", "2026-07-01")
                .containsEntry("until", "2026-07-07")
                .containsEntry("left", 0);
        Map<String, Object> test = said.list("tests").get(0);
        assertThat(test)
                .containsOnlyKeys(
                        "day",
                        "mixId",
                        "need",
                        "placing",
                        "title",
                        "plant",
                        "state",
                        "withoutFactorSince",
                        "recheckBy",
                        "cardsOut",
                        "risk",
                        "who",
                        "remark",
                        "determinationId",
                        "trials",
                        "meterId",
                        "components",
                        "due",
                        "doubts")
                .containsEntry("mixId", "M-1")
                .containsEntry("need", "never-tested")
                .containsEntry("state", "no factor")
                .containsEntry("cardsOut", 0);
        Said later = terminal.json("plan", "--book", "lab.book", "--from", "2026-08-03", "--spare", "0");
        assertThat(later.json()).containsEntry("until", "2026-08-09");
        assertThat(terminal.run("plan", "--book", "lab.book").out())
                .startsWith("Tests from 2026-07-01 to 2026-07-07")
                .contains("never had a factor");
    }

    @Test
    void nothingToTestIsSaid() {
        Said none = terminal.run("plan", "--book", "lab.book", "--without", "M-1");
        assertThat(none.status()).isZero();
        assertThat(none.out()).contains("No mix needs a test on these days.");
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

    private void keep(String rows) throws IOException {
        Files.writeString(
                folder.resolve("test-plans.csv"), "plan_from,mix_id,test_day,who,trials,meter_id,mark,remark\n" + rows);
        assertThat(terminal.run("import", "--book", "lab.book", "test-plans.csv")
                        .status())
                .isZero();
    }

    /** Today is the 1st of July: it is in the plan from the 28th of June, and not in the one from the 20th. */
    @Test
    void aKeptPlanIsFollowedAndSaysWhoMakesWhatWhen() throws IOException {
        keep("2026-06-28,M-1,2026-07-03,R. Vale,4,PM-1,,after noon\n2026-06-20,M-1,2026-06-20,,,,left-out,no stone\n");
        Said said = terminal.json("plan", "--book", "lab.book");
        assertThat(said.json()).containsEntry("from", "2026-06-28").containsEntry("until", "2026-07-04");
        assertThat((Map<?, ?>) said.json().get("arranged")).isNotNull();
        assertThat(said.list("tests").get(0))
                .containsEntry("day", "2026-07-03")
                .containsEntry("who", "R. Vale")
                .containsEntry("placing", "kept")
                .containsEntry("remark", "after noon")
                .containsEntry("trials", 4)
                .containsEntry("meterId", "PM-1");
        assertThat(terminal.run("plan", "--book", "lab.book").out())
                .contains("Arranged by")
                .contains("2026-07-03")
                .contains("R. Vale");
        Said before = terminal.json("plan", "--book", "lab.book", "--from", "2026-06-20");
        assertThat(before.list("tests")).isEmpty();
        assertThat(before.list("leftOut").get(0))
                .containsEntry("placing", "left-out")
                .containsEntry("remark", "no stone");
        assertThat(terminal.run("plan", "--book", "lab.book", "--from", "2026-06-20")
                        .out())
                .contains("M-1 is left out (never had a factor): no stone");
        Said proposed = terminal.json("plan", "--book", "lab.book", "--from", "2026-08-03");
        assertThat(proposed.json().get("arranged")).isNull();
        assertThat(proposed.list("tests").get(0)).containsEntry("placing", "proposed");
    }

    /**
     * The spread of loads is checked as by the command {@code risk}. Four trials of 4.9 kg of sand and a tenth more are 21.56 kg, and over
     * 0.45359237 kg 47.53 lb; programs read kg.
     */
    @Test
    void takesASpreadOfLoadsAndAUnitOfMasses() throws IOException {
        assertThat(terminal.json("plan", "--book", "lab.book", "--load-spread", "-0.1")
                        .codes())
                .containsExactly("risk.spread-negative");
        Said said = terminal.json("plan", "--book", "lab.book", "--load-spread", "0.6");
        assertThat(said.status()).isZero();
        keep("2026-06-28,M-1,2026-07-03,,4,PM-1,,\n");
        assertThat(terminal.run("plan", "--book", "lab.book").out()).contains("To bring (kg)", "21.6");
        assertThat(terminal.run("plan", "--book", "lab.book", "--mass-unit", "lb")
                        .out())
                .contains("To bring (lb)", "47.6");
        Said pounds = terminal.json("plan", "--book", "lab.book", "--mass-unit", "lb");
        assertThat(((Number) pounds.list("sources").get(0).get("kilograms")).doubleValue())
                .isCloseTo(21.56, within(1e-9));
        assertThat(terminal.run("plan", "--book", "lab.book", "--mass-unit", "stone")
                        .status())
                .isEqualTo(2);
    }

    /** 8 loads in the week until the 30th of June, reported on the 24th first: 8 a week, over 8 days 7. */
    @Test
    void saysHowManyLoadsAreAtRisk() throws IOException {
        Files.writeString(
                folder.resolve("production.csv"),
                "production_id,mix_id,first_day,last_day,production_days,loads,concrete_volume,concrete_volume_unit,"
                        + "concrete_mass,concrete_mass_unit,reported_by\n"
                        + "P-1,M-1,2026-06-24,2026-06-30,3,8,,,,,North plant\n");
        assertThat(terminal.run("import", "--book", "lab.book", "production.csv")
                        .status())
                .isZero();
        Map<?, ?> risk = (Map<?, ?>) terminal.json("plan", "--book", "lab.book", "--load-spread", "0.6")
                .list("tests")
                .get(0)
                .get("risk");
        assertThat(risk.get("cause")).isEqualTo("no-factor");
        assertThat(((Number) risk.get("loadsAWeek")).doubleValue()).isCloseTo(7, within(1e-9));
        assertThat(risk.get("wrongAWeek")).isNull();
        assertThat(terminal.run("plan", "--book", "lab.book").out())
                .contains("7.0 loads")
                .contains("M-1: 7.0 loads a week without a factor.");
    }
}
