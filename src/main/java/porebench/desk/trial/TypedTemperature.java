package porebench.desk.trial;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.quantity.TemperatureUnit;
import porebench.record.column.TrialColumns;

/** The temperature of the water, typed in either unit. */
final class TypedTemperature {
    /** The symbols of the units it may be typed in. */
    static final List<String> UNITS =
            Stream.of(TemperatureUnit.values()).map(TemperatureUnit::symbol).toList();

    /** Degrees Fahrenheit to a tenth come back the same from degrees Celsius to a hundredth. */
    private static final int CELSIUS_DECIMALS = 2;

    private TypedTemperature() {}

    /** Returns a draft with its temperature in degrees Celsius; what is no number stays as it is. */
    static TypedDraft inCelsius(TypedDraft typed, Numbers numbers) {
        TypedDraft draft = typed.parted(TrialColumns.WATER, UNITS, numbers);
        if (!draft.unit(TrialColumns.WATER).equals(TemperatureUnit.FAHRENHEIT.symbol())) {
            return draft;
        }
        return numbers.parse(draft.text(TrialColumns.WATER))
                .map(fahrenheit -> BigDecimal.valueOf(TemperatureUnit.FAHRENHEIT
                                .of(fahrenheit.doubleValue())
                                .celsius())
                        .setScale(CELSIUS_DECIMALS, RoundingMode.HALF_EVEN))
                .map(celsius -> draft.with(TrialColumns.WATER, numbers.show(celsius)))
                .orElse(draft);
    }
}
