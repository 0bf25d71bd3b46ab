package porebench.desk.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.chart.factor.BudgetBars;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.HeldTasks;
import porebench.method.Problem;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetLine;
import porebench.method.budget.BudgetPart;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.Origin;
import porebench.record.SampleCalibrations;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;

class BudgetModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final DeterminationId FIRST = new DeterminationId("K7/1");

    private final BenchBook bench = new BenchBook();

    private BudgetModel model(String... gauges) {
        return model(bench, gauges);
    }

    private static BudgetModel model(BenchBook bench, String... gauges) {
        bench.keep(BenchBook.determination(1, DAY));
        for (int i = 0; i < gauges.length; i++) {
            bench.keep(BenchBook.trial("T" + (i + 1), 1, DAY, gauges[i]));
        }
        BudgetModel model = new BudgetModel(bench.select().desk);
        model.turnTo(Optional.of(FIRST));
        return model;
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    /**
     * 6.4, 6.4, 6.5, 6.5 less 6.0: scatter 0.057735 / 2 = 0.028868, reading the same, cylinder 2.5 mL / sqrt(3) x 100 / 7000 =
     * 0.020620, water 1 mL / sqrt(12) / 70 = 0.004124, bowl 0.001 L / sqrt(12) x 6 / 7 = 0.000247: combined 0.04592. Effective
     * 0.04592^4 / (0.028868^4 / 3) = 19.2, where t is 2.09: 0.096.
     */
    @Test
    void opensWithTheUncertaintyAndItsLargestPart() {
        BudgetModel model = model("6.4", "6.4", "6.5", "6.5");
        assertThat(model.verdict())
                .startsWith("G = 0.45 % \u00b1 0.11 % (U, 95 %, by drawing). The largest part of it is ")
                .endsWith(": 40 % of the variance.");
        Budget budget = model.budget().orElseThrow().budget();
        assertThat(budget.combinedPercent()).isEqualTo(0.04592, within(1e-5));
        assertThat(budget.effectiveDegreesOfFreedom()).isEqualTo(19.2, within(0.05));
        assertThat(codes(model.omissions()))
                .containsExactly("budget.dial-never-checked", "budget.bowl-never-weighed", "budget.occasions");
    }

    /** The profile's tolerance is 1.5 %: U of 0.11 % goes into it 13 to 15 times, and is about one step of 0.1 %. */
    @Test
    void saysWhatTheUncertaintyIsWorth() {
        BudgetModel model = model("6.4", "6.4", "6.5", "6.5");
        double u = model.budget().orElseThrow().uncertaintyPercent();
        BudgetWords.Line line = model.totals().get(1);
        assertThat(line.name()).isEqualTo("Capability");
        assertThat(Double.parseDouble(line.value())).isEqualTo(1.5 / u, within(0.05));
        assertThat(line.note())
                .startsWith(
                        "How many times U goes into the tolerance of 1.5 % air to either side: it is small beside it."
                                + " U is 1.")
                .endsWith(" reporting steps of 0.10 %.");
    }

    @Test
    void saysEveryLineWithWhereItComesFrom() {
        BudgetModel model = model("6.4", "6.4", "6.5", "6.5");
        Budget budget = model.budget().orElseThrow().budget();
        List<List<String>> rows = budget.lines().stream()
                .map(line -> model.words().row(budget, line))
                .toList();
        assertThat(rows)
                .contains(
                        List.of("scatter", "", "0.029 % air", "1.0", "0.029", "40", "3.0", "scatter of the readings"),
                        List.of(
                                "division of the scale",
                                "6.45 % air",
                                "0.029 % air",
                                "1.0",
                                "0.029",
                                "40",
                                "\u221e",
                                "division of the scale"),
                        List.of(
                                "cylinder or balance",
                                "",
                                "1.4 mL",
                                "-0.014",
                                "0.021",
                                "20",
                                "\u221e",
                                "assumed, no source"));
    }

    @Test
    void putsTheDrawnIntervalBesideItAndJudgesTheDifference() {
        List<BudgetWords.Line> many = totals(model("6.4", "6.4", "6.5", "6.5", "6.4", "6.5", "6.4", "6.5"));
        assertThat(many).hasSize(5);
        assertThat(many.get(0).value())
                .startsWith("\u00b1 0.0")
                .isEqualTo(many.get(3).value());
        assertThat(many.get(0).note()).startsWith("By propagation: drawing agrees with it.");
        assertThat(many.get(1).value()).matches("0\\.0\\d\\d % air");
        assertThat(many.get(4).value()).matches("0\\.3\\d\\d to 0\\.5\\d\\d % air");
        assertThat(many.get(4).note()).startsWith("Agrees: ").endsWith("0000 draws, seed 1.");
    }

    @Test
    void saysThatTwoTrialsAreTooFewForTheRule() {
        List<BudgetWords.Line> two = totals(model("6.3", "6.6"));
        assertThat(two.get(0).note()).startsWith("By drawing, half the width of its interval");
        assertThat(two.get(0).value()).isNotEqualTo(two.get(3).value());
        String note = two.get(4).note();
        assertThat(note)
                .startsWith("Reaches up to ")
                .contains("This interval is the result.")
                .contains("no standard deviation");
    }

    /** Returns the lines below the table without the capability. */
    private static List<BudgetWords.Line> totals(BudgetModel model) {
        return model.totals().stream()
                .filter(line -> !line.name().equals("Capability"))
                .toList();
    }

    @Test
    void drawsAgainOnlyWhenSomethingChanged() {
        BudgetModel model = model("6.4", "6.5");
        BudgetResult before = model.budget().orElseThrow();
        bench.desk.setPerson("Somebody else");
        assertThat(model.budget().orElseThrow()).isSameAs(before);
        bench.keep(BenchBook.trial("T9", 1, DAY, "6.6"));
        bench.desk.refresh();
        bench.select();
        assertThat(model.budget().orElseThrow()).isNotSameAs(before);
    }

    @Test
    void takesTheDialOnceItWasChecked() {
        bench.keep(SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.00", "5.00", "10.00"));
        BudgetModel model = model("6.4", "6.5");
        assertThat(codes(model.omissions())).doesNotContain("budget.dial-never-checked");
        BudgetBars bars = model.bars().orElseThrow();
        assertThat(bars.bars()).extracting(BudgetBars.Bar::name).contains("correction of the dial");
        assertThat(bars.bars())
                .filteredOn(BudgetBars.Bar::isAssumed)
                .extracting(BudgetBars.Bar::name)
                .containsExactly("measure of the dial check", "cylinder or balance", "masses of the sample");
        for (int i = 1; i < bars.bars().size(); i++) {
            assertThat(bars.bars().get(i).contributionPercent())
                    .isLessThanOrEqualTo(bars.bars().get(i - 1).contributionPercent());
        }
    }

    @Test
    void hasNothingToBudgetWhereNoTrialCounts() {
        BudgetModel model = model();
        assertThat(model.verdict()).isEqualTo("No trial counts: there is no factor to make a budget for.");
        assertThat(model.bars()).isEmpty();
        assertThat(model.omissions()).isEmpty();
        model.typeReading("6.2");
        assertThat(model.fieldVerdict()).isEmpty();
        model.turnTo(Optional.empty());
        assertThat(model.budget()).isEmpty();
    }

    /**
     * G is 0.45 and is handed out as 0.4: 6.2 less 0.4. Parts: G 0.04592, division and rounding 0.028868 each, field readings 0.28
     * (C231, recalled). Squares 0.0784 + 0.002109 + 2 x 0.000833 = 0.082176, root 0.286664, of which 95, 3, 1 and 1 %.
     */
    @Test
    void correctsAReadingFromTheField() {
        BudgetModel model = model("6.4", "6.4", "6.5", "6.5");
        assertThat(model.fieldVerdict()).isEmpty();
        assertThat(model.readingProblems()).isEmpty();
        model.typeReading("6.2");
        assertThat(model.field().orElseThrow().budget().combinedPercent()).isEqualTo(0.286664, within(1e-5));
        assertThat(model.fieldVerdict())
                .startsWith(
                        "Air = 5.80 % \u00b1 0.56 % (U, 95 %, by propagation), G subtracted. The largest part of it is how field readings scatter among"
                                + " operators and meters: 95 %");
        assertThat(model.fieldParts())
                .isEqualTo(
                        "Shares of the variance: scatter of field readings 95 %, factor G 3 %, division of the scale 1 %,"
                                + " rounding of the factor 1 %.");
        assertThat(codes(model.fieldOmissions())).containsExactly("budget.field-dial");
    }

    @Test
    void readsTheFieldMeterAlongItsDial() {
        bench.keep(SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.0", "5.1", "10.1"));
        BudgetModel model = model("6.4", "6.5");
        assertThat(model.meters()).extracting(MeterId::text).containsExactly("B-1", "E-1");
        model.typeReading("6.2");
        model.chooseMeter(Optional.of(new MeterId("B-1")));
        assertThat(codes(model.fieldOmissions())).isEmpty();
        Budget field = model.field().orElseThrow().budget();
        assertThat(field.lines()).extracting(BudgetLine::value).anyMatch(value -> Math.abs(value + 0.1) < 1e-9);
        model.chooseMeter(Optional.of(new MeterId("gone")));
        assertThat(model.meter()).isEmpty();
    }

    /** Drawing takes some tenths of a second: it is never done on the thread that takes the keys. */
    @Test
    void saysThatTheUncertaintyIsWorkedOutUntilItIsThere() {
        model("6.4", "6.5");
        HeldTasks held = new HeldTasks();
        DeskModel desk = new DeskModel(held.in(bench.desk.tools()), bench.book);
        desk.select(bench.desk.selected().orElseThrow());
        BudgetModel model = new BudgetModel(desk);
        List<String> heard = new ArrayList<>();
        model.onChange(() -> heard.add(model.verdict()));
        model.turnTo(Optional.of(FIRST));
        assertThat(model.verdict()).isEqualTo("Computing the uncertainty…");
        assertThat(model.budget()).isEmpty();
        assertThat(model.fieldVerdict()).isEmpty();
        assertThat(held.count()).isEqualTo(1);
        held.end();
        assertThat(heard).singleElement().asString().startsWith("G = 0.45 %");
        model.typeReading("6.2");
        assertThat(model.fieldVerdict()).isEqualTo("Computing the uncertainty…");
        held.end();
        assertThat(model.fieldVerdict()).startsWith("Air = 5.80 %");
    }

    /** A letter typed asks for a sentence, its parts and what is left out: one drawing, and a new one for another reading. */
    @Test
    void drawsOnceForAReading() {
        bench.keep(SampleCalibrations.dialCalibration("C-1", "B-1", DAY, "0.0", "5.1", "10.1"));
        BudgetModel model = model("6.4", "6.5");
        model.typeReading("6.2");
        model.chooseMeter(Optional.of(new MeterId("B-1")));
        BudgetResult first = model.field().orElseThrow();
        assertThat(model.field().orElseThrow()).isSameAs(first);
        model.typeReading("6.3");
        assertThat(model.field().orElseThrow().drawn()).isNotEqualTo(first.drawn());
        model.typeReading("6.2");
        assertThat(model.field().orElseThrow().drawn()).isEqualTo(first.drawn());
    }

    @Test
    void saysWhatIsWrongWithTheReading() {
        BudgetModel model = model("6.4", "6.5");
        model.typeReading("six");
        assertThat(codes(model.readingProblems())).containsExactly("budget.reading-not-a-number");
        model.typeReading("-1");
        assertThat(codes(model.readingProblems())).containsExactly("budget.reading-out-of-range");
        model.typeReading("100.5");
        assertThat(codes(model.readingProblems())).containsExactly("budget.reading-out-of-range");
        assertThat(model.fieldVerdict()).isEmpty();
        model.typeReading("  ");
        assertThat(model.readingProblems()).isEmpty();
    }

    /** A meter may read nothing, and no meter reads more than the whole bowl. */
    @Test
    void takesAReadingFromNothingToTheWholeBowl() {
        BudgetModel model = model("6.4", "6.5");
        for (String typed : List.of("0", "100")) {
            model.typeReading(typed);
            assertThat(model.reading()).isEqualTo(typed);
            assertThat(model.readingProblems()).isEmpty();
            assertThat(model.field()).isPresent();
        }
    }

    @Test
    void aPictureSaysOfWhichMixAndDeterminationItIs() {
        assertThat(model("6.4").subject()).isEqualTo("K7, determination K7/1");
    }

    @Test
    void readsAndWritesNumbersOfTheLanguage() {
        BudgetModel model = model(new BenchBook(Locale.GERMANY), "6.4", "6.4", "6.5", "6.5");
        model.typeReading("6,2");
        assertThat(model.fieldVerdict()).startsWith("Luft = 5,80 %");
        assertThat(model.verdict()).startsWith("G = 0,45 %");
        assertThat(model.pictureName()).isEqualTo("K7-1-budget.png");
    }

    /** Every part and origin has its words. */
    @Test
    void hasWordsForEverything() {
        BudgetModel model = model();
        for (BudgetPart part : BudgetPart.values()) {
            assertThat(model.texts().get("part." + part.symbol())).isNotBlank();
            assertThat(model.texts().get("largest." + part.symbol())).isNotBlank();
        }
        for (Origin origin : Origin.values()) {
            assertThat(model.texts().get("origin." + origin.symbol())).isNotBlank();
        }
    }
}
