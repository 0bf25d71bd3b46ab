package porebench.desk.plan;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.desk.Settings;
import porebench.desk.form.Numbers;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.risk.RiskCheck;
import porebench.quantity.Symbolic;
import porebench.quantity.Typed;

/** What is typed beside the plan: for how many mixes there is room, how much spare, how loads differ. Remembered, not kept. */
final class PlanFields {
    private static final int MOST = 500;
    private static final int MOST_SPARE = 200;

    private final Texts texts;
    private final Numbers numbers;
    private final Settings settings;
    private final Map<Field, String> typed = new EnumMap<>(Field.class);
    private PlanAsked.Figures good = new PlanAsked.Figures(10, 10, OptionalDouble.empty());

    /** What is typed; the spread is the one of the page on what a wrong factor costs. */
    enum Field implements Symbolic {
        MOST("planMost", "10"),
        SPARE("planSpare", "10"),
        SPREAD("loadSpread", "");

        private final String remembered;
        private final String usual;

        Field(String remembered, String usual) {
            this.remembered = remembered;
            this.usual = usual;
        }
    }

    PlanFields(Texts texts, Numbers numbers, Settings settings) {
        this.texts = texts;
        this.numbers = numbers;
        this.settings = settings;
    }

    String text(Field field) {
        return Optional.ofNullable(typed.get(field))
                .orElseGet(() -> Typed.parseNumber(settings.get(field.remembered, field.usual))
                        .map(numbers::show)
                        .orElse(""));
    }

    void type(Field field, String text) {
        typed.put(field, text);
        // Another language has another decimal sign.
        settings.put(
                field.remembered, number(field).map(BigDecimal::toPlainString).orElse(""));
    }

    private Optional<BigDecimal> number(Field field) {
        return numbers.parse(text(field));
    }

    /** Returns what is wrong with what is typed; a spread that nobody typed is not wrong. */
    List<Problem> problems() {
        List<Problem> problems = new ArrayList<>();
        for (Field field : Field.values()) {
            boolean isOpen = field == Field.SPREAD && text(field).isBlank();
            if (number(field).isEmpty() && !isOpen) {
                problems.add(numbers.fault(field.symbol(), texts.get("name." + field.symbol()), text(field)));
            }
        }
        number(Field.MOST)
                .filter(most -> most.stripTrailingZeros().scale() > 0
                        || most.signum() <= 0
                        || most.compareTo(BigDecimal.valueOf(MOST)) > 0)
                .ifPresent(most -> problems.add(Problem.error(Field.MOST.symbol(), "plan.room", most, MOST)));
        number(Field.SPARE)
                .filter(spare -> spare.signum() < 0 || spare.compareTo(BigDecimal.valueOf(MOST_SPARE)) > 0)
                .ifPresent(spare -> problems.add(
                        Problem.error(Field.SPARE.symbol(), "command.spare-out-of-range", spare, MOST_SPARE)));
        number(Field.SPREAD)
                .ifPresent(spread -> problems.addAll(RiskCheck.check(BigDecimal.ONE, spread, BigDecimal.ZERO)));
        return problems;
    }

    /** Returns the figures as they were last right. */
    PlanAsked.Figures figures() {
        if (problems().isEmpty()) {
            good = new PlanAsked.Figures(
                    number(Field.MOST).orElseThrow().intValue(),
                    number(Field.SPARE).orElseThrow().doubleValue(),
                    number(Field.SPREAD)
                            .map(spread -> OptionalDouble.of(spread.doubleValue()))
                            .orElseGet(OptionalDouble::empty));
        }
        return good;
    }
}
