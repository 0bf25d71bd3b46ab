package porebench.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.method.forecast.Forecast;
import porebench.quantity.Volume;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/**
 * Which loads are at risk, by pencil: five mixes of one sand, 2 mL/kg of pore air, and one stone, 4 mL/kg until its ledge changed and 8
 * since. A cubic metre with 700 kg of sand and 1050 kg of stone has G = 0.1 (2 x 0.700 + 4 x 1.050) = 0.56 %, on the new ledge
 * 0.1 (2 x 0.700 + 8 x 1.050) = 0.98 %. Trials have no scatter; M-1 alone was not tested on the new ledge.
 */
class RiskOfMixesTest {
    private static final MixId FIRST = new MixId("M-1");
    /** Sand and stone in kg, and G on the old and on the new ledge. */
    private static final List<List<String>> MIXES = List.of(
            List.of("M-1", "700", "1050", "5.56", ""),
            List.of("M-2", "600", "1150", "5.58", "6.04"),
            List.of("M-3", "800", "950", "5.54", "5.92"),
            List.of("M-4", "500", "1250", "5.60", "6.10"),
            List.of("M-5", "900", "850", "5.52", "5.86"));

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void fill() {
        book = Books.fresh(folder.resolve("risk.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "Pit 1"),
                Samples.source("S-2", Role.COARSE, "Ledge 1"),
                Samples.meter("B-1", MeterType.B));
        MIXES.forEach(mix -> {
            Books.keep(
                    book,
                    Samples.mix(
                            mix.get(0),
                            Samples.constituent("Sand", Role.FINE, "S-1", mix.get(1)),
                            Samples.constituent("Stone", Role.COARSE, "S-2", mix.get(2))));
            test(mix.get(0), 1, mix.get(3));
        });
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void test(String mix, int stone, String gauge) {
        String determination = mix + "/" + stone;
        Books.keep(
                book,
                Samples.determination(determination, mix)
                        .madeWith(Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), stone)));
        for (int trial = 1; trial <= 3; trial++) {
            Books.keep(book, Samples.trial(determination + "/" + trial, mix, determination, gauge));
        }
    }

    private void issue() {
        Evidence evidence = Evidence.of(book, FIRST).orElseThrow();
        LaboratoryScatter scatter = LaboratoryScatter.ofCounted(Evidence.ofAll(book).stream()
                .flatMap(each -> each.counted().stream())
                .toList());
        DeterminationId determination = new DeterminationId("M-1/1");
        List<IssueDoubt> doubts = Issuing.doubts(evidence, scatter, determination);
        Issuing.Decision bare = Bench.decision(determination, Bench.START);
        Books.keep(
                book,
                Issuing.issue(
                                evidence,
                                scatter,
                                new Issuing.Decision(
                                        determination,
                                        bare.inForceFrom(),
                                        bare.recheckBy(),
                                        bare.issuedBy(),
                                        bare.approvedBy(),
                                        bare.reason(),
                                        doubts.isEmpty()
                                                ? Optional.empty()
                                                : Optional.of(Bench.takingOn(doubts, "M. Ash", "looked at"))))
                        .value()
                        .orElseThrow());
    }

    private void changeLedge() {
        Books.correct(
                book, SampleSources.changed(Samples.source("S-2", Role.COARSE, "Ledge 2"), Bench.START.plusDays(1)));
    }

    private void testOnTheNewLedge() {
        MIXES.stream().filter(mix -> !mix.get(4).isEmpty()).forEach(mix -> test(mix.get(0), 2, mix.get(4)));
    }

    private PlannedTest planned(OptionalDouble loadSpread, Map<MixId, Double> loads) {
        LocalDate day = Bench.START.plusDays(30);
        WeekPlan plan = WeekPlan.of(
                book,
                LaboratoryStanding.of(book),
                new WeekPlan.Wish(day, day, 10, 10, loadSpread, List.of(), Set.of()),
                Optional.empty(),
                (mixes, until) -> loads);
        return plan.tests().stream()
                .filter(test -> test.mixId().equals(FIRST))
                .findFirst()
                .orElseThrow();
    }

    /**
     * G in force is 0.6, in steps of 0.1; the error 0.98 - 0.6 = 0.38. Target 6, tolerance 1.5, loads 0.6, readings 0.28: R says 0.044652777
     * of all loads are judged wrongly then and 0.018130636 without an error (load-risk.csv), so 0.026522141 because of it.
     */
    @Test
    void aForecastOfWhatChangedSaysTheErrorAndTheShareFollows() {
        issue();
        changeLedge();
        testOnTheNewLedge();
        LoadsAtRisk risk = planned(OptionalDouble.of(0.6), Map.of(FIRST, 120.0)).risk();
        assertThat(book.latest(FactorIssue.class, FactorIssue.idOf(FIRST, 1))
                        .orElseThrow()
                        .value()
                        .factorPercent())
                .isEqualByComparingTo(new BigDecimal("0.6"));
        assertThat(risk.cause()).isEqualTo(LoadsAtRisk.Cause.FORECAST);
        assertThat(risk.errorPercent().orElseThrow()).isCloseTo(0.38, within(1e-6));
        assertThat(risk.mixes()).isEqualTo(5);
        assertThat(risk.share().orElseThrow()).isCloseTo(0.0446527769543276 - 0.0181306361209552, within(1e-6));
        assertThat(risk.wrongAWeek().orElseThrow()).isCloseTo(3.182657, within(1e-4));
        assertThat(PlanText.in(Locale.ENGLISH).say(risk))
                .isEqualTo("Likely 3.2 of 120 loads a week judged wrongly: error 0.38 % air, forecast from 5 mixes.");
        assertThat(PlanText.in(Locale.ENGLISH).brief(risk)).isEqualTo("3.2 of 120");
    }

    /** The new ledge was tested with 1150 kg a cubic metre and more; M-1 has 1050 kg of it, which no trial covers. */
    @Test
    void aForecastOutsideWhatWasTestedIsNotUsed() {
        issue();
        changeLedge();
        MIXES.stream()
                .filter(mix -> List.of("M-2", "M-4").contains(mix.get(0)))
                .forEach(mix -> test(mix.get(0), 2, mix.get(4)));
        Forecast said = ForecastTrials.of(book, Progress.UNHEARD)
                .value()
                .orElseThrow()
                .of(book.latest(MixDesign.class, "M-1").orElseThrow().value(), new Volume(0.007), 3)
                .value()
                .orElseThrow();
        assertThat(said.extrapolates()).isTrue();
        LoadsAtRisk risk = planned(OptionalDouble.of(0.6), Map.of(FIRST, 120.0)).risk();
        assertThat(risk.cause()).isNotEqualTo(LoadsAtRisk.Cause.FORECAST);
    }

    /** Nothing was tested on the new ledge: no forecast, and what determinations differ by is not known from one each. */
    @Test
    void withoutAForecastTheSpreadOfDeterminationsCountsWhereItIsKnown() {
        issue();
        changeLedge();
        LoadsAtRisk risk = planned(OptionalDouble.of(0.6), Map.of(FIRST, 120.0)).risk();
        OptionalDouble spread = LaboratoryStanding.of(book)
                .scatter()
                .betweenDeterminations(MeterType.B)
                .map(between -> OptionalDouble.of(between.standardDeviation()))
                .orElse(OptionalDouble.empty());
        assertThat(risk.cause()).isEqualTo(spread.isPresent() ? LoadsAtRisk.Cause.SPREAD : LoadsAtRisk.Cause.NO_ERROR);
        assertThat(risk.errorPercent()).isEqualTo(spread);
        assertThat(risk.mixes()).isZero();
    }

    @Test
    void whatIsNotKnownIsSaid() {
        PlanText text = PlanText.in(Locale.ENGLISH);
        LoadsAtRisk never = planned(OptionalDouble.of(0.6), Map.of(FIRST, 12.6)).risk();
        assertThat(never.cause()).isEqualTo(LoadsAtRisk.Cause.NO_FACTOR);
        assertThat(text.say(never)).isEqualTo("13 loads a week without a factor.");
        issue();
        changeLedge();
        assertThat(text.say(planned(OptionalDouble.of(0.6), Map.of()).risk())).isEqualTo("Loads a week not known.");
        LoadsAtRisk unspread =
                planned(OptionalDouble.empty(), Map.of(FIRST, 120.0)).risk();
        assertThat(unspread.cause()).isEqualTo(LoadsAtRisk.Cause.NO_LOAD_SPREAD);
        assertThat(text.say(unspread))
                .isEqualTo("120 loads a week; how the air differs from load to load is not known.");
        assertThat(text.brief(unspread)).isEqualTo("not known");
    }
}
