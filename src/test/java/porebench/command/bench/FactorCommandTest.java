package porebench.command.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.command.LabFiles;
import porebench.command.Terminal;
import porebench.command.Terminal.Said;

class FactorCommandTest {
    /** G by pencil: 0.3, 0.4, 0.5, and a leak. */
    private static final String FOUR_TRIALS = LabFiles.TRIAL_COLUMNS
            + LabFiles.trial("T-1", "M-1", 1, "5.3", "no")
            + LabFiles.trial("T-2", "M-1", 2, "5.4", "no")
            + LabFiles.trial("T-3", "M-1", 3, "5.5", "no")
            + LabFiles.trial("T-4", "M-1", 4, "6.9", "yes");

    @TempDir
    Path folder;

    private Terminal terminal;

    @BeforeEach
    void open() {
        terminal = new Terminal(folder);
    }

    private Said factor(String trials, String... more) {
        LabFiles.write(folder, "trials.csv", trials);
        List<String> arguments = new java.util.ArrayList<>(List.of("factor", "--trials", "trials.csv"));
        arguments.addAll(List.of(more));
        return terminal.json(arguments.toArray(String[]::new));
    }

    private static double number(Object json) {
        return ((BigDecimal) json).doubleValue();
    }

    @SuppressWarnings("unchecked")
    private static List<Map<String, Object>> list(Map<String, Object> json, String name) {
        return (List<Map<String, Object>>) json.get(name);
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> group(Map<String, Object> json, String name) {
        return (Map<String, Object>) json.get(name);
    }

    /**
     * By pencil: mean 0.4, s 0.1, range 0.2. Student's t for 2 degrees of freedom is 4.303 in published tables (recalled), so the
     * interval is 0.4 +- 4.303 x 0.1 / sqrt(3) = 0.2484.
     */
    @Test
    void answersWithTheFieldsOfTheContract() {
        Said said = factor(FOUR_TRIALS);
        assertThat(said.status()).isZero();
        assertThat(said.json()).containsOnlyKeys("determinations", "problems");
        Map<String, Object> one = said.list("determinations").get(0);
        assertThat(one)
                .containsKeys("meanPercent", "standardDeviationPercent", "rangePercent", "confidence95")
                .containsKeys("reportedPercent", "expandedUncertaintyPercent", "trials")
                .containsEntry("mixId", "M-1")
                .containsEntry("count", 4)
                .containsEntry("accepted", 3)
                .containsEntry("reportedPercent", new BigDecimal("0.4"));
        assertThat(number(one.get("meanPercent"))).isEqualTo(0.4, within(1e-12));
        assertThat(number(one.get("standardDeviationPercent"))).isEqualTo(0.1, within(1e-12));
        assertThat(number(one.get("rangePercent"))).isEqualTo(0.2, within(1e-12));
        assertThat(number(group(one, "confidence95").get("low"))).isEqualTo(0.4 - 0.2484, within(0.0001));
        assertThat(number(group(one, "confidence95").get("high"))).isEqualTo(0.4 + 0.2484, within(0.0001));
        assertThat(number(one.get("expandedUncertaintyPercent"))).isGreaterThan(0.1);
        Map<String, Object> first = list(one, "trials").get(0);
        assertThat(first).containsEntry("trialId", "T-1").containsEntry("accepted", true);
        assertThat(number(first.get("factorPercent"))).isEqualTo(0.3, within(1e-12));
        assertThat(list(first, "doubts")).isEmpty();
    }

    /**
     * By pencil: s 0.1 of three. 4.303 x 0.1 / sqrt(3) = 0.248 now; with t of 17 degrees, 2.110 x 0.1 / sqrt(18) = 0.0497 is
     * the first below 0.05, 2.120 x 0.1 / sqrt(17) = 0.0514 is not: 15 more.
     */
    @Test
    void saysWhetherTheTrialsAreEnough() {
        Map<String, Object> stop =
                group(factor(FOUR_TRIALS).list("determinations").get(0), "stop");
        assertThat(stop)
                .containsOnlyKeys(
                        "verdict",
                        "moreTrials",
                        "trialsInAll",
                        "halfWidthPercent",
                        "wantedPercent",
                        "basis",
                        "standardDeviationPercent",
                        "degreesOfFreedom",
                        "scatterBelowDial",
                        "risks",
                        "oneMore",
                        "words")
                .containsEntry("verdict", "more")
                .containsEntry("moreTrials", 15)
                .containsEntry("trialsInAll", 18)
                .containsEntry("basis", "own")
                .containsEntry("degreesOfFreedom", new BigDecimal("2.0"))
                .containsEntry("scatterBelowDial", false);
        assertThat(number(stop.get("halfWidthPercent"))).isEqualTo(0.2484, within(0.0001));
        assertThat(number(stop.get("wantedPercent"))).isEqualTo(0.05);
        assertThat(number(stop.get("standardDeviationPercent"))).isEqualTo(0.1, within(1e-12));
        assertThat(group(stop, "risks")).containsOnlyKeys("within", "tooFew", "oneLessWouldDo");
        assertThat(group(stop, "oneMore"))
                .containsEntry("leavesTheCard", false)
                .containsEntry("reportedPercent", new BigDecimal("0.4"));
        assertThat(stop.get("words"))
                .isEqualTo("15 more trials are expected, 18 in all: the 95 % interval of the mean reaches 0.248 % to"
                        + " either side, and 0.050 % is wanted.");
    }

    /**
     * Four trials of each of three other mixes in the sheet, 9 degrees of freedom that differ by nothing: they count for 8, and
     * these trials' own 2 with them. Their own standard deviation of 0.1 is wider than 0.0577, so it is taken as it is.
     */
    @Test
    void reckonsWithTheOtherMixesOfTheSheet() {
        StringBuilder trials = new StringBuilder(FOUR_TRIALS);
        for (int mix = 2; mix <= 4; mix++) {
            for (int i = 0; i < 4; i++) {
                trials.append(LabFiles.trial("U-" + mix + i, "M-" + mix, i + 1, i % 2 == 0 ? "5.2" : "5.3", "no"));
            }
        }
        Map<String, Object> stop =
                group(factor(trials.toString()).list("determinations").get(0), "stop");
        assertThat(stop).containsEntry("basis", "own-wider");
        assertThat(number(stop.get("degreesOfFreedom"))).isEqualTo(10, within(1e-9));
    }

    @Test
    void saysNothingOfEnoughWhenNoTrialCounts() {
        Map<String, Object> leaked = factor(LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-4", "M-1", 4, "6.9", "yes"))
                .list("determinations")
                .get(0);
        assertThat(leaked).containsEntry("stop", null);
        Map<String, Object> single = group(
                factor(LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-1", "M-1", 1, "5.3", "no"))
                        .list("determinations")
                        .get(0),
                "stop");
        assertThat(single)
                .containsEntry("verdict", "not-yet-known")
                .containsEntry("moreTrials", 2)
                .containsEntry("basis", null)
                .containsEntry("halfWidthPercent", null)
                .containsEntry("risks", null)
                .containsEntry("oneMore", null);
    }

    @Test
    void aVoidTrialStaysVisibleWithItsReason() {
        Map<String, Object> leak = list(
                        factor(FOUR_TRIALS).list("determinations").get(0), "trials")
                .get(3);
        assertThat(leak).containsEntry("trialId", "T-4").containsEntry("accepted", false);
        assertThat(list(leak, "doubts"))
                .extracting(doubt -> doubt.get("code"))
                .contains("trial.leak", "trial.factor-high");
    }

    @Test
    void aStruckTrialStaysOutOfTheNumbers() {
        String trials = (LabFiles.TRIAL_COLUMNS
                        + LabFiles.trial("T-1", "M-1", 1, "5.3", "no")
                        + LabFiles.trial("T-2", "M-1", 2, "5.4", "no")
                        + LabFiles.trial("T-3", "M-1", 3, "5.6", "no"))
                .replace("remarks", "remarks,struck_because")
                .replace("no,", "no,,")
                .replace("5.6,,,no,,", "5.6,,,no,,spilled");
        Said said = factor(trials);
        Map<String, Object> one = said.list("determinations").get(0);
        assertThat(one).containsEntry("count", 3).containsEntry("accepted", 2);
        assertThat(number(one.get("meanPercent"))).isEqualTo(0.35, within(1e-12));
        assertThat(list(one, "trials").get(2))
                .containsEntry("accepted", false)
                .containsEntry("struckBecause", "spilled");
        assertThat(list(one, "doubts")).extracting(doubt -> doubt.get("code")).contains("determination.few-trials");
        assertThat(terminal.run("factor", "--trials", "trials.csv").out())
                .contains("no, struck")
                .contains("T-3 struck: spilled");
    }

    @Test
    void takesOneMixOrAll() {
        String trials = FOUR_TRIALS + LabFiles.trial("T-5", "M-2", 5, "5.2", "no");
        assertThat(factor(trials).list("determinations"))
                .extracting(one -> one.get("mixId"))
                .containsExactly("M-1", "M-2");
        Said second = factor(trials, "--mix-id", "M-2");
        assertThat(second.list("determinations")).hasSize(1);
        assertThat(second.list("determinations").get(0))
                .containsEntry("standardDeviationPercent", null)
                .containsEntry("confidence95", null)
                .containsEntry("expandedUncertaintyPercent", null);
    }

    /** The mix asks for 4.9 kg of sand in 7 L; 4.0 kg are 18 % less, and 4 % of air are 1 % more than was withdrawn. */
    @Test
    void checksTrialsAgainstTheirMix() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX.replace(",1,m3,5,", ",1,m3,3,"));
        String light = FOUR_TRIALS.replace("7.00,L,4.9,", "7.00,L,4.0,");
        Map<String, Object> without =
                list(factor(light).list("determinations").get(0), "trials").get(0);
        assertThat(list(without, "doubts")).isEmpty();
        Said said = factor(light, "--mix", "mix.csv");
        assertThat(list(list(said.list("determinations").get(0), "trials").get(0), "doubts"))
                .extracting(doubt -> doubt.get("code"))
                .containsExactly("trial.mass-off-target", "trial.factor-at-right-mass", "trial.withdrawal-far");
    }

    @Test
    void refusesTrialsOfAMixThatIsNotInTheMixFile() {
        LabFiles.write(folder, "mix.csv", LabFiles.PLAIN_MIX.replace("M-1", "M-9"));
        Said said = factor(FOUR_TRIALS, "--mix", "mix.csv");
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.codes()).containsExactly("command.mix-not-in-file");
    }

    @Test
    void whenNoTrialCountsTheNumbersAreNull() {
        Said said = factor(LabFiles.TRIAL_COLUMNS + LabFiles.trial("T-4", "M-1", 4, "6.9", "yes"));
        assertThat(said.status()).isZero();
        assertThat(said.list("determinations").get(0))
                .containsEntry("count", 1)
                .containsEntry("accepted", 0)
                .containsEntry("meanPercent", null)
                .containsEntry("reportedPercent", null);
        assertThat(said.codes()).containsExactly("issue.no-trial-counts");
    }

    @Test
    void refusesWithLineAndColumnOfEveryProblem() {
        Said said = factor(FOUR_TRIALS
                .replace("T-1,M-1,2026-06-01T10:00", "T-1,M-1,yesterday")
                .replace("5.5,,,no", "5;5,,,no"));
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.list("problems"))
                .extracting(problem -> problem.get("line"))
                .containsExactly(2, 4);
        assertThat(said.list("problems"))
                .extracting(problem -> problem.get("column"))
                .containsExactly(3, 16);
    }

    @Test
    void refusesATrialThatStandsTwice() {
        Said said = factor(FOUR_TRIALS + LabFiles.trial("T-1", "M-1", 5, "5.3", "no"));
        assertThat(said.status()).isEqualTo(1);
        assertThat(said.list("problems").get(0)).containsEntry("line", 6).containsEntry("severity", "error");
    }

    @Test
    void refusesWhatCannotBeAnswered() {
        assertThat(factor(FOUR_TRIALS, "--mix-id", "M-9").codes()).containsExactly("command.no-trial-of-mix");
        assertThat(factor(FOUR_TRIALS, "--division", "0", "--profile", "x").codes())
                .containsExactly("air.division-out-of-range", "profile.unknown");
        assertThat(factor(LabFiles.TRIAL_COLUMNS).codes()).containsExactly("command.no-trial");
        assertThat(factor(LabFiles.TRIAL_COLUMNS).status()).isEqualTo(1);
    }

    @Test
    void saysTrialsAndNumbersInText() {
        LabFiles.write(folder, "trials.csv", FOUR_TRIALS);
        Said said = terminal.run("factor", "--trials", "trials.csv");
        assertThat(said.status()).isZero();
        assertThat(said.out().lines())
                .contains(
                        "Determination M-1/1 of mix M-1",
                        "Trial  Tested            G (% air)  Counts",
                        "T-1    2026-06-01 10:00      0.300  yes",
                        "T-4    2026-06-04 10:00      1.900  no, void",
                        "T-4 void: The meter leaked: the trial is void. Find the leak and make the trial again.",
                        "Trials that count                3      of 4",
                        "Mean                             0.400  % air",
                        "Mean, 95 % interval from         0.152  % air",
                        "Mean, 95 % interval to           0.648  % air",
                        "Factor G as reported             0.4    % air",
                        "15 more trials are expected, 18 in all: the 95 % interval of the mean reaches 0.248 % to either"
                                + " side, and 0.050 % is wanted.");
    }
}
