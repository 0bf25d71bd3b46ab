package porebench.desk.meter;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** Invented calibrations of invented meters. */
public final class MeterStories {
    private MeterStories() {}

    /** A year of B-1: three checks, the last of which fails. */
    static List<MeterCalibration> ofTypeB(LocalDate last) {
        return List.of(
                dial("B-1/1", last.minusMonths(9), "10.9185", "0.00", "2.51", "5.03", "7.56", "10.07"),
                dial("B-1/2", last.minusMonths(5), "10.9170", "0.00", "2.53", "5.06", "7.60", "10.10"),
                dial("B-1/3", last, "10.9160", "0.05", "2.62", "5.18", "7.77", "10.33"));
    }

    private static MeterCalibration dial(String id, LocalDate day, String full, String... readings) {
        List<CheckPoint> points = new ArrayList<>();
        for (int vessel = 0; vessel < readings.length; vessel++) {
            points.add(new CheckPoint(
                    new CheckAmount(new BigDecimal(vessel), CheckAmount.Unit.VESSELS),
                    new BigDecimal(readings[vessel])));
        }
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId("B-1"),
                MeterType.B,
                day,
                "R. Vale",
                MeterCalibration.Reason.ROUTINE,
                Optional.of(new BigDecimal("120")),
                Optional.of(fills(full)),
                Optional.of(new DialCheck(
                        Optional.of(Typed.of("175.50", MassUnit.GRAM)),
                        Optional.of(new BigDecimal("20")),
                        points,
                        Optional.of(new BigDecimal("0.0")),
                        Optional.of(new BigDecimal("0.2")),
                        Optional.of(Typed.of("0.355", VolumeUnit.LITRE)),
                        Optional.of(Typed.of("100", PressureUnit.KILOPASCAL)))),
                Optional.empty(),
                "Seal of the cover greased before.");
    }

    private static BowlFills fills(String full) {
        Typed<Mass> empty = Typed.of("3.500", MassUnit.KILOGRAM);
        Typed<Mass> plate = Typed.of("400.0", MassUnit.GRAM);
        BigDecimal more = new BigDecimal(full);
        List<BowlFill> fills = new ArrayList<>();
        for (String by : List.of("0.000", "0.002", "0.001")) {
            Typed<Mass> weighed = Typed.of(more.add(new BigDecimal(by)).toPlainString(), MassUnit.KILOGRAM);
            fills.add(new BowlFill(empty, plate, weighed, new BigDecimal("20")));
        }
        return new BowlFills(
                fills,
                true,
                Optional.of(new BigDecimal("21")),
                Optional.of(new BigDecimal("99.9")),
                Optional.of(new BigDecimal("208")),
                Optional.of(new BigDecimal("207")));
    }

    /** A Type A meter, bowl and column calibrated at 120 m. */
    public static MeterCalibration ofTypeA(String meter, LocalDate day) {
        BigDecimal elevation = new BigDecimal("120");
        return new MeterCalibration(
                new CalibrationId(meter + "/1"),
                new MeterId(meter),
                MeterType.A,
                day,
                "R. Vale",
                MeterCalibration.Reason.PROJECT,
                Optional.of(elevation),
                Optional.of(fills("10.9185")),
                Optional.empty(),
                Optional.of(new ColumnCheck(
                        Typed.of("280.0", MassUnit.GRAM),
                        Typed.of("7.000", MassUnit.KILOGRAM),
                        new BigDecimal("0.06"),
                        Typed.of("101.3", PressureUnit.KILOPASCAL),
                        elevation)),
                "");
    }
}
