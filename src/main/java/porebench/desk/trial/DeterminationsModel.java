package porebench.desk.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.intake.TrialSet;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** Which determination of the selected mix is looked at, and which one a new trial joins. */
final class DeterminationsModel {
    private final DeskModel desk;
    private final Texts texts;
    private Optional<MixId> mix = Optional.empty();
    private Optional<DeterminationId> chosen = Optional.empty();
    private Optional<Determination> begun = Optional.empty();

    DeterminationsModel(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
    }

    /**
     * A determination to choose.
     *
     * @param id its name
     * @param words its name, day, trials and what became of it
     */
    record Choice(DeterminationId id, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /** Looks at what the desk shows now; another mix begins with its newest determination. */
    void follow() {
        if (!mix.equals(desk.selected())) {
            mix = desk.selected();
            chosen = Optional.empty();
            begun = Optional.empty();
        }
        if (begun.isPresent() && known(begun.get().id()).isPresent()) {
            chosen = Optional.of(begun.get().id());
            begun = Optional.empty();
        }
    }

    private Optional<JudgedDetermination> known(DeterminationId id) {
        return desk.evidence().flatMap(evidence -> evidence.determination(id));
    }

    /** Returns all determinations, the newest first, one that is only begun before them. */
    List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        desk.evidence()
                .ifPresent(
                        evidence -> evidence.determinations().forEach(judged -> choices.add(choice(evidence, judged))));
        begun.ifPresent(one -> choices.add(new Choice(
                one.id(),
                texts.get("determination.begun", one.id().text(), one.openedOn().toString()))));
        Collections.reverse(choices);
        return choices;
    }

    private Choice choice(Evidence evidence, JudgedDetermination judged) {
        Determination one = judged.determination().value();
        String fate = issueOf(evidence, one.id())
                .map(issue -> texts.get("determination.issued", Integer.toString(issue.revision())))
                .orElseGet(() -> texts.get(isOpen(evidence, one.id()) ? "determination.open" : "determination.left"));
        return new Choice(
                one.id(),
                texts.get(
                        "determination.choice",
                        one.id().text(),
                        one.openedOn().toString(),
                        Integer.toString(judged.trials().size()),
                        fate));
    }

    private static Optional<FactorIssue> issueOf(Evidence evidence, DeterminationId id) {
        return evidence.issues().stream()
                .map(Version::value)
                .filter(issue -> issue.isIssue() && issue.determinationId().equals(id))
                .reduce((earlier, later) -> later);
    }

    private static boolean isOpen(Evidence evidence, DeterminationId id) {
        return evidence.openDetermination()
                .filter(open -> open.determination().value().id().equals(id))
                .isPresent();
    }

    /** Returns the determination looked at; empty before the first. */
    Optional<DeterminationId> chosen() {
        return chosen.or(() -> begun.map(Determination::id))
                .or(() -> desk.evidence()
                        .flatMap(evidence -> evidence.determinations().stream().reduce((earlier, later) -> later))
                        .map(judged -> judged.determination().value().id()));
    }

    /** Looks at another determination. */
    void choose(DeterminationId id) {
        chosen = Optional.of(id);
    }

    /** Returns the determination looked at with its trials; empty when it has none yet. */
    Optional<JudgedDetermination> judged() {
        return chosen().flatMap(this::known);
    }

    /** Returns why the determination looked at is made; blank when nobody said so. */
    String purpose() {
        return judged().map(judged -> judged.determination().value())
                .or(() -> begun)
                .map(Determination::purpose)
                .orElse("");
    }

    /** Begins a new determination; it is kept together with its first trial. */
    void begin(String purpose) {
        desk.evidence().ifPresent(evidence -> {
            begun = Optional.of(fresh(evidence, purpose));
            chosen = Optional.empty();
        });
    }

    private Determination fresh(Evidence evidence, String purpose) {
        return new Determination(
                evidence.nextDeterminationId(),
                evidence.mix().value().id(),
                evidence.mix().number(),
                evidence.sourceVersions(),
                desk.tools().today(),
                purpose.strip(),
                desk.isTraining());
    }

    /** Returns the determination only begun, if there is one. */
    Optional<Determination> begun() {
        return begun;
    }

    /**
     * Returns the determination that a new trial joins: the one looked at if it is still open, or a new one before the
     * first; empty when a factor was issued from the one looked at.
     */
    Optional<Determination> joined() {
        Optional<Evidence> evidence = desk.evidence();
        Optional<DeterminationId> id = chosen();
        if (evidence.isEmpty()) {
            return Optional.empty();
        }
        if (id.isEmpty()) {
            return Optional.of(fresh(evidence.get(), ""));
        }
        if (begun.isPresent() && begun.get().id().equals(id.get())) {
            return begun;
        }
        return isOpen(evidence.get(), id.get())
                ? judged().map(judged -> judged.determination().value())
                : Optional.empty();
    }

    /** Returns what is wrong or doubtful about a trial beside the others of its determination. */
    List<Problem> checkCompany(Trial trial) {
        return known(trial.determinationId())
                .map(judged -> TrialSet.checkCompany(
                        trial,
                        judged.trials().stream().map(one -> one.trial().value()).toList()))
                .orElse(List.of());
    }

    /** Returns what must be kept before a trial of a determination can be: the determination, if it is new. */
    List<Draft> drafts(Determination joined) {
        return known(joined.id()).isPresent() ? List.of() : List.of(Draft.of(joined));
    }
}
