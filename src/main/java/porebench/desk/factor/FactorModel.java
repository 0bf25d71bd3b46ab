package porebench.desk.factor;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.DeskModel;
import porebench.desk.KeptDraft;
import porebench.desk.LiveDraft;
import porebench.desk.Outcome;
import porebench.desk.form.DraftModel;
import porebench.desk.form.TypedDraft;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.evidence.issue.Verifying;
import porebench.evidence.paper.FactorCard;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.FactorIssueColumns;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/** The factor of the selected mix: the issue being prepared, its history, and the card of one revision. */
final class FactorModel extends DraftModel {
    static final Column<FactorIssue, DeterminationId> DETERMINATION =
            FactorIssueColumns.DETERMINATION.called("determination");
    private static final String DOUBT = "doubt.";

    private final DeskModel desk;
    private final LiveDraft live;
    private Optional<MixId> shown = Optional.empty();
    private int shownRevision;
    private int knownSteps;
    private boolean tried;
    private boolean isNext;
    private final LookedCard card;
    private final ProposalModel proposal;
    private final KeptChoice kept;

    FactorModel(DeskModel desk) {
        super(Texts.of("porebench.desk.factor.factor", desk.tools().locale()), "form.", TypedDraft.BLANK);
        this.desk = desk;
        this.proposal = new ProposalModel(desk, texts());
        this.card = new LookedCard(desk);
        this.kept = new KeptChoice(desk, texts());
        history().onChange(this::readNextCard);
        this.live = new LiveDraft(desk, history(), List.of(), KeptDraft::ofNew);
        follow();
    }

    @Override
    public String step(Column<?, ?> column) {
        boolean isDoubt = column.field().startsWith(DOUBT);
        return column == KeptChoice.COLUMN || isDoubt
                ? texts().get(isDoubt ? "step.doubt" : "step.kept")
                : super.step(column);
    }

    /** Takes a draft that a person changed; the doubts of another determination are others, so that none is ticked. */
    @Override
    public void update(String label, TypedDraft changed) {
        boolean isOther = !changed.text(DETERMINATION).equals(draft().text(DETERMINATION));
        isNext = true;
        super.update(label, isOther ? changed.without(DOUBT) : changed);
    }

    @Override
    public boolean isChosen(Column<?, ?> column) {
        return column == DETERMINATION;
    }

    @Override
    public List<String> choices(Column<?, ?> column) {
        return determinations().stream().map(FactorModel::id).toList();
    }

    @Override
    public String choiceWords(Column<?, ?> column, String id) {
        return known(id)
                .map(judged -> texts().get(
                                "form.determination.item",
                                id,
                                judged.determination().value().openedOn().toString(),
                                Integer.toString(judged.counted())))
                .orElse(id);
    }

    @Override
    public boolean isFixed(Column<?, ?> column) {
        return column == DETERMINATION && determinations().isEmpty();
    }

    /** Returns the column in which a doubt is ticked. */
    static Column<FactorIssue, Boolean> taken(IssueDoubt doubt) {
        return Column.<FactorIssue>mark("taken", any -> false).called(DOUBT + doubt.key());
    }

    /** Returns nothing beside the boxes: what is ticked breaks its lines, and stands in a place of its own. */
    @Override
    public String tickWords(Column<?, ?> column) {
        return "";
    }

    /** Says which factor a decision keeps; blank where none does on the chosen determination. */
    String keptWords() {
        return kept.words(chosen());
    }

    private Optional<JudgedDetermination> known(String id) {
        return determinations().stream().filter(judged -> id(judged).equals(id)).findFirst();
    }

    static String id(JudgedDetermination judged) {
        return judged.determination().value().id().text();
    }

    /** Turns to what the desk looks at; each mix has a draft of its own. */
    void follow() {
        int steps = desk.evidence().map(FactorModel::steps).orElse(0);
        boolean otherMix = !desk.selected().equals(shown) || live.isOfAnotherBook();
        boolean newRevision = !otherMix && steps != knownSteps;
        boolean begins = otherMix || newRevision || !history().isChanged();
        shown = desk.selected();
        knownSteps = steps;
        if (otherMix || newRevision) {
            shownRevision = desk.evidence()
                    .flatMap(Evidence::newestIssue)
                    .map(FactorIssue::revision)
                    .orElse(0);
            isNext = desk.evidence()
                    .map(NextRevision::of)
                    .filter(NextRevision::isAwaited)
                    .isPresent();
        }
        if (otherMix) {
            live.leave();
        }
        if (begins) {
            begin();
        }
        if (otherMix) {
            shown.ifPresent(mix -> live.goOn("issue/" + mix.text()));
        }
        readCard();
    }

    /** Returns a number that is another after every revision and every step of a draft. */
    private static int steps(Evidence evidence) {
        return evidence.issues().size()
                + evidence.proposals().stream().mapToInt(Version::number).sum();
    }

    /** Returns the draft that is open, with its steps. */
    ProposalModel proposal() {
        return proposal;
    }

    /** Begins the draft of the next revision anew. */
    void begin() {
        tried = false;
        TypedDraft fresh = desk.evidence()
                .map(evidence -> NextRevision.of(evidence).draft(desk.tools().today()))
                .orElse(TypedDraft.BLANK);
        if (!fresh.equals(draft()) || history().isChanged()) {
            history().restart(fresh);
        }
    }

    List<JudgedDetermination> determinations() {
        return desk.evidence().map(Evidence::determinations).orElse(List.of());
    }

    /** Returns the determination chosen for the next revision. */
    Optional<JudgedDetermination> chosen() {
        return known(draft().text(DETERMINATION));
    }

    /** Returns what is wrong or doubtful about the issue being prepared; what is only missing once it was tried. */
    List<Problem> problems() {
        List<Problem> ticked = doubts().stream().map(IssueDoubt::asSaid).toList();
        return attempt().problems().stream()
                .filter(problem -> !problem.field().equals("issuedBy"))
                .filter(problem -> tried || problem.kind() != Problem.Kind.NOT_YET)
                .filter(problem -> !ticked.contains(problem))
                .toList();
    }

    /** Returns the decision for the group for which the mix is tested; what is missing is said from now on. */
    Optional<Issuing.Decision> deciding() {
        tried = true;
        return decision();
    }

    /** Returns the doubts about the chosen determination, each to be ticked by whoever takes it on. */
    List<IssueDoubt> doubts() {
        return desk.evidence()
                .flatMap(known -> chosen().map(judged -> Issuing.doubts(
                        known, desk.scatter(), judged.determination().value().id())))
                .orElse(List.of());
    }

    /** Returns whether the issue could be kept, whoever issues it. */
    boolean canIssue() {
        return desk.evidence().isPresent()
                && attempt().problems().stream()
                        .filter(Problem::isError)
                        .allMatch(problem -> problem.kind() == Problem.Kind.NOT_YET);
    }

    private Answer<List<Draft>> attempt() {
        List<Problem> problems = typed().problems();
        return desk.evidence().isPresent() && !problems.isEmpty()
                ? Answer.refused(problems)
                : proposal.deciding(decision());
    }

    private TypedDecision typed() {
        return new TypedDecision(draft(), chosen(), desk.person(), takingOn());
    }

    /** Returns what is decided in the form; empty while it is no decision yet. */
    private Optional<Issuing.Decision> decision() {
        return typed().decision()
                .map(decision ->
                        decision.asDecided(kept.offered(chosen()).filter(any -> draft().isYes(KeptChoice.COLUMN))));
    }

    private Optional<TakingOn> takingOn() {
        String who = draft().text(FactorIssueColumns.OVERRIDE_BY);
        String why = draft().text(FactorIssueColumns.OVERRIDE_REASON);
        List<IssueDoubt> doubts = doubts();
        List<IssueDoubt> taken =
                doubts.stream().filter(doubt -> draft().isYes(taken(doubt))).toList();
        boolean isBegun = !who.isBlank() || !why.isBlank() || !taken.isEmpty();
        return doubts.isEmpty() || !isBegun
                ? Optional.empty()
                : Optional.of(TakingOn.all(who, why, taken, desk.tools().problemText()::say));
    }

    /** Returns whether somebody must take doubts on by name before a factor can be issued. */
    boolean needsOverride() {
        return !doubts().isEmpty();
    }

    /** Returns the revision that came in from a file and may be confirmed on the chosen determination. */
    Optional<Version<FactorIssue>> confirmable() {
        return desk.evidence()
                .flatMap(known -> known.issues().stream().reduce((earlier, later) -> later))
                .filter(newest -> newest.value().isIssue() && newest.value().origin() == FactorOrigin.IMPORTED)
                .filter(newest -> newest.value().determinationId().text().equals(draft().text(DETERMINATION)));
    }

    /**
     * Confirms the revision that came in from a file, with the reason and the doubts of the form.
     *
     * @param outcome hears why it was not confirmed; empty when it was
     */
    void confirm(Outcome outcome) {
        tried = true;
        Version<FactorIssue> version = confirmable().orElseThrow();
        String reason = draft().text(FactorIssueColumns.REASON);
        Answer<FactorIssue> answer = Verifying.confirm(
                desk.evidence().orElseThrow(), desk.scatter(), version, desk.person(), reason, takingOn());
        keep(answer, made -> Draft.correcting(version, made), reason.strip(), outcome);
    }

    private void keep(Answer<FactorIssue> answer, Function<FactorIssue, Draft> draft, String why, Outcome outcome) {
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
        } else {
            Stating.keep(desk, texts(), List.of(draft.apply(answer.value().get())), why, outcome);
        }
    }

    /**
     * Issues the next revision, or keeps its draft where several people bring it in force.
     *
     * @param outcome hears why nothing was issued; empty when it was
     */
    void issue(Outcome outcome) {
        tried = true;
        Answer<List<Draft>> answer = attempt();
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
        } else {
            String why = draft().text(FactorIssueColumns.REASON).strip();
            Stating.keep(desk, texts(), answer.value().get(), why, outcome);
        }
    }

    /** Withdraws the factor from today on; the outcome hears why it was not withdrawn. */
    void withdraw(String reason, Outcome outcome) {
        Answer<FactorIssue> answer =
                Issuing.withdraw(desk.evidence().orElseThrow(), desk.tools().today(), desk.person(), reason);
        keep(answer, Draft::of, reason, outcome);
    }

    /** Returns whether there is a factor that could be withdrawn. */
    boolean canWithdraw() {
        return desk.evidence()
                .flatMap(Evidence::newestIssue)
                .filter(FactorIssue::isIssue)
                .isPresent();
    }

    /** Returns how it stands with the factor today. */
    Optional<FactorState> state() {
        return desk.evidence().map(known -> known.stateAt(desk.tools().now()));
    }

    /** Returns the revision in force today. */
    Optional<FactorIssue> inForce() {
        return desk.evidence().flatMap(known -> known.inForceAt(desk.tools().now()));
    }

    List<FactorIssue> revisions() {
        return desk.evidence()
                .map(known -> known.issues().stream().map(Version::value).toList())
                .orElse(List.of());
    }

    /** Looks at the card of one revision. */
    void look(int revision) {
        isNext = false;
        shownRevision = revision;
        readCard();
    }

    /** Looks at the card as it will be once the revision being prepared is issued. */
    void lookAtNext() {
        isNext = true;
        readCard();
    }

    /** Looks at the card of the revision that was looked at before. */
    void lookAtIssued() {
        look(shownRevision);
    }

    /** Returns whether the card looked at is that of the revision being prepared: it is not issued, and cannot leave. */
    boolean isNext() {
        return isNext;
    }

    /** Reads what the card needs of the lab book: of a revision once, not at every letter typed into the form. */
    private void readCard() {
        if (isNext) {
            card.prepare(decision());
        } else {
            card.read(looked());
        }
    }

    private void readNextCard() {
        if (isNext) {
            readCard();
        }
    }

    /** Returns the revision whose card is looked at. */
    Optional<FactorIssue> looked() {
        return revisions().stream()
                .filter(issue -> !isNext && issue.revision() == shownRevision)
                .findFirst();
    }

    /** Returns the card of the revision looked at; a withdrawal has none. */
    Optional<FactorCard> card() {
        return card.card();
    }

    /** Returns whether the card looked at may leave the laboratory today without its state across it. */
    boolean isCardCurrent() {
        return card().filter(known -> !known.isMarked()).isPresent();
    }

    /** Returns the cards of the revision looked at that left the laboratory. */
    List<Version<CardPrint>> prints() {
        return card.prints();
    }

    /** Returns the wish to let the card looked at leave; {@code marked} where a copy with its state across it would do. */
    CardHandout.Wish wish(Paper paper, boolean marked, String why) {
        return card.wish(paper, marked, why);
    }
}
