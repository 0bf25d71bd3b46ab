package porebench.exchange.calibration;

import java.util.ArrayList;
import java.util.List;
import porebench.exchange.sheet.SheetCells;
import porebench.exchange.text.Headings;
import porebench.method.meter.CheckPoint;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;

/** Writes one calibration as rows, the columns about the whole in each of them. */
final class CalibrationWriting {
    private final MeterCalibration value;
    private final Headings columns;
    private final List<List<String>> rows = new ArrayList<>();

    CalibrationWriting(MeterCalibration value, Headings columns) {
        this.value = value;
        this.columns = columns;
    }

    List<List<String>> rows() {
        value.bowl().ifPresent(bowl -> {
            add(CalibrationRow.BOWL, FileColumns.OF_BOWL, value);
            bowl.fills().forEach(fill -> add(CalibrationRow.FILL, FileColumns.OF_FILL, fill));
        });
        value.dial().ifPresent(dial -> {
            add(CalibrationRow.DIAL, FileColumns.OF_DIAL, value);
            List<Column<CheckPoint, ?>> ofPoint =
                    CalibrationColumns.OF_POINT.columns().all();
            dial.points().forEach(point -> add(CalibrationRow.POINT, ofPoint, point));
        });
        value.column().ifPresent(column -> add(CalibrationRow.COLUMN, FileColumns.OF_COLUMN, value));
        if (value.isNote()) {
            add(CalibrationRow.NOTE, List.of(), value);
        }
        return rows;
    }

    private <R> void add(CalibrationRow row, List<Column<R, ?>> measured, R stated) {
        SheetCells cells = new SheetCells();
        FileColumns.SHARED.forEach(column -> column.write(value, cells));
        cells.put("row", row.symbol());
        measured.forEach(column -> column.write(stated, cells));
        rows.add(cells.under(columns.all()));
    }
}
