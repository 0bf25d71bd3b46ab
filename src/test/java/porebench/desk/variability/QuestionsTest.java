package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Settings;
import porebench.record.id.TrialId;

/**
 * Every branch of the page's answers, word for word. Trials of a gauge reading 6.x have the factor 0.x, because 6 % was
 * withdrawn; other determinations of the laboratory are numbered from 2 and are older.
 */
class QuestionsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();
    private int trials;

    /** Adds an older determination. */
    private void other(int number, String... gauges) {
        bench.keep(BenchBook.determination(number, DAY.minusDays(100L - number)));
        for (String gauge : gauges) {
            bench.keep(BenchBook.trial("U" + (++trials), number, DAY.minusDays(100L - number), gauge));
        }
    }

    private VariabilityModel model(String... gauges) {
        bench.keep(BenchBook.determination(1, DAY));
        for (int i = 0; i < gauges.length; i++) {
            bench.keep(BenchBook.trial("T" + (i + 1), 1, DAY.plusDays(i), gauges[i]));
        }
        return new VariabilityModel(bench.select().desk, Settings.inMemory());
    }

    private static Finding question(VariabilityModel model, String name) {
        return model.questions().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String finding(Finding question, int line) {
        return question.tests().get(line).finding();
    }

    @Test
    void asksFourQuestionsInTechniciansWords() {
        assertThat(model("6.4", "6.5").questions())
                .extracting(Finding::title)
                .containsExactly(
                        "Do they agree?",
                        "Is one of them wrong?",
                        "Do I need another?",
                        "Do they scatter as chance does?");
    }

    @Test
    void aSingleTrialAgreesWithNothing() {
        VariabilityModel model = model("6.4");
        Finding agree = question(model, "agree");
        assertThat(agree.answer()).isEqualTo("A single trial has nothing to agree with.");
        assertThat(agree.isAlarm()).isFalse();
        assertThat(agree.tests()).isEmpty();
        assertThat(agree.reasons())
                .containsExactly("How the laboratory's trials usually scatter is not known well enough: its other"
                        + " determinations on Type B meters have 0 degrees of freedom, and 10 are asked for.");
        assertThat(question(model, "wrong").answer()).isEqualTo("Not tested: 4 trials are needed.");
        assertThat(question(model, "more").answer())
                .isEqualTo("At least 2 more trials: a single one shows no scatter, and the lab book has too few other"
                        + " mixes on this type of meter to know the laboratory's.");
        assertThat(question(model, "shape").answer()).isEqualTo("Not tested: 10 trials are needed.");
    }

    /** 0.3, 0.4, 0.4, 0.5: range 0.2, limit 3.6 x 0.1 = 0.36 (ASTM C670, recalled). */
    @Test
    void trialsAgreeWithTheProfile() {
        Finding agree = question(model("6.3", "6.4", "6.4", "6.5"), "agree");
        assertThat(agree.answer()).isEqualTo("Yes: they spread no wider than repeat trials do.");
        assertThat(agree.reasons().get(0))
                .isEqualTo(
                        "They span 0.20 %; 4 trials may span 0.36 %, which is 3.6 times the profile's repeatability of"
                                + " 0.10 %.");
    }

    /** Two other determinations of six trials alternating by 0.1: variance 0.003, s 0.0548, 10 degrees of freedom. */
    @Test
    void trialsAgreeWithTheLaboratorysOthers() {
        other(2, "6.4", "6.5", "6.4", "6.5", "6.4", "6.5");
        other(3, "6.2", "6.3", "6.2", "6.3", "6.2", "6.3");
        VariabilityModel model = model("6.3", "6.4", "6.4", "6.5");
        Finding agree = question(model, "agree");
        assertThat(agree.answer()).isEqualTo("Yes: they spread no wider than repeat trials do.");
        // Chi-square of 10 x 25 / 34 = 7.35 degrees: 16.55 and 1.859; 5.77 (studentised range, 1 %) x 0.0548 = 0.316; F
        // = 0.00667 /
        // 0.003.
        assertThat(agree.reasons().get(1))
                .isEqualTo(
                        "The trials of the laboratory's other determinations on Type B meters scatter with a standard"
                                + " deviation of 0.055 % (95 % interval 0.037 to 0.109 %; determinations: 2, degrees of freedom:"
                                + " 10). By that, 4 trials may span 0.316 %; these span 0.200 %.");
        assertThat(agree.tests())
                .containsExactly(
                        new Finding.TestLine("Standard deviation against the laboratory's, F", "2.222", "p = 0.148"));
        assertThat(model.verdict().kind()).isEqualTo(Verdict.Kind.AGREE);
        assertThat(question(model, "more").reasons().get(0))
                .startsWith(
                        "Based on the scatter of this mix's trials alone, a standard deviation of 0.062 % (degrees of"
                                + " freedom: 13.0)");
    }

    /** The same laboratory: 5.27 (studentised range, 1 %) x 0.0548 = 0.289 is less than 0.3, which the profile allows (0.33). */
    @Test
    void trialsThatSpreadWiderThanUsualAreAsked() {
        other(2, "6.4", "6.5", "6.4", "6.5", "6.4", "6.5");
        other(3, "6.2", "6.3", "6.2", "6.3", "6.2", "6.3");
        VariabilityModel model = model("6.2", "6.4", "6.5");
        Finding agree = question(model, "agree");
        assertThat(agree.answer()).isEqualTo("No: they spread wider than this laboratory's trials usually do.");
        assertThat(agree.isAlarm()).isTrue();
        assertThat(agree.reasons().get(1)).endsWith("By that, 3 trials may span 0.289 %, but these span 0.300 %.");
        assertThat(model.verdict().sentence())
                .isEqualTo("3 trials spread over 0.30 %, more than the 0.29 % that this laboratory's trials usually do:"
                        + " find out why, or make more, before a factor is issued.");
        assertThat(model.verdict().kind().isGood()).isFalse();
    }

    @Test
    void trialsThatSpreadWiderThanBothAreAsked() {
        other(2, "6.4", "6.5", "6.4", "6.5", "6.4", "6.5");
        other(3, "6.2", "6.3", "6.2", "6.3", "6.2", "6.3");
        assertThat(question(model("6.1", "6.4", "6.6"), "agree").answer())
                .isEqualTo(
                        "No: they spread wider than the profile allows, and wider than this laboratory's trials usually"
                                + " do.");
    }

    @Test
    void trialsThatSpreadWiderThanTheProfileAllowsAreAsked() {
        Finding agree = question(model("6.2", "6.4", "6.7"), "agree");
        assertThat(agree.answer()).isEqualTo("No: they spread wider than the repeatability of the profile allows.");
        assertThat(agree.reasons().get(0))
                .isEqualTo(
                        "They span 0.50 %, and 3 trials may span no more than 0.33 %, which is 3.3 times the profile's"
                                + " repeatability of 0.10 %.");
    }

    /** Other trials that all stood still say only that the scatter is less than the scale can show. */
    @Test
    void aLaboratoryWhoseTrialsStandStillIsNotTakenAsPerfect() {
        other(2, "6.4", "6.4", "6.4", "6.4", "6.4", "6.4");
        other(3, "6.2", "6.2", "6.2", "6.2", "6.2", "6.2");
        VariabilityModel model = model("6.3", "6.4", "6.4");
        Finding agree = question(model, "agree");
        // 5.27 x 0.0289 = 0.152.
        assertThat(agree.reasons().get(1))
                .isEqualTo(
                        "The trials of the laboratory's other determinations on Type B meters scatter less than a scale"
                                + " divided to 0.10 % can show (determinations: 2); the division counts as a standard deviation of"
                                + " 0.029 %. By that, 3 trials may span 0.152 %; these span 0.100 %.");
        assertThat(agree.isAlarm()).isFalse();
        assertThat(finding(agree, 0)).isEqualTo("not judged: no more than one division of the scale (0.10 %)");
    }

    @Test
    void equalTrialsGiveNothingToTest() {
        VariabilityModel model = model("6.4", "6.4", "6.4", "6.4");
        assertThat(question(model, "wrong").answer()).isEqualTo("Not tested: all trials gave the same factor.");
        assertThat(question(model, "wrong").tests())
                .extracting(Finding.TestLine::statistic)
                .containsExactly("-", "-", "-");
        assertThat(question(model, "shape").answer()).isEqualTo("Not tested: all trials gave the same factor.");
    }

    @Test
    void oneDivisionIsNoDistance() {
        Finding wrong = question(model("6.4", "6.4", "6.4", "6.5"), "wrong");
        assertThat(wrong.answer())
                .isEqualTo("Not tested: the trials differ by no more than one division of the scale (0.10 %).");
        assertThat(wrong.isAlarm()).isFalse();
        assertThat(wrong.tests())
                .containsExactly(
                        new Finding.TestLine(
                                "One trial far out, Grubbs: greatest deviation over s",
                                "1.500",
                                "not judged: no more than one division of the scale (0.10 %)"),
                        new Finding.TestLine(
                                "Two on one side, Grubbs and Beck: squares left without them over all",
                                "0.000",
                                "not judged: 5 trials are needed"),
                        new Finding.TestLine(
                                "One trial far out, Dixon's r10",
                                "1.000",
                                "not judged: no more than one division of the scale (0.10 %)"));
    }

    /** Mean 0.4; the first and the last are both 0.2 away, as far as chance explains. */
    @Test
    void nothingSaysThatOneIsWrong() {
        Finding wrong = question(model("6.2", "6.4", "6.4", "6.6"), "wrong");
        assertThat(wrong.answer())
                .isEqualTo("Nothing shows it: none lies farther out than chance explains (tests made: 2, together p "
                        + "> 0.999).");
        assertThat(wrong.reasons()).isEmpty();
    }

    @Test
    void aTrialFarOutIsNamedAndStaysInTheNumbers() {
        VariabilityModel model = model("6.4", "6.4", "6.5", "6.4", "6.5", "7.4");
        Finding wrong = question(model, "wrong");
        assertThat(wrong.answer())
                .isEqualTo("Trial T6 lies farther from the others than chance explains (tests made: 2, together"
                        + " p < 0.001).");
        assertThat(wrong.isAlarm()).isTrue();
        assertThat(wrong.reasons())
                .containsExactly(
                        "T6 gave 1.40 %, which is 0.80 % from the mean.",
                        "Look for the cause. Strike a trial only for a cause that you found: nothing is left out by"
                                + " itself.");
        assertThat(wrong.named()).containsExactly(new TrialId("T6"));
        assertThat(model.verdict().sentence())
                .isEqualTo("6 trials, and T6 lies farther from the others than chance explains: find out why before a"
                        + " factor is issued. With it, G = 0.6 %.");
        assertThat(model.verdict().kind()).isEqualTo(Verdict.Kind.STANDS_OUT);
        assertThat(model.lines().stream()
                        .filter(line -> line.name().equals("Trials that count"))
                        .findFirst()
                        .orElseThrow()
                        .value())
                .isEqualTo("6");
    }

    /** The dial was read between its divisions here, so that p lies between 1 and 5 %. */
    @Test
    void aStragglerIsNamedWithoutAlarm() {
        VariabilityModel model = model("6.40", "6.42", "6.47", "6.45", "6.41", "6.62");
        Finding wrong = question(model, "wrong");
        assertThat(wrong.answer())
                .isEqualTo("Hardly: T6 lies far out, but one good determination in twenty looks like this (tests "
                        + "made: 2, together p = 0.048). Check it again, and go on.");
        assertThat(wrong.isAlarm()).isFalse();
        assertThat(wrong.reasons()).containsExactly("T6 gave 0.62 %, which is 0.16 % from the mean.");
        assertThat(model.verdict().kind()).isEqualTo(Verdict.Kind.AGREE);
    }

    @Test
    void twoFarOutAreBothNamed() {
        VariabilityModel model = model("6.4", "6.4", "6.5", "6.4", "6.5", "6.4", "6.4", "6.5", "7.4", "7.5");
        Finding wrong = question(model, "wrong");
        assertThat(wrong.answer()).startsWith("Trials T9, T10 lie farther from the others than chance explains");
        assertThat(model.verdict().sentence())
                .startsWith(
                        "10 trials, and T9, T10 lie farther from the others than chance explains: find out why before"
                                + " a factor is issued. With them, G = ");
        assertThat(finding(wrong, 2)).isEqualTo("not judged: this test is for 7 trials at most");
    }

    @Test
    void theDialHidesTheShape() {
        String[] twelve = {"6.4", "6.5", "6.4", "6.3", "6.5", "6.4", "6.6", "6.4", "6.5", "6.3", "6.4", "6.2"};
        Finding shape = question(model(twelve), "shape");
        assertThat(shape.answer())
                .isEqualTo(
                        "Not tested: the trials differ by only a few divisions of the scale (0.10 %), too few for a test.");
        assertThat(shape.tests()).extracting(Finding.TestLine::statistic).doesNotContain("-");
    }

    /** Scatter of more than four divisions is far from what a laboratory does, but it can be judged. */
    @Test
    void aShapeIsJudgedWhereTheScatterIsWideEnough() {
        Finding plain =
                question(model("6.0", "6.3", "6.5", "6.7", "6.8", "6.9", "7.0", "7.2", "7.4", "7.6", "8.0"), "shape");
        assertThat(plain.answer()).isEqualTo("Nothing speaks against it.");
        assertThat(plain.isAlarm()).isFalse();
        assertThat(List.of(finding(plain, 0), finding(plain, 1))).containsExactly("p = 0.996", "p > 0.999");
    }

    @Test
    void anOddShapeIsSaid() {
        Finding odd = question(
                model("6.1", "6.1", "6.2", "6.1", "6.2", "6.1", "6.2", "6.1", "8.4", "8.5", "8.5", "8.4"), "shape");
        assertThat(odd.answer())
                .isEqualTo(
                        "No: not as normal values do, on which the intervals and tests here rest. Look for a trend, for"
                                + " two groups, or for a trial that went wrong.");
        assertThat(odd.isAlarm()).isTrue();
    }
}
