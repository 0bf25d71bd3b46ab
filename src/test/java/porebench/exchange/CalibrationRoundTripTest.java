package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.SampleCalibrations;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** Calibrations of both types of meter read back as they were, digit for digit. */
class CalibrationRoundTripTest {
    /** A calibration with every cell filled, the masses of a weighing in units of their own. */
    static MeterCalibration calibration(String text) {
        return new MeterCalibration(
                new CalibrationId(text),
                new MeterId(text),
                MeterType.B,
                LocalDate.of(2026, 3, 4),
                text,
                MeterCalibration.Reason.REPAIR,
                Optional.of(new BigDecimal("-1.50")),
                Optional.of(new BowlFills(
                        List.of(
                                new BowlFill(
                                        Typed.of("3450.0", MassUnit.GRAM),
                                        Typed.of("0.7200", MassUnit.KILOGRAM),
                                        Typed.of("24.7100", MassUnit.POUND),
                                        new BigDecimal("20.0")),
                                SampleCalibrations.fill("3.4500", "0.7200", "11.2070", MassUnit.KILOGRAM)),
                        true,
                        Optional.of(new BigDecimal("19.50")),
                        Optional.of(new BigDecimal("101.30")),
                        Optional.of(new BigDecimal("210.0")),
                        Optional.of(new BigDecimal("203.50")))),
                Optional.of(new DialCheck(
                        Optional.of(Typed.of("352.0", MassUnit.GRAM)),
                        Optional.of(new BigDecimal("20.50")),
                        List.of(
                                SampleCalibrations.point("1", CheckAmount.Unit.VESSELS, "5.00"),
                                SampleCalibrations.point("500.0", CheckAmount.Unit.MILLILITRE, "7.10"),
                                SampleCalibrations.point("600.00", CheckAmount.Unit.GRAM, "8.5"),
                                SampleCalibrations.point("10.0", CheckAmount.Unit.PERCENT, "10.00")),
                        Optional.of(new BigDecimal("-0.30")),
                        Optional.of(new BigDecimal("0.250")),
                        Optional.of(Typed.of("0.5150", VolumeUnit.LITRE)),
                        Optional.of(Typed.of("14.50", PressureUnit.POUND_PER_SQUARE_INCH)))),
                Optional.empty(),
                text);
    }

    @ParameterizedTest
    @EnumSource(PressureUnit.class)
    void aColumnReadsBackInEveryUnitOfPressure(PressureUnit unit) throws IOException {
        MeterCalibration column = new MeterCalibration(
                new CalibrationId("K-1"),
                new MeterId("A-1"),
                MeterType.A,
                LocalDate.of(2026, 3, 4),
                "",
                MeterCalibration.Reason.SEASON,
                Optional.of(new BigDecimal("62.0")),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ColumnCheck(
                        Typed.of("0.3990", MassUnit.KILOGRAM),
                        Typed.of("17.550", MassUnit.POUND),
                        new BigDecimal("0.050"),
                        Typed.of("10.50", unit),
                        new BigDecimal("62.0"))),
                "");
        assertThat(RoundTripTest.written(SheetFormats.CALIBRATIONS, column)).isEqualTo(column);
    }
}
