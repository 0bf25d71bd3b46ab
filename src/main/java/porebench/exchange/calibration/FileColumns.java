package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.meter.BowlFill;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.CellType;
import porebench.record.column.Column;

/** The columns of a calibration as {@code meter-calibration.csv} calls them; the masses of a row share their unit. */
final class FileColumns {
    private static final String UNIT = "mass_unit";

    static final Column<BowlFill, Typed<Mass>> EMPTY = CalibrationColumns.EMPTY.unitIn(UNIT);
    static final Column<BowlFill, Typed<Mass>> PLATE = CalibrationColumns.PLATE.unitIn("plate_mass_unit", UNIT);
    static final Column<BowlFill, Typed<Mass>> FULL = CalibrationColumns.FULL.unitIn("full_mass_unit", UNIT);

    static final Column<MeterCalibration, Boolean> BUOYANCY =
            CalibrationColumns.BUOYANCY.headed("buoyancy").blankMeans(false);
    static final Column<MeterCalibration, Typed<Mass>> VESSEL =
            headed("vessel_mass", CalibrationColumns.VESSEL_WATER).unitIn(UNIT);
    static final Column<MeterCalibration, BigDecimal> DIAL_WATER =
            headed("water_temp_c", CalibrationColumns.DIAL_WATER);
    static final Column<MeterCalibration, Typed<Pressure>> PRESSURE =
            headed("pressure", CalibrationColumns.INITIAL_PRESSURE);

    static final Column<MeterCalibration, Typed<Mass>> COLUMN_VESSEL =
            needed(headed("vessel_mass", CalibrationColumns.COLUMN_VESSEL_WATER).unitIn(UNIT));
    static final Column<MeterCalibration, Typed<Mass>> COLUMN_BOWL =
            needed(headed("bowl_mass", CalibrationColumns.BOWL_WATER).unitIn("bowl_mass_unit", UNIT));
    static final Column<MeterCalibration, BigDecimal> EXPANSION = needed(CalibrationColumns.EXPANSION);
    static final Column<MeterCalibration, Typed<Pressure>> WORKING_PRESSURE =
            needed(headed("pressure", CalibrationColumns.WORKING_PRESSURE));

    /** What each row states of the whole. */
    static final List<Column<MeterCalibration, ?>> SHARED = List.of(
            CalibrationColumns.ID,
            CalibrationColumns.METER,
            CalibrationColumns.METER_TYPE,
            CalibrationColumns.CALIBRATED_ON,
            CalibrationColumns.BY,
            CalibrationColumns.REASON,
            CalibrationColumns.ELEVATION,
            CalibrationColumns.REMARKS);

    /** Says what a row states. */
    static final Column<CalibrationRow, CalibrationRow> ROW =
            Column.needed("row", CellType.choice(CalibrationRow.values(), CalibrationRow::symbol), row -> row);

    static final List<Column<MeterCalibration, ?>> OF_BOWL = List.of(
            BUOYANCY,
            CalibrationColumns.AIR_TEMPERATURE,
            CalibrationColumns.AIR_PRESSURE,
            CalibrationColumns.DIAMETER,
            CalibrationColumns.HEIGHT);

    static final List<Column<BowlFill, ?>> OF_FILL = List.of(EMPTY, PLATE, FULL, CalibrationColumns.FILL_WATER);

    static final List<Column<MeterCalibration, ?>> OF_DIAL = List.of(
            VESSEL,
            DIAL_WATER,
            CalibrationColumns.INITIAL_LINE,
            CalibrationColumns.LEAK_MARKS,
            CalibrationColumns.CHAMBER,
            PRESSURE);

    static final List<Column<MeterCalibration, ?>> OF_COLUMN =
            List.of(COLUMN_VESSEL, COLUMN_BOWL, EXPANSION, WORKING_PRESSURE);

    /** The heading of a column by the last part of the field that a problem names. */
    static final Map<String, String> HEADINGS = Stream.of(
                    SHARED,
                    OF_BOWL,
                    OF_FILL,
                    OF_DIAL,
                    OF_COLUMN,
                    CalibrationColumns.OF_POINT.columns().all())
            .flatMap(List::stream)
            .collect(Collectors.toMap(
                    column -> column.field().substring(column.field().lastIndexOf('.') + 1),
                    Column::heading,
                    (one, same) -> one));

    private FileColumns() {}

    private static <V> Column<MeterCalibration, V> headed(String heading, Column<MeterCalibration, V> column) {
        return column.headed(heading).called(column.field());
    }

    /** A row that says how the column of a meter was checked states everything about it. */
    private static <V> Column<MeterCalibration, V> needed(Column<MeterCalibration, V> column) {
        return column.neededWhere(any -> true);
    }
}
