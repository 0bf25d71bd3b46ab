package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.change.Comparison;
import porebench.evidence.change.SourceChange;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Problem;
import porebench.method.forecast.Forecast;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.TestPlan;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Progress;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.MixId;
import porebench.statistics.comparison.ComparisonPlan;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.store.SqliteShelf;

/** The demo's airfield while its stone changes: what is shown of each mix on the day of the demo. */
class NewLedgeTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
    /** A whole step in which G is reported: what the demo's laboratory takes for a change that matters. */
    private static final double MARGIN = 0.1;

    @TempDir
    private static Path folder;

    private static LabBook book;

    @BeforeAll
    static void fill() {
        book = new SqliteShelf(CLOCK).create(folder.resolve("demo.porebench"));
        new DemoLaboratory().fill(book);
    }

    @AfterAll
    static void close() {
        book.close();
    }

    @Test
    void nothingOfItIsDoubtedOrOfALaterDay() {
        assertThat(book.verify()).isEmpty();
        for (Evidence evidence : Evidence.ofAll(book)) {
            if (evidence.mix().value().id().text().compareTo("HG-108") > 0) {
                assertThat(evidence.determinations())
                        .flatExtracting(judged -> judged.trials())
                        .allSatisfy(trial -> {
                            assertThat(trial.doubts()).isEmpty();
                            assertThat(trial.trial().value().testedAt()).isBefore(DAY.atStartOfDay());
                        });
            }
        }
    }

    @Test
    void theFactorsThatTheNewLedgeMadeUntrueAreMarkedUntilTheyAreReplaced() {
        Map<String, FactorState> states = LaboratoryStanding.of(book).rows(DAY).stream()
                .filter(row -> row.mixId().text().compareTo("HG-108") > 0)
                .collect(Collectors.toMap(row -> row.mixId().text(), RegisterRow::state));
        assertThat(states)
                .containsOnly(
                        entry("HG-109", FactorState.IN_FORCE),
                        entry("HG-110", FactorState.IN_FORCE),
                        entry("HG-111", FactorState.SOURCE_CHANGED),
                        entry("HG-112", FactorState.IN_FORCE),
                        entry("HG-113", FactorState.IN_FORCE),
                        entry("HG-114", FactorState.IN_FORCE),
                        entry("HG-115", FactorState.IN_FORCE),
                        entry("HG-116", FactorState.NO_FACTOR));
    }

    @Test
    void everyIssueStatesTheFactorItsTrialsGive() {
        for (Evidence evidence : Evidence.ofAll(book)) {
            evidence.issues().stream()
                    .map(version -> version.value())
                    .forEach(issue -> assertThat(issue.factorPercent())
                            .as(issue.recordId())
                            .isEqualTo(evidence.determination(issue.determinationId())
                                    .orElseThrow()
                                    .summary()
                                    .orElseThrow()
                                    .reportedPercent()));
        }
    }

    @Test
    void oneFactorIsKeptOneReplacedAndOneWantsTwoTrialsMore() {
        assertThat(comparison("HG-109").verdict()).isEqualTo(ComparisonVerdict.KEEP);
        assertThat(comparison("HG-110").verdict()).isEqualTo(ComparisonVerdict.REPLACE);
        Comparison channel = comparison("HG-111");
        assertThat(channel.verdict()).isEqualTo(ComparisonVerdict.TEST_MORE);
        assertThat(channel.plan().after()).contains(new ComparisonPlan.More(2, 0));
    }

    @Test
    void theDecisionsStandWithTheirComparisonsAndOneFactorIsKeptByThem() {
        assertThat(book.latest(ChangeDecision.class))
                .extracting(
                        version -> version.value().mixId().text(),
                        version -> version.value().choice(),
                        version -> version.value().more())
                .containsExactly(
                        tuple("HG-109", ComparisonVerdict.KEEP, Optional.empty()),
                        tuple("HG-110", ComparisonVerdict.REPLACE, Optional.empty()),
                        tuple("HG-111", ComparisonVerdict.TEST_MORE, Optional.of(2)));
        FactorIssue kept =
                book.latest(FactorIssue.class, "HG-109/r2").orElseThrow().value();
        assertThat(kept.grounds().keptBy().map(ChangeDecisionId::text)).contains("HG-109/c1");
        assertThat(kept.factorPercent()).isEqualByComparingTo("0.3");
    }

    @Test
    void theWeekToComeIsPlannedWithSomebodyForEachTest() {
        TestPlan plan = book.latest(TestPlan.class).get(0).value();
        assertThat(plan.from()).isEqualTo("2026-11-30");
        assertThat(plan.rows())
                .extracting(row -> row.mixId().text(), row -> row.who())
                .containsExactly(
                        tuple("HG-106", "M. Quist"),
                        tuple("HG-111", "T. Ellwand"),
                        tuple("HG-103", "T. Ellwand"),
                        tuple("HG-108", "M. Quist"),
                        tuple("HG-116", "J. Perrin-Vale"),
                        tuple("HG-102", ""));
        assertThat(book.latest(Production.class)).hasSize(32);
    }

    @Test
    void aForecastMadeBeforeTheTestCameTrue() {
        MixId lampBases = new MixId("HG-115");
        try (LabBook before = new MemoryLabBook(CLOCK)) {
            new DemoLaboratory().fill(before);
            List<Draft> struck = before.latestOf(Belonging.TRIALS_OF_MIX, List.of(lampBases.text())).stream()
                    .map(trial -> Draft.correcting(trial, trial.value().struck("as before the test")))
                    .toList();
            assertThat(struck).hasSize(5);
            assertThat(before.keep(struck, "A", "as before the test")).isEmpty();
            Evidence tested = Evidence.of(book, lampBases).orElseThrow();
            Forecast forecast = ForecastTrials.of(before, Progress.UNHEARD)
                    .value()
                    .orElseThrow()
                    .of(tested.mix().value(), Volume.of(7.05, VolumeUnit.LITRE), 5)
                    .value()
                    .orElseThrow();
            double measured = tested.determinations()
                    .get(0)
                    .summary()
                    .orElseThrow()
                    .summary()
                    .mean();
            assertThat(forecast.extrapolates()).isFalse();
            assertThat(measured).isBetween(forecast.lowPercent(), forecast.highPercent());
            // What the demo says of it in the reason of its issue.
            assertThat(forecast.percent()).isCloseTo(0.26, within(0.005));
        }
    }

    @Test
    void aForecastOfAStoneThatWasInNoBowlIsRefused() {
        MixDesign edge = book.latest(MixDesign.class, "HG-116").orElseThrow().value();
        assertThat(ForecastTrials.of(book, Progress.UNHEARD)
                        .value()
                        .orElseThrow()
                        .of(edge, Volume.of(7.05, VolumeUnit.LITRE), 3)
                        .problems())
                .extracting(Problem::code)
                .contains("forecast.source-never-tested");
    }

    private static Comparison comparison(String mix) {
        return SourceChange.of(
                        Evidence.of(book, new MixId(mix)).orElseThrow(),
                        LaboratoryStanding.of(book).scatter(),
                        MARGIN)
                .value()
                .orElseThrow()
                .comparison();
    }
}
