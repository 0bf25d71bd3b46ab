package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
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
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.NumberRange;

/** Reads what was measured in one calibration out of its rows. */
final class CalibrationMeasured {
    private static final NumberRange WATER = CalibrationColumns.WATER_RANGE;
    private static final NumberRange GAUGE = NumberRange.READING;
    private static final NumberRange LINE = CalibrationColumns.LINE_RANGE;

    private final RowGroup group;
    private final List<HeadedRow> fillRows = new ArrayList<>();
    private final List<HeadedRow> pointRows = new ArrayList<>();
    private Optional<HeadedRow> bowlRow = Optional.empty();
    private Optional<HeadedRow> dialRow = Optional.empty();
    private Optional<HeadedRow> columnRow = Optional.empty();
    private Optional<HeadedRow> noteRow = Optional.empty();
    private Optional<BowlFills> bowl = Optional.empty();
    private Optional<DialCheck> dial = Optional.empty();
    private Optional<ColumnCheck> column = Optional.empty();

    CalibrationMeasured(RowGroup group) {
        this.group = group;
    }

    Optional<BowlFills> bowl() {
        return bowl;
    }

    Optional<DialCheck> dial() {
        return dial;
    }

    Optional<ColumnCheck> column() {
        return column;
    }

    /** Reads all rows; what is wrong is noted in them. */
    void read(Optional<BigDecimal> elevation) {
        group.rows().forEach(this::sort);
        if (bowlRow.isPresent() || !fillRows.isEmpty()) {
            bowl = readBowl();
        }
        if (dialRow.isPresent() || !pointRows.isEmpty()) {
            dial = readDial();
        }
        column = columnRow.flatMap(row -> readColumn(row, elevation));
        if (group.isGood()) {
            new CalibrationFaults(group, fillRows, pointRows, bowlRow, dialRow, columnRow).note(bowl, dial, column);
        }
    }

    private void sort(HeadedRow row) {
        Optional<CalibrationRow> kind = row.choice("row", List.of(CalibrationRow.values()), CalibrationRow::word);
        kind.ifPresent(known -> {
            known.checkEmptyElsewhere(row);
            switch (known) {
                case FILL -> fillRows.add(row);
                case POINT -> pointRows.add(row);
                case BOWL -> bowlRow = only(bowlRow, row, known);
                case DIAL -> dialRow = only(dialRow, row, known);
                case COLUMN -> columnRow = only(columnRow, row, known);
                case NOTE -> noteRow = only(noteRow, row, known);
            }
        });
    }

    private Optional<HeadedRow> only(Optional<HeadedRow> before, HeadedRow row, CalibrationRow kind) {
        if (before.isEmpty()) {
            return Optional.of(row);
        }
        row.error("row", "csv.row-twice", kind.word(), before.get().line(), Findings.quoted(group.name()));
        return before;
    }

    /** Notes a dial of a Type A or a column of a Type B meter. */
    void checkType(MeterType type) {
        if (type == MeterType.A) {
            dialRow.ifPresent(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.DIAL.word(), "B"));
            pointRows.forEach(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.POINT.word(), "B"));
        } else {
            columnRow.ifPresent(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.COLUMN.word(), "A"));
        }
    }

    /** Notes a calibration in which nothing was measured for a reason that is not worth a note, or a note beside a measurement. */
    void checkReason(MeterCalibration.Reason reason) {
        noteRow.ifPresent(row -> {
            if (group.rows().size() > 1) {
                row.error("row", "csv.note-beside-rows", Findings.quoted(group.name()));
            } else if (!reason.isWorthANote()) {
                row.error("reason", "csv.note-without-reason", reason.symbol());
            }
        });
    }

    private Optional<BowlFills> readBowl() {
        List<BowlFill> fills = new ArrayList<>();
        for (HeadedRow row : fillRows) {
            Optional<MassUnit> unit = unit(row, "mass_unit");
            Optional<Typed<Mass>> empty = mass(row, "empty_mass", unit);
            Optional<Typed<Mass>> full = mass(row, "full_mass", otherUnit(row, "full_mass_unit", unit));
            Optional<Typed<Mass>> plate = row.optionalWord("plate_mass").isPresent()
                    ? mass(row, "plate_mass", otherUnit(row, "plate_mass_unit", unit))
                    : empty.map(mass -> new Typed<>(BigDecimal.ZERO, mass.unit()));
            Optional<BigDecimal> water = row.number("water_temp_c", WATER);
            if (empty.isPresent() && plate.isPresent() && full.isPresent() && water.isPresent()) {
                fills.add(new BowlFill(empty.get(), plate.get(), full.get(), water.get()));
            }
        }
        boolean buoyancy = bowlRow.filter(row -> row.optionalWord("buoyancy").isPresent())
                .flatMap(row -> row.yesNo("buoyancy"))
                .orElse(false);
        return Optional.of(new BowlFills(
                fills,
                buoyancy,
                number(bowlRow, "air_temp_c", WATER),
                number(bowlRow, "air_pressure_kpa", NumberRange.NOT_NEGATIVE),
                number(bowlRow, "diameter_mm", NumberRange.NOT_NEGATIVE),
                number(bowlRow, "height_mm", NumberRange.NOT_NEGATIVE)));
    }

    private Optional<DialCheck> readDial() {
        List<CheckPoint> points = new ArrayList<>();
        for (HeadedRow row : pointRows) {
            Optional<BigDecimal> amount = row.number("withdrawn", NumberRange.NOT_NEGATIVE);
            Optional<CheckAmount.Unit> unit =
                    row.choice("withdrawn_unit", List.of(CheckAmount.Unit.values()), CheckAmount.Unit::symbol);
            Optional<BigDecimal> gauge = row.number("gauge_pct", GAUGE);
            if (amount.isPresent() && unit.isPresent() && gauge.isPresent()) {
                points.add(new CheckPoint(new CheckAmount(amount.get(), unit.get()), gauge.get()));
            }
        }
        return Optional.of(new DialCheck(
                dialRow.filter(row -> row.optionalWord("vessel_mass").isPresent())
                        .flatMap(row -> mass(row, "vessel_mass", unit(row, "mass_unit"))),
                number(dialRow, "water_temp_c", WATER),
                points,
                number(dialRow, "initial_line_pct", LINE),
                number(dialRow, "leak_marks", NumberRange.NOT_NEGATIVE),
                dialRow.flatMap(row -> row.optionalQuantity(
                        "chamber", NumberRange.NOT_NEGATIVE, "chamber_unit", List.of(VolumeUnit.values()))),
                dialRow.flatMap(row -> row.optionalQuantity(
                        "pressure", NumberRange.NOT_NEGATIVE, "pressure_unit", List.of(PressureUnit.values())))));
    }

    private Optional<ColumnCheck> readColumn(HeadedRow row, Optional<BigDecimal> elevation) {
        Optional<MassUnit> unit = unit(row, "mass_unit");
        Optional<Typed<Mass>> vessel = mass(row, "vessel_mass", unit);
        Optional<Typed<Mass>> water = mass(row, "bowl_mass", otherUnit(row, "bowl_mass_unit", unit));
        Optional<BigDecimal> expansion = row.number("expansion_pct", NumberRange.NOT_NEGATIVE);
        Optional<Typed<Pressure>> working =
                row.quantity("pressure", NumberRange.NOT_NEGATIVE, "pressure_unit", List.of(PressureUnit.values()));
        HeadedRow stating = group.stating("elevation_m");
        if (elevation.isEmpty() && stating.optionalWord("elevation_m").isEmpty()) {
            stating.error("elevation_m", "csv.required", "elevation_m");
        }
        return vessel.isPresent()
                        && water.isPresent()
                        && expansion.isPresent()
                        && working.isPresent()
                        && elevation.isPresent()
                ? Optional.of(
                        new ColumnCheck(vessel.get(), water.get(), expansion.get(), working.get(), elevation.get()))
                : Optional.empty();
    }

    private static Optional<BigDecimal> number(Optional<HeadedRow> row, String column, NumberRange bounds) {
        return row.flatMap(entry -> entry.optionalNumber(column, bounds));
    }

    private static Optional<MassUnit> unit(HeadedRow row, String column) {
        return row.choice(column, List.of(MassUnit.values()), MassUnit::symbol);
    }

    /** Reads the unit of one mass of a row; empty means that of the row. */
    private static Optional<MassUnit> otherUnit(HeadedRow row, String column, Optional<MassUnit> ofRow) {
        return row.optionalWord(column).isPresent() ? unit(row, column) : ofRow;
    }

    private static Optional<Typed<Mass>> mass(HeadedRow row, String column, Optional<MassUnit> unit) {
        Optional<BigDecimal> number = row.number(column, NumberRange.NOT_NEGATIVE);
        return number.isPresent() && unit.isPresent()
                ? Optional.of(new Typed<Mass>(number.get(), unit.get()))
                : Optional.empty();
    }
}
