package porebench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.Terminal.Said;

/** {@code factor} and {@code budget} take the determinations that a file states, or part its rows by days. */
class DeterminationsOfFileTest {
    /** G of 0.2, 0.3 and 0.3 in the first days of June, 0.5, 0.5 and 0.6 in the last ones. */
    private static final List<String> SIX = List.of(
            LabFiles.trial("T-1", "M-1", 1, "5.2", "no"),
            LabFiles.trial("T-4", "M-1", 28, "5.5", "no"),
            LabFiles.trial("T-2", "M-1", 2, "5.3", "no"),
            LabFiles.trial("T-5", "M-1", 29, "5.5", "no"),
            LabFiles.trial("T-3", "M-1", 3, "5.3", "no"),
            LabFiles.trial("T-6", "M-1", 30, "5.6", "no"));

    @TempDir
    Path folder;

    private Said run(String command, String trials, String... more) {
        LabFiles.write(folder, "trials.csv", trials);
        List<String> arguments = new java.util.ArrayList<>(List.of(command, "--trials", "trials.csv"));
        arguments.addAll(List.of(more));
        return new Terminal(folder).json(arguments.toArray(String[]::new));
    }

    private static String unnamed() {
        return LabFiles.TRIAL_COLUMNS + String.join("", SIX);
    }

    /** Every odd row is in one determination, every even one in the other. */
    private static String named(String first, String second) {
        StringBuilder text = new StringBuilder(LabFiles.TRIAL_COLUMNS + ",determination_id");
        for (int row = 0; row < SIX.size(); row++) {
            text.append(SIX.get(row)).append(",").append(row % 2 == 0 ? first : second);
        }
        return text.toString();
    }

    private static double number(Map<String, Object> json, String name) {
        return ((Number) json.get(name)).doubleValue();
    }

    /** Means by pencil: 0.8 / 3 and 1.6 / 3; together they would be 2.4 / 6 = 0.4. */
    @Test
    void oneEntryADeterminationThatTheColumnNames() {
        Said said = run("factor", named("M-1/7", "check"));
        assertThat(said.status()).isZero();
        assertThat(said.codes()).isEmpty();
        assertThat(said.list("determinations"))
                .extracting(one -> one.get("determinationId"), one -> one.get("mixId"))
                .containsExactly(tuple("M-1/7", "M-1"), tuple("check", "M-1"));
        assertThat(number(said.list("determinations").get(0), "meanPercent")).isEqualTo(0.8 / 3, within(1e-12));
        assertThat(number(said.list("determinations").get(1), "meanPercent")).isEqualTo(1.6 / 3, within(1e-12));
        assertThat(new Terminal(folder).run("factor", "--trials", "trials.csv").out())
                .contains("Determination M-1/7 of mix M-1", "Determination check of mix M-1");
    }

    /** From 3 to 28 June are 25 days. */
    @Test
    void rowsThatNameNoneAreNotPooledOverWeeksAndItIsSaid() {
        Said said = run("factor", unnamed());
        assertThat(said.list("determinations"))
                .extracting(one -> one.get("determinationId"), one -> number(one, "count"))
                .containsExactly(tuple("M-1/1", 3.0), tuple("M-1/2", 3.0));
        assertThat(said.codes()).containsExactly("import.begun-apart");
        assertThat(said.list("problems").get(0).get("message").toString())
                .startsWith(
                        "Trial T-4 of 2026-06-28 lies 25 days from the nearest trial of determination M-1/1, more than 14: it begins"
                                + " determination M-1/2.");
    }

    /** What the column names one determination stays one, however far apart. */
    @Test
    void theFileMayTakeFarTrialsTogether() {
        Said said = run("factor", named("all", "all"));
        assertThat(said.codes()).isEmpty();
        assertThat(said.list("determinations")).hasSize(1);
        assertThat(number(said.list("determinations").get(0), "meanPercent")).isEqualTo(0.4, within(1e-12));
    }

    @Test
    void rowsThatNameNoneJoinTheNamedOneOfTheirDays() {
        String text = LabFiles.TRIAL_COLUMNS + ",determination_id" + SIX.get(0) + ",M-1/1" + SIX.get(2) + ","
                + SIX.get(1) + ",";
        assertThat(run("factor", text).list("determinations"))
                .extracting(one -> one.get("determinationId"), one -> number(one, "count"))
                .containsExactly(tuple("M-1/1", 2.0), tuple("M-1/2", 1.0));
    }

    @Test
    void aBudgetIsOfOneDetermination() {
        Said both = run("budget", named("M-1/7", "check"), "--mix-id", "M-1", "--draws", "2000", "--reading", "6.0");
        assertThat(both.codes()).contains("command.several-determinations");
        assertThat(both.json()).containsEntry("determinationId", "check");
        assertThat(number(both.json(), "factorPercent")).isEqualTo(1.6 / 3, within(1e-12));
        assertThat(both.json().get("field")).isNotNull();
        assertThat(both.list("determinations"))
                .extracting(one -> one.get("determinationId"))
                .containsExactly("M-1/7", "check");
        assertThat(number(both.list("determinations").get(0), "factorPercent")).isEqualTo(0.8 / 3, within(1e-12));
        Said one = run(
                "budget", named("M-1/7", "check"), "--mix-id", "M-1", "--draws", "2000", "--determination", "M-1/7");
        assertThat(one.json()).containsEntry("determinationId", "M-1/7");
        assertThat(one.codes()).doesNotContain("command.several-determinations");
        assertThat(run("budget", named("M-1/7", "check"), "--mix-id", "M-1", "--determination", "x")
                        .codes())
                .contains("command.no-such-determination");
    }

    /** M/2 comes before M/10 in the days they were made, not in the letters of their names. */
    @Test
    void determinationsComeInTheOrderInWhichTheyWereMade() {
        assertThat(run("factor", named("M-1/2", "M-1/10")).list("determinations"))
                .extracting(one -> one.get("determinationId"))
                .containsExactly("M-1/2", "M-1/10");
    }

    @Test
    void typesOfMeterAndMixesAreNotMixed() {
        String typeA = "\nT-7,M-1,2026-06-02T12:00,Ada Test,PA-1,A,7.00,L,4.9,7.35,kg,,22,,,,0.8,0.4,no,";
        for (String command : List.of("factor", "budget")) {
            Said mixed = run(command, LabFiles.THREE_TRIALS + typeA, "--mix-id", "M-1");
            assertThat(mixed.status()).isEqualTo(1);
            assertThat(mixed.codes()).containsExactly("determination.mixed-meter-types");
        }
        String other = LabFiles.TRIAL_COLUMNS + ",determination_id" + SIX.get(0) + ",D-1"
                + LabFiles.trial("U-1", "M-2", 1, "5.2", "no") + ",D-1";
        Said shared = run("factor", other);
        assertThat(shared.codes()).containsExactly("import.determination-of-another-mix");
        assertThat(shared.list("problems").get(0)).containsEntry("line", 3);
    }
}
