package porebench.print;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.MeterStory;
import porebench.evidence.paper.CalibrationForm;
import porebench.evidence.paper.CalibrationRecord;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.MeterCalibration.Reason;
import porebench.record.book.Stamp;
import porebench.record.book.Version;
import porebench.record.chain.Head;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** Calibrations and blank forms for tests, of an invented laboratory. */
public final class Calibrations {
    public static final LocalDate MARCH = LocalDate.of(2026, 3, 2);
    public static final LocalDate JUNE = LocalDate.of(2026, 6, 1);

    private static final String LONG = "Wilhelmina Oakenthwaite-Featherstonehaugh, senior technician (concrete)";

    private Calibrations() {}

    /** Three fills of about 7.01 L and a dial that reads 0.05 % high at 5 and 10 %. */
    public static CalibrationRecord typeB() {
        return record(
                Laboratories.USUAL, meter(MeterType.B, "PM-2", "K-1182"), List.of(march(), june("5.05", "10.05")));
    }

    /** A dial that reads 0.25 % high at the second vessel. */
    public static CalibrationRecord failed() {
        return record(
                Laboratories.USUAL, meter(MeterType.B, "PM-2", "K-1182"), List.of(march(), june("5.05", "10.25")));
    }

    public static CalibrationRecord typeA() {
        Typed<porebench.quantity.Mass> vessel = Typed.of("280.0", MassUnit.GRAM);
        ColumnCheck column = new ColumnCheck(
                vessel,
                Typed.of("7000", MassUnit.GRAM),
                new BigDecimal("0.06"),
                Typed.of("15.0", PressureUnit.POUND_PER_SQUARE_INCH),
                new BigDecimal("120"));
        return record(
                Laboratories.USUAL,
                meter(MeterType.A, "PA-1", ""),
                List.of(calibration(
                        "C-9",
                        MeterType.A,
                        "PA-1",
                        JUNE,
                        "",
                        "120",
                        Optional.of(fills(2)),
                        Optional.empty(),
                        Optional.of(column))));
    }

    /** A note that the meter was repaired. */
    public static CalibrationRecord note() {
        return record(
                Laboratories.USUAL,
                meter(MeterType.B, "PM-2", "K-1182"),
                List.of(
                        march(),
                        calibration(
                                "C-8",
                                MeterType.B,
                                "PM-2",
                                JUNE,
                                "Seal of the cover replaced.",
                                "",
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())));
    }

    /** A dial with two points of which the second reads less: nothing can be made of it. */
    public static CalibrationRecord unusable() {
        return record(Laboratories.USUAL, meter(MeterType.B, "PM-2", "K-1182"), List.of(march(), june("5.05", "4.00")));
    }

    public static CalibrationRecord everythingLong() {
        List<CheckPoint> points = new ArrayList<>();
        for (int step = 0; step <= 30; step++) {
            points.add(new CheckPoint(
                    new CheckAmount(new BigDecimal(step * 50), CheckAmount.Unit.MILLILITRE),
                    new BigDecimal(step * 50).divide(new BigDecimal("70.100"), 3, java.math.RoundingMode.HALF_EVEN)));
        }
        DialCheck dial = new DialCheck(
                Optional.empty(),
                Optional.of(new BigDecimal("21.5")),
                points,
                Optional.empty(),
                Optional.empty(),
                Optional.of(Typed.of("0.350", VolumeUnit.LITRE)),
                Optional.of(Typed.of("100.0", PressureUnit.KILOPASCAL)));
        String id = "PM-2/WORKING-STANDARD/SECOND-BOWL-AFTER-THE-FLOOD-OF-2025";
        return record(
                Laboratories.LONG,
                meter(MeterType.B, id, "K-1182-44-A-REV-7-REPLACED-2024"),
                List.of(calibration(
                        "2026-06-01/PM-2/ROUTINE/AFTER-SUMMER",
                        MeterType.B,
                        id,
                        JUNE,
                        Cards.LONG_TITLE,
                        "1250.5",
                        Optional.of(new BowlFills(
                                fills(12).fills(),
                                true,
                                Optional.of(new BigDecimal("21.5")),
                                Optional.of(new BigDecimal("87.35")),
                                Optional.of(new BigDecimal("208.5")),
                                Optional.of(new BigDecimal("205.0")))),
                        Optional.of(dial),
                        Optional.empty())));
    }

    public static CalibrationRecord training() {
        return record(
                Laboratories.TRAINING,
                meter(MeterType.B, "SIM-B", ""),
                List.of(forMeter(june("5.05", "10.05"), "SIM-B")));
    }

    public static CalibrationForm form(MeterType type) {
        return CalibrationForm.of(
                Optional.of(Laboratories.USUAL), meter(type, "PM-2", "K-1182"), MassUnit.GRAM, Profiles.standard());
    }

    public static CalibrationForm formForAnyMeter(MeterType type, Laboratory laboratory) {
        return new CalibrationForm(
                Optional.of(laboratory), Optional.empty(), type, MassUnit.POUND, Profiles.standard());
    }

    private static MeterCalibration march() {
        return calibration(
                "C-5",
                MeterType.B,
                "PM-2",
                MARCH,
                "",
                "",
                Optional.of(fills(1)),
                Optional.of(dial("5.10", "10.10")),
                Optional.empty());
    }

    private static MeterCalibration june(String one, String two) {
        return calibration(
                "C-7",
                MeterType.B,
                "PM-2",
                JUNE,
                "Dial cleaned before.",
                "",
                Optional.of(fills(3)),
                Optional.of(dial(one, two)),
                Optional.empty());
    }

    private static MeterCalibration forMeter(MeterCalibration made, String meter) {
        return calibration(
                made.id().text(),
                made.meterType(),
                meter,
                made.calibratedOn(),
                "",
                "",
                made.bowl(),
                made.dial(),
                made.column());
    }

    /** Vessels of 350.5 g in 7.01 L of water: 5 % each. */
    private static DialCheck dial(String one, String two) {
        return new DialCheck(
                Optional.of(Typed.of("349.7", MassUnit.GRAM)),
                Optional.of(new BigDecimal("21.1")),
                List.of(vessels("0", "0.0"), vessels("1", one), vessels("1", one), vessels("2", two)),
                Optional.of(new BigDecimal("-1.0")),
                Optional.of(new BigDecimal("0.25")),
                Optional.empty(),
                Optional.empty());
    }

    private static CheckPoint vessels(String number, String reading) {
        return new CheckPoint(
                new CheckAmount(new BigDecimal(number), CheckAmount.Unit.VESSELS), new BigDecimal(reading));
    }

    /** Fills of 6992, 6993, ... g of water at 21.1 C. */
    private static BowlFills fills(int count) {
        List<BowlFill> fills = new ArrayList<>();
        for (int fill = 0; fill < count; fill++) {
            fills.add(new BowlFill(
                    Typed.of("3500", MassUnit.GRAM),
                    Typed.of("1200", MassUnit.GRAM),
                    new Typed<>(BigDecimal.valueOf(11692 + fill), MassUnit.GRAM),
                    new BigDecimal("21.1")));
        }
        return new BowlFills(
                fills,
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new BigDecimal("208")),
                Optional.of(new BigDecimal("206")));
    }

    private static MeterCalibration calibration(
            String id,
            MeterType type,
            String meter,
            LocalDate on,
            String remarks,
            String elevation,
            Optional<BowlFills> bowl,
            Optional<DialCheck> dial,
            Optional<ColumnCheck> column) {
        return new MeterCalibration(
                new CalibrationId(id),
                new MeterId(meter),
                type,
                on,
                remarks.length() > 60 ? LONG : "R. Alder",
                bowl.isPresent() ? Reason.ROUTINE : Reason.REPAIR,
                elevation.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(elevation)),
                bowl,
                dial,
                column,
                remarks);
    }

    private static Meter meter(MeterType type, String id, String serial) {
        return new Meter(
                new MeterId(id),
                type,
                serial,
                Typed.of("7.01", VolumeUnit.LITRE),
                new BigDecimal("0.1"),
                BigDecimal.TEN,
                true,
                "");
    }

    private static CalibrationRecord record(Laboratory laboratory, Meter meter, List<MeterCalibration> made) {
        Stamp stamp = new Stamp("R. Alder", Instant.EPOCH, "test");
        MeterStory story = MeterStory.of(
                new Version<>(meter, 1, stamp),
                made.stream().map(one -> new Version<>(one, 1, stamp)).toList(),
                Profiles.standard());
        return CalibrationRecord.of(
                        story,
                        made.get(made.size() - 1).id(),
                        Optional.of(laboratory),
                        Head.of("3f2a91c077de0b1c55aa", 214))
                .orElseThrow();
    }

    /** Laboratories, all invented. */
    public static final class Laboratories {
        public static final Laboratory USUAL = new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road, Tarnwick");
        public static final Laboratory TRAINING =
                new Laboratory("Tarnwick Training Bench", "4 Kiln Road, Tarnwick", true);
        public static final Laboratory LONG = new Laboratory(
                "Tarnwick and Lower Ebber Valley Joint Materials Testing Laboratory, Concrete and Aggregates Section",
                "4 Kiln Road");

        private Laboratories() {}
    }
}
