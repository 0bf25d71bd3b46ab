package porebench.evidence.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.JudgedTrial;
import porebench.evidence.MeterStory;
import porebench.exchange.DemoYear;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.record.MixDesign;
import porebench.record.book.LabBook;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.store.SqliteShelf;

/** Simulated trials of the demo's mixes on the demo's meters, judged as trials of a lab book are. */
class PracticeBenchTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final double TRUTH = 0.5;
    private static final int TRIALS = 6;
    private static final int RUNS = 20;

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void openTheDemo() {
        book = new SqliteShelf(CLOCK).create(folder.resolve("demo.porebench"));
        new DemoYear().fill(book);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private List<MixDesign> mixes() {
        return book.latest(MixDesign.class).stream().map(Version::value).toList();
    }

    /** Returns the meters whose newest calibration holds; the demo's third one has failed, which is no fault of a trial. */
    private List<MeterStory> trusted() {
        return MeterStory.ofAll(book).stream()
                .filter(story -> Set.of(MeterState.OK, MeterState.DUE).contains(story.stateOn(DAY)))
                .toList();
    }

    private Optional<Bench> bench(MixDesign mix, MeterStory story) {
        return PracticeBench.of(mix, story, DAY, TRUTH).value();
    }

    private List<JudgedTrial> judged(MixDesign mix, MeterStory story, Bench bench, long seed, Set<Integer> faulty) {
        SimulatedSheet sheet = new SimulatedSheet(
                mix.id(),
                new DeterminationId("D"),
                story.meter().value().id(),
                DAY.atTime(8, 0),
                TRIALS,
                seed,
                "SIMULATED",
                "");
        return bench.trials(TRIALS, seed, faulty).stream()
                .map(sheet::trial)
                .map(trial -> new Version<>(trial, 1, new Stamp("Ada", CLOCK.instant(), "practice")))
                .map(trial -> JudgedTrial.of(trial, Optional.of(mix), story))
                .toList();
    }

    @Test
    void aTrialWithoutAFaultHasNoDoubtOnAnyMixAndMeter() {
        int judged = 0;
        for (MeterStory story : trusted()) {
            for (MixDesign mix : mixes()) {
                Bench bench = bench(mix, story).orElseThrow();
                for (long seed = 1; seed <= RUNS; seed++) {
                    for (JudgedTrial trial : judged(mix, story, bench, seed, Set.of())) {
                        assertThat(trial.figures().problems())
                                .as(
                                        "%s on %s",
                                        mix.id().text(),
                                        story.meter().value().id().text())
                                .isEmpty();
                        judged++;
                    }
                }
            }
        }
        assertThat(judged).isEqualTo(2 * 8 * RUNS * TRIALS);
    }

    /** The mean of 120 trials with a scatter of about 0.1 lies within 0.03 (three standard errors) of the true factor. */
    @Test
    void theTrueFactorComesOutThoughDialAndBowlHaveErrors() {
        for (MeterStory story : trusted()) {
            MixDesign mix = mixes().get(0);
            Bench bench = bench(mix, story).orElseThrow();
            double mean = IntStream.rangeClosed(1, RUNS)
                    .mapToObj(seed -> judged(mix, story, bench, seed, Set.of()))
                    .flatMap(List::stream)
                    .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                    .average()
                    .orElseThrow();
            assertThat(Math.abs(mean - TRUTH))
                    .as(story.meter().value().id().text())
                    .isLessThan(0.035);
        }
    }

    @Test
    void aFaultChangesOnlyTheTrialsItIsPlantedIn() {
        MeterStory story = typeB();
        MixDesign mix = mixes().get(0);
        Bench bench = bench(mix, story).orElseThrow();
        for (Fault fault : Fault.values()) {
            List<JudgedTrial> right = judged(mix, story, bench, 7, Set.of());
            List<JudgedTrial> wrong = judged(mix, story, bench.with(fault), 7, Set.of(3, 5));
            for (int index = 0; index < TRIALS; index++) {
                boolean isSame = right.get(index)
                        .trial()
                        .value()
                        .readings()
                        .equals(wrong.get(index).trial().value().readings());
                assertThat(isSame).as("%s in trial %d", fault, index + 1).isEqualTo(index != 2 && index != 4);
            }
        }
    }

    private MeterStory typeB() {
        return trusted().stream()
                .filter(story -> story.meter().value().type() == MeterType.B)
                .findFirst()
                .orElseThrow();
    }

    /** A short soak stands in the sheet; the others show in the factor, which moves by more than trials scatter. */
    @Test
    void aPlantedFaultCanBeFound() {
        MeterStory story = typeB();
        MixDesign mix = mixes().get(0);
        Bench bench = bench(mix, story).orElseThrow();
        Map<Fault, Double> found = new EnumMap<>(Fault.class);
        for (Fault fault : Fault.values()) {
            int pointed = 0;
            for (long seed = 1; seed <= RUNS; seed++) {
                Set<Integer> faulty = Planted.draw(TRIALS, 1, seed);
                int index = faulty.iterator().next() - 1;
                List<JudgedTrial> trials = judged(mix, story, bench.with(fault), seed, faulty);
                pointed += pointsAt(trials, index) ? 1 : 0;
            }
            found.put(fault, (double) pointed / RUNS);
        }
        assertThat(found.values()).allSatisfy(share -> assertThat(share).isGreaterThan(0.85));
    }

    /** Whether the faulty trial is the only doubtful one, or lies farthest from the middle of all. */
    private static boolean pointsAt(List<JudgedTrial> trials, int index) {
        List<Problem> doubts = trials.get(index).doubts();
        if (!doubts.isEmpty()) {
            return true;
        }
        double[] factors = trials.stream()
                .mapToDouble(trial -> trial.factorPercent().orElseThrow())
                .sorted()
                .toArray();
        double middle = (factors[2] + factors[3]) / 2;
        double away = Math.abs(trials.get(index).factorPercent().orElseThrow() - middle);
        return trials.stream()
                        .filter(trial -> Math.abs(trial.factorPercent().orElseThrow() - middle) >= away - 1e-9)
                        .count()
                == 1;
    }

    @Test
    void aMixNobodyCouldMakeATrialOfIsRefusedWithItsReason() {
        MixDesign mix = mixes().get(0);
        porebench.method.sample.Batch batch = mix.batch();
        MixDesign empty = new MixDesign(
                mix.id(),
                mix.title(),
                new porebench.method.sample.Batch(
                        List.of(), batch.volume(), batch.targetAirPercent(), batch.wetSieved()),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                mix.profileId(),
                mix.remarks(),
                Optional.empty());
        assertThat(PracticeBench.of(empty, typeB(), DAY, TRUTH).value()).isEmpty();
        assertThat(PracticeBench.of(empty, typeB(), DAY, TRUTH).problems()).isNotEmpty();
    }
}
