package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.exchange.sheet.SheetCells;
import porebench.exchange.sheet.SheetReader;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.method.MeterType;
import porebench.method.meter.CheckPoint;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** {@code meter-calibration.csv}: one row a measurement, the rows of a calibration together stating it. */
public final class MeterCalibrationFormat implements Format<MeterCalibration> {
    private static final List<String> SHARED =
            FileColumns.SHARED.stream().map(Column::heading).skip(1).toList();

    private static final Headings COLUMNS = new Headings(
            List.of("calibration_id", "meter_id", "meter_type", "calibrated_on", "by", "reason", "row"),
            Stream.of(CalibrationRow.allColumns(), List.of("elevation_m", "remarks"))
                    .flatMap(List::stream)
                    .toList());

    @Override
    public Class<MeterCalibration> type() {
        return MeterCalibration.class;
    }

    @Override
    public String fileName() {
        return "meter-calibration.csv";
    }

    @Override
    public Headings columns() {
        return COLUMNS;
    }

    @Override
    public Stated stated() {
        List<Column<?, ?>> ofRow = new ArrayList<>(List.of(CalibrationColumns.ID, FileColumns.ROW));
        ofRow.addAll(FileColumns.OF_FILL);
        ofRow.addAll(FileColumns.OF_BOWL);
        ofRow.addAll(FileColumns.OF_DIAL);
        ofRow.addAll(CalibrationColumns.OF_POINT.columns().all());
        ofRow.addAll(FileColumns.OF_COLUMN);
        return new Stated(
                ofRow,
                FileColumns.SHARED.stream()
                        .skip(1)
                        .<Column<?, ?>>map(column -> column)
                        .toList(),
                true);
    }

    @Override
    public List<Sheet.Row<MeterCalibration>> read(Table table) {
        List<Sheet.Row<MeterCalibration>> good = new ArrayList<>();
        for (RowGroup group : RowGroup.readAll(table, "calibration_id", SHARED)) {
            Optional<MeterCalibration> calibration = read(group);
            if (group.checkGood(table, "calibration_id")) {
                calibration.ifPresent(
                        value -> good.add(new Sheet.Row<>(group.first().line(), value)));
            }
        }
        return good;
    }

    private static Optional<MeterCalibration> read(RowGroup group) {
        SheetReader about = SheetReader.of(group, List.of());
        Optional<MeterId> meter = CalibrationColumns.METER.read(about);
        Optional<MeterType> type = CalibrationColumns.METER_TYPE.read(about);
        Optional<LocalDate> day = CalibrationColumns.CALIBRATED_ON.read(about);
        Optional<MeterCalibration.Reason> reason = CalibrationColumns.REASON.read(about);
        Optional<BigDecimal> elevation = CalibrationColumns.ELEVATION.read(about);
        CalibrationMeasured measured = new CalibrationMeasured(group);
        measured.read(elevation);
        if (type.isPresent()) {
            measured.checkType(type.get());
        }
        reason.ifPresent(measured::checkReason);
        if (meter.isEmpty() || type.isEmpty() || day.isEmpty() || reason.isEmpty() || !group.isGood()) {
            return Optional.empty();
        }
        return Optional.of(new MeterCalibration(
                new CalibrationId(group.name()),
                meter.get(),
                type.get(),
                day.get(),
                about.text(CalibrationColumns.BY),
                reason.get(),
                elevation,
                measured.bowl(),
                measured.dial(),
                measured.column(),
                about.text(CalibrationColumns.REMARKS)));
    }

    @Override
    public List<List<String>> write(MeterCalibration value) {
        List<List<String>> rows = new ArrayList<>();
        value.bowl().ifPresent(bowl -> {
            rows.add(row(value, CalibrationRow.BOWL, FileColumns.OF_BOWL, value));
            bowl.fills().forEach(fill -> rows.add(row(value, CalibrationRow.FILL, FileColumns.OF_FILL, fill)));
        });
        value.dial().ifPresent(dial -> {
            rows.add(row(value, CalibrationRow.DIAL, FileColumns.OF_DIAL, value));
            List<Column<CheckPoint, ?>> ofPoint =
                    CalibrationColumns.OF_POINT.columns().all();
            dial.points().forEach(point -> rows.add(row(value, CalibrationRow.POINT, ofPoint, point)));
        });
        value.column().ifPresent(column -> rows.add(row(value, CalibrationRow.COLUMN, FileColumns.OF_COLUMN, value)));
        if (value.isNote()) {
            rows.add(row(value, CalibrationRow.NOTE, List.of(), value));
        }
        return rows;
    }

    private static <R> List<String> row(
            MeterCalibration whole, CalibrationRow row, List<Column<R, ?>> measured, R stated) {
        SheetCells cells = new SheetCells();
        FileColumns.SHARED.forEach(column -> column.write(whole, cells));
        cells.put("row", row.symbol());
        measured.forEach(column -> column.write(stated, cells));
        return cells.under(COLUMNS.all());
    }
}
