package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.exchange.sheet.SheetReader;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.method.MeterType;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;

/** Reads what was measured in one calibration out of its rows. */
final class CalibrationMeasured {
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
        Optional<CalibrationRow> kind = row.choice("row", List.of(CalibrationRow.values()), CalibrationRow::symbol);
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
        row.error("row", "csv.row-twice", kind.symbol(), before.get().line(), Findings.quoted(group.name()));
        return before;
    }

    /** Notes a dial of a Type A or a column of a Type B meter. */
    void checkType(MeterType type) {
        if (type == MeterType.A) {
            dialRow.ifPresent(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.DIAL.symbol(), "B"));
            pointRows.forEach(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.POINT.symbol(), "B"));
        } else {
            columnRow.ifPresent(row -> row.error("row", "csv.row-of-other-type", CalibrationRow.COLUMN.symbol(), "A"));
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
            SheetReader cells = SheetReader.of(row);
            Optional<Typed<Mass>> empty = FileColumns.EMPTY.read(cells);
            Optional<Typed<Mass>> full = FileColumns.FULL.read(cells);
            Optional<Typed<Mass>> plate = cells.states(FileColumns.PLATE)
                    ? FileColumns.PLATE.read(cells)
                    : empty.map(mass -> new Typed<>(BigDecimal.ZERO, mass.unit()));
            Optional<BigDecimal> water = CalibrationColumns.FILL_WATER.read(cells);
            if (empty.isPresent() && plate.isPresent() && full.isPresent() && water.isPresent()) {
                fills.add(new BowlFill(empty.get(), plate.get(), full.get(), water.get()));
            }
        }
        return Optional.of(new BowlFills(
                fills,
                any(bowlRow, FileColumns.BUOYANCY).orElse(false),
                any(bowlRow, CalibrationColumns.AIR_TEMPERATURE),
                any(bowlRow, CalibrationColumns.AIR_PRESSURE),
                any(bowlRow, CalibrationColumns.DIAMETER),
                any(bowlRow, CalibrationColumns.HEIGHT)));
    }

    private Optional<DialCheck> readDial() {
        List<CheckPoint> points = pointRows.stream()
                .flatMap(row -> CalibrationColumns.OF_POINT.columns().read(SheetReader.of(row)).stream())
                .toList();
        return Optional.of(new DialCheck(
                any(dialRow, FileColumns.VESSEL),
                any(dialRow, FileColumns.DIAL_WATER),
                points,
                any(dialRow, CalibrationColumns.INITIAL_LINE),
                any(dialRow, CalibrationColumns.LEAK_MARKS),
                any(dialRow, CalibrationColumns.CHAMBER),
                any(dialRow, FileColumns.PRESSURE)));
    }

    private Optional<ColumnCheck> readColumn(HeadedRow row, Optional<BigDecimal> elevation) {
        SheetReader cells = SheetReader.of(row);
        Optional<Typed<Mass>> vessel = FileColumns.COLUMN_VESSEL.read(cells);
        Optional<Typed<Mass>> water = FileColumns.COLUMN_BOWL.read(cells);
        Optional<BigDecimal> expansion = FileColumns.EXPANSION.read(cells);
        Optional<Typed<Pressure>> working = FileColumns.WORKING_PRESSURE.read(cells);
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

    private static <V> Optional<V> any(Optional<HeadedRow> row, Column<MeterCalibration, V> column) {
        return row.flatMap(entry -> column.read(SheetReader.of(entry)));
    }
}
