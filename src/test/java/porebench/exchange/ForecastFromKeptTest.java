package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.forecast.ForecastTrials;
import porebench.evidence.forecast.LaboratoryForecast;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Answer;
import porebench.method.forecast.SourceAir;
import porebench.quantity.Volume;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The forecast from what is kept beside the entries is the one from the trials, judged now, to the last bit. */
class ForecastFromKeptTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
    private static final Volume BOWL = new Volume(0.00705);
    private static final int TRIALS = 3;

    @TempDir
    private Path folder;

    private LabBook book;
    private LaboratoryStanding standing;

    @BeforeEach
    void fill() {
        book = new SqliteShelf(CLOCK).create(folder.resolve("demo.porebench"));
        new DemoLaboratory().fill(book);
        standing = LaboratoryStanding.of(book);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private Answer<LaboratoryForecast> judged() {
        List<MixId> mixes = book.latest(MixDesign.class).stream()
                .map(version -> version.value().id())
                .toList();
        return ForecastTrials.of(book, mixes, Progress.UNHEARD);
    }

    private void isTheSame() {
        standing = standing.renewed();
        LaboratoryForecast wanted = judged().value().orElseThrow();
        isAs(ForecastTrials.of(standing), wanted);
        isAs(ForecastTrials.of(book, Progress.UNHEARD), wanted);
        // Now that the scatter between occasions was asked for, the trials are held.
        assertThat(standing.scatter().occasions()).isNotNull();
        isAs(ForecastTrials.of(standing), wanted);
    }

    private void isAs(Answer<LaboratoryForecast> found, LaboratoryForecast wanted) {
        LaboratoryForecast kept = found.value().orElseThrow();
        assertThat(kept.compared()).isEqualTo(wanted.compared()).isNotEmpty();
        assertThat(kept.sources()).isEqualTo(wanted.sources()).isNotEmpty();
        assertThat(kept.variances()).isEqualTo(wanted.variances());
        assertThat(kept.mixes()).isEqualTo(wanted.mixes());
        for (Version<MixDesign> mix : book.latest(MixDesign.class)) {
            assertThat(kept.of(mix.value(), BOWL, TRIALS)).isEqualTo(wanted.of(mix.value(), BOWL, TRIALS));
        }
    }

    private <T extends Kept> void correct(Class<T> kind, String id, UnaryOperator<T> change) {
        Version<T> before = book.latest(kind, id).orElseThrow();
        assertThat(book.keep(List.of(Draft.correcting(before, change.apply(before.value()))), "M. Quist", "a reason"))
                .isEmpty();
    }

    private MixDesign ofOther(MixDesign mix, String other) {
        return new MixDesign(
                mix.id(),
                mix.title(),
                book.latest(MixDesign.class, other).orElseThrow().value().batch(),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                mix.profileId(),
                mix.remarks(),
                mix.plant());
    }

    private List<String> sources() {
        return judged().value().orElseThrow().sources().stream()
                .map(SourceAir::source)
                .toList();
    }

    @Test
    void ofTheDemo() {
        assertThat(book.summaries().upTo(LaboratoryStanding.EDITION)).isEqualTo(book.changeNumber());
        isTheSame();
    }

    @Test
    void afterTrialsAreStruckMovedAndCorrected() {
        isTheSame();
        correct(Trial.class, "T-001", trial -> trial.struck("the plate leaked"));
        isTheSame();
        correct(Trial.class, "T-001", Trial::standing);
        correct(Trial.class, "T-002", trial -> trial.in(new DeterminationId("HG-101/2")));
        isTheSame();
        for (String id : List.of("T-040", "T-041", "T-042", "T-043", "T-044", "T-045", "T-002")) {
            correct(Trial.class, id, trial -> trial.struck("the plate leaked"));
        }
        isTheSame();
    }

    @Test
    void afterASourceGivesAnotherStoneAndAfterThatIsTakenBack() {
        assertThat(sources()).contains("S-01");
        correct(
                Source.class,
                "S-01",
                source -> source.worked("west face")
                        .as(
                                Optional.of(SourceStep.CHANGED),
                                Optional.of(LocalDate.of(2026, 11, 20)),
                                Optional.of("The east face is worked out")));
        assertThat(sources()).doesNotContain("S-01");
        isTheSame();
        correct(
                Source.class,
                "S-01",
                source -> source.worked("east face, lot 3")
                        .as(Optional.of(SourceStep.WITHDRAWN), Optional.empty(), Optional.of("It never changed")));
        assertThat(sources()).contains("S-01");
        isTheSame();
    }

    @Test
    void afterAMixIsOfOtherProportionsAndAMeterHasACoarserScale() {
        Source other = book.latest(Source.class, "S-04").orElseThrow().value();
        correct(Source.class, "S-04", source -> other.worked("north cut, lower"));
        isTheSame();
        correct(MixDesign.class, "HG-101", mix -> ofOther(mix, "HG-102"));
        isTheSame();
        correct(
                Meter.class,
                "B-1",
                meter -> new Meter(
                        meter.id(),
                        meter.type(),
                        meter.serial(),
                        meter.bowl(),
                        new BigDecimal("0.5"),
                        meter.scaleTopPercent(),
                        meter.inService(),
                        meter.remarks()));
        isTheSame();
    }
}
