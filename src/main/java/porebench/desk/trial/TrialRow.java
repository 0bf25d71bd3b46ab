package porebench.desk.trial;

import java.util.Locale;
import java.util.Optional;
import porebench.chart.look.TrialPoint;
import porebench.desk.form.Moments;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.evidence.JudgedTrial;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Temperature;
import porebench.quantity.TemperatureUnit;

/**
 * One trial as a line of the table.
 *
 * @param judged the trial
 * @param units in which it is shown
 * @param numbers how numbers are written
 * @param texts the words
 */
record TrialRow(JudgedTrial judged, UnitSystem units, Numbers numbers, Texts texts) {
    private static final int FACTOR_DECIMALS = 2;

    /** The columns of the table; what decides about a trial comes first. */
    enum Column {
        TRIAL(180),
        FACTOR(95),
        STATE(110),
        DOUBTS(80),
        TESTED_AT(135),
        OPERATOR(120),
        METER(110),
        READING(110),
        WITHDRAWN(95),
        FINE(85),
        COARSE(85),
        SOAK(85),
        WATER(85),
        LEAK(60);

        private final int width;

        Column(int width) {
            this.width = width;
        }

        /** Returns the usual width at 100 %, in pixels. */
        int width() {
            return width;
        }

        /** Returns whether it holds numbers, which stand to the right. */
        boolean isNumber() {
            return switch (this) {
                case FACTOR, DOUBTS, READING, WITHDRAWN, FINE, COARSE, SOAK, WATER -> true;
                default -> false;
            };
        }

        String title(Texts texts, UnitSystem units) {
            return switch (this) {
                case FINE, COARSE -> texts.get(key(), units.benchMass().symbol());
                case WATER -> texts.get(key(), units.temperature().symbol());
                default -> texts.get(key());
            };
        }

        private String key() {
            return "column." + name().toLowerCase(Locale.ROOT);
        }
    }

    TrialPoint.State state() {
        return judged.isStruck()
                ? TrialPoint.State.STRUCK
                : judged.isVoid() ? TrialPoint.State.VOID : TrialPoint.State.COUNTED;
    }

    String stateWord() {
        return texts.get(
                switch (state()) {
                    case COUNTED -> "state.counted";
                    case STRUCK -> "state.struck";
                    case VOID -> "state.void";
                });
    }

    String cell(Column column) {
        Readings readings = judged.trial().value().readings();
        return switch (column) {
            case TRIAL -> judged.trial().value().id().text();
            case FACTOR -> factor();
            case STATE -> stateWord();
            case DOUBTS ->
                judged.doubts().isEmpty()
                        ? texts.get("cell.none")
                        : Integer.toString(judged.doubts().size());
            case TESTED_AT -> Moments.show(judged.trial().value().testedAt());
            case OPERATOR -> judged.trial().value().operator();
            case METER -> judged.trial().value().meterId().text();
            case READING -> reading(readings);
            case WITHDRAWN -> readings.withdrawal().map(this::withdrawn).orElseGet(this::none);
            case FINE ->
                readings.fine()
                        .map(mass -> Masses.typedIn(mass, units.benchMass(), numbers))
                        .orElseGet(this::none);
            case COARSE ->
                readings.coarse()
                        .map(mass -> Masses.typedIn(mass, units.benchMass(), numbers))
                        .orElseGet(this::none);
            case SOAK -> readings.soakMinutes().map(numbers::show).orElseGet(this::none);
            case WATER -> water(readings);
            case LEAK -> readings.leak() ? texts.get("trial.leak.yes") : texts.get("trial.leak.no");
        };
    }

    /** Returns the factor in % air; a sign of absence when there is none. */
    String factor() {
        return judged.factorPercent().isPresent()
                ? numbers.show(judged.factorPercent().getAsDouble(), FACTOR_DECIMALS)
                : none();
    }

    private String reading(Readings readings) {
        if (readings.meterType() == MeterType.B) {
            return readings.gaugePercent().map(numbers::show).orElseGet(this::none);
        }
        return readings.h1Percent().map(numbers::show).orElseGet(this::none)
                + " / "
                + readings.h2Percent().map(numbers::show).orElseGet(this::none);
    }

    private String withdrawn(Withdrawal withdrawal) {
        return numbers.show(withdrawal.number()) + " " + UnitWords.of(withdrawal.unit());
    }

    private String water(Readings readings) {
        return readings.waterCelsius()
                .map(celsius -> units.temperature() == TemperatureUnit.CELSIUS
                        ? numbers.show(celsius)
                        : numbers.show(units.temperature().in(new Temperature(celsius.doubleValue())), 1))
                .orElseGet(this::none);
    }

    private String none() {
        return texts.get("cell.none");
    }

    Optional<String> struckBecause() {
        return judged.trial().value().struckBecause();
    }
}
