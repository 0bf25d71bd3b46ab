package porebench.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.exchange.DemoYear;
import porebench.method.Role;
import porebench.method.sample.WeighOut;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.record.CardPrint;
import porebench.record.MixDesign;
import porebench.record.SamplePlans;
import porebench.record.SampleProduction;
import porebench.record.TestPlan;
import porebench.record.book.LabBook;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Which mixes are tested in a week, in which order, how often, on what. */
class WeekPlanTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 28);
    private static final MixId KERB = new MixId("HG-103");
    private static final MixId WALL = new MixId("HG-105");
    private static final MixId APRON = new MixId("HG-106");
    private static final MixId PARAPET = new MixId("HG-108");
    private static final MixId PAVEMENT = new MixId("HG-102");
    private static final MixId DECK = new MixId("HG-101");

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void fillBook() {
        book = Books.fresh(folder.resolve("demo.porebench"));
        new DemoYear().fill(book);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static WeekPlan.Wish wish(int most, List<MixId> added, Set<MixId> without) {
        return new WeekPlan.Wish(DAY, DAY, most, 10, OptionalDouble.empty(), added, without);
    }

    private WeekPlan plan(WeekPlan.Wish wish) {
        return WeekPlan.of(book, LaboratoryStanding.of(book), wish, Optional.empty(), (mixes, until) -> Map.of());
    }

    private static List<MixId> mixes(WeekPlan plan) {
        return plan.tests().stream().map(PlannedTest::mixId).toList();
    }

    @Test
    void whatNoLongerHoldsComesFirstThenWhatNeverDidThenWhatIsDue() {
        WeekPlan plan = plan(wish(10, List.of(), Set.of()));
        // HG-103 lapsed on 3 September, the ledge of HG-106 changed on 9 November; HG-105 was withdrawn by somebody.
        assertThat(mixes(plan)).containsExactly(KERB, APRON, PARAPET, PAVEMENT);
        assertThat(plan.tests())
                .extracting(PlannedTest::need)
                .containsExactly(Need.NO_LONGER_HOLDS, Need.NO_LONGER_HOLDS, Need.NEVER_TESTED, Need.DUE);
        assertThat(plan.left()).isZero();
        assertThat(plan.until()).isEqualTo(LocalDate.of(2026, 12, 4));
    }

    @Test
    void cardsThatAreOutComeBeforeWhatWaitsLonger() {
        Books.keep(book, new CardPrint(APRON, 1, 1, "A6", CardPrint.PRINTER));
        WeekPlan plan = plan(wish(10, List.of(), Set.of()));
        assertThat(mixes(plan)).containsExactly(APRON, KERB, PARAPET, PAVEMENT);
        assertThat(plan.tests().get(0).need()).isEqualTo(Need.CARDS_OUT);
        assertThat(plan.tests().get(0).cardsOut()).isEqualTo(1);
    }

    @Test
    void aPersonPutsMixesOnItAndLeavesOthersOut() {
        WeekPlan plan = plan(wish(3, List.of(WALL, DECK), Set.of(KERB)));
        assertThat(mixes(plan)).containsExactly(WALL, DECK, APRON);
        assertThat(plan.tests().get(0).need()).isEqualTo(Need.BY_HAND);
        assertThat(plan.left()).isEqualTo(2);
    }

    @Test
    void anOpenDeterminationIsGoneOnWith() {
        PlannedTest parapet = plan(wish(10, List.of(), Set.of())).tests().get(2);
        assertThat(parapet.determination()).isPresent();
        assertThat(parapet.trials()).isEqualTo(1);
        // The stone of HG-106 is another one: its trials begin a determination, with the profile's least number.
        PlannedTest apron = plan(wish(10, List.of(), Set.of())).tests().get(1);
        assertThat(apron.determination()).isEmpty();
        assertThat(apron.trials()).isEqualTo(3);
    }

    @Test
    void aMeterThatCannotBeTrustedIsReplacedAndThatIsSaid() {
        PlannedTest apron = plan(wish(10, List.of(), Set.of())).tests().get(1);
        assertThat(apron.meter()).contains(new MeterId("B-1"));
        assertThat(apron.doubts())
                .singleElement()
                .satisfies(doubt -> assertThat(doubt.code()).isEqualTo("plan.other-meter"));
    }

    @Test
    void whatToFetchIsTheSumOfAllTests() {
        WeekPlan plan = plan(wish(10, List.of(), Set.of()));
        for (WeekPlan.Fetch fetch : plan.fetches()) {
            double sum = plan.tests().stream()
                    .flatMap(test -> test.weighOut().map(WeighOut::lines).orElse(List.of()).stream())
                    .filter(line -> line.source().equals(fetch.source()))
                    .mapToDouble(line -> line.total().kilograms())
                    .sum();
            assertThat(fetch.total().kilograms()).isCloseTo(sum, Offset.offset(1e-9));
        }
        WeekPlan.Fetch sand = plan.fetches().get(0);
        assertThat(sand.source()).isEqualTo("S-01");
        assertThat(sand.role()).isEqualTo(Role.FINE);
        assertThat(sand.tests()).isEqualTo(3);
        // The spare is in it: 10 % of a plan without.
        WeekPlan bare = plan(new WeekPlan.Wish(DAY, DAY, 10, 0, OptionalDouble.empty(), List.of(), Set.of()));
        assertThat(sand.total().kilograms())
                .isCloseTo(1.1 * bare.fetches().get(0).total().kilograms(), Offset.offset(1e-9));
    }

    @Test
    void withoutAMeterThatCanBeTrustedNothingIsWeighedOut() {
        try (Bench bench = new Bench(folder)) {
            WeekPlan plan = WeekPlan.of(
                    bench.book,
                    LaboratoryStanding.of(bench.book),
                    new WeekPlan.Wish(Bench.START, Bench.START, 5, 10, OptionalDouble.empty(), List.of(), Set.of()),
                    Optional.empty(),
                    (mixes, until) -> Map.of());
            PlannedTest test = plan.tests().get(0);
            assertThat(test.mixId()).isEqualTo(Bench.MIX);
            assertThat(test.meter()).isEmpty();
            assertThat(test.weighOut()).isEmpty();
            assertThat(test.doubts()).extracting(doubt -> doubt.code()).containsExactly("plan.no-meter");
            assertThat(plan.fetches()).isEmpty();
            assertThat(bench.book.latest(MixDesign.class, "M-1")).isPresent();
        }
    }

    @Test
    void roomForNoneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> wish(0, List.of(), Set.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new WeekPlan.Wish(DAY, DAY, 1, -1, OptionalDouble.empty(), List.of(), Set.of()));
    }

    private List<MixId> ranked(OptionalDouble loadSpread, Map<MixId, Double> loads) {
        return mixes(WeekPlan.of(
                book,
                LaboratoryStanding.of(book),
                new WeekPlan.Wish(DAY, DAY, 10, 10, loadSpread, List.of(), Set.of()),
                Optional.empty(),
                (of, until) -> loads));
    }

    /** HG-103 waits since September, HG-106 since November; loads of which most are likely judged wrongly come first. */
    @Test
    void withinANeedRiskRanksAndWhatIsNotKnownFollowsByItsDay() {
        OptionalDouble spread = OptionalDouble.of(0.6);
        assertThat(ranked(spread, Map.of(APRON, 100.0))).containsExactly(APRON, KERB, PARAPET, PAVEMENT);
        assertThat(ranked(spread, Map.of(APRON, 100.0, KERB, 1.0))).containsExactly(APRON, KERB, PARAPET, PAVEMENT);
        assertThat(ranked(spread, Map.of(APRON, 1.0, KERB, 100.0))).containsExactly(KERB, APRON, PARAPET, PAVEMENT);
        assertThat(ranked(OptionalDouble.empty(), Map.of(APRON, 100.0)))
                .containsExactly(KERB, APRON, PARAPET, PAVEMENT);
    }

    @Test
    void noRiskComesBeforeCardsThatAreOutOrAFactorThatNoLongerHolds() {
        Books.keep(book, new CardPrint(KERB, 1, 1, "A6", CardPrint.PRINTER));
        Map<MixId, Double> loads = Map.of(APRON, 1e6, PARAPET, 1e6, PAVEMENT, 1e9);
        assertThat(ranked(OptionalDouble.of(0.6), loads)).containsExactly(KERB, APRON, PARAPET, PAVEMENT);
    }

    private WeekPlan arranged(int most, TestPlan kept) {
        return WeekPlan.of(
                book,
                LaboratoryStanding.of(book),
                wish(most, List.of(), Set.of()),
                Optional.of(kept),
                (mixes, until) -> Map.of());
    }

    @Test
    void aKeptPlanIsFollowedAndSaysWhatNoLongerAsks() {
        TestPlan kept = SamplePlans.plan(
                DAY,
                SamplePlans.row("HG-102", DAY, "R. Vale", 5, "B-2", TestPlan.Mark.ASKED, ""),
                SamplePlans.row("HG-101", DAY.plusDays(1)),
                SamplePlans.row("HG-105", DAY.plusDays(2), "", 2, "B-1", TestPlan.Mark.BY_HAND, ""),
                SamplePlans.row("HG-103", DAY, "", 3, "B-1", TestPlan.Mark.LEFT_OUT, "the plant stands still"));
        WeekPlan plan = arranged(10, kept);
        assertThat(mixes(plan)).containsExactly(PAVEMENT, DECK, APRON, PARAPET, WALL);
        assertThat(plan.tests())
                .extracting(PlannedTest::need)
                .containsExactly(Need.DUE, Need.NO_MORE, Need.NO_LONGER_HOLDS, Need.NEVER_TESTED, Need.BY_HAND);
        assertThat(plan.tests())
                .extracting(test -> test.place().placing())
                .containsExactly(
                        PlannedTest.Placing.KEPT,
                        PlannedTest.Placing.KEPT,
                        PlannedTest.Placing.NEW,
                        PlannedTest.Placing.NEW,
                        PlannedTest.Placing.BY_HAND);
        assertThat(plan.leftOut()).singleElement().satisfies(out -> {
            assertThat(out.mixId()).isEqualTo(KERB);
            assertThat(out.need()).isEqualTo(Need.NO_LONGER_HOLDS);
            assertThat(out.place().remark()).isEqualTo("the plant stands still");
        });
        assertThat(plan.left()).isZero();
        PlannedTest pavement = plan.tests().get(0);
        assertThat(pavement.trials()).isEqualTo(5);
        assertThat(pavement.meter()).contains(new MeterId("B-2"));
        // B-2 cannot be trusted on these days: APRON, tested on it before, is proposed on B-1.
        assertThat(pavement.doubts()).extracting(doubt -> doubt.code()).containsExactly("plan.meter-not-trusted");
        // What is left out is not fetched.
        assertThat(plan.fetches().stream().mapToInt(WeekPlan.Fetch::tests).sum())
                .isEqualTo(plan.tests().stream()
                        .mapToInt(test -> (int) test.weighOut().map(WeighOut::lines).orElse(List.of()).stream()
                                .map(WeighOut.Line::source)
                                .distinct()
                                .count())
                        .sum());
    }

    @Test
    void whatStandsNowhereIsCounted() {
        WeekPlan plan = arranged(1, SamplePlans.plan(DAY, SamplePlans.row("HG-101", DAY)));
        assertThat(mixes(plan)).containsExactly(DECK, KERB);
        assertThat(plan.left()).isEqualTo(3);
    }

    @Test
    void theKeptPlanOfADayIsTheOneThatBeganLast() {
        LocalDate later = DAY.plusDays(3);
        assertThat(KeptPlan.on(book, DAY)).isEmpty();
        Books.keep(
                book,
                SamplePlans.plan(DAY, SamplePlans.row("HG-101", DAY)),
                SamplePlans.plan(later, SamplePlans.row("HG-101", later)));
        assertThat(KeptPlan.on(book, DAY.minusDays(1))).isEmpty();
        assertThat(KeptPlan.on(book, DAY).orElseThrow().value().from()).isEqualTo(DAY);
        assertThat(KeptPlan.on(book, DAY.plusDays(6)).orElseThrow().value().from())
                .isEqualTo(later);
        assertThat(KeptPlan.on(book, later.plusDays(6)).orElseThrow().value().from())
                .isEqualTo(later);
        assertThat(KeptPlan.on(book, later.plusDays(7))).isEmpty();
        assertThat(KeptPlan.from(book, later)).isPresent();
        assertThat(KeptPlan.from(book, DAY.plusDays(1))).isEmpty();
    }

    /** 25.0401 kg are 25.1 kg and, over 0.45359237, 55.2039 lb, so 55.3 lb; 25.0 kg stay. */
    @Test
    void whatToFetchIsRoundedUpwards() {
        WeekPlan.Fetch fetch = new WeekPlan.Fetch("S-1", "Stone", Role.COARSE, new Mass(25.0401), 1);
        assertThat(fetch.upwards(MassUnit.KILOGRAM)).isEqualTo("25.1");
        assertThat(fetch.upwards(MassUnit.POUND)).isEqualTo("55.3");
        assertThat(new WeekPlan.Fetch("S-1", "Stone", Role.COARSE, new Mass(25), 1).upwards(MassUnit.KILOGRAM))
                .isEqualTo("25.0");
    }

    /** 70 loads from the 1st to the 28th of November are four weeks of 17.5; of what is still to come nothing counts. */
    @Test
    void theLoadsAreThoseThatWereReportedUntilToday() {
        LocalDate first = LocalDate.of(2026, 11, 1);
        Books.keep(book, SampleProduction.loads("HG-106/p1", "HG-106", first, DAY, 70));
        WeekPlan plan = WeekPlan.of(
                book,
                LaboratoryStanding.of(book),
                new WeekPlan.Wish(DAY, DAY, 10, 10, OptionalDouble.of(0.6), List.of(), Set.of()),
                Optional.empty(),
                LoadsAWeek.reportedTo(book));
        LoadsAtRisk risk = plan.tests().get(0).risk();
        assertThat(plan.tests().get(0).mixId()).isEqualTo(APRON);
        assertThat(risk.loadsAWeek().orElseThrow()).isCloseTo(17.5, Offset.offset(1e-9));
        assertThat(plan.tests().get(1).risk()).isEqualTo(LoadsAtRisk.UNKNOWN);
    }
}
