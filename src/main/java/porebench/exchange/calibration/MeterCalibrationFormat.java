package porebench.exchange.calibration;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.exchange.sheet.SheetReader;
import porebench.exchange.text.Headings;
import porebench.exchange.text.RowGroup;
import porebench.exchange.text.Table;
import porebench.method.MeterType;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;

/** {@code meter-calibration.csv}: one row a measurement, the rows of a calibration together stating it. */
public final class MeterCalibrationFormat implements Format<MeterCalibration> {
    private static final List<String> SHARED =
            List.of("meter_id", "meter_type", "calibrated_on", "by", "reason", "elevation_m", "remarks");

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
        Optional<MeterId> meter = group.stating("meter_id").id("meter_id", MeterId::new);
        Optional<MeterType> type =
                group.stating("meter_type").choice("meter_type", List.of(MeterType.values()), MeterType::name);
        Optional<LocalDate> day = group.stating("calibrated_on").date("calibrated_on");
        Optional<MeterCalibration.Reason> reason = group.stating("reason")
                .choice("reason", List.of(MeterCalibration.Reason.values()), MeterCalibration.Reason::symbol);
        Optional<BigDecimal> elevation = CalibrationColumns.ELEVATION.read(SheetReader.of(group, List.of()));
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
                group.stating("by").text("by"),
                reason.get(),
                elevation,
                measured.bowl(),
                measured.dial(),
                measured.column(),
                group.stating("remarks").text("remarks")));
    }

    @Override
    public List<List<String>> write(MeterCalibration value) {
        return new CalibrationWriting(value, COLUMNS).rows();
    }
}
