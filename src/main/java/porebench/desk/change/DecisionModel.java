package porebench.desk.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.form.DraftModel;
import porebench.desk.form.TypedDraft;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.evidence.change.ChangeDeciding;
import porebench.evidence.change.SourceChange;
import porebench.evidence.issue.KeptFactor;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.DecisionColumns;
import porebench.record.id.MixId;
import porebench.statistics.comparison.ComparisonVerdict;

/** What a person decides on the comparison that is shown, and what was decided before, without their window. */
final class DecisionModel extends DraftModel {
    static final List<Column<ChangeDecision, ?>> TYPED =
            List.of(DecisionColumns.CHOICE, DecisionColumns.MORE, DecisionColumns.REASON);

    private final DeskModel desk;
    private final ChangeModel change;
    private Optional<MixId> mix = Optional.empty();
    private Optional<SourceChange> of = Optional.empty();
    private boolean tried;

    /**
     * A decision that was made.
     *
     * @param decision the decision
     * @param since what happened since to what it rests on; empty while it stands as it was made
     */
    record Made(ChangeDecision decision, List<Problem> since) {}

    DecisionModel(ChangeModel change) {
        super(change.texts(), "decision.", TypedDraft.BLANK);
        this.desk = change.desk();
        this.change = change;
    }

    /** Turns to the comparison that is shown; what was begun for another mix is dropped, and what was not begun follows. */
    void follow() {
        boolean isOtherMix = !mix.equals(desk.selected());
        Optional<SourceChange> now = change.change();
        if (isOtherMix || !now.equals(of) && !history().isChanged()) {
            mix = desk.selected();
            of = now;
            begin();
        }
    }

    private void begin() {
        tried = false;
        history()
                .restart(of.map(shown ->
                                chosen(TypedDraft.BLANK, shown.comparison().verdict()))
                        .orElse(TypedDraft.BLANK));
    }

    private TypedDraft chosen(TypedDraft draft, ComparisonVerdict choice) {
        String more = choice == ComparisonVerdict.TEST_MORE
                ? of.flatMap(shown -> ChangeDeciding.proposed(shown.comparison()))
                        .map(String::valueOf)
                        .orElse("")
                : "";
        return draft.with(DecisionColumns.CHOICE, choice.symbol()).with(DecisionColumns.MORE, more);
    }

    @Override
    public void type(Column<?, ?> column, String text) {
        if (column == DecisionColumns.CHOICE && !text.equals(draft().text(column))) {
            update(step(column), chosen(draft(), choice(text).orElse(ComparisonVerdict.KEEP)));
        } else {
            super.type(column, text);
        }
    }

    private static Optional<ComparisonVerdict> choice(String symbol) {
        return List.of(ComparisonVerdict.values()).stream()
                .filter(one -> one.symbol().equals(symbol))
                .findFirst();
    }

    /** Returns whether there is a comparison to decide on. */
    boolean isOpen() {
        return change.change().isPresent();
    }

    /** Returns whether it is asked how many more trials are to be made. */
    boolean asksForMore() {
        return draft().text(DecisionColumns.CHOICE).equals(ComparisonVerdict.TEST_MORE.symbol());
    }

    /** Returns what is wrong or noteworthy about what is decided; what is only missing once it was tried. */
    List<Problem> problems() {
        return isOpen()
                ? attempt().problems().stream()
                        .filter(problem -> !problem.field().equals("decidedBy"))
                        .filter(problem -> tried || problem.kind() != Problem.Kind.NOT_YET)
                        .toList()
                : List.of();
    }

    private Answer<ChangeDecision> attempt() {
        Optional<Evidence> evidence = desk.evidence();
        Optional<SourceChange> compared = change.change();
        Optional<ComparisonVerdict> choice = choice(draft().text(DecisionColumns.CHOICE));
        if (evidence.isEmpty() || compared.isEmpty() || choice.isEmpty()) {
            return Answer.refused(List.of(Problem.missing("choice", words(DecisionColumns.CHOICE))));
        }
        List<Problem> problems = new ArrayList<>();
        Optional<Integer> more = more(problems);
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        return ChangeDeciding.decide(
                evidence.get(),
                compared.get(),
                new ChangeDeciding.Wish(
                        choice.get(), more, desk.tools().today(), desk.person(), draft().text(DecisionColumns.REASON)));
    }

    private Optional<Integer> more(List<Problem> problems) {
        String typed = draft().text(DecisionColumns.MORE).strip();
        if (!asksForMore() || typed.isEmpty()) {
            return Optional.empty();
        }
        if (typed.matches("[1-9][0-9]{0,3}")) {
            return Optional.of(Integer.valueOf(typed));
        }
        problems.add(Problem.notANumber("more", words(DecisionColumns.MORE), typed));
        return Optional.empty();
    }

    /**
     * Keeps the decision in the person's name.
     *
     * @param outcome hears why it was not kept; empty when it was
     */
    void keep(Outcome outcome) {
        tried = true;
        Answer<ChangeDecision> answer = attempt();
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
            return;
        }
        ChangeDecision decision = answer.value().get();
        // Who decides what the comparison says need not say why.
        String why = decision.reason().isEmpty() ? change.verdict() : decision.reason();
        desk.keep(List.of(Draft.of(decision)), why, outcome.first(this::begin));
    }

    /** Returns every decision of the mix, the last one first. */
    List<Made> made() {
        List<Made> made = desk.evidence()
                .map(evidence -> evidence.decisions().stream()
                        .map(Version::value)
                        .map(decision -> new Made(decision, DecisionChanges.since(evidence, decision)))
                        .collect(Collectors.toCollection(ArrayList::new)))
                .orElseGet(ArrayList::new);
        Collections.reverse(made);
        return made;
    }

    /** Returns what is decided, in words. */
    String choiceWords(ChangeDecision decision) {
        return texts().get(
                        "decided." + decision.choice().symbol(), decision.more().orElse(0));
    }

    /** Says what follows from the last decision; blank where nobody decided, or what it rests on is another one since. */
    String next() {
        List<Made> all = made();
        if (all.isEmpty() || !all.get(0).since().isEmpty()) {
            return "";
        }
        ChangeDecision last = all.get(0).decision();
        boolean canBeKept = desk.evidence()
                .filter(evidence -> last.change().after().keySet().stream()
                        .anyMatch(id -> KeptFactor.offered(evidence, id).isPresent()))
                .isPresent();
        return switch (last.choice()) {
            case KEEP ->
                texts().get(canBeKept ? "next.keep" : "next.keep-not", last.id().text());
            case REPLACE -> texts().get("next.replace");
            case TEST_MORE -> texts().get("next.test-more", last.more().orElse(0));
        };
    }

    @Override
    public Optional<LocalDate> today() {
        return Optional.of(desk.tools().today());
    }
}
