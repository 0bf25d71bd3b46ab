package porebench.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.quantity.DensityUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.id.MeterId;

class FieldReadingTest {
    private static final Meter METER = new Meter(
            new MeterId("B-1"),
            MeterType.B,
            "1",
            Typed.of("7", VolumeUnit.LITRE),
            new BigDecimal("0.1"),
            new BigDecimal("10"),
            true,
            "");

    private static List<String> codes(List<Problem> problems) {
        return problems.stream().map(Problem::code).toList();
    }

    /** By the laboratory's clock, 5 minutes are no doubt, 60 are one, 61 are refused. */
    @ParameterizedTest
    @CsvSource({"0,", "5,", "6, field.clock", "60, field.clock", "61, field.to-come", "1440, field.to-come"})
    void aClockThatIsAheadIsADoubtAndAnHourToComeIsRefused(int minutes, String code) {
        FieldReading reading = SampleReadings.plain("r1", "M-1", "5.5");
        List<Problem> found = reading.check(SampleReadings.AT.minusMinutes(minutes));
        assertThat(codes(found)).isEqualTo(code == null ? List.of() : List.of(code));
        assertThat(Problem.anyError(found)).isEqualTo(minutes > 60);
        assertThat(reading.check(SampleReadings.AT.plusYears(1))).isEmpty();
    }

    @Test
    void aReadingIsKeptForAReasonAndElseStaysAsItWas() {
        FieldReading reading = SampleReadings.full("r1", "M-1", "B-1");
        FieldReading kept = reading.keptFor(Optional.of("seen"));
        assertThat(kept.keptBecause()).contains("seen");
        assertThat(kept.keptFor(reading.keptBecause())).isEqualTo(reading);
    }

    /** 50 lb/ft3 are 800.9 kg/m3, 49.9 lb/ft3 are 799.3: 1 lb/ft3 is 16.01846 kg/m3 (NIST SP 811, recalled). */
    @ParameterizedTest
    @CsvSource({
        "800, kg/m3, true",
        "799.9, kg/m3, false",
        "6000, kg/m3, true",
        "6000.1, kg/m3, false",
        "2.31, g/cm3, true",
        "2.31, kg/m3, false",
        "50, lb/ft3, true",
        "49.9, lb/ft3, false"
    })
    void aDensityIsOneThatFreshConcreteCanHave(String number, String unit, boolean isGood) {
        DensityUnit of = Typed.parseUnit(unit, List.of(DensityUnit.values())).orElseThrow();
        FieldReading reading =
                SampleReadings.withDensity(SampleReadings.plain("r1", "M-1", "5.5"), Typed.of(number, of));
        assertThat(codes(reading.check(SampleReadings.AT))).isEqualTo(isGood ? List.of() : List.of("field.density"));
    }

    @Test
    void aReadingIsOnTheScaleOfItsMeter() {
        assertThat(SampleReadings.plain("r1", "M-1", "10.0").checkScale(METER)).isEmpty();
        assertThat(SampleReadings.plain("r1", "M-1", "10.1").checkScale(METER))
                .map(Problem::code)
                .contains("field.above-scale");
    }

    @Test
    void aStruckReadingDoesNotCount() {
        assertThat(SampleReadings.plain("r1", "M-1", "5").counts()).isTrue();
        assertThat(SampleReadings.full("r1", "M-1", "B-1").counts()).isFalse();
        assertThat(SampleReadings.full("r1", "M-1", "B-1").kind()).isEqualTo(RecordKind.FIELD_READING);
        assertThat(SampleReadings.full("r1", "M-1", "B-1").id()).hasToString("r1");
    }
}
