package porebench.desk.budget;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import porebench.chart.factor.BudgetBars;
import porebench.desk.DeskModel;
import porebench.desk.QuotedUncertainty;
import porebench.desk.form.FileNames;
import porebench.desk.form.WorkedOut;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.budget.FieldBudgetInputs;
import porebench.evidence.budget.QuotedBudget;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.method.budget.Budget;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.Capability;
import porebench.method.budget.FieldBudget;
import porebench.method.budget.FieldInputs;
import porebench.method.budget.Omission;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** The section without its window: the budget of a determination's factor, and of a reading typed in. */
final class BudgetModel {
    private static final String BUNDLE = "porebench.desk.budget.budget";
    private static final double HIGHEST_READING = 100;

    private final DeskModel desk;
    private final Texts texts;
    private Optional<DeterminationId> chosen = Optional.empty();
    private final List<Runnable> listeners = new ArrayList<>();
    private final WorkedOut<QuotedUncertainty.Asked, Optional<BudgetResult>> quoted;
    private final WorkedOut<FieldInputs, BudgetResult> fieldQuoted;
    private String reading = "";
    private Optional<MeterId> meter = Optional.empty();

    BudgetModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        QuotedUncertainty uncertainty = new QuotedUncertainty();
        this.quoted = new WorkedOut<>(() -> desk.tools().tasks(), uncertainty::of, this::fire);
        this.fieldQuoted = new WorkedOut<>(
                () -> desk.tools().tasks(), inputs -> QuotedBudget.of(FieldBudget.of(inputs)), this::fire);
    }

    /** Runs something whenever a budget has been worked out. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    BudgetWords words() {
        return new BudgetWords(texts, desk.tools().numbers(), desk.units());
    }

    /** Turns to a determination of the selected mix. */
    void turnTo(Optional<DeterminationId> determination) {
        chosen = determination;
    }

    private Optional<JudgedDetermination> judged() {
        return chosen.flatMap(id -> desk.evidence().flatMap(evidence -> evidence.determination(id)));
    }

    /** Returns the budget of the factor; none while no trial counts, and while it is worked out. */
    Optional<BudgetResult> budget() {
        return asked().flatMap(quoted::to).flatMap(Function.identity());
    }

    private Optional<QuotedUncertainty.Asked> asked() {
        return judged().map(determination ->
                new QuotedUncertainty.Asked(desk.evidence().orElseThrow(), determination, desk.scatter()));
    }

    /** Returns the sentence that says how uncertain the factor is, and mostly from what. */
    String verdict() {
        if (asked().isPresent() && asked().flatMap(quoted::to).isEmpty()) {
            return texts.get(quoted.isFailed() ? "verdict.failed" : "verdict.doing");
        }
        return budget().map(one -> words().verdict("verdict", one)).orElseGet(() -> texts.get("verdict.none"));
    }

    /** Returns the lines below the table; none while no trial counts. */
    List<BudgetWords.Line> totals() {
        return budget().map(one -> words().totals(one, capability(one))).orElse(List.of());
    }

    private Capability capability(BudgetResult one) {
        Evidence evidence = desk.evidence().orElseThrow();
        Optional<BigDecimal> stated = evidence.mix().value().airTolerancePercent();
        return Capability.of(
                one,
                evidence.profile(),
                stated.map(BigDecimal::doubleValue).map(OptionalDouble::of).orElse(OptionalDouble.empty()));
    }

    /** Returns what is not in the budget. */
    List<Problem> omissions() {
        return budget().map(one -> problems(one.budget())).orElse(List.of());
    }

    private static List<Problem> problems(Budget budget) {
        return budget.omissions().stream().map(Omission::asProblem).toList();
    }

    /** Returns the bars of the plot, the largest first; none while no trial counts. */
    Optional<BudgetBars> bars() {
        return budget().map(one -> words().bars(one.budget()));
    }

    /** Returns the meters to choose from, those of the laboratory. */
    List<MeterId> meters() {
        return desk.evidence()
                .map(Evidence::stories)
                .map(stories -> stories.keySet().stream().sorted().toList())
                .orElse(List.of());
    }

    /** Takes what was typed as the reading in the field. */
    void typeReading(String typed) {
        reading = typed;
    }

    String reading() {
        return reading;
    }

    /** Takes the meter of the reading; none is one of which nothing is known. */
    void chooseMeter(Optional<MeterId> other) {
        meter = other;
    }

    /** Returns the meter of the reading, as far as the laboratory has it. */
    Optional<MeterId> meter() {
        return meter.filter(meters()::contains);
    }

    /** Returns what is wrong with the reading. */
    List<Problem> readingProblems() {
        if (reading.isBlank() || number().isPresent()) {
            return List.of();
        }
        return List.of(
                desk.tools().numbers().parse(reading).isPresent()
                        ? Problem.error("reading", "budget.reading-out-of-range", reading.strip(), HIGHEST_READING)
                        : Problem.error("reading", "budget.reading-not-a-number", reading.strip()));
    }

    private Optional<BigDecimal> number() {
        return desk.tools()
                .numbers()
                .parse(reading)
                .filter(number -> number.signum() >= 0 && number.doubleValue() <= HIGHEST_READING);
    }

    /** Returns the budget of the reading, corrected by the factor as it is reported; none while there is none. */
    Optional<BudgetResult> field() {
        return fieldInputs().flatMap(fieldQuoted::to);
    }

    private Optional<FieldInputs> fieldInputs() {
        return number().flatMap(number -> budget().flatMap(factor -> judged().flatMap(determination -> determination
                .summary()
                .map(summary -> new FieldBudgetInputs(
                                determination,
                                desk.evidence().orElseThrow().stories(),
                                desk.evidence().orElseThrow().profile(),
                                desk.evidence().orElseThrow().equipment(),
                                factor.budget())
                        .of(
                                number.doubleValue(),
                                meter(),
                                desk.tools().today(),
                                summary.reportedPercent().doubleValue(),
                                step())))));
    }

    private OptionalDouble step() {
        return desk.evidence()
                .map(evidence -> OptionalDouble.of(
                        evidence.profile().factorRounding().step().doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    /** Returns the sentence about the air of the reading and how uncertain it is; empty while there is no reading. */
    String fieldVerdict() {
        if (fieldInputs().isPresent() && field().isEmpty()) {
            return texts.get(fieldQuoted.isFailed() ? "verdict.failed" : "verdict.doing");
        }
        return field().map(one -> words().verdict("field.verdict", one)).orElse("");
    }

    /** Returns every part of the reading's uncertainty with its share; empty while there is no reading. */
    String fieldParts() {
        return field().map(one -> words().parts(one.budget())).orElse("");
    }

    /** Returns what is not in the budget of the reading. */
    List<Problem> fieldOmissions() {
        return field().map(one -> problems(one.budget())).orElse(List.of());
    }

    /** Returns the name a picture of the plot is saved under unless the person says otherwise. */
    String pictureName() {
        String id = chosen.map(DeterminationId::text).orElse("");
        return FileNames.part(id) + "-budget.png";
    }

    /** Returns which determination of which mix a picture of the plot shows. */
    String subject() {
        return texts.get(
                "picture.subject",
                desk.selected().map(MixId::text).orElse(""),
                chosen.map(DeterminationId::text).orElse(""));
    }
}
