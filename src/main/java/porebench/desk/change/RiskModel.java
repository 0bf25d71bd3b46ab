package porebench.desk.change;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.change.RiskByError;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.form.WorkedOut;
import porebench.evidence.Evidence;
import porebench.method.Digits;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.risk.AirLimits;
import porebench.method.risk.LoadRisk;
import porebench.method.risk.Loads;
import porebench.method.risk.RiskCheck;
import porebench.method.risk.RiskCurve;
import porebench.quantity.Symbolic;
import porebench.quantity.Typed;
import porebench.record.id.MixId;

/** What an error of the factor does to the loads of a mix, without its window: typed figures, the sentence, the curve. */
final class RiskModel {
    private static final String SPREAD_KEPT = "loadSpread";
    private static final double PER_CENT = 100;

    private final DeskModel desk;
    private final Settings settings;
    private final Texts texts;
    private final ChangeModel change;
    private final Map<Field, String> typed = new EnumMap<>(Field.class);
    private final List<Runnable> listeners = new ArrayList<>();
    private final WorkedOut<Asked, RiskByError> drawn;
    private Optional<MixId> mix = Optional.empty();

    /** What is typed. */
    enum Field implements Symbolic {
        TARGET,
        TOLERANCE,
        SPREAD,
        READING_SPREAD,
        ERROR
    }

    /** What is asked. */
    private record Asked(AirLimits limits, Loads loads, double errorPercent) {
        RiskByError answer() {
            return new RiskByError(
                    RiskCurve.of(limits, loads, RiskCurve.farthest(limits, errorPercent)),
                    errorPercent,
                    LoadRisk.of(limits, loads, errorPercent));
        }
    }

    /**
     * Makes it.
     *
     * @param change tells by how much a factor moved
     * @param settings where the spread of the laboratory's loads is remembered
     */
    RiskModel(ChangeModel change, Settings settings) {
        this.desk = change.desk();
        this.change = change;
        this.settings = settings;
        this.texts = change.texts();
        this.drawn = new WorkedOut<>(
                () -> desk.tools().tasks(),
                Asked::answer,
                () -> List.copyOf(listeners).forEach(Runnable::run));
    }

    /** Runs something whenever a curve has been worked out. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    /** Turns to the mix that is selected; of another one nothing is typed yet. */
    void follow() {
        if (!mix.equals(desk.selected())) {
            mix = desk.selected();
            typed.clear();
        }
    }

    void type(Field field, String text) {
        if (!text.equals(text(field))) {
            typed.put(field, text);
            if (field == Field.SPREAD) {
                // Another language has another decimal sign.
                settings.put(
                        SPREAD_KEPT,
                        number(field).map(BigDecimal::toPlainString).orElse(""));
            }
        }
    }

    /** Returns what stands in a field: what was typed, else what the mix, its profile or the comparison say. */
    String text(Field field) {
        return Optional.ofNullable(typed.get(field))
                .orElseGet(() ->
                        desk.evidence().map(evidence -> usual(field, evidence)).orElse(""));
    }

    private String usual(Field field, Evidence evidence) {
        return switch (field) {
            case TARGET -> shown(evidence.mix().value().batch().targetAirPercent());
            case TOLERANCE ->
                shown(evidence.mix()
                        .value()
                        .airTolerancePercent()
                        .orElseGet(() -> BigDecimal.valueOf(evidence.profile().number(FigureName.AIR_TOLERANCE))));
            case SPREAD ->
                Typed.parseNumber(settings.get(SPREAD_KEPT, ""))
                        .map(this::shown)
                        .orElse("");
            case READING_SPREAD -> shown(BigDecimal.valueOf(evidence.profile().number(FigureName.FIELD_SCATTER)));
            case ERROR -> error(evidence);
        };
    }

    private String error(Evidence evidence) {
        OptionalDouble moved = change.moved();
        return moved.isPresent()
                ? desk.tools().numbers().show(moved.getAsDouble(), Digits.AIR)
                : shown(evidence.profile().factorRounding().step().divide(BigDecimal.valueOf(2)));
    }

    private String shown(BigDecimal number) {
        return desk.tools().numbers().show(number);
    }

    private Optional<BigDecimal> number(Field field) {
        return desk.tools().numbers().parse(text(field));
    }

    /** Returns what is wrong with what is typed, the field of each its symbol; a spread that is not typed yet is not wrong. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        for (Field field : Field.values()) {
            boolean isOpen = field == Field.SPREAD && text(field).isBlank();
            if (number(field).isEmpty() && !isOpen) {
                problems.add(
                        desk.tools().numbers().fault(field.symbol(), texts.get("name." + field.symbol()), text(field)));
            }
        }
        if (problems.isEmpty()) {
            problems.addAll(RiskCheck.check(
                    number(Field.TOLERANCE).orElseThrow(),
                    number(Field.SPREAD).orElse(BigDecimal.ZERO),
                    number(Field.READING_SPREAD).orElseThrow()));
        }
        return problems;
    }

    private Optional<Asked> asked() {
        if (desk.evidence().isEmpty()
                || !problems().isEmpty()
                || number(Field.SPREAD).isEmpty()) {
            return Optional.empty();
        }
        double target = value(Field.TARGET);
        return Optional.of(new Asked(
                new AirLimits(target, value(Field.TOLERANCE)),
                new Loads(target, value(Field.SPREAD), value(Field.READING_SPREAD)),
                value(Field.ERROR)));
    }

    private double value(Field field) {
        return number(field).orElseThrow().doubleValue();
    }

    /** Returns the curve; empty while something is wanting, wrong or worked out. */
    Optional<RiskByError> curve() {
        return asked().flatMap(drawn::to);
    }

    /** Says what the error does, or what is still to be typed. */
    String sentence() {
        if (number(Field.SPREAD).isEmpty() && problems().isEmpty()) {
            return texts.get("risk.spread-wanted");
        }
        return curve().map(shown -> texts.get(
                        "risk.sentence",
                        desk.tools().numbers().show(shown.errorPercent(), Digits.AIR),
                        desk.tools().numbers().show(PER_CENT * shown.risk().wronglyPassed(), Digits.AIR),
                        desk.tools().numbers().show(PER_CENT * shown.risk().wronglyFailed(), Digits.AIR)))
                .orElse("");
    }
}
