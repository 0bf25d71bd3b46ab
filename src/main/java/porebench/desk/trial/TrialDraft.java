package porebench.desk.trial;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.MassUnit;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.record.Trial;

/**
 * A trial as it stands in the entry form: what was typed, field by field.
 *
 * @param texts what was typed; a field that is missing is empty
 */
record TrialDraft(Map<TrialField, String> texts) {
    static final String LEAKED = "yes";

    TrialDraft {
        texts = Map.copyOf(texts);
    }

    String text(TrialField field) {
        return texts.getOrDefault(field, "");
    }

    TrialDraft with(TrialField field, String text) {
        Map<TrialField, String> changed = new EnumMap<>(TrialField.class);
        changed.putAll(texts);
        if (text.isEmpty()) {
            changed.remove(field);
        } else {
            changed.put(field, text);
        }
        return new TrialDraft(changed);
    }

    boolean leaked() {
        return text(TrialField.LEAK).equals(LEAKED);
    }

    MassUnit massUnit() {
        return MassUnit.valueOf(text(TrialField.MASS_UNIT));
    }

    TemperatureUnit waterUnit() {
        return TemperatureUnit.valueOf(text(TrialField.WATER_UNIT));
    }

    Withdrawal.Unit withdrawnUnit() {
        return Withdrawal.Unit.valueOf(text(TrialField.WITHDRAWN_UNIT));
    }

    /** Returns a saved trial as it would be typed, digits and units as they were. */
    static TrialDraft of(Trial trial, Numbers numbers) {
        Readings readings = trial.readings();
        Optional<MassUnit> unit = readings.fine()
                .or(readings::coarse)
                .map(Typed::unit)
                .filter(MassUnit.class::isInstance)
                .map(MassUnit.class::cast);
        MassUnit massUnit = unit.orElse(MassUnit.GRAM);
        TrialDraft draft = new TrialDraft(Map.of())
                .with(TrialField.ID, trial.id().text())
                .with(TrialField.TESTED_AT, Moments.show(trial.testedAt()))
                .with(TrialField.OPERATOR, trial.operator())
                .with(TrialField.METER, trial.meterId().text())
                .with(
                        TrialField.ELEVATION,
                        trial.elevationMetres().map(numbers::show).orElse(""))
                .with(TrialField.MASS_UNIT, massUnit.name())
                .with(
                        TrialField.FINE,
                        readings.fine()
                                .map(m -> Masses.typedIn(m, massUnit, numbers))
                                .orElse(""))
                .with(
                        TrialField.COARSE,
                        readings.coarse()
                                .map(m -> Masses.typedIn(m, massUnit, numbers))
                                .orElse(""))
                .with(TrialField.WATER_UNIT, TemperatureUnit.CELSIUS.name())
                .with(TrialField.LEAK, readings.leak() ? LEAKED : "")
                .with(TrialField.REMARKS, trial.remarks())
                .with(
                        TrialField.WITHDRAWN_UNIT,
                        readings.withdrawal()
                                .map(Withdrawal::unit)
                                .orElse(Withdrawal.Unit.MILLILITRE)
                                .name());
        draft = draft.with(
                        TrialField.SOAK,
                        readings.soakMinutes().map(numbers::show).orElse(""))
                .with(
                        TrialField.WATER,
                        readings.waterCelsius().map(numbers::show).orElse(""))
                .with(
                        TrialField.WITHDRAWN,
                        readings.withdrawal().map(w -> numbers.show(w.number())).orElse(""));
        return draft.with(
                        TrialField.GAUGE,
                        readings.gaugePercent().map(numbers::show).orElse(""))
                .with(TrialField.H1, readings.h1Percent().map(numbers::show).orElse(""))
                .with(TrialField.H2, readings.h2Percent().map(numbers::show).orElse(""));
    }
}
