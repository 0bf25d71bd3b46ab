package porebench.record.column;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.method.Limit;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Mass;
import porebench.quantity.MassUnit;
import porebench.quantity.Pressure;
import porebench.quantity.PressureUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** The columns of a calibration of a meter, of the fills of its bowl and of the points of its dial. */
public final class CalibrationColumns {
    private static final CellType<Typed<Mass>> A_MASS = CellType.quantity(MassUnit.values(), NumberRange.NOT_NEGATIVE);
    private static final CellType<Typed<Pressure>> A_PRESSURE =
            CellType.quantity(PressureUnit.values(), NumberRange.NOT_NEGATIVE);
    private static final CellType<BigDecimal> A_NUMBER = CellType.number(NumberRange.NOT_NEGATIVE);
    /** Temperature of the water, and of the air above it, in C: what a calibration can be made in. */
    public static final NumberRange WATER_RANGE = NumberRange.of("0", "40");

    /** The initial pressure line of a dial, in % air. */
    public static final NumberRange LINE_RANGE = NumberRange.of("-10", "10");

    private static final CellType<BigDecimal> A_WATER = CellType.number(WATER_RANGE);

    public static final Column<BowlFill, Typed<Mass>> EMPTY =
            Column.needed("empty_mass", A_MASS, BowlFill::empty).called("empty");
    public static final Column<BowlFill, Typed<Mass>> PLATE =
            Column.needed("plate_mass", A_MASS, BowlFill::plate).called("plate");
    public static final Column<BowlFill, Typed<Mass>> FULL =
            Column.needed("full_mass", A_MASS, BowlFill::full).called("full");
    public static final Column<BowlFill, BigDecimal> FILL_WATER =
            Column.needed("water_temp_c", A_WATER, BowlFill::waterCelsius).called("waterTemperature");

    public static final Column<CheckPoint, CheckAmount> AMOUNT = Column.needed(
                    "withdrawn",
                    CellType.withUnit(
                            CheckAmount.Unit.values(),
                            CheckAmount.Unit::symbol,
                            NumberRange.NOT_NEGATIVE,
                            CheckAmount::new,
                            CheckAmount::number,
                            CheckAmount::unit),
                    CheckPoint::amount)
            .called("amount");
    public static final Column<CheckPoint, BigDecimal> GAUGE = Column.needed(
                    "gauge_pct", CellType.number(NumberRange.READING), CheckPoint::gaugePercent)
            .called("gauge");

    public static final Column<MeterCalibration, CalibrationId> ID = Column.needed(
                    "calibration_id", CellType.word(CalibrationId::new, CalibrationId::text), MeterCalibration::id)
            .called("id");
    public static final Column<MeterCalibration, MeterId> METER =
            Column.needed("meter_id", CellType.word(MeterId::new, MeterId::text), MeterCalibration::meterId);
    public static final Column<MeterCalibration, MeterType> METER_TYPE = Column.needed(
            "meter_type", CellType.choice(MeterType.values(), MeterType::name), MeterCalibration::meterType);
    public static final Column<MeterCalibration, LocalDate> CALIBRATED_ON =
            Column.needed("calibrated_on", CellType.day(), MeterCalibration::calibratedOn);
    public static final Column<MeterCalibration, String> BY =
            Column.needed("made_by", CellType.text(), MeterCalibration::by).headed("by");
    public static final Column<MeterCalibration, MeterCalibration.Reason> REASON = Column.needed(
            "reason",
            CellType.choice(MeterCalibration.Reason.values(), MeterCalibration.Reason::symbol),
            MeterCalibration::reason);
    public static final Column<MeterCalibration, BigDecimal> ELEVATION = Column.any(
                    "elevation_m", CellType.number(Limit.ELEVATION), MeterCalibration::elevationMetres)
            .called("elevation");
    public static final Column<MeterCalibration, String> REMARKS =
            Column.needed("remarks", CellType.text(), MeterCalibration::remarks);

    public static final Column<MeterCalibration, Boolean> BUOYANCY = ofBowl(
                    "buoyancy_corrected", CellType.yesNo(), bowl -> Optional.of(bowl.buoyancyCorrected()))
            .called("bowl.buoyancy");
    public static final Column<MeterCalibration, BigDecimal> AIR_TEMPERATURE =
            ofBowl("air_temp_c", A_WATER, BowlFills::airCelsius).called("bowl.airTemperature");
    public static final Column<MeterCalibration, BigDecimal> AIR_PRESSURE =
            ofBowl("air_pressure_kpa", A_NUMBER, BowlFills::airKilopascals).called("bowl.airPressure");
    public static final Column<MeterCalibration, BigDecimal> DIAMETER =
            ofBowl("diameter_mm", A_NUMBER, BowlFills::diameterMillimetres).called("bowl.diameter");
    public static final Column<MeterCalibration, BigDecimal> HEIGHT =
            ofBowl("height_mm", A_NUMBER, BowlFills::heightMillimetres).called("bowl.height");
    public static final Part<BowlFill> OF_FILL = new Part<>(
            Columns.of(
                            "bowl_fill",
                            cells -> new BowlFill(
                                    cells.get(EMPTY), cells.get(PLATE), cells.get(FULL), cells.get(FILL_WATER)),
                            EMPTY,
                            PLATE,
                            FULL,
                            FILL_WATER)
                    .since(3),
            true);
    public static final Column<MeterCalibration, List<BowlFill>> FILLS = Column.any(
                    "bowl_fill",
                    CellType.several(OF_FILL),
                    (MeterCalibration calibration) -> calibration.bowl().map(BowlFills::fills))
            .called("bowl.fills");

    public static final Column<MeterCalibration, Boolean> DIAL_CHECKED = Column.needed(
            "dial_checked", CellType.yesNo(), calibration -> calibration.dial().isPresent());
    public static final Column<MeterCalibration, BigDecimal> DIAL_WATER =
            ofDial("dial_water_temp_c", A_WATER, DialCheck::waterCelsius).called("dial.waterTemperature");
    public static final Column<MeterCalibration, BigDecimal> INITIAL_LINE = ofDial(
                    "initial_line_pct", CellType.number(LINE_RANGE), DialCheck::initialLine)
            .called("dial.initialLine");
    public static final Column<MeterCalibration, BigDecimal> LEAK_MARKS =
            ofDial("leak_marks", A_NUMBER, DialCheck::leakMarks).called("dial.leakMarks");
    public static final Column<MeterCalibration, Typed<Mass>> VESSEL_WATER =
            ofDial("vessel_water", A_MASS, DialCheck::vesselWater).called("dial.vesselWater");
    public static final Column<MeterCalibration, Typed<Volume>> CHAMBER = ofDial(
                    "chamber", CellType.quantity(VolumeUnit.values(), NumberRange.NOT_NEGATIVE), DialCheck::chamber)
            .called("dial.chamber");
    public static final Column<MeterCalibration, Typed<Pressure>> INITIAL_PRESSURE =
            ofDial("initial_pressure", A_PRESSURE, DialCheck::initialPressure).called("dial.initialPressure");
    public static final Part<CheckPoint> OF_POINT = new Part<>(
            Columns.of("dial_point", cells -> new CheckPoint(cells.get(AMOUNT), cells.get(GAUGE)), AMOUNT, GAUGE)
                    .since(3),
            true);
    public static final Column<MeterCalibration, List<CheckPoint>> POINTS = Column.any(
                    "dial_point",
                    CellType.several(OF_POINT),
                    (MeterCalibration calibration) -> calibration.dial().map(DialCheck::points))
            .called("dial.points");

    public static final Column<MeterCalibration, Typed<Mass>> COLUMN_VESSEL_WATER =
            ofColumn("column_vessel_water", A_MASS, ColumnCheck::vesselWater).called("column.vesselWater");
    public static final Column<MeterCalibration, Typed<Mass>> BOWL_WATER =
            ofColumn("bowl_water", A_MASS, ColumnCheck::bowlWater).called("column.bowlWater");
    public static final Column<MeterCalibration, BigDecimal> EXPANSION =
            ofColumn("expansion_pct", A_NUMBER, ColumnCheck::expansionPercent).called("column.expansion");
    public static final Column<MeterCalibration, Typed<Pressure>> WORKING_PRESSURE = ofColumn(
                    "working_pressure", A_PRESSURE, ColumnCheck::workingPressure)
            .called("column.workingPressure");

    public static final Columns<MeterCalibration> ALL = Columns.of(
                    "meter_calibration",
                    CalibrationColumns::made,
                    ID,
                    METER,
                    METER_TYPE,
                    CALIBRATED_ON,
                    BY,
                    REASON,
                    ELEVATION,
                    REMARKS,
                    BUOYANCY,
                    AIR_TEMPERATURE,
                    AIR_PRESSURE,
                    DIAMETER,
                    HEIGHT,
                    FILLS,
                    DIAL_CHECKED,
                    DIAL_WATER,
                    INITIAL_LINE,
                    LEAK_MARKS,
                    VESSEL_WATER,
                    CHAMBER,
                    INITIAL_PRESSURE,
                    POINTS,
                    COLUMN_VESSEL_WATER,
                    BOWL_WATER,
                    EXPANSION,
                    WORKING_PRESSURE)
            .since(3);

    private CalibrationColumns() {}

    private static <V> Column<MeterCalibration, V> ofBowl(
            String name, CellType<V> type, Function<BowlFills, Optional<V>> of) {
        return Column.any(name, type, calibration -> calibration.bowl().flatMap(of));
    }

    private static <V> Column<MeterCalibration, V> ofDial(
            String name, CellType<V> type, Function<DialCheck, Optional<V>> of) {
        return Column.any(name, type, calibration -> calibration.dial().flatMap(of));
    }

    private static <V> Column<MeterCalibration, V> ofColumn(
            String name, CellType<V> type, Function<ColumnCheck, V> of) {
        return Column.any(name, type, calibration -> calibration.column().map(of));
    }

    private static MeterCalibration made(Cells cells) {
        return new MeterCalibration(
                cells.get(ID),
                cells.get(METER),
                cells.get(METER_TYPE),
                cells.get(CALIBRATED_ON),
                cells.get(BY),
                cells.get(REASON),
                cells.any(ELEVATION),
                cells.any(BUOYANCY).map(buoyancy -> bowl(buoyancy, cells)),
                Optional.of(cells).filter(any -> any.get(DIAL_CHECKED)).map(CalibrationColumns::dial),
                cells.any(EXPANSION).map(expansion -> column(expansion, cells)),
                cells.get(REMARKS));
    }

    private static BowlFills bowl(boolean buoyancy, Cells cells) {
        return new BowlFills(
                cells.list(FILLS),
                buoyancy,
                cells.any(AIR_TEMPERATURE),
                cells.any(AIR_PRESSURE),
                cells.any(DIAMETER),
                cells.any(HEIGHT));
    }

    private static DialCheck dial(Cells cells) {
        return new DialCheck(
                cells.any(VESSEL_WATER),
                cells.any(DIAL_WATER),
                cells.list(POINTS),
                cells.any(INITIAL_LINE),
                cells.any(LEAK_MARKS),
                cells.any(CHAMBER),
                cells.any(INITIAL_PRESSURE));
    }

    private static ColumnCheck column(BigDecimal expansion, Cells cells) {
        return new ColumnCheck(
                cells.get(COLUMN_VESSEL_WATER),
                cells.get(BOWL_WATER),
                expansion,
                cells.get(WORKING_PRESSURE),
                cells.get(ELEVATION));
    }
}
