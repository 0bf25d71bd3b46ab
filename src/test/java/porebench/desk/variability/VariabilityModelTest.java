package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import porebench.chart.factor.FactorByTrial;
import porebench.chart.factor.FactorOverTime;
import porebench.chart.look.TrialPoint;
import porebench.desk.BenchBook;
import porebench.desk.Settings;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** Trials of a gauge reading 6.x have the factor 0.x, because 6 % was withdrawn. */
class VariabilityModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private VariabilityModel model(String... gauges) {
        if (gauges.length > 0) {
            bench.keep(BenchBook.determination(1, DAY));
        }
        for (int i = 0; i < gauges.length; i++) {
            bench.keep(
                    gauges[i].equals("leak")
                            ? BenchBook.leaked("T" + (i + 1), 1, DAY.plusDays(i))
                            : BenchBook.trial("T" + (i + 1), 1, DAY.plusDays(i), gauges[i]));
        }
        return new VariabilityModel(bench.select().desk, Settings.inMemory());
    }

    private static Figures.Line line(VariabilityModel model, String name) {
        return model.lines().stream()
                .filter(line -> line.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withoutATrialNothingIsSaidAboutAgreement() {
        VariabilityModel model = model();
        assertThat(model.verdict().sentence())
                .isEqualTo("There is no trial yet, so nothing can be said about how trials agree.");
        assertThat(model.lines()).isEmpty();
        assertThat(model.questions()).isEmpty();
        assertThat(model.remark()).isEmpty();
        assertThat(model.byTrial()).isEmpty();
    }

    @Test
    void whenNoneCountsThereIsNoFactor() {
        VariabilityModel model = model("leak", "leak");
        assertThat(model.verdict().kind()).isEqualTo(Verdict.Kind.NONE_COUNTS);
        assertThat(model.verdict().sentence())
                .isEqualTo("No trial counts (trials made: 2), so there is no factor. Make trials again on the "
                        + "Trials page.");
        assertThat(model.lines()).isEmpty();
        assertThat(model.leftOut()).hasSize(2);
    }

    @Test
    void oneTrialSaysNothingAboutAgreement() {
        VariabilityModel model = model("6.4");
        assertThat(model.verdict().sentence())
                .isEqualTo("One trial only: it gave 0.40 %, which does not show whether trials agree.");
        assertThat(line(model, "Standard deviation").value()).isEqualTo("-");
        assertThat(line(model, "Range check").note()).isEqualTo("One trial has no spread.");
    }

    @Test
    void twoTrialsThatAgreeAreFewerThanTheLaboratoryAsksFor() {
        assertThat(model("6.4", "6.5").verdict().sentence())
                .isEqualTo("2 trials agree within 0.10 %, G = 0.4 %, but the laboratory asks for 3 trials: make more.");
    }

    @Test
    void fourTrialsThatAgreeGiveTheFactor() {
        // 0.3, 0.4, 0.4, 0.5: mean 0.4, range 0.2, limit 3.6 x 0.1 = 0.36 (ASTM C670, recalled).
        VariabilityModel model = model("6.3", "6.4", "6.4", "6.5");
        assertThat(model.verdict().sentence())
                .isEqualTo(
                        "4 trials agree within 0.20 %; G = 0.4 %; 9 more trials are expected, and one could change the"
                                + " card from 0.4 to 0.3 or 0.5 %.");
        assertThat(model.verdict().kind().isGood()).isTrue();
        assertThat(line(model, "Reported factor G").value()).isEqualTo("0.4 % air");
        assertThat(line(model, "Mean").value()).isEqualTo("0.400 % air");
        // s = sqrt(0.02 / 3) = 0.0816.
        assertThat(line(model, "Standard deviation").value()).isEqualTo("0.082 % air");
        assertThat(line(model, "Range").value()).isEqualTo("0.20 % air");
        assertThat(line(model, "Range check").value()).isEqualTo("passes, limit 0.36 % air");
        assertThat(line(model, "Range check").note())
                .startsWith("Multiplier 3.6 of ASTM C670 for 4 results (recalled) x repeatability 0.10 % air")
                .endsWith("own figure of the laboratory).");
        // t(0.975; 3) = 3.182 (table): 3.182 x 0.0816 / 2 = 0.130.
        assertThat(line(model, "95 % interval, these trials alone").value()).isEqualTo("0.27 to 0.53 % air");
        // 0.0816 / 2 = 0.041; 0.1 / sqrt(12) = 0.029.
        assertThat(line(model, "Scatter and reading alone, 95 %").note())
                .isEqualTo("In it: scatter of the mean, 0.041 %; reading of the scale (divided to 0.10 %), 0.029 %."
                        + " Not in it: calibration of the meter, masses.");
    }

    @Test
    void aRangeTooWideIsSaidWithItsLimit() {
        // Three results: 3.3 x 0.1 = 0.33 (ASTM C670, recalled).
        VariabilityModel model = model("6.2", "6.4", "6.7");
        assertThat(model.verdict().sentence())
                .isEqualTo("3 trials spread over 0.50 %, more than the 0.33 % that repeat trials may: find out why, or"
                        + " make more, before a factor is issued.");
        assertThat(model.verdict().kind().isGood()).isFalse();
        assertThat(line(model, "Range check").value()).isEqualTo("does not pass, limit 0.33 % air");
        assertThat(model.doubts()).isNotEmpty();
    }

    @Test
    void equalTrialsAreAResolutionArtefactNotPerfection() {
        VariabilityModel model = model("6.4", "6.4", "6.4", "6.4");
        assertThat(model.verdict().sentence())
                .isEqualTo("4 trials gave the same factor; G = 0.4 %; one more trial would not change the card.");
        assertThat(model.remark())
                .contains(
                        "All 4 trials gave the same factor. On a scale divided to 0.10 % this says that the scatter is"
                                + " smaller than the scale can show, not that there is none; the uncertainty above takes the"
                                + " division into account.");
        assertThat(line(model, "95 % interval, these trials alone").note())
                .isEqualTo(
                        "All trials gave the same: what a scale divided to 0.10 % leaves open, and no number of trials narrows.");
    }

    @Test
    void struckAndVoidTrialsAreListedWithTheirReasons() {
        bench.keep(BenchBook.determination(1, DAY));
        Trial struck = BenchBook.trial("T1", 1, DAY, "7.4").struck("spilled water");
        bench.keep(
                struck, BenchBook.leaked("T2", 1, DAY.plusDays(1)), BenchBook.trial("T3", 1, DAY.plusDays(2), "6.4"));
        VariabilityModel model = new VariabilityModel(bench.select().desk, Settings.inMemory());
        assertThat(model.leftOut())
                .extracting(VariabilityModel.LeftOut::state)
                .containsExactly(TrialPoint.State.STRUCK, TrialPoint.State.VOID);
        assertThat(model.leftOut().get(0).sentence()).isEqualTo("Trial T1, 1.40 %, struck: spilled water");
        assertThat(model.leftOut().get(1).sentence()).startsWith("Trial T2, no factor, void: The meter leaked");
        FactorByTrial plot = model.byTrial().orElseThrow();
        assertThat(plot.trials()).extracting(TrialPoint::id).containsExactly("T1", "T2", "T3");
        assertThat(plot.trials().get(0).factorPercent().orElseThrow()).isCloseTo(1.4, offset(1e-9));
        assertThat(plot.trials().get(1).factorPercent()).isEmpty();
        assertThat(plot.meanPercent().orElseThrow()).isCloseTo(0.4, offset(1e-9));
        assertThat(plot.interval()).isEmpty();
    }

    @Test
    void overTimeAllDeterminationsAndIssuesAreShown() {
        bench.keep(BenchBook.determination(1, DAY), BenchBook.determination(2, DAY.plusDays(1)));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.3"), BenchBook.trial("T2", 2, DAY.plusDays(1), "6.4"));
        bench.keep(BenchBook.issue(1, 1, DAY, "0.3"));
        VariabilityModel model = new VariabilityModel(bench.select().desk, Settings.inMemory());
        FactorOverTime plot = model.overTime().orElseThrow();
        assertThat(plot.trials()).hasSize(2);
        assertThat(plot.begun()).extracting(FactorOverTime.Begun::id).containsExactly("K7/1", "K7/2");
        assertThat(plot.steps()).singleElement().satisfies(step -> {
            assertThat(step.from()).isEqualTo(DAY);
            assertThat(step.factorPercent().orElseThrow()).isEqualTo(0.3);
        });
        assertThat(plot.until()).isEqualTo(BenchBook.TODAY);
    }

    @Test
    void anEarlierDeterminationCanBeChosen() {
        bench.keep(BenchBook.determination(1, DAY), BenchBook.determination(2, DAY.plusDays(1)));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.3"), BenchBook.trial("T2", 2, DAY.plusDays(1), "6.4"));
        VariabilityModel model = new VariabilityModel(bench.select().desk, Settings.inMemory());
        assertThat(model.choices()).extracting(choice -> choice.id().text()).containsExactly("K7/2", "K7/1");
        assertThat(model.verdict().sentence()).contains("0.40 %");
        model.choose(new DeterminationId("K7/1"));
        assertThat(model.verdict().sentence()).contains("0.30 %");
        bench.desk.selectNone();
        assertThat(model.judged()).isEmpty();
    }

    @Test
    void aPictureIsNamedAfterTheMix() {
        assertThat(model("6.4").pictureName("by-trial")).isEqualTo("K7-by-trial.png");
    }

    private VariabilityModel withTwoDeterminations() {
        bench.keep(BenchBook.determination(1, DAY), BenchBook.determination(2, DAY.plusDays(1)));
        bench.keep(BenchBook.trial("T1", 1, DAY, "6.3"), BenchBook.trial("T2", 2, DAY.plusDays(1), "6.4"));
        bench.keep(Samples.mix("M-2"));
        return new VariabilityModel(bench.select().desk, Settings.inMemory());
    }

    private static String lookedAt(VariabilityModel model) {
        return model.judged().orElseThrow().determination().value().id().text();
    }

    @Test
    void theDeterminationChosenStaysWhenTheLabBookGrowsAndNotWhenAnotherMixIsSelected() {
        VariabilityModel model = withTwoDeterminations();
        model.choose(new DeterminationId("K7/1"));
        bench.keep(BenchBook.trial("T3", 2, DAY.plusDays(1), "6.5"));
        bench.desk.refresh();
        assertThat(lookedAt(model)).isEqualTo("K7/1");
        bench.desk.select(new MixId("M-2"));
        bench.select();
        assertThat(lookedAt(model)).isEqualTo("K7/2");
    }

    @Test
    void whoListensHearsOfEveryChoiceAndOfEveryChangeOfTheLabBook() {
        VariabilityModel model = withTwoDeterminations();
        int[] heard = {0};
        model.onChange(() -> heard[0]++);
        model.choose(new DeterminationId("K7/1"));
        assertThat(heard[0]).isEqualTo(1);
        bench.keep(BenchBook.trial("T3", 2, DAY.plusDays(1), "6.5"));
        bench.desk.refresh();
        assertThat(heard[0]).isEqualTo(2);
    }

    @Test
    void aChoiceIsShownByItsWords() {
        assertThat(withTwoDeterminations().choices())
                .map(Object::toString)
                .allMatch(words -> words.startsWith("K7/"))
                .doesNotHaveDuplicates();
    }

    @Test
    void aPictureByTrialIsOfADeterminationAndOneOverTimeOfTheMix() {
        VariabilityModel model = withTwoDeterminations();
        assertThat(model.subject("by-trial")).isEqualTo("K7, determination K7/2");
        assertThat(model.subject("over-time")).isEqualTo("K7");
    }

    /**
     * Means 0.4, 0.5, 0.3 and 0.7 of two trials 0.2 apart. Variance of a trial 0.02, between determinations (2 x 0.0875 / 3 - 0.02) / 2 =
     * 0.019167. The others say 0.4 with (0.019167 + 0.01) / 3 + 0.019167 = 0.028889, the last one's own trials 0.7 with 0.01: 0.6229, of
     * which they make up 0.028889 / 0.038889. The next one: 0.475 +- 3.182 x 0.17078 x sqrt(5/4).
     */
    @Test
    void saysWhatTheLaboratoryKnowsBesides() {
        double[] lows = {6.3, 6.4, 6.2, 6.6};
        for (int i = 0; i < lows.length; i++) {
            bench.keep(BenchBook.determination(i + 1, DAY.plusDays(i)));
            bench.keep(
                    BenchBook.trial("T" + i + "a", i + 1, DAY.plusDays(i), String.format(Locale.ROOT, "%.1f", lows[i])),
                    BenchBook.trial(
                            "T" + i + "b", i + 1, DAY.plusDays(i), String.format(Locale.ROOT, "%.1f", lows[i] + 0.2)));
        }
        Settings settings = Settings.inMemory();
        VariabilityModel model = new VariabilityModel(bench.select().desk, settings);
        model.workOutKnown();
        Finding known = model.known().orElseThrow();
        assertThat(known.answer())
                .isEqualTo("With the laboratory's other mixes, G would be 0.623 % instead of 0.700 %: 0.6 % on "
                        + "the card instead of 0.7 %. The factor stays the mean of its own trials; where the two "
                        + "differ, another determination tells which is right.");
        assertThat(known.reasons())
                .containsExactly(
                        "Other determinations on this type of meter: 3, of this mix, made of the same: 3. By themselves"
                                + " they expect 0.40 % here. These trials make up 74 % of the figure above.",
                        "Determinations of a mix differ by a standard deviation of 0.138 %, beside the scatter of their"
                                + " trials.",
                        "The next determination of this mix, made of the same and of about as many trials, should lie"
                                + " between -0.13 and 1.08 %: 95 of 100 do. Determinations that this rests on: 4.");
        model.showKnown(false);
        assertThat(model.known()).isEmpty();
        assertThat(new VariabilityModel(bench.desk, settings).showsKnown()).isFalse();
        model.showKnown(true);
        assertThat(model.known()).isPresent();
    }

    @Test
    void saysThatTheLaboratoryKnowsTooLittle() {
        VariabilityModel model = model("6.4", "6.5");
        model.workOutKnown();
        Finding known = model.known().orElseThrow();
        assertThat(known.answer())
                .isEqualTo("Not known yet: it takes three other determinations on this type of meter, and trials "
                        + "that do not all agree.");
        assertThat(known.reasons())
                .containsExactly("Where the next determination of this mix should lie can be said once 3 have been made"
                        + " of the same sources, unchanged.");
    }

    /** Two trials of each determination 0.1 apart, their means equal: nothing between determinations. */
    @Test
    void determinationsThatDoNotDifferAreSaidNotTo() {
        for (int i = 1; i < 5; i++) {
            bench.keep(BenchBook.determination(i, DAY.plusDays(i)));
            bench.keep(
                    BenchBook.trial("T" + i + "a", i, DAY.plusDays(i), "6.4"),
                    BenchBook.trial("T" + i + "b", i, DAY.plusDays(i), i == 4 ? "6.4" : "6.5"));
        }
        VariabilityModel model = new VariabilityModel(bench.select().desk, Settings.inMemory());
        model.workOutKnown();
        Finding known = model.known().orElseThrow();
        assertThat(known.answer())
                .startsWith("With the laboratory's other mixes, G would be 0.")
                .contains("the same on the card");
        assertThat(known.reasons())
                .contains("Determinations of a mix differ by no more than the scatter of their trials explains.");
    }

    @Test
    void withoutATrialTheLaboratoryIsNotAsked() {
        assertThat(model().known()).isEmpty();
    }
}
