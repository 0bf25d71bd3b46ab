package porebench.desk.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.method.meter.CheckAmount;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.column.Part;

/** The columns of a calibration that its form has, by section, and what stands in them before anybody types. */
final class CalibrationFields {
    static final List<Column<MeterCalibration, ?>> GENERAL = List.of(
            CalibrationColumns.CALIBRATED_ON,
            CalibrationColumns.BY,
            CalibrationColumns.REASON,
            CalibrationColumns.ELEVATION,
            CalibrationColumns.ID,
            CalibrationColumns.REMARKS);
    static final List<Column<MeterCalibration, ?>> BOWL = List.of(
            CalibrationColumns.BUOYANCY,
            CalibrationColumns.AIR_TEMPERATURE,
            CalibrationColumns.AIR_PRESSURE,
            CalibrationColumns.DIAMETER,
            CalibrationColumns.HEIGHT);
    static final List<Column<MeterCalibration, ?>> VESSEL =
            List.of(CalibrationColumns.VESSEL_WATER, CalibrationColumns.DIAL_WATER);
    static final List<Column<MeterCalibration, ?>> DIAL = List.of(
            CalibrationColumns.INITIAL_LINE,
            CalibrationColumns.LEAK_MARKS,
            CalibrationColumns.CHAMBER,
            CalibrationColumns.INITIAL_PRESSURE);
    static final List<Column<MeterCalibration, ?>> COLUMN = List.of(
            CalibrationColumns.COLUMN_VESSEL_WATER,
            CalibrationColumns.BOWL_WATER,
            CalibrationColumns.EXPANSION,
            CalibrationColumns.WORKING_PRESSURE);

    private static final List<Column<?, ?>> MASSES =
            List.of(CalibrationColumns.EMPTY, CalibrationColumns.PLATE, CalibrationColumns.FULL);

    private CalibrationFields() {}

    /** Numbers that are kept in one unit, and typed in that of the unit system. */
    private static final List<Column<?, ?>> OF_ONE_UNIT = List.of(
            CalibrationColumns.ELEVATION,
            CalibrationColumns.AIR_TEMPERATURE,
            CalibrationColumns.AIR_PRESSURE,
            CalibrationColumns.DIAMETER,
            CalibrationColumns.HEIGHT,
            CalibrationColumns.FILL_WATER,
            CalibrationColumns.DIAL_WATER);

    /** Returns an empty form of a new calibration in a unit system. */
    static TypedDraft begun(UnitSystem system) {
        TypedDraft begun = empty(system);
        for (Column<?, ?> column : OF_ONE_UNIT) {
            begun = begun.withUnit(column, system.unitOf(column));
        }
        return begun;
    }

    /** Returns an empty form in a unit system, what is kept in one unit being shown in that. */
    static TypedDraft empty(UnitSystem system) {
        String mass = system.benchMass().symbol();
        return TypedDraft.BLANK
                .with(CalibrationColumns.REASON, MeterCalibration.Reason.ROUTINE.symbol())
                .withUnit(CalibrationColumns.FILLS, mass)
                .withUnit(CalibrationColumns.POINTS, CheckAmount.Unit.VESSELS.symbol())
                .withUnit(CalibrationColumns.VESSEL_WATER, mass)
                .withUnit(CalibrationColumns.COLUMN_VESSEL_WATER, mass)
                .withUnit(CalibrationColumns.BOWL_WATER, mass)
                .withUnit(CalibrationColumns.CHAMBER, system.bowlVolume().symbol())
                .withUnit(CalibrationColumns.INITIAL_PRESSURE, system.pressure().symbol())
                .withUnit(CalibrationColumns.WORKING_PRESSURE, system.pressure().symbol());
    }

    /** Returns a saved calibration as it was typed; a mass in another unit than its table's carries its own. */
    static TypedDraft of(MeterCalibration saved, Numbers numbers, UnitSystem system) {
        TypedDraft draft = TypedDraft.of(CalibrationColumns.ALL, saved, numbers).orFrom(empty(system));
        List<TypedDraft> fills = draft.rows(CalibrationColumns.FILLS);
        String unit = fills.isEmpty()
                ? draft.unit(CalibrationColumns.FILLS)
                : fills.get(0).unit(CalibrationColumns.FULL);
        return draft.withUnit(CalibrationColumns.FILLS, unit)
                .with(
                        CalibrationColumns.FILLS,
                        fills.stream().map(row -> carrying(row, unit)).toList());
    }

    private static TypedDraft carrying(TypedDraft row, String unit) {
        TypedDraft shown = row;
        for (Column<?, ?> mass : MASSES) {
            String own = row.unit(mass);
            shown = shown.withUnit(mass, "").with(mass, own.equals(unit) ? row.text(mass) : row.text(mass) + " " + own);
        }
        return shown;
    }

    /** Returns a draft with the unit of every mass of a fill beside it, and nothing in the rows in which nothing is typed. */
    static TypedDraft parted(TypedDraft draft, Numbers numbers) {
        return draft.with(
                        CalibrationColumns.FILLS,
                        typed(draft, CalibrationColumns.FILLS, CalibrationColumns.OF_FILL)
                                .map(row -> parted(row, draft.unit(CalibrationColumns.FILLS), numbers))
                                .map(row -> inUnit(row, draft.unit(CalibrationColumns.FILL_WATER)))
                                .toList())
                .with(
                        CalibrationColumns.POINTS,
                        typed(draft, CalibrationColumns.POINTS, CalibrationColumns.OF_POINT)
                                .toList());
    }

    private static Stream<TypedDraft> typed(TypedDraft draft, Column<?, ?> column, Part<?> part) {
        return draft.rows(column).stream()
                .map(row -> isTyped(row, part.columns().all()) ? row : TypedDraft.BLANK);
    }

    private static TypedDraft parted(TypedDraft row, String unit, Numbers numbers) {
        TypedDraft parted = row;
        for (Column<?, ?> mass : row.texts().isEmpty() ? List.<Column<?, ?>>of() : MASSES) {
            parted = parted.withUnit(mass, unit).parted(mass, numbers);
        }
        return parted;
    }

    private static TypedDraft inUnit(TypedDraft row, String temperature) {
        return row.texts().isEmpty() ? row : row.withUnit(CalibrationColumns.FILL_WATER, temperature);
    }

    /** Returns whether something is typed in a row; a unit alone is nothing. */
    static boolean isTyped(TypedDraft row, List<? extends Column<?, ?>> columns) {
        return columns.stream().anyMatch(column -> !row.text(column).isBlank());
    }

    /** Returns rows without the empty ones at their end. */
    static List<TypedDraft> trimmed(List<TypedDraft> rows, List<? extends Column<?, ?>> columns) {
        List<TypedDraft> left = new ArrayList<>(rows);
        while (!left.isEmpty() && !isTyped(left.get(left.size() - 1), columns)) {
            left.remove(left.size() - 1);
        }
        return left;
    }
}
