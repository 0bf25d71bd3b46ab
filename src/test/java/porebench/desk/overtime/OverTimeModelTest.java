package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import porebench.chart.control.ControlPlot;
import porebench.chart.look.TrialPoint;
import porebench.evidence.TimeBook;
import porebench.method.Role;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.statistics.control.ChartPoint;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;

class OverTimeModelTest {
    private final OverTimeDesk made = new OverTimeDesk();

    // The verdict, each of its branches.

    @Test
    void withoutTrialsThereIsNothingToChart() {
        OverTimeModel model = made.model();
        assertThat(model.verdict()).isEqualTo("No trial in the lab book yet, so there is nothing to chart.");
        assertThat(model.plot()).isEmpty();
        assertThat(model.remarks()).isEmpty();
        assertThat(model.phases()).isEmpty();
    }

    @Test
    void whereNoTrialCountsThereIsNothingEither() {
        made.lab.begin("M-1/1", "M-1");
        Trial trial = made.lab.trial("M-1/1", "M-1", TimeBook.START, "R. Vale", "B-1", 0.4);
        made.lab.keep(trial.struck("spilled"));
        OverTimeModel model = made.model();
        assertThat(model.verdict())
                .isEqualTo("Nothing to chart here: no trial counts, or no determination has two that do.");
        assertThat(model.remarks()).containsExactly("Not counted: 1 trial struck, none void by the readings.");
    }

    @Test
    void oneDeterminationHasNoLimits() {
        made.quiet(1);
        OverTimeModel model = made.model();
        assertThat(model.verdict())
                .isEqualTo("Only 1 determination so far: limits need at least two, and lasting ones about twenty.");
        assertThat(model.plot().orElseThrow().points().get(0).level().centre()).isEmpty();
    }

    @Test
    void pointsThatNeverFollowEachOtherHaveNoLimits() {
        LocalDate next = made.quiet(1);
        made.lab.keep(SampleCalibrations.dialCalibration("C-1", "B-1", next, "0.0", "5.0", "10.0"));
        made.determinations("M-1", next, 0.5);
        OverTimeModel model = made.model();
        assertThat(model.verdict()).isEqualTo("2 determinations, but no limits yet: see below what is missing.");
        assertThat(model.remarks())
                .containsExactly("No limits: no two points of the base follow each other within a phase.");
        OverTimeDesk.split(model, Split.CALIBRATION, false);
        assertThat(model.verdict()).startsWith("2 determinations and no signal");
    }

    @Test
    void fewQuietPointsAreQuietByProvisionalLimits() {
        made.quiet(19);
        OverTimeModel model = made.model();
        assertThat(model.verdict())
                .isEqualTo("19 determinations and no signal: this chart shows no change of the factor"
                        + " (by provisional limits, from 19 points).");
        assertThat(model.remarks())
                .containsExactly("The limits are provisional: they rest on 19 points, lasting ones need about 20.");
    }

    @Test
    void twentyQuietPointsAreQuiet() {
        made.quiet(20);
        assertThat(made.model().verdict())
                .isEqualTo("20 determinations and no signal: this chart shows no change of the factor.");
        assertThat(made.model().remarks()).isEmpty();
    }

    @Test
    void aSignalAtTheNewestPointIsToBeLookedInto() {
        made.determinations("M-1", made.quiet(20), 0.8);
        OverTimeModel model = made.model();
        assertThat(model.verdict())
                .isEqualTo("M-1/21 (2026-01-25), the newest point, is a signal:"
                        + " look into it before a factor rests on it.");
        made.determinations("M-1", LocalDate.of(2026, 2, 1), 0.81);
        made.desk.refresh();
        assertThat(model.verdict())
                .isEqualTo("M-1/22 (2026-02-01), the newest point, is a signal, one of 2 among 22 determinations:"
                        + " look into it before a factor rests on it.");
    }

    @Test
    void anOlderSignalIsSaidWithWhatCameAfter() {
        made.determinations("M-1", made.quiet(20), 0.8, 0.6, 0.5);
        assertThat(made.model().verdict())
                .isEqualTo(
                        "1 signal among 23 determinations, the last at M-1/21 (2026-01-25); the 2 points since are quiet.");
    }

    @Test
    void aTrainingBookSaysSoFirst() {
        OverTimeDesk training = new OverTimeDesk(new TimeBook(true));
        training.quiet(20);
        OverTimeModel model = training.model();
        assertThat(model.verdict()).startsWith("SIMULATED, for training: 20 determinations and no signal");
        assertThat(model.plot().orElseThrow().isSimulated()).isTrue();
    }

    // Limits, phases and signals.

    /** Centre 0.45; sigma 0.1 sqrt(pi) / 2 = 0.0886, so that the limits are 0.45 +- 0.2659. */
    @Test
    void thePlotHasTheLimitsOfTheBase() {
        made.determinations("M-1", made.quiet(20), 0.8);
        ControlPlot plot = made.model().plot().orElseThrow();
        ControlPlot.Point last = plot.points().get(20);
        assertThat(last.level().value()).isCloseTo(0.8, offset(1e-9));
        assertThat(last.level().high().orElseThrow()).isCloseTo(0.7159, offset(1e-4));
        assertThat(last.level().low().orElseThrow()).isCloseTo(0.1841, offset(1e-4));
        assertThat(last.level().signals()).containsExactly("beyond-limits");
        assertThat(last.spread().orElseThrow().value()).isCloseTo(0.3, offset(1e-9));
        assertThat(plot.points().get(0).spread()).isEmpty();
        assertThat(plot.baseCount()).isEqualTo(20);
        assertThat(plot.levelAxis()).isEqualTo("mean G (% air)");
        assertThat(plot.spreadAxis()).isEqualTo("moving range (% air)");
        assertThat(last.said())
                .containsExactly(
                        "M-1/21 (2026-01-25)",
                        "mix M-1, R. Vale, meter B-1",
                        "G = 0.80 % air, mean of 2 trials",
                        "Signal: The mean of 0.80 % lies above the upper limit of 0.72 %.");
    }

    @Test
    void aChangeOfSourceBeginsAPhaseAndExplainsTheSignalAfterIt() {
        LocalDate next = made.quiet(20);
        made.lab.correct(Source.class, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        made.lab.begin("M-1/new", "M-1");
        made.lab.keep(
                made.lab.trial("M-1/new", "M-1", next, "A. Dunn", "B-1", 0.9),
                made.lab.trial("M-1/new", "M-1", next, "A. Dunn", "B-1", 0.9));
        OverTimeModel model = made.model();
        assertThat(model.plot().orElseThrow().changes())
                .containsExactly(new ControlPlot.ChangeMark(20, "S-2: other material", true));
        assertThat(model.phases())
                .containsExactly(
                        "1. 2026-01-05 to 2026-01-24, 20 points, the first;"
                                + " centre 0.45 %, standard deviation 0.089 % from 20 points.",
                        "2. 2026-01-25 to 2026-01-25, 1 point, begun by: S-2: other material;"
                                + " centre 0.45 %, standard deviation 0.089 % from 20 points.");
        Charted.Signal signal = model.outcome().signals().get(0);
        assertThat(model.signalWords().happened(signal))
                .isEqualTo("The mean of 0.90 % lies above the upper limit of 0.72 %.");
        assertThat(model.signalWords().check(signal))
                .startsWith("Shortly before: S-2: other material. See whether that explains it."
                        + " A. Dunn made none of the trials before. Read its sheet first");
        OverTimeDesk.split(model, Split.SOURCE, false);
        assertThat(model.plot().orElseThrow().changes())
                .containsExactly(new ControlPlot.ChangeMark(20, "S-2: other material", false));
        assertThat(model.phases()).hasSize(1);
    }

    @Test
    void limitsFoundAnewLetALastingShiftPass() {
        LocalDate next = made.quiet(20);
        made.lab.keep(SampleCalibrations.dialCalibration("C-1", "B-1", next, "0.0", "5.0", "10.0"));
        made.determinations("M-1", next, 0.8, 0.9, 0.8);
        OverTimeModel model = made.model();
        assertThat(model.outcome().signalling()).isEqualTo(3);
        OverTimeDesk.keepLimits(model, false);
        assertThat(model.outcome().signalling()).isZero();
        assertThat(model.plot().orElseThrow().baseCount()).isZero();
        assertThat(model.verdict()).contains("by provisional limits, from 3 points");
    }

    @Test
    void whatVariesLessThanTheDialShowsStandsOnItsDivision() {
        made.determinations("M-1", TimeBook.START, 0.4, 0.4, 0.4);
        assertThat(made.model().remarks())
                .contains("The base varies less than the scale can show. Limits stand on its division of 0.10 % air"
                        + " instead, as a standard deviation of 0.029 % air.");
    }

    @Test
    void everySignalOfEveryChartIsSaidWithWhatToCheck() {
        made.determinations("M-1", made.quiet(20), 0.8, 0.1);
        OverTimeModel model = made.model();
        for (PhasedChart.Kind kind : PhasedChart.Kind.values()) {
            OverTimeDesk.choose(model, kind);
            SignalWords words = model.signalWords();
            for (RunRule rule : RunRule.values()) {
                for (double value : new double[] {0.9, -0.9}) {
                    for (boolean isOfSpread : new boolean[] {false, true}) {
                        Charted.Signal signal = new Charted.Signal(
                                0, 0, isOfSpread, new ChartPoint(0, value, 0, -0.5, 0.5, List.of(rule)));
                        assertThat(words.happened(signal) + " " + words.check(signal))
                                .as("%s %s", kind, rule)
                                .hasSizeGreaterThan(60)
                                .doesNotContain("{", "}");
                    }
                }
            }
        }
    }

    /** The upper limit is 0.7159: 0.717 lies beyond it and must not read as 0.72 above 0.72. */
    @Test
    void aValueJustBeyondItsLimitIsSaidWithAsManyDigitsAsItTakes() {
        made.determinations("M-1", made.quiet(20), 0.717);
        OverTimeModel model = made.model();
        assertThat(model.signalWords().happened(model.outcome().signals().get(0)))
                .isEqualTo("The mean of 0.717 % lies above the upper limit of 0.716 %.");
    }

    @Test
    void onlyTheRulesThatAreAskedSignal() {
        double[] above = new double[9];
        Arrays.fill(above, 0.6);
        made.determinations("M-1", made.quiet(20), above);
        OverTimeModel model = made.model();
        assertThat(model.outcome().signals())
                .extracting(signal -> signal.point().signals())
                .containsExactly(List.of(RunRule.NINE_ON_ONE_SIDE), List.of(RunRule.NINE_ON_ONE_SIDE));
        assertThat(model.outcome().spells()).hasSize(1);
        assertThat(model.signalWords().said(model.outcome().spells().get(0)))
                .startsWith("Nine points in a row lie above the centre."
                        + " The same holds of every point up to M-1/29 (2026-02-02). If it lasts:");
        OverTimeDesk.ask(model, RunRule.NINE_ON_ONE_SIDE, false);
        assertThat(model.outcome().signals()).isEmpty();
    }

    /** Twenty quiet determinations: every chart says how often it signals by chance, and the same twice over. */
    @Test
    void howOftenChanceAloneSignalsIsSimulatedForEveryChart() {
        made.quiet(20);
        OverTimeModel model = made.model();
        assertThat(model.falseAlarms()).isEqualTo("How often chance alone signals is being computed.");
        for (PhasedChart.Kind kind : PhasedChart.Kind.values()) {
            OverTimeDesk.choose(model, kind);
            model.workOutFalseAlarms();
            assertThat(model.falseAlarms())
                    .as("%s", kind)
                    .startsWith("By chance alone, ")
                    .contains(kind == PhasedChart.Kind.TRIALS ? "40 trials like these" : "20 determinations like these")
                    .contains("seed 1987, limits found from 20 points, readings rounded to 0.10 %");
        }
        OverTimeDesk.choose(model, PhasedChart.Kind.MEANS);
        String first = model.falseAlarms();
        OverTimeModel again = made.model();
        again.workOutFalseAlarms();
        assertThat(again.falseAlarms()).isEqualTo(first);
    }

    /** With no rule asked the chart of the moving ranges still signals; the sentence counts it. */
    @Test
    void moreRulesAndFewerBasePointsMeanMoreFalseAlarms() {
        made.quiet(20);
        OverTimeModel model = made.model();
        for (RunRule rule : RunRule.values()) {
            OverTimeDesk.ask(model, rule, false);
        }
        double without = every(model);
        OverTimeDesk.ask(model, RunRule.BEYOND_LIMITS, true);
        double usual = every(model);
        assertThat(usual).isLessThan(without);
        RunRule.westernElectric().forEach(rule -> OverTimeDesk.ask(model, rule, true));
        assertThat(every(model)).isLessThan(usual);
        OverTimeDesk.typeBase(model, false, "8", "", "");
        assertThat(every(model)).isLessThan(usual / 1.5);
    }

    private static double every(OverTimeModel model) {
        model.workOutFalseAlarms();
        return model.knownFalseAlarms().orElseThrow().pointsPerAlarm().orElseThrow();
    }

    @Test
    void singleTrialsSayThatTheyDependOnEachOther() {
        made.quiet(20);
        OverTimeModel model = made.model();
        OverTimeDesk.choose(model, PhasedChart.Kind.TRIALS);
        assertThat(model.verdict()).startsWith("40 trials and no signal");
        assertThat(model.remarks())
                .contains("The trials of one determination share its sample and day, so they are no proof one by one:"
                        + " the limits include what determinations differ by themselves, a standard deviation of 0.089 % air,"
                        + " and only the limits are a signal. The chart of determinations says more.");
        OverTimeDesk alone = new OverTimeDesk();
        alone.one(6);
        OverTimeModel within = alone.model();
        OverTimeDesk.choose(within, PhasedChart.Kind.TRIALS);
        assertThat(within.remarks())
                .contains("All trials in the base are of one determination: the limits hold within it only,"
                        + " and say nothing of another.");
    }

    /** A struck trial of the third determination stands beside it; one of a determination not charted stands in between. */
    @Test
    void struckTrialsStandInThePlotBesideWhatCounts() {
        LocalDate next = made.quiet(3);
        Trial beside = made.lab.trial("M-1/3", "M-1", next, "R. Vale", "B-1", 0.9);
        made.lab.begin("M-1/4", "M-1");
        Trial after = made.lab.trial("M-1/4", "M-1", next, "R. Vale", "B-1", 0.8);
        made.lab.keep(beside.struck("spilled"), after.struck("leak"));
        OverTimeModel model = made.model();
        ControlPlot plot = model.plot().orElseThrow();
        assertThat(plot.points()).hasSize(3);
        assertThat(plot.notCounted()).extracting(ControlPlot.NotCounted::at).containsExactly(3.25, 3.5);
        assertThat(plot.notCounted().get(0).value().orElseThrow()).isCloseTo(0.9, offset(1e-9));
        assertThat(plot.notCounted()).extracting(shown -> shown.trial().state()).containsOnly(TrialPoint.State.STRUCK);
        assertThat(plot.notCounted())
                .extracting(shown -> shown.trial().reason())
                .containsExactly("spilled", "leak");
        OverTimeDesk.choose(model, PhasedChart.Kind.TRIALS);
        assertThat(model.plot().orElseThrow().notCounted())
                .extracting(ControlPlot.NotCounted::at)
                .containsExactly(6.5, 6.5);
        OverTimeDesk.choose(model, PhasedChart.Kind.CUSUM);
        assertThat(model.plot().orElseThrow().notCounted()).isEmpty();
        assertThat(model.remarks()).contains("Not counted: 2 trials struck, none void by the readings.");
    }

    /** sigma 0.0886: k is the division, 0.1, as half of sigma is less; h is 5 times sigma, 0.443. */
    @Test
    void sumsShowBothDirectionsAndTheirConstants() {
        made.quiet(20);
        OverTimeModel model = made.model();
        OverTimeDesk.choose(model, PhasedChart.Kind.CUSUM);
        ControlPlot plot = model.plot().orElseThrow();
        assertThat(plot.levelAxis()).isEqualTo("sum of deviations (% air); k = 0.100, h = 0.443");
        assertThat(plot.points().get(4).sums().orElseThrow().interval()).isCloseTo(0.4431, offset(1e-4));
        assertThat(plot.pointsPerFalseAlarm()).isEmpty();
    }

    @Test
    void oneDivisionIsNoSignalAndThePageSaysSo() {
        made.determinations("M-1", TimeBook.START, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.4, 0.5);
        OverTimeModel model = made.model();
        assertThat(model.verdict()).startsWith("9 determinations and no signal");
        assertThat(model.leastLimit()).startsWith("No limit is closer to the centre than one division, 0.10 % air");
    }

    // The base.

    @Test
    void theBaseMayBeTheFirstPointsOrThoseOfSomeDays() {
        made.determinations("M-1", made.quiet(20), 0.8, 0.9, 0.8);
        OverTimeModel model = made.model();
        OverTimeDesk.typeBase(model, true, "20", "2026-01-25", "2026-01-27");
        assertThat(model.outcome().limited().get(0).centre()).isCloseTo(2.5 / 3, offset(1e-9));
        assertThat(model.outcome().limited().get(0).base()).isEqualTo(3);
        assertThat(model.plot().orElseThrow().baseFirst()).isEqualTo(20);
        OverTimeDesk.typeBase(model, true, "20", "2025-01-25", "2025-01-27");
        assertThat(model.outcome().limited()).isEmpty();
        assertThat(model.remarks())
                .containsExactly("No limits: fewer than two points that follow each other lie in the base period.");
        OverTimeDesk.typeBase(model, false, "2", "", "");
        assertThat(model.outcome().limited().get(0).base()).isEqualTo(2);
    }

    @Test
    void aBaseThatCannotBeReadLeavesTheOneBefore() {
        made.quiet(20);
        OverTimeModel model = made.model();
        Charted before = model.outcome();
        for (String count : List.of("", "1", "-3", "two", "2.5", "99999999999")) {
            OverTimeDesk.typeBase(model, false, count, "", "");
            assertThat(model.baseRefusal()).as(count).startsWith("Type a whole number of points, at least 2.");
        }
        OverTimeDesk.typeBase(model, true, "20", "2026-01-09", "2026-01-05");
        assertThat(model.baseRefusal()).startsWith("Type two days like 2026-03-01");
        for (String year : List.of("0026", "1929", "2200")) {
            OverTimeDesk.typeBase(model, true, "20", "0026-01-05", year + "-01-09");
            assertThat(model.baseRefusal()).as(year).contains("0026-01-05", "1930", "2199");
        }
        assertThat(model.outcome()).isSameAs(before);
        OverTimeDesk.typeBase(model, true, "20", "", "");
        assertThat(model.baseRefusal()).isEmpty();
    }

    @Test
    void oneDeterminationHasNothingToLieBeside() {
        made.one(4);
        OverTimeModel model = made.model();
        assertThat(model.falseAlarms()).isEqualTo("Without limits in the newest phase nothing can signal there.");
        OverTimeDesk.choose(model, PhasedChart.Kind.MEAN_RANGE);
        assertThat(model.verdict())
                .isEqualTo("Only 1 determination so far: limits need at least two, and lasting ones about twenty.");
    }
}
