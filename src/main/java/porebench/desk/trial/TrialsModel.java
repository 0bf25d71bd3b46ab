package porebench.desk.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.evidence.JudgedDetermination;
import porebench.method.Texts;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/** The Trials page without its window: determinations, the table's rows, the entry form and an import under way. */
final class TrialsModel {
    static final String BUNDLE = "porebench.desk.trial.trial";

    private final DeskModel desk;
    private final Texts texts;
    private final DeterminationsModel determinations;
    private final BenchModel entry;
    private final StopModel stop;
    private Optional<KeptTrial> lastKept = Optional.empty();
    private final List<Runnable> listeners = new ArrayList<>();
    private Optional<MixId> mix = Optional.empty();
    private Optional<TrialId> selected = Optional.empty();

    TrialsModel(DeskModel desk) {
        this.desk = desk;
        this.texts = Texts.of(BUNDLE, desk.tools().locale());
        this.determinations = new DeterminationsModel(desk, texts);
        this.entry = new BenchModel(desk, determinations, texts);
        this.stop = new StopModel(desk, determinations, entry, texts);
        follow();
        desk.onChange(this::follow);
        entry.history().onChange(this::fire);
    }

    DeskModel desk() {
        return desk;
    }

    Texts texts() {
        return texts;
    }

    BenchModel entry() {
        return entry;
    }

    DeterminationsModel determinations() {
        return determinations;
    }

    StopModel stop() {
        return stop;
    }

    /**
     * The trial that was kept last from the form.
     *
     * @param mix its mix
     * @param factor its factor in %, as it was shown; empty where it has none
     */
    record KeptTrial(MixId mix, String trial, OptionalDouble factor) {}

    void noteKept(KeptTrial kept) {
        lastKept = Optional.of(kept);
        fire();
    }

    /** Returns the trial kept last from the form, as long as nothing was typed since and its mix is on view. */
    Optional<KeptTrial> lastKept() {
        return lastKept.filter(
                        kept -> desk.selected().filter(kept.mix()::equals).isPresent())
                .filter(kept -> !entry.history().isChanged());
    }

    private void follow() {
        if (!mix.equals(desk.selected())) {
            mix = desk.selected();
            selected = Optional.empty();
        }
        determinations.follow();
        entry.follow();
        fire();
    }

    /** Looks at another determination; a correction under way is of one of its trials and is left. */
    void choose(DeterminationsModel.Choice choice) {
        determinations.choose(choice.id());
        turned(Optional.empty());
    }

    /** Looks at a trial of some determination of the mix. */
    void lookAt(DeterminationId determination, TrialId trial) {
        if (!determinations.chosen().equals(Optional.of(determination))) {
            determinations.choose(determination);
            turned(Optional.of(trial));
        } else {
            selected = Optional.of(trial);
            fire();
        }
    }

    private void turned(Optional<TrialId> trial) {
        selected = trial;
        if (!entry.isNew()) {
            entry.turnToNew();
        }
        fire();
    }

    void begin(String purpose) {
        determinations.begin(purpose);
        turned(Optional.empty());
    }

    /** Returns the trials of the determination looked at, in the order made. */
    List<TrialRow> rows() {
        return determinations.judged().map(JudgedDetermination::trials).orElse(List.of()).stream()
                .map(judged -> new TrialRow(judged, desk.units(), desk.tools().numbers(), texts))
                .toList();
    }

    void select(Optional<TrialId> id) {
        if (!selected.equals(id)) {
            selected = id;
            fire();
        }
    }

    /** Returns the trial selected in the table. */
    Optional<TrialRow> selected() {
        return rows().stream().filter(row -> isSelected(row.id())).findFirst();
    }

    /** Tells the selected trial in sentences; nothing while none is selected. */
    List<String> story() {
        return selected()
                .flatMap(row -> desk.answer(
                                new Question.Versions<>(Trial.class, row.id().text()))
                        .map(versions -> new TrialStory(desk.tools(), texts, entry).of(row, versions)))
                .orElse(List.of());
    }

    boolean isSelected(TrialId id) {
        return selected.filter(id::equals).isPresent();
    }

    /** Strikes the selected trial out of the numbers, with a reason. */
    void strike(String reason, Outcome outcome) {
        change(trial -> trial.struck(reason), reason, outcome);
    }

    /** Lets the selected trial stand again, with a reason. */
    void restore(String reason, Outcome outcome) {
        change(Trial::standing, reason, outcome);
    }

    private void change(UnaryOperator<Trial> changed, String reason, Outcome outcome) {
        selected()
                .map(row -> row.judged().trial())
                .ifPresentOrElse(
                        one -> desk.keep(List.of(Draft.correcting(one, changed.apply(one.value()))), reason, outcome),
                        () -> outcome.take(List.of()));
    }

    /** Begins the correction of the selected trial. */
    void correct() {
        selected().ifPresent(row -> entry.correct(row.judged().trial()));
    }

    /** Calls back after every change of what the page shows. */
    void onChange(Runnable listener) {
        listeners.add(listener);
    }

    void fire() {
        List.copyOf(listeners).forEach(Runnable::run);
    }
}
