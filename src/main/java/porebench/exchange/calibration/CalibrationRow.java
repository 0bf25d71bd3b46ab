package porebench.exchange.calibration;

import java.util.Arrays;
import java.util.List;
import porebench.exchange.text.HeadedRow;
import porebench.quantity.Symbolic;

/** What one row of {@code meter-calibration.csv} states, and the columns in which it does. */
enum CalibrationRow implements Symbolic {
    /** One weighing of the bowl. */
    FILL("empty_mass,plate_mass,full_mass,mass_unit,plate_mass_unit,full_mass_unit,water_temp_c"),
    /** What is about all fills of the bowl. */
    BOWL("buoyancy,air_temp_c,air_pressure_kpa,diameter_mm,height_mm"),
    /** What is about all points of a Type B dial. */
    DIAL("vessel_mass,mass_unit,water_temp_c,initial_line_pct,leak_marks,chamber,chamber_unit,pressure,pressure_unit"),
    /** One check point of a Type B dial. */
    POINT("withdrawn,withdrawn_unit,gauge_pct"),
    /** The column of a Type A meter. */
    COLUMN("vessel_mass,mass_unit,bowl_mass,bowl_mass_unit,expansion_pct,pressure,pressure_unit"),
    /** Nothing was measured. */
    NOTE("");

    private final List<String> columns;

    CalibrationRow(String columns) {
        this.columns = List.of(columns.split(","));
    }

    /** Returns all columns of measurements, in the order in which they are written. */
    static List<String> allColumns() {
        return Arrays.stream(values())
                .flatMap(row -> row.columns.stream())
                .filter(column -> !column.isEmpty())
                .distinct()
                .toList();
    }

    /** Notes every cell that is filled although it is about something else. */
    void checkEmptyElsewhere(HeadedRow entry) {
        allColumns().stream()
                .filter(column -> !columns.contains(column))
                .filter(column -> entry.optionalWord(column).isPresent())
                .forEach(column -> entry.error(column, "csv.not-in-this-row", column, symbol()));
    }
}
