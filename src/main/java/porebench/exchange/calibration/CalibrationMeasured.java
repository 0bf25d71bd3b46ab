package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.exchange.sheet.SheetReader;
import porebench.exchange.text.Findings;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.RowGroup;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.profile.Profiles;
import porebench.quantity.Mass;
import porebench.quantity.Pressure;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;

/** Reads what was measured in one calibration out of its rows, and notes what is wrong with it. */
final class CalibrationMeasured {
    private static final Pattern OF_A_ROW = Pattern.compile("(fills|points)\\.(\\d+)\\.(\\w+)");

    /** Larger than any bowl: where the file does not weigh the bowl, the lab book knows it, and checks against it. */
    private static final Volume LARGER_THAN_ANY = Volume.of(1000, VolumeUnit.LITRE);

    private static final double ANY_DIVISION = 0.1;

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
            tryOut();
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

    /** Tries out the measurements, and notes what is wrong with them in the cells where it stands; doubts are judged later. */
    private void tryOut() {
        Profile any = Profiles.standard();
        Optional<Answer<BowlCalibration>> weighed = bowl.map(fills -> BowlCalibration.of(fills, any));
        weighed.ifPresent(answer -> note(answer.problems(), bowlRow));
        Optional<Volume> volume = weighed.flatMap(Answer::value).map(BowlCalibration::volume);
        dial.filter(check -> volume.isPresent() || isOrderKnown(check))
                .map(check -> DialCalibration.of(check, volume.orElse(LARGER_THAN_ANY), ANY_DIVISION, any))
                .ifPresent(answer -> note(answer.problems(), dialRow));
        column.map(check -> ColumnCalibration.of(check, any)).ifPresent(answer -> note(answer.problems(), columnRow));
    }

    /** Amounts in one unit can be put in order without knowing the bowl. */
    private static boolean isOrderKnown(DialCheck check) {
        Set<CheckAmount.Unit> units = new HashSet<>();
        check.points().forEach(point -> units.add(point.amount().unit()));
        return units.size() <= 1;
    }

    private void note(List<Problem> problems, Optional<HeadedRow> about) {
        problems.stream().filter(Problem::isError).forEach(problem -> {
            Matcher ofARow = OF_A_ROW.matcher(problem.field());
            if (ofARow.matches()) {
                List<HeadedRow> rows = ofARow.group(1).equals("fills") ? fillRows : pointRows;
                rows.get(Integer.parseInt(ofARow.group(2))).error(column(ofARow.group(3)), problem);
            } else {
                about.orElseGet(group::first).error(column(problem.field()), problem);
            }
        });
    }

    private static String column(String field) {
        return FileColumns.HEADINGS.getOrDefault(field, "row");
    }
}
