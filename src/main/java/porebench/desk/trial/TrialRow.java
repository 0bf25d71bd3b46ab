package porebench.desk.trial;

import com.formdev.flatlaf.util.UIScale;
import java.math.BigDecimal;
import java.util.List;
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
import porebench.method.Digits;
import porebench.method.MeterType;
import porebench.method.Texts;
import porebench.method.trial.Readings;
import porebench.quantity.Mass;
import porebench.quantity.Temperature;
import porebench.quantity.TemperatureUnit;
import porebench.quantity.Typed;
import porebench.record.Trial;
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
    private static final int FACTOR_DECIMALS = Digits.AIR;
    private static final int MARK = 12;

    /** Returns the columns of the table; what decides about a trial comes first. Some headings name a unit of those shown. */
    static List<ShownColumn<TrialRow>> columns(Texts texts, Supplier<UnitSystem> units) {
        return List.of(
                new ShownColumn<>(
                        texts.get("column.trial"), 120, row -> row.id().text()),
                new ShownColumn<>(texts.get("column.factor"), 80, TrialRow::factor).number(),
                new ShownColumn<>(texts.get("column.state"), 100, TrialRow::stateWord)
                        .mark((row, selected) -> new StateShape(
                                row.state(), selected.orElseGet(() -> Looks.of(row.state())), UIScale.scale(MARK))),
                new ShownColumn<>(texts.get("column.doubts"), 65, TrialRow::doubts).number(),
                new ShownColumn<>(texts.get("column.reading"), 90, TrialRow::reading).number(),
                new ShownColumn<>(texts.get("column.withdrawn"), 90, TrialRow::withdrawn).number(),
                new ShownColumn<>(
                        texts.get("column.tested_at"),
                        135,
                        row -> Days.show(row.trial().testedAt())),
                new ShownColumn<>(
                        texts.get("column.operator"), 110, row -> row.trial().operator()),
                new ShownColumn<>(
                        texts.get("column.meter"),
                        90,
                        row -> row.trial().meterId().text()),
                new ShownColumn<TrialRow>(
                                () -> texts.get(
                                        "column.fine", units.get().benchMass().symbol()),
                                85,
                                row -> row.mass(row.readings().fine()))
                        .number(),
                new ShownColumn<TrialRow>(
                                () -> texts.get(
                                        "column.coarse", units.get().benchMass().symbol()),
                                85,
                                row -> row.mass(row.readings().coarse()))
                        .number(),
                new ShownColumn<TrialRow>(
                                texts.get("column.soak"),
                                85,
                                row -> row.typed(row.readings().soakMinutes()))
                        .number(),
                new ShownColumn<>(
                                () -> texts.get(
                                        "column.water",
                                        units.get().temperature().symbol()),
                                85,
                                TrialRow::water)
                        .number(),
                new ShownColumn<>(
                        texts.get("column.leak"),
                        60,
                        row -> texts.get(row.readings().leak() ? "trial.leak.yes" : "trial.leak.no")));
    }

    private Trial trial() {
        return judged.trial().value();
    }

    private Readings readings() {
        return trial().readings();
    }

    TrialId id() {
        return trial().id();
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

    /** Returns how many doubts there are about it; a sign of absence when there are none. */
    String doubts() {
        return judged.doubts().isEmpty()
                ? none()
                : Integer.toString(judged.doubts().size());
    }

    /** Returns the factor in % air; a sign of absence when there is none. */
    String factor() {
        return judged.factorPercent().isPresent()
                ? numbers.show(judged.factorPercent().getAsDouble(), FACTOR_DECIMALS)
                : none();
    }

    /** Returns what the gauge read, or the two heights of a Type A meter. */
    String reading() {
        return readings().meterType() == MeterType.B
                ? typed(readings().gaugePercent())
                : typed(readings().h1Percent()) + " / " + typed(readings().h2Percent());
    }

    private String typed(Optional<BigDecimal> number) {
        return number.map(numbers::show).orElseGet(this::none);
    }

    private String mass(Optional<Typed<Mass>> mass) {
        return mass.map(typed -> Masses.typedIn(typed, units.benchMass(), numbers))
                .orElseGet(this::none);
    }

    private String withdrawn() {
        return readings()
                .withdrawal()
                .map(withdrawal -> numbers.show(withdrawal.number()) + " "
                        + BenchModel.withdrawnUnit(withdrawal.unit().symbol()))
                .orElseGet(this::none);
    }

    private String water() {
        return units.temperature() == TemperatureUnit.CELSIUS
                ? typed(readings().waterCelsius())
                : readings()
                        .waterCelsius()
                        .map(celsius -> numbers.show(units.temperature().in(new Temperature(celsius.doubleValue())), 1))
                        .orElseGet(this::none);
    }

    private String none() {
        return texts.get("cell.none");
    }
}
