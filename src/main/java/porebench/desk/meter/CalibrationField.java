package porebench.desk.meter;

import java.util.List;
import porebench.quantity.MassUnit;
import porebench.quantity.PressureUnit;
import porebench.quantity.Unit;
import porebench.quantity.VolumeUnit;

/** What is typed into the form of a calibration outside its tables. */
enum CalibrationField {
    ID("id"),
    DATE("calibratedOn"),
    BY("by"),
    ELEVATION("elevation"),
    REMARKS("remarks"),
    AIR_TEMPERATURE("bowl.airTemperature"),
    AIR_PRESSURE("bowl.airPressure"),
    DIAMETER("bowl.diameter"),
    HEIGHT("bowl.height"),
    VESSEL_WATER("dial.vesselWater", List.of(MassUnit.values())),
    WATER_TEMPERATURE("dial.waterTemperature"),
    INITIAL_LINE("dial.initialLine"),
    LEAK("dial.leakMarks"),
    CHAMBER("dial.chamber", List.of(VolumeUnit.values())),
    INITIAL_PRESSURE("dial.initialPressure", List.of(PressureUnit.values())),
    COLUMN_VESSEL("column.vesselWater", List.of(MassUnit.values())),
    COLUMN_BOWL("column.bowlWater", List.of(MassUnit.values())),
    EXPANSION("column.expansion"),
    WORKING_PRESSURE("column.workingPressure", List.of(PressureUnit.values())),
    /** No field of its own: the unit of masses in the table of fills. */
    FILL_MASS("bowl.massUnit", List.of(MassUnit.values()));

    private final String field;
    private final List<Unit<?>> units;

    CalibrationField(String field) {
        this(field, List.of());
    }

    CalibrationField(String field, List<? extends Unit<?>> units) {
        this.field = field;
        this.units = List.copyOf(units);
    }

    /** Returns the name by which problems and components know the field. */
    String field() {
        return field;
    }

    /** Returns the units it can be typed in, none where there is no choice. */
    List<Unit<?>> units() {
        return units;
    }

    /** Returns whether it belongs to a part of the calibration, such as {@code bowl.}. */
    boolean isOf(String part) {
        return field.startsWith(part) && this != FILL_MASS;
    }
}
