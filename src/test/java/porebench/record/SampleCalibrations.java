package porebench.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** Calibrations of meters for tests. */
public final class SampleCalibrations {
    /** A day after all samples. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    private SampleCalibrations() {}

    /** A note that a Type B meter came into doubt, or the like. */
    public static MeterCalibration note(String id, String meter, LocalDate day, MeterCalibration.Reason reason) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                MeterType.B,
                day,
                "",
                reason,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "");
    }

    /** A calibration of a Type B meter with everything filled and every text awkward. */
    public static MeterCalibration full() {
        return full(Samples.AWKWARD, Samples.AWKWARD_NOTE);
    }

    public static MeterCalibration full(String line, String note) {
        return new MeterCalibration(
                new CalibrationId("C " + line),
                new MeterId("B " + line.strip()),
                MeterType.B,
                LocalDate.of(2024, 2, 29),
                line,
                MeterCalibration.Reason.SEASON,
                Samples.some("0210.50"),
                Optional.of(new BowlFills(
                        List.of(
                                fill("3.4500", "0.7200", "11.2070", MassUnit.KILOGRAM),
                                fill("7.60", "1.60", "24.70", MassUnit.POUND)),
                        true,
                        Samples.some("21.0"),
                        Samples.some("98.70"),
                        Samples.some("200.0"),
                        Samples.some("224.50"))),
                Optional.of(new DialCheck(
                        Optional.of(Typed.of("352.0", MassUnit.GRAM)),
                        Samples.some("20.50"),
                        List.of(
                                point("1", CheckAmount.Unit.VESSELS, "5.00"),
                                point("2.0", CheckAmount.Unit.VESSELS, "10.10"),
                                point("777.00", CheckAmount.Unit.MILLILITRE, "11.0"),
                                point("846.0", CheckAmount.Unit.GRAM, "12"),
                                point("13.00", CheckAmount.Unit.PERCENT, "13.05")),
                        Samples.some("-0.30"),
                        Samples.some("0.250"),
                        Optional.of(Typed.of("0.5100", VolumeUnit.LITRE)),
                        Optional.of(Typed.of("14.50", PressureUnit.POUND_PER_SQUARE_INCH)))),
                Optional.empty(),
                note);
    }

    /** One fill of a bowl with water of 20.0 C. */
    public static BowlFill fill(String empty, String plate, String full, MassUnit unit) {
        return new BowlFill(Typed.of(empty, unit), Typed.of(plate, unit), Typed.of(full, unit), Samples.number("20.0"));
    }

    public static CheckPoint point(String amount, CheckAmount.Unit unit, String gauge) {
        return new CheckPoint(new CheckAmount(Samples.number(amount), unit), Samples.number(gauge));
    }

    /** The column of a Type A meter, everything filled. */
    public static MeterCalibration columnCalibration(String id, String meter, LocalDate day) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                MeterType.A,
                day,
                "R. Vale",
                MeterCalibration.Reason.PROJECT,
                Samples.some("210.0"),
                Optional.empty(),
                Optional.empty(),
                Optional.of(new ColumnCheck(
                        Typed.of("0.3510", MassUnit.KILOGRAM),
                        Typed.of("17.580", MassUnit.POUND),
                        Samples.some("0.050").orElseThrow(),
                        Typed.of("15.20", PressureUnit.POUND_PER_SQUARE_INCH),
                        Samples.number("210.0"))),
                "");
    }

    /** A dial check of a Type B meter at 0, 5 and 10 % of its bowl, which the dial reads as given. */
    public static MeterCalibration dialCalibration(
            String id, String meter, LocalDate day, String at0, String at5, String at10) {
        DialCheck dial = new DialCheck(
                Optional.empty(),
                Optional.empty(),
                List.of(
                        point("0", CheckAmount.Unit.PERCENT, at0),
                        point("5", CheckAmount.Unit.PERCENT, at5),
                        point("10", CheckAmount.Unit.PERCENT, at10)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                MeterType.B,
                day,
                "R. Vale",
                MeterCalibration.Reason.ROUTINE,
                Optional.empty(),
                Optional.empty(),
                Optional.of(dial),
                Optional.empty(),
                "");
    }

    /** A bowl of a Type B meter weighed once: the full bowl in kg, the empty one being 3.450 and the plate 0.720 kg. */
    public static MeterCalibration bowlCalibration(String id, String meter, LocalDate day, String full) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                MeterType.B,
                day,
                "R. Vale",
                MeterCalibration.Reason.ROUTINE,
                Optional.empty(),
                Optional.of(new BowlFills(
                        List.of(fill("3.450", "0.720", full, MassUnit.KILOGRAM)),
                        false,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty())),
                Optional.empty(),
                Optional.empty(),
                "");
    }
}
