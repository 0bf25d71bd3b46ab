package porebench.evidence.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.exchange.DemoLaboratory;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** What is asked of a laboratory's forecast beside the forecast itself, in the demo laboratory. */
class LaboratoryForecastTest {
    private static final Volume BOWL = Volume.of(7.05, VolumeUnit.LITRE);

    @TempDir
    Path folder;

    private LaboratoryForecast forecast;

    @BeforeEach
    void ofTheDemo() {
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
        try (LabBook book = new SqliteShelf(clock).create(folder.resolve("demo.porebench"))) {
            new DemoLaboratory().fill(book);
            forecast = ForecastTrials.of(LaboratoryStanding.of(book)).value().orElseThrow();
        }
    }

    @Test
    void aMixThatGivesNoSampleIsRefusedWithTheReasonsOfTheSample() {
        assertThat(forecast.of(Samples.mix("M-9"), BOWL, 3).value()).isEmpty();
        assertThat(forecast.of(Samples.mix("M-9"), BOWL, 3).problems()).isNotEmpty();
    }

    @Test
    void aSourceInNoBowlHasNeitherPoreAirNorCorrelation() {
        String known = forecast.sources().get(0).source();
        assertThat(forecast.correlation(known, "S-99")).isEmpty();
        assertThat(forecast.source("S-99")).isEmpty();
        assertThat(forecast.source(known)).isPresent();
    }
}
