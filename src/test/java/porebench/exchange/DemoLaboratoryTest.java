package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MeterStory;
import porebench.evidence.RegisterRow;
import porebench.evidence.issue.Issuing;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.exchange.sheet.Format;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.sample.CorrectionSample;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.SqliteShelf;

/** The first year of the demo laboratory in a real lab book: its counts, its honest faults, and how its factors stand on one day. */
class DemoLaboratoryTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    private static Path folder;

    private static LabBook book;

    @BeforeAll
    static void fill() {
        book = new SqliteShelf(CLOCK).create(folder.resolve("demo.porebench"));
        new DemoYear().fill(book);
    }

    @AfterAll
    static void close() {
        book.close();
    }

    @Test
    void holdsWhatItPromises() {
        Map<RecordKind, Integer> counts = Arrays.stream(RecordKind.values())
                .collect(Collectors.toMap(
                        Function.identity(), kind -> book.latest(kind.type()).size(), (a, b) -> a, TreeMap::new));
        assertThat(counts)
                .containsExactly(
                        entry(RecordKind.LABORATORY, 1),
                        entry(RecordKind.PROFILE, 0),
                        entry(RecordKind.SOURCE, 9),
                        entry(RecordKind.EQUIPMENT, 5),
                        entry(RecordKind.METER, 3),
                        entry(RecordKind.METER_CALIBRATION, 10),
                        entry(RecordKind.MIX, 8),
                        entry(RecordKind.DETERMINATION, 11),
                        entry(RecordKind.TRIAL, 61),
                        entry(RecordKind.FACTOR_ISSUE, 9),
                        entry(RecordKind.CARD_PRINT, 0),
                        entry(RecordKind.STUDY, 0),
                        entry(RecordKind.SHEET_PHOTO, 0),
                        entry(RecordKind.SOURCE_MEASUREMENT, 9),
                        entry(RecordKind.PRODUCTION, 0),
                        entry(RecordKind.FACTOR_GROUP, 0),
                        entry(RecordKind.TEST_PLAN, 0),
                        entry(RecordKind.FACTOR_PROPOSAL, 0),
                        entry(RecordKind.CHANGE_DECISION, 0),
                        entry(RecordKind.CARD_STEP, 0),
                        entry(RecordKind.FIELD_READING, 0));
        assertThat(book.history(Source.class, "S-09")).hasSize(2);
        assertThat(book.verify()).isEmpty();
    }

    @Test
    void showsEveryStateThatFilesCanBringOnTheDay() {
        Map<String, FactorState> states = LaboratoryStanding.of(book).rows(DAY).stream()
                .collect(Collectors.toMap(row -> row.mixId().text(), RegisterRow::state));
        assertThat(states)
                .containsOnly(
                        entry("HG-101", FactorState.IN_FORCE),
                        entry("HG-102", FactorState.RECHECK_DUE),
                        entry("HG-103", FactorState.LAPSED),
                        entry("HG-104", FactorState.IN_FORCE),
                        entry("HG-105", FactorState.WITHDRAWN),
                        entry("HG-106", FactorState.SOURCE_CHANGED),
                        entry("HG-107", FactorState.IN_FORCE),
                        entry("HG-108", FactorState.NO_FACTOR));
        // Evidence that changed, and a factor not verified here, are made by a person's hand and not shipped.
        assertThat(states.values())
                .containsOnlyElementsOf(Arrays.stream(FactorState.values())
                        .filter(state -> state != FactorState.EVIDENCE_CHANGED && state != FactorState.NOT_VERIFIED)
                        .toList());
    }

    @Test
    void itsFilesHaveNoProblems() {
        assertThat(DemoLaboratory.files())
                .hasSize(26)
                .allSatisfy(
                        file -> assertThat(DemoLaboratory.read(file).problems()).isEmpty());
        assertThatThrownBy(() -> DemoLaboratory.read("other.csv")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void everyMixGivesASampleAndOnlyThePorousOneAlarms() {
        for (MixDesign mix : mixes()) {
            var answer = CorrectionSample.of(mix.batch(), Volume.of(7, VolumeUnit.LITRE));
            assertThat(answer.value()).isPresent();
            assertThat(codes(answer.problems()))
                    .isEqualTo(mix.id().text().equals("HG-105") ? List.of("mix.porous-aggregate") : List.<String>of());
        }
        assertThat(mixes().stream().filter(mix -> mix.batch().wetSieved())).hasSize(1);
    }

    @Test
    void itsFaultsAreTheHonestOnesAndEachIsAnswered() {
        Map<String, List<String>> faults = new TreeMap<>();
        for (JudgedTrial judged : trials()) {
            Trial trial = judged.trial().value();
            List<String> codes = codes(judged.figures().problems());
            if (!codes.isEmpty()) {
                faults.put(trial.id().text(), codes);
                assertThat(trial.readings().leak()
                                || trial.keptBecause().isPresent()
                                || trial.struckBecause().isPresent())
                        .as(trial.id().text())
                        .isTrue();
            }
        }
        List<String> high = List.of("trial.factor-high");
        List<String> mass = List.of("trial.mass-off-target", "trial.factor-at-right-mass");
        assertThat(faults)
                .containsExactly(
                        entry("T-006", mass),
                        entry("T-009", List.of("trial.soak-missing")),
                        entry("T-011", high),
                        entry("T-012", high),
                        entry("T-013", high),
                        entry("T-014", high),
                        entry("T-015", high),
                        entry("T-017", List.of("trial.soak-short")),
                        entry("T-021", mass),
                        entry("T-025", List.of("trial.leak", "trial.factor-high")),
                        entry("T-029", List.of("trial.soak-long")),
                        entry("T-031", List.of("trial.factor-high", "trial.meter-overdue")),
                        entry("T-033", List.of("trial.withdrawal-far")),
                        entry("T-036", List.of("trial.leak")),
                        entry("T-044", mass),
                        entry("T-048", List.of("trial.factor-negative")),
                        entry("T-052", mass));
    }

    @Test
    void usesBothTypesOfMeterOverAYear() {
        assertThat(trials().stream()
                        .map(judged -> judged.trial().value().readings().meterType()))
                .contains(MeterType.A, MeterType.B);
        assertThat(book.latest(Meter.class).stream().map(meter -> meter.value().type()))
                .containsExactlyInAnyOrder(MeterType.A, MeterType.B, MeterType.B);
        List<LocalDate> days = trials().stream()
                .map(judged -> judged.trial().value().testedAt().toLocalDate())
                .sorted()
                .toList();
        assertThat(days.get(0)).isEqualTo("2025-12-02");
        assertThat(days.get(days.size() - 1)).isEqualTo("2026-11-20");
    }

    @Test
    void everyIssueStatesTheFactorItsTrialsGive() {
        for (Evidence evidence : Evidence.ofAll(book)) {
            evidence.issues().stream().map(version -> version.value()).forEach(issue -> {
                var basis = evidence.determination(issue.determinationId()).orElseThrow();
                assertThat(issue.factorPercent())
                        .isEqualTo(basis.summary().orElseThrow().reportedPercent());
                assertThat(issue.meterType()).isEqualTo(basis.meterType());
                assertThat(issue.mixVersion()).isEqualTo(1);
                assertThat(issue.sourceVersions().keySet())
                        .isEqualTo(evidence.mix().value().sources());
            });
        }
        assertThat(Evidence.of(book, new MixId("HG-106"))
                        .orElseThrow()
                        .issues()
                        .get(0)
                        .value()
                        .sourceVersions())
                .containsEntry(new SourceId("S-09"), 1);
    }

    @Test
    void itsMetersShowThatStatesDifferAndThatAChamberDrifts() {
        List<MeterStory> stories = MeterStory.ofAll(book);
        assertThat(stories)
                .extracting(story -> story.meter().value().id().text(), story -> story.stateOn(DAY))
                .containsExactly(
                        tuple("A-1", MeterState.DUE), tuple("B-1", MeterState.OK), tuple("B-2", MeterState.FAILED));
        assertThat(stories.get(1).calibrations()).hasSize(5);
        assertThat(stories.get(1).stateOn(LocalDate.of(2026, 4, 28))).isEqualTo(MeterState.OVERDUE);
        assertThat(stories.get(1).bowlCalibrationOn(DAY).orElseThrow().fills()).hasSize(3);
        assertThat(stories.get(1).dialCurveOn(DAY).orElseThrow().knots()).hasSize(5);
        assertThat(codes(stories.get(2).toLookAtOn(DAY)))
                .containsExactly("meter.calibration-failed", "meter.dial-off", "meter.chamber-drifted");
        assertThat(stories.get(2).chamberChanges())
                .extracting(change -> change.drift().isFlagged())
                .containsExactly(false, true);
        assertThat(stories.get(0).toLookAtOn(DAY)).hasSize(1);
        assertThat(stories.get(1).toLookAtOn(DAY)).isEmpty();
    }

    @Test
    void noFactorRestsOnAMeterNotToBeTrusted() {
        for (Evidence evidence : Evidence.ofAll(book)) {
            evidence.issues()
                    .forEach(issue -> assertThat(Issuing.doubts(
                                    evidence,
                                    LaboratoryScatter.NONE,
                                    issue.value().determinationId()))
                            .extracting(doubt -> doubt.problem().code())
                            .noneMatch(code -> code.startsWith("trial.meter")));
        }
    }

    @Test
    void theNewcomersMixIsReadyForItsFirstFactor() {
        Evidence evidence = Evidence.of(book, new MixId("HG-108")).orElseThrow();
        var answer = Issuing.issue(
                evidence,
                LaboratoryScatter.ofCounted(Evidence.ofAll(book).stream()
                        .flatMap(each -> each.counted().stream())
                        .toList()),
                new Issuing.Decision(
                        new DeterminationId("HG-108/1"), DAY, java.util.Optional.empty(), "A", "B", "First factor"));
        assertThat(answer.problems()).isEmpty();
        assertThat(answer.value().orElseThrow().factorPercent()).isEqualByComparingTo("0.3");
    }

    @Test
    void refusesABookThatHoldsOtherTrialsUnderItsIds() {
        try (LabBook other = new SqliteShelf(CLOCK).create(folder.resolve("other.porebench"))) {
            new DemoYear().fill(other);
            Trial trial = other.latest(Trial.class, "T-001").orElseThrow().value();
            other.keep(
                    List.of(porebench.record.book.Draft.correcting(
                            other.latest(Trial.class, "T-001").orElseThrow(), trial.struck("spilt"))),
                    "A",
                    "spilt");
            assertThatThrownBy(() -> new DemoYear().fill(other))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("trial-sheet.csv, line 2");
        }
    }

    private static List<MixDesign> mixes() {
        return book.latest(MixDesign.class).stream().map(mix -> mix.value()).toList();
    }

    private static List<JudgedTrial> trials() {
        return Evidence.ofAll(book).stream()
                .flatMap(evidence -> evidence.determinations().stream())
                .flatMap(determination -> determination.trials().stream())
                .toList();
    }

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    @Test
    void aFactorWhoseSourceChangedIsNotInForceAfterExportAndImport() {
        new CsvSheets().export(book, porebench.port.OutputFolder.fresh(folder.resolve("out")));
        List<porebench.evidence.intake.Incoming> incoming = new java.util.ArrayList<>();
        for (Format<?> format : CsvSheets.FORMATS) {
            var sheet = new CsvSheets().records(folder.resolve("out").resolve(format.fileName()));
            assertThat(sheet.problems()).isEmpty();
            sheet.rows()
                    .forEach(row -> incoming.add(new porebench.evidence.intake.Incoming(
                            porebench.method.Place.of(format.fileName(), row.line()), row.value())));
        }
        try (LabBook other = new SqliteShelf(CLOCK).create(folder.resolve("second.porebench"))) {
            var checked =
                    porebench.evidence.intake.Intake.check(other, incoming, porebench.record.SampleCalibrations.TODAY);
            assertThat(other.keep(checked.drafts(), "A", "imported")).isEmpty();
            Map<String, FactorState> states = LaboratoryStanding.of(other).rows(DAY).stream()
                    .collect(Collectors.toMap(row -> row.mixId().text(), RegisterRow::state));
            // S-09 of HG-106 has a new ledge; HG-101 is as it was.
            assertThat(states).containsEntry("HG-106", FactorState.NOT_VERIFIED);
            assertThat(states).containsEntry("HG-101", FactorState.IN_FORCE);
        }
    }
}
