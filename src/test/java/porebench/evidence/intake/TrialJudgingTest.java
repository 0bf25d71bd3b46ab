package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.trial.Readings;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.MeterCalibration;
import porebench.record.MixDesign;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/** A trial that the form would keep only for a reason is asked for one in an import. */
class TrialJudgingTest {
    private static final TrialId EIGHT = new TrialId("T-8");
    /** No masses are stated, which a form doubts. */
    private static final Trial WITHOUT_MASSES = Samples.trial("T-8", "M-1", "M-1/1", "5.4");

    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    private Intake.Result check(Kept... values) {
        return Intake.check(
                bench.book,
                IntStream.range(0, values.length)
                        .mapToObj(index -> new Incoming(Place.of("file.csv", index + 2), values[index]))
                        .toList(),
                SampleCalibrations.TODAY);
    }

    private static Trial with(Trial trial, Readings readings) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                trial.meterId(),
                readings,
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                trial.elevationMetres(),
                trial.simulated());
    }

    /** The mix of the samples in a bowl of 7 L, with so much sand and stone. */
    private static Trial weighed(String sand, String stone, boolean leaked) {
        Readings read = WITHOUT_MASSES.readings();
        return with(
                WITHOUT_MASSES,
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        Optional.of(Typed.of(sand, MassUnit.KILOGRAM)),
                        Optional.of(Typed.of(stone, MassUnit.KILOGRAM)),
                        read.soakMinutes(),
                        read.waterCelsius(),
                        read.withdrawal(),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        leaked));
    }

    @Test
    void aDoubtThatOnlyJudgingFindsNeedsAReasonAndIsToldAtItsLine() {
        Intake.Result result = check(WITHOUT_MASSES);
        assertThat(result.doubted()).containsExactly(EIGHT);
        assertThat(result.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.isError()).isFalse();
            assertThat(problem.code()).isEqualTo("trial.masses-missing");
            assertThat(problem.place()).contains(Place.of("file.csv", 2));
        });
        assertThat(result.keptFor("lost sheet").drafts())
                .singleElement()
                .satisfies(draft ->
                        assertThat(((Trial) draft.value()).keptBecause()).contains("lost sheet"));
    }

    /** In 7.05 L of 1 m³ with 700 kg of sand and 1050 kg of stone are 4.935 kg and 7.4025 kg. */
    @Test
    void aTrialWithinItsLimitsAStruckOneAVoidOneAndOneThatSaysItNeedNone() {
        assertThat(check(weighed("4.935", "7.403", false)))
                .satisfies(result -> assertThat(result.doubted()).isEmpty())
                .satisfies(result -> assertThat(result.problems()).isEmpty());
        assertThat(check(weighed("5.5", "7.403", false)).doubted()).containsExactly(EIGHT);
        assertThat(check(weighed("5.5", "7.403", true)).doubted()).isEmpty();
        assertThat(check(WITHOUT_MASSES.struck("wrong sheet")).doubted()).isEmpty();
        assertThat(check(WITHOUT_MASSES.keptFor(Optional.of("lost sheet"))))
                .satisfies(result -> assertThat(result.doubted()).isEmpty())
                .satisfies(result -> assertThat(result.problems()).isEmpty());
        Books.keep(bench.book, WITHOUT_MASSES);
        assertThat(check(WITHOUT_MASSES).doubted()).isEmpty();
    }

    /** With 800 kg of sand in the second version of the mix 5.64 kg are weighed. */
    @Test
    void theMixIsTheOneOfItsDeterminationAsItWillBe() {
        MixDesign changed = Samples.mix(
                "M-1",
                Samples.constituent("Sand", Role.FINE, "S-1", "800"),
                Samples.constituent("Stone", Role.COARSE, "S-2", "1050"));
        Determination second = new Determination(
                new DeterminationId("M-1/2"),
                new MixId("M-1"),
                2,
                Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1),
                LocalDate.of(2026, 3, 2),
                "");
        Trial ofFirst = weighed("4.935", "7.403", false);
        assertThat(check(changed, second, ofFirst).doubted()).isEmpty();
        assertThat(check(changed, second, ofFirst.in(second.id())).doubted()).containsExactly(EIGHT);
        assertThat(check(changed, second, weighed("5.640", "7.403", false).in(second.id()))
                        .doubted())
                .isEmpty();
    }

    @Test
    void theMeterIsJudgedByTheCalibrationsThatComeWithIt() {
        Trial good = weighed("4.935", "7.403", false);
        MeterCalibration repaired =
                SampleCalibrations.note("N-1", "B-1", LocalDate.of(2026, 3, 1), MeterCalibration.Reason.REPAIR);
        Intake.Result result = check(good, repaired);
        assertThat(result.doubted()).containsExactly(EIGHT);
        assertThat(result.problems()).extracting(Problem::code).containsExactly("trial.meter-never-calibrated");
    }

    /** Two trials at one time on one meter: of one that leaks no reason is asked, as at the bench. */
    @Test
    void aVoidTrialNeedsNoReasonForItsCompany() {
        Trial soaked = soaked("T-8", false);
        assertThat(check(soaked, soaked("T-9", false)).doubted()).containsExactlyInAnyOrder(new TrialId("T-9"));
        assertThat(check(soaked, soaked("T-9", true)).doubted()).isEmpty();
    }

    private static Trial soaked(String id, boolean leaked) {
        Readings read = weighed("4.935", "7.403", leaked).readings();
        return with(
                Samples.trial(id, "M-1", "M-1/1", "5.4"),
                new Readings(
                        read.meterType(),
                        read.bowl(),
                        read.fine(),
                        read.coarse(),
                        Samples.some("15"),
                        read.waterCelsius(),
                        read.withdrawal(),
                        read.gaugePercent(),
                        read.h1Percent(),
                        read.h2Percent(),
                        leaked));
    }
}
