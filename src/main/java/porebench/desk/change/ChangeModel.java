package porebench.desk.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.chart.change.DifferenceShown;
import porebench.desk.DeskModel;
import porebench.desk.form.FileNames;
import porebench.desk.form.WorkedOut;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.change.Comparison;
import porebench.evidence.change.ComparisonText;
import porebench.evidence.change.SourceChange;
import porebench.method.Answer;
import porebench.method.Digits;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.ReadingSets;

/** The trials before the newest change of a source against those after it, without their window. */
final class ChangeModel {
    private static final String BUNDLE = "porebench.desk.change.change";

    private final DeskModel desk;
    private final Texts texts;
    private final ComparisonText words;
    private final List<Runnable> listeners = new ArrayList<>();
    private final WorkedOut<Asked, Answer<SourceChange>> compared;

    /** What is asked; of the same state of the lab book the answer is the same. */
    private record Asked(Evidence evidence, LaboratoryScatter laboratory) {
        Answer<SourceChange> answer() {
            return SourceChange.of(evidence, laboratory);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Asked asked && asked.evidence == evidence && asked.laboratory == laboratory;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(evidence);
        }
    }

    /**
     * A figure of one side.
     *
     * @param name what it is
     * @param value the figure with its unit
     */
    record Line(String name, String value) {}

    ChangeModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.words = ComparisonText.in(desk.tools().locale());
        this.compared = new WorkedOut<>(() -> desk.tools().tasks(), Asked::answer, this::fire);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    /** Runs something whenever a comparison has been worked out. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    private void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }

    private Optional<Answer<SourceChange>> answer() {
        return desk.evidence().flatMap(evidence -> compared.to(new Asked(evidence, desk.scatter())));
    }

    /** Returns whether there is anything to say: a source of the mix changed since one of its determinations. */
    boolean isShown() {
        return desk.evidence().filter(SourceChange::happened).isPresent();
    }

    /** Returns what the trials say; empty while it is worked out, and where they cannot be compared. */
    Optional<SourceChange> change() {
        return answer().flatMap(Answer::value);
    }

    private Optional<Comparison> comparison() {
        return change().map(SourceChange::comparison);
    }

    /** Returns the sentence of the verdict, or why there is none. */
    String verdict() {
        if (desk.evidence().isPresent() && answer().isEmpty()) {
            return texts.get(compared.isFailed() ? "verdict.failed" : "verdict.doing");
        }
        return comparison()
                .map(words::say)
                .orElseGet(() -> problems()
                        .filter(Problem::isError)
                        .map(desk.tools().problemText()::say)
                        .collect(Collectors.joining(" ")));
    }

    private Stream<Problem> problems() {
        return answer().map(Answer::problems).orElse(List.of()).stream();
    }

    /** Returns what the verdict rests on. */
    List<String> reasons() {
        return comparison().map(words::reasons).orElse(List.of());
    }

    /** Returns what a reader of the figures must know besides. */
    List<Problem> doubts() {
        return problems().filter(problem -> !problem.isError()).toList();
    }

    Optional<DifferenceShown> difference() {
        return comparison()
                .map(one -> new DifferenceShown(
                        one.found().difference(),
                        one.found().halfWidth(),
                        (one.equivalence().high() - one.equivalence().low()) / 2,
                        one.marginPercent()));
    }

    /** Returns what was compared, one side after the other. */
    List<Line> lines() {
        return change().map(this::lines).orElse(List.of());
    }

    private List<Line> lines(SourceChange change) {
        return List.of(
                new Line(
                        texts.get("line.sources"),
                        change.sources().stream().map(SourceId::text).collect(Collectors.joining(", "))),
                side("line.before", change.comparison().found().before(), change.before()),
                side("line.after", change.comparison().found().after(), change.after()));
    }

    private Line side(String key, ReadingSets side, List<DeterminationId> made) {
        return new Line(
                texts.get(key),
                texts.get(
                        "line.side",
                        desk.tools().numbers().show(side.mean(), Digits.SCATTER),
                        side.readings(),
                        made.stream().map(DeterminationId::text).collect(Collectors.joining(", "))));
    }

    /** Returns by how much the air is seen too high where the old factor is kept, in % air; empty while that is not known. */
    OptionalDouble moved() {
        return comparison()
                .map(one -> OptionalDouble.of(one.found().difference()))
                .orElse(OptionalDouble.empty());
    }

    /** Returns the mix, for the title of a picture. */
    String subject() {
        return desk.selected().map(MixId::text).orElse("");
    }

    /** Returns the name a picture of a plot is saved under unless the person says otherwise. */
    String pictureName(String kind) {
        return FileNames.part(subject()) + "-" + kind + ".png";
    }
}
