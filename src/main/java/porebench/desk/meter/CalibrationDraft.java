package porebench.desk.meter;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.method.meter.CheckAmount;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.ColumnCheck;
import porebench.method.meter.DialCheck;
import porebench.quantity.Typed;
import porebench.record.MeterCalibration;

/**
 * A calibration as it stands in the form, letter by letter as typed.
 *
 * @param texts what is typed in the fields; a field without any is left out
 * @param units the symbols of the units chosen beside fields
 * @param reason why the meter is calibrated
 * @param buoyancy whether the buoyancy of the air is to be taken out
 * @param fills empty, plate and full masses and the water's temperature, one row a fill
 * @param points amount, its unit and the reading, one row a check point
 */
record CalibrationDraft(
        Map<CalibrationField, String> texts,
        Map<CalibrationField, String> units,
        MeterCalibration.Reason reason,
        boolean buoyancy,
        Grid fills,
        Grid points) {
    CalibrationDraft {
        texts = Map.copyOf(texts);
        units = Map.copyOf(units);
    }

    /** Returns an empty form in a unit system. */
    static CalibrationDraft empty(UnitSystem system) {
        Map<CalibrationField, String> units = new EnumMap<>(CalibrationField.class);
        for (CalibrationField mass : List.of(
                CalibrationField.FILL_MASS,
                CalibrationField.VESSEL_WATER,
                CalibrationField.COLUMN_VESSEL,
                CalibrationField.COLUMN_BOWL)) {
            units.put(mass, system.benchMass().symbol());
        }
        units.put(CalibrationField.CHAMBER, system.bowlVolume().symbol());
        units.put(CalibrationField.INITIAL_PRESSURE, system.pressure().symbol());
        units.put(CalibrationField.WORKING_PRESSURE, system.pressure().symbol());
        return new CalibrationDraft(
                Map.of(),
                units,
                MeterCalibration.Reason.ROUTINE,
                false,
                Grid.of("", "", "", ""),
                Grid.of("", CheckAmount.Unit.VESSELS.symbol(), ""));
    }

    /** Returns a saved calibration as it was typed. */
    static CalibrationDraft of(MeterCalibration saved, Numbers numbers, UnitSystem system) {
        CalibrationDraft draft = empty(system)
                .with(saved.reason())
                .with(CalibrationField.ID, saved.id().text())
                .with(CalibrationField.DATE, Days.show(saved.calibratedOn()))
                .with(CalibrationField.BY, saved.by())
                .with(CalibrationField.ELEVATION, shown(saved.elevationMetres(), numbers))
                .with(CalibrationField.REMARKS, saved.remarks());
        draft = saved.bowl().isPresent() ? draft.withBowl(saved.bowl().get(), numbers) : draft;
        draft = saved.dial().isPresent() ? draft.withDial(saved.dial().get(), numbers) : draft;
        return saved.column().isPresent() ? draft.withColumn(saved.column().get(), numbers) : draft;
    }

    private CalibrationDraft withBowl(BowlFills bowl, Numbers numbers) {
        Optional<BowlFill> first = bowl.fills().stream().findFirst();
        CalibrationDraft draft = first.map(fill ->
                        withUnit(CalibrationField.FILL_MASS, fill.full().unit().symbol()))
                .orElse(this)
                .withBuoyancy(bowl.buoyancyCorrected())
                .with(CalibrationField.AIR_TEMPERATURE, shown(bowl.airCelsius(), numbers))
                .with(CalibrationField.AIR_PRESSURE, shown(bowl.airKilopascals(), numbers))
                .with(CalibrationField.DIAMETER, shown(bowl.diameterMillimetres(), numbers))
                .with(CalibrationField.HEIGHT, shown(bowl.heightMillimetres(), numbers));
        Grid rows = draft.fills();
        String unit = draft.unit(CalibrationField.FILL_MASS);
        for (BowlFill fill : bowl.fills()) {
            rows = rows.plus(List.of(
                    inUnit(fill.empty(), unit, numbers),
                    inUnit(fill.plate(), unit, numbers),
                    inUnit(fill.full(), unit, numbers),
                    numbers.show(fill.waterCelsius())));
        }
        return draft.withFills(rows);
    }

    /** A mass in another unit than its table's carries its own. */
    private static String inUnit(Typed<?> typed, String unit, Numbers numbers) {
        String number = numbers.show(typed.number());
        return typed.unit().symbol().equals(unit)
                ? number
                : number + " " + typed.unit().symbol();
    }

    private CalibrationDraft withDial(DialCheck dial, Numbers numbers) {
        Grid rows = points;
        for (CheckPoint point : dial.points()) {
            rows = rows.plus(List.of(
                    numbers.show(point.amount().number()),
                    point.amount().unit().symbol(),
                    numbers.show(point.gaugePercent())));
        }
        return withPoints(rows)
                .withTyped(CalibrationField.VESSEL_WATER, dial.vesselWater(), numbers)
                .with(CalibrationField.WATER_TEMPERATURE, shown(dial.waterCelsius(), numbers))
                .with(CalibrationField.INITIAL_LINE, shown(dial.initialLine(), numbers))
                .with(CalibrationField.LEAK, shown(dial.leakMarks(), numbers))
                .withTyped(CalibrationField.CHAMBER, dial.chamber(), numbers)
                .withTyped(CalibrationField.INITIAL_PRESSURE, dial.initialPressure(), numbers);
    }

    private CalibrationDraft withColumn(ColumnCheck column, Numbers numbers) {
        return withTyped(CalibrationField.COLUMN_VESSEL, Optional.of(column.vesselWater()), numbers)
                .withTyped(CalibrationField.COLUMN_BOWL, Optional.of(column.bowlWater()), numbers)
                .with(CalibrationField.EXPANSION, numbers.show(column.expansionPercent()))
                .withTyped(CalibrationField.WORKING_PRESSURE, Optional.of(column.workingPressure()), numbers);
    }

    private static String shown(Optional<BigDecimal> typed, Numbers numbers) {
        return typed.map(numbers::show).orElse("");
    }

    private <Q> CalibrationDraft withTyped(CalibrationField field, Optional<Typed<Q>> typed, Numbers numbers) {
        return typed.map(known -> with(field, numbers.show(known.number()))
                        .withUnit(field, known.unit().symbol()))
                .orElse(this);
    }

    /** Returns what is typed in a field, empty when nothing is. */
    String text(CalibrationField field) {
        return texts.getOrDefault(field, "");
    }

    /** Returns the symbol of the unit chosen beside a field. */
    String unit(CalibrationField field) {
        return units.getOrDefault(field, "");
    }

    /** Returns whether anything is typed in a part's fields, such as {@code dial.}; its table is not looked at. */
    boolean hasTextOf(String part) {
        return texts.entrySet().stream()
                .anyMatch(
                        entry -> entry.getKey().isOf(part) && !entry.getValue().isBlank());
    }

    CalibrationDraft with(CalibrationField field, String text) {
        Map<CalibrationField, String> changed = new EnumMap<>(CalibrationField.class);
        changed.putAll(texts);
        if (text.isEmpty()) {
            changed.remove(field);
        } else {
            changed.put(field, text);
        }
        return new CalibrationDraft(changed, units, reason, buoyancy, fills, points);
    }

    CalibrationDraft withUnit(CalibrationField field, String symbol) {
        Map<CalibrationField, String> changed = new EnumMap<>(CalibrationField.class);
        changed.putAll(units);
        changed.put(field, symbol);
        return new CalibrationDraft(texts, changed, reason, buoyancy, fills, points);
    }

    CalibrationDraft with(MeterCalibration.Reason other) {
        return new CalibrationDraft(texts, units, other, buoyancy, fills, points);
    }

    CalibrationDraft withBuoyancy(boolean corrected) {
        return new CalibrationDraft(texts, units, reason, corrected, fills, points);
    }

    CalibrationDraft withFills(Grid rows) {
        return new CalibrationDraft(texts, units, reason, buoyancy, rows, points);
    }

    CalibrationDraft withPoints(Grid rows) {
        return new CalibrationDraft(texts, units, reason, buoyancy, fills, rows);
    }
}
