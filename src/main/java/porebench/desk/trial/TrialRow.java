package porebench.desk.trial;

import com.formdev.flatlaf.util.UIScale;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.chart.look.StateShape;
import porebench.chart.look.TrialPoint;
import porebench.desk.Looks;
import porebench.desk.form.Days;
import porebench.desk.form.Numbers;
import porebench.desk.form.UnitSystem;
import porebench.desk.table.ShownColumn;
import porebench.evidence.JudgedTrial;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.record.id.TrialId;

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
    private static final int MARK = 12;

    /** The columns of the table; what decides about a trial comes first. */
    enum Column {
        TRIAL(180, false),
        FACTOR(95, true),
        STATE(110, false),
        DOUBTS(80, true),
        TESTED_AT(135, false),
        OPERATOR(120, false),
        METER(110, false),
        READING(110, true),
        WITHDRAWN(95, true),
        FINE(85, true),
        COARSE(85, true),
        SOAK(85, true),
        WATER(85, true),
        LEAK(60, false);

        private final int width;
        private final boolean isNumber;

        Column(int width, boolean isNumber) {
            this.width = width;
            this.isNumber = isNumber;
        }

        /** Returns the column as the table shows it; its heading may name a unit of the units shown now. */
        ShownColumn<TrialRow> shown(Texts texts, Supplier<UnitSystem> units) {
            ShownColumn<TrialRow> shown =
                    new ShownColumn<>(() -> title(texts, units.get()), width, row -> row.cell(this));
            if (this == STATE) {
                shown.mark((row, selected) -> new StateShape(
                        row.state(), selected.orElseGet(() -> Looks.of(row.state())), UIScale.scale(MARK)));
            }
            return isNumber ? shown.number() : shown;
        }

        private String title(Texts texts, UnitSystem units) {
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

    TrialId id() {
        return judged.trial().value().id();
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
            case TRIAL -> id().text();
            case FACTOR -> factor();
            case STATE -> stateWord();
            case DOUBTS ->
                judged.doubts().isEmpty()
                        ? texts.get("cell.none")
                        : Integer.toString(judged.doubts().size());
            case TESTED_AT -> Days.show(judged.trial().value().testedAt());
            case OPERATOR -> judged.trial().value().operator();
            case METER -> judged.trial().value().meterId().text();
            case READING -> reading(readings);
            case WITHDRAWN -> readings.withdrawal().map(this::withdrawn).orElseGet(this::none);
            case FINE -> mass(readings.fine());
            case COARSE -> mass(readings.coarse());
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

    private String mass(Optional<Typed<Mass>> mass) {
        return mass.map(typed -> Masses.typedIn(typed, units.benchMass(), numbers))
                .orElseGet(this::none);
    }

    private String withdrawn(Withdrawal withdrawal) {
        return numbers.show(withdrawal.number()) + " "
                + BenchModel.withdrawnUnit(withdrawal.unit().symbol());
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
}
