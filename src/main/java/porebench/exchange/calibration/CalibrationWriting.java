package porebench.exchange.calibration;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.exchange.sheet.Format;
import porebench.exchange.text.HeadedRow;
import porebench.exchange.text.Headings;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;

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
        value.bowl().ifPresent(this::bowl);
        value.dial().ifPresent(this::dial);
        value.column().ifPresent(this::column);
        if (value.isNote()) {
            add(CalibrationRow.NOTE, Map.of());
        }
        return rows;
    }

    private void bowl(BowlFills bowl) {
        Map<String, String> about = new HashMap<>();
        about.put("buoyancy", HeadedRow.yesNoWord(bowl.buoyancyCorrected()));
        about.put("air_temp_c", Format.cell(bowl.airCelsius()));
        about.put("air_pressure_kpa", Format.cell(bowl.airKilopascals()));
        about.put("diameter_mm", Format.cell(bowl.diameterMillimetres()));
        about.put("height_mm", Format.cell(bowl.heightMillimetres()));
        add(CalibrationRow.BOWL, about);
        for (BowlFill fill : bowl.fills()) {
            Map<String, String> cells = new HashMap<>();
            put(cells, "empty_mass", fill.empty(), "mass_unit");
            put(cells, "plate_mass", fill.plate(), otherUnit(fill.plate(), fill.empty(), "plate_mass_unit"));
            put(cells, "full_mass", fill.full(), otherUnit(fill.full(), fill.empty(), "full_mass_unit"));
            cells.put("mass_unit", fill.empty().unit().symbol());
            cells.put("water_temp_c", fill.waterCelsius().toString());
            add(CalibrationRow.FILL, cells);
        }
    }

    private void dial(DialCheck dial) {
        Map<String, String> about = new HashMap<>();
        putAny(about, "vessel_mass", dial.vesselWater(), "mass_unit");
        about.put("water_temp_c", Format.cell(dial.waterCelsius()));
        about.put("initial_line_pct", Format.cell(dial.initialLine()));
        about.put("leak_marks", Format.cell(dial.leakMarks()));
        putAny(about, "chamber", dial.chamber(), "chamber_unit");
        putAny(about, "pressure", dial.initialPressure(), "pressure_unit");
        add(CalibrationRow.DIAL, about);
        for (CheckPoint point : dial.points()) {
            add(
                    CalibrationRow.POINT,
                    Map.of(
                            "withdrawn",
                            point.amount().number().toString(),
                            "withdrawn_unit",
                            point.amount().unit().symbol(),
                            "gauge_pct",
                            point.gaugePercent().toString()));
        }
    }

    private void column(ColumnCheck column) {
        Map<String, String> cells = new HashMap<>();
        put(cells, "vessel_mass", column.vesselWater(), "mass_unit");
        put(
                cells,
                "bowl_mass",
                column.bowlWater(),
                otherUnit(column.bowlWater(), column.vesselWater(), "bowl_mass_unit"));
        cells.put("mass_unit", column.vesselWater().unit().symbol());
        cells.put("expansion_pct", column.expansionPercent().toString());
        put(cells, "pressure", column.workingPressure(), "pressure_unit");
        add(CalibrationRow.COLUMN, cells);
    }

    /** Returns the column for the unit of a mass: that of the row, or its own where it is another. */
    private static String otherUnit(Typed<?> mass, Typed<?> first, String own) {
        return mass.unit().equals(first.unit()) ? "mass_unit" : own;
    }

    private static void putAny(
            Map<String, String> cells, String column, Optional<? extends Typed<?>> typed, String unit) {
        typed.ifPresent(quantity -> put(cells, column, quantity, unit));
    }

    private static void put(Map<String, String> cells, String column, Typed<?> typed, String unit) {
        cells.put(column, typed.number().toString());
        cells.put(unit, typed.unit().symbol());
    }

    private void add(CalibrationRow row, Map<String, String> measured) {
        Map<String, String> cells = new HashMap<>(measured);
        cells.put("calibration_id", value.id().text());
        cells.put("meter_id", value.meterId().text());
        cells.put("meter_type", value.meterType().name());
        cells.put("calibrated_on", value.calibratedOn().toString());
        cells.put("by", value.by());
        cells.put("reason", value.reason().symbol());
        cells.put("row", row.word());
        cells.put("elevation_m", Format.cell(value.elevationMetres()));
        cells.put("remarks", value.remarks());
        rows.add(columns.all().stream()
                .map(column -> cells.getOrDefault(column, ""))
                .toList());
    }
}
