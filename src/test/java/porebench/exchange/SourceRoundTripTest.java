package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.exchange.sheet.Format;
import porebench.method.Role;
import porebench.record.Production;
import porebench.record.SampleProduction;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.SourceStep;
import porebench.record.id.MeasurementId;
import porebench.record.id.SourceId;

/** A source with all that it may state, written and read back. */
class SourceRoundTripTest {
    @Test
    void aSourceWithItsProducerAndWhatItsVersionIsReadsBack() throws IOException {
        for (SourceStep step : SourceStep.values()) {
            Source full = new Source(
                    new SourceId("S-1"),
                    "Stone",
                    Role.COARSE,
                    "Quarry",
                    "ledge 5",
                    Optional.of(new BigDecimal("2.70")),
                    Optional.empty(),
                    "",
                    Optional.of("Ternstead Stone"),
                    Optional.of("No. 57"),
                    Optional.of("5 to 25 mm"),
                    Optional.of(new BigDecimal("0.50")),
                    Optional.of(step),
                    Optional.of(LocalDate.of(2026, 11, 9)),
                    Optional.of("Ledge 4, the old one, \"is\" worked out"));
            assertThat(RoundTripTest.written(CsvSheets.SOURCES, full)).isEqualTo(full);
        }
    }

    @Test
    void aMeasurementReadsBackWithItsDigitsAndIsNoSource() throws IOException {
        SourceMeasurement full = new SourceMeasurement(
                new MeasurementId("S-1/m1"),
                new SourceId("S-1"),
                LocalDate.of(2026, 11, 9),
                "R. Vale",
                "ledge 5",
                Optional.of(new BigDecimal("2.700")),
                Optional.of(new BigDecimal("1.0")),
                Optional.of(new BigDecimal("0")),
                "\"wet\", split");
        Format<?> format = CsvSheets.FORMATS.get(CsvSheets.FORMATS.size() - 2);
        assertThat(RoundTripTest.written(format, full)).isEqualTo(full);
    }

    @Test
    void productionReadsBackWithItsDigitsAndUnits() throws IOException {
        LocalDate day = LocalDate.of(2026, 3, 2);
        Production days = SampleProduction.days("M-1/p1", "M-1", day, day.plusDays(6), 5);
        List<Production> all = List.of(
                days,
                SampleProduction.with(days, Optional.of(0), Optional.of("180.50"), Optional.empty()),
                SampleProduction.mass("M-1/p2", "M-1", day, day, "96.0"),
                SampleProduction.volume("M-1/p3", "M-1", day, day, "0"));
        Format<?> format = CsvSheets.FORMATS.get(CsvSheets.FORMATS.size() - 1);
        for (Production made : all) {
            assertThat(RoundTripTest.written(format, made)).isEqualTo(made);
        }
    }
}
