package porebench.store;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
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
import porebench.quantity.Unit;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.RecordKind;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** The tables {@code meter_calibration}, {@code bowl_fill} and {@code dial_point}. */
final class MeterCalibrationTable implements RecordTable<MeterCalibration> {
    private static final String FILL = "bowl_fill";
    private static final String POINT = "dial_point";
    private static final String BUOYANCY = "buoyancy_corrected";
    private static final String DIAL = "dial_checked";
    private static final String EXPANSION = "expansion_pct";

    @Override
    public RecordKind kind() {
        return RecordKind.METER_CALIBRATION;
    }

    @Override
    public String name() {
        return "meter_calibration";
    }

    @Override
    public List<String> partTables() {
        return List.of(FILL, POINT);
    }

    @Override
    public StoredRecord rows(MeterCalibration calibration) {
        StoredRow row = new StoredRow(name())
                .cell("calibration_id", calibration.id().text())
                .cell("meter_id", calibration.meterId().text())
                .cell("meter_type", calibration.meterType().name())
                .cell("calibrated_on", calibration.calibratedOn().toString())
                .cell("made_by", calibration.by())
                .cell("reason", calibration.reason().symbol())
                .number("elevation_m", calibration.elevationMetres())
                .flag(DIAL, calibration.dial().isPresent())
                .cell("remarks", calibration.remarks());
        List<StoredRow> parts = new ArrayList<>();
        calibration.bowl().ifPresent(bowl -> addBowl(row, parts, bowl));
        calibration.dial().ifPresent(dial -> addDial(row, parts, dial));
        calibration
                .column()
                .ifPresent(column -> row.typed("column_vessel_water", column.vesselWater())
                        .typed("bowl_water", column.bowlWater())
                        .number(EXPANSION, column.expansionPercent())
                        .typed("working_pressure", column.workingPressure()));
        return new StoredRecord(row, parts);
    }

    private static void addBowl(StoredRow row, List<StoredRow> parts, BowlFills bowl) {
        row.flag(BUOYANCY, bowl.buoyancyCorrected())
                .number("air_temp_c", bowl.airCelsius())
                .number("air_pressure_kpa", bowl.airKilopascals())
                .number("diameter_mm", bowl.diameterMillimetres())
                .number("height_mm", bowl.heightMillimetres());
        for (BowlFill fill : bowl.fills()) {
            parts.add(new StoredRow(FILL)
                    .cell("position", parts.size() + 1)
                    .typed("empty_mass", fill.empty())
                    .typed("plate_mass", fill.plate())
                    .typed("full_mass", fill.full())
                    .number("water_temp_c", fill.waterCelsius()));
        }
    }

    private static void addDial(StoredRow row, List<StoredRow> parts, DialCheck dial) {
        row.number("dial_water_temp_c", dial.waterCelsius())
                .number("initial_line_pct", dial.initialLine())
                .number("leak_marks", dial.leakMarks());
        dial.vesselWater().ifPresent(water -> row.typed("vessel_water", water));
        dial.chamber().ifPresent(chamber -> row.typed("chamber", chamber));
        dial.initialPressure().ifPresent(pressure -> row.typed("initial_pressure", pressure));
        int position = 1;
        for (CheckPoint point : dial.points()) {
            parts.add(new StoredRow(POINT)
                    .cell("position", position++)
                    .number("withdrawn", point.amount().number())
                    .cell("withdrawn_unit", point.amount().unit().symbol())
                    .number("gauge_pct", point.gaugePercent()));
        }
    }

    @Override
    public MeterCalibration value(StoredRecord rows) {
        StoredRow row = rows.row();
        Optional<BigDecimal> elevation = row.numberIfAny("elevation_m");
        return new MeterCalibration(
                new CalibrationId(row.text("calibration_id")),
                new MeterId(row.text("meter_id")),
                row.word("meter_type", MeterType.values(), MeterType::name),
                LocalDate.parse(row.text("calibrated_on")),
                row.text("made_by"),
                row.word("reason", MeterCalibration.Reason.values(), MeterCalibration.Reason::symbol),
                elevation,
                row.has(BUOYANCY) ? Optional.of(bowl(rows)) : Optional.empty(),
                row.flag(DIAL) ? Optional.of(dial(rows)) : Optional.empty(),
                row.has(EXPANSION) ? Optional.of(column(row, elevation.orElseThrow())) : Optional.empty(),
                row.text("remarks"));
    }

    private static BowlFills bowl(StoredRecord rows) {
        StoredRow row = rows.row();
        List<BowlFill> fills = inOrder(rows, FILL).stream()
                .map(fill -> new BowlFill(
                        fill.typed("empty_mass", MassUnit.values()),
                        fill.typed("plate_mass", MassUnit.values()),
                        fill.typed("full_mass", MassUnit.values()),
                        fill.number("water_temp_c")))
                .toList();
        return new BowlFills(
                fills,
                row.flag(BUOYANCY),
                row.numberIfAny("air_temp_c"),
                row.numberIfAny("air_pressure_kpa"),
                row.numberIfAny("diameter_mm"),
                row.numberIfAny("height_mm"));
    }

    private static DialCheck dial(StoredRecord rows) {
        StoredRow row = rows.row();
        List<CheckPoint> points = inOrder(rows, POINT).stream()
                .map(point -> new CheckPoint(
                        new CheckAmount(
                                point.number("withdrawn"),
                                point.word("withdrawn_unit", CheckAmount.Unit.values(), CheckAmount.Unit::symbol)),
                        point.number("gauge_pct")))
                .toList();
        return new DialCheck(
                ifAny(row, "vessel_water", MassUnit.values()),
                row.numberIfAny("dial_water_temp_c"),
                points,
                row.numberIfAny("initial_line_pct"),
                row.numberIfAny("leak_marks"),
                ifAny(row, "chamber", VolumeUnit.values()),
                ifAny(row, "initial_pressure", PressureUnit.values()));
    }

    private static ColumnCheck column(StoredRow row, BigDecimal elevation) {
        return new ColumnCheck(
                row.typed("column_vessel_water", MassUnit.values()),
                row.typed("bowl_water", MassUnit.values()),
                row.number(EXPANSION),
                row.typed("working_pressure", PressureUnit.values()),
                elevation);
    }

    private static List<StoredRow> inOrder(StoredRecord rows, String table) {
        return rows.parts().stream()
                .filter(part -> part.table().equals(table))
                .sorted(Comparator.comparingInt(part -> part.count("position")))
                .toList();
    }

    private static <Q> Optional<Typed<Q>> ifAny(StoredRow row, String column, Unit<Q>[] units) {
        return row.has(column) ? Optional.of(row.typed(column, units)) : Optional.empty();
    }
}
