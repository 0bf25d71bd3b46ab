package porebench.desk.factor;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.desk.form.Days;
import porebench.desk.form.History;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.issue.IssueDoubt;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.TakingOn;
import porebench.evidence.issue.Verifying;
import porebench.evidence.paper.FactorCard;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.port.CardHandout;
import porebench.port.Paper;
import porebench.record.CardPrint;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** The factor of the selected mix: the issue being prepared, its history, and the card of one revision. */
final class FactorModel {

    private static final IssueDraft NOTHING = new IssueDraft("", "", "", "", "");

    private final DeskModel desk;
    private final History<IssueDraft> history = new History<>(NOTHING);
    private Optional<MixId> shown = Optional.empty();
    private int shownRevision;
    private int knownRevisions;
    private boolean tried;
    private Optional<FactorCard> card = Optional.empty();
    private List<Version<CardPrint>> prints = List.of();

    FactorModel(DeskModel desk) {
        this.desk = desk;
        follow();
    }

    History<IssueDraft> history() {
        return history;
    }

    Optional<Evidence> evidence() {
        return desk.evidence();
    }

    /** Turns to what the desk looks at; a changed draft of the same mix is kept. */
    void follow() {
        int revisions = evidence().map(e -> e.issues().size()).orElse(0);
        boolean otherMix = !desk.selected().equals(shown);
        boolean newRevision = !otherMix && revisions != knownRevisions;
        boolean begins = otherMix || newRevision || !history.isChanged();
        shown = desk.selected();
        knownRevisions = revisions;
        if (otherMix || newRevision) {
            shownRevision = evidence()
                    .flatMap(Evidence::newestIssue)
                    .map(FactorIssue::revision)
                    .orElse(0);
        }
        readCard();
        if (begins) {
            begin();
        }
    }

    /** Begins the draft of the next revision anew. */
    void begin() {
        tried = false;
        IssueDraft fresh = evidence().map(this::fresh).orElse(NOTHING);
        if (!fresh.equals(history.draft()) || history.isChanged()) {
            history.restart(fresh);
        }
    }

    private IssueDraft fresh(Evidence evidence) {
        LocalDate today = desk.tools().today();
        LocalDate newest = evidence.newestIssue().map(FactorIssue::inForceFrom).orElse(today);
        LocalDate from = newest.isAfter(today) ? newest : today;
        return new IssueDraft(
                proposed(evidence)
                        .map(judged -> judged.determination().value().id().text())
                        .orElse(""),
                from.toString(),
                from.plusMonths(evidence.profile().count(FigureName.RECHECK_MONTHS))
                        .toString(),
                "",
                "");
    }

    /** Returns the determination proposed for the next revision: the newest in which trials count. */
    private static Optional<JudgedDetermination> proposed(Evidence evidence) {
        List<JudgedDetermination> all = evidence.determinations();
        Optional<JudgedDetermination> imported = evidence.newestIssue()
                .filter(newest -> newest.isIssue() && newest.origin() == FactorOrigin.IMPORTED)
                .flatMap(newest -> evidence.determination(newest.determinationId()));
        if (imported.isPresent()) {
            return imported;
        }
        return all.stream()
                .filter(judged -> judged.summary().isPresent())
                .reduce((one, two) -> two)
                .or(() -> all.stream().reduce((one, two) -> two));
    }

    List<JudgedDetermination> determinations() {
        return evidence().map(Evidence::determinations).orElse(List.of());
    }

    /** Returns the determination chosen for the next revision. */
    Optional<JudgedDetermination> chosen() {
        return determinations().stream()
                .filter(judged -> judged.determination()
                        .value()
                        .id()
                        .text()
                        .equals(history.draft().determination()))
                .findFirst();
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

    /** Returns the doubts about the chosen determination, each to be ticked by whoever takes it on. */
    List<IssueDoubt> doubts() {
        return evidence()
                .flatMap(known -> chosen().map(judged -> Issuing.doubts(
                        known, desk.scatter(), judged.determination().value().id())))
                .orElse(List.of());
    }

    /** Returns whether the issue could be kept, whoever issues it. */
    boolean canIssue() {
        return evidence().isPresent()
                && attempt().problems().stream()
                        .filter(Problem::isError)
                        .allMatch(problem -> problem.kind() == Problem.Kind.NOT_YET);
    }

    private Answer<FactorIssue> attempt() {
        IssueDraft draft = history.draft();
        List<Problem> problems = new ArrayList<>();
        Optional<LocalDate> from = date("inForceFrom", draft.inForceFrom(), problems);
        Optional<LocalDate> recheck = date("recheckBy", draft.recheckBy(), problems);
        if (evidence().isEmpty()) {
            return Answer.refused(List.of(Problem.missing("mix", RecordKind.MIX.word())));
        }
        if (chosen().isEmpty()) {
            problems.add(Problem.error("determination", "issue.determination-unknown", draft.determination()));
        }
        if (!problems.isEmpty()) {
            return Answer.refused(problems);
        }
        return Issuing.issue(
                evidence().get(),
                desk.scatter(),
                new Issuing.Decision(
                        chosen().orElseThrow().determination().value().id(),
                        from.orElseThrow(),
                        recheck,
                        desk.person(),
                        draft.approvedBy(),
                        draft.reason(),
                        takingOn(draft)));
    }

    private Optional<TakingOn> takingOn(IssueDraft draft) {
        List<IssueDoubt> doubts = doubts();
        List<IssueDoubt> taken = doubts.stream()
                .filter(doubt -> draft.taken().contains(doubt.key()))
                .toList();
        boolean isBegun =
                !draft.overrideBy().isBlank() || !draft.overrideReason().isBlank() || !taken.isEmpty();
        return doubts.isEmpty() || !isBegun
                ? Optional.empty()
                : Optional.of(TakingOn.all(
                        draft.overrideBy(),
                        draft.overrideReason(),
                        taken,
                        desk.tools().problemText()::say));
    }

    /** Returns whether somebody must take doubts on by name before a factor can be issued. */
    boolean needsOverride() {
        return !doubts().isEmpty();
    }

    /** Returns the revision that came in from a file and may be confirmed on the chosen determination. */
    Optional<Version<FactorIssue>> confirmable() {
        return evidence()
                .flatMap(known -> known.issues().stream().reduce((earlier, later) -> later))
                .filter(newest -> newest.value().isIssue() && newest.value().origin() == FactorOrigin.IMPORTED)
                .filter(newest -> newest.value()
                        .determinationId()
                        .text()
                        .equals(history.draft().determination()));
    }

    /**
     * Confirms the revision that came in from a file, with the reason and the doubts of the form.
     *
     * @param outcome hears why it was not confirmed; empty when it was
     */
    void confirm(Outcome outcome) {
        tried = true;
        Version<FactorIssue> version = confirmable().orElseThrow();
        IssueDraft draft = history.draft();
        Answer<FactorIssue> answer = Verifying.confirm(
                evidence().orElseThrow(), desk.scatter(), version, desk.person(), draft.reason(), takingOn(draft));
        keep(answer, made -> Draft.correcting(version, made), draft.reason().strip(), outcome);
    }

    private void keep(Answer<FactorIssue> answer, Function<FactorIssue, Draft> draft, String why, Outcome outcome) {
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
        } else {
            desk.keep(List.of(draft.apply(answer.value().get())), why, outcome);
        }
    }

    private static Optional<LocalDate> date(String field, String text, List<Problem> problems) {
        try {
            LocalDate day = LocalDate.parse(text.strip());
            Optional<Problem> impossible = Days.checkYear(field, day);
            impossible.ifPresent(problems::add);
            return impossible.isPresent() ? Optional.empty() : Optional.of(day);
        } catch (DateTimeParseException notADate) {
            problems.add(Problem.error(field, "form.not-a-date", text));
            return Optional.empty();
        }
    }

    /**
     * Issues the next revision.
     *
     * @param outcome hears why nothing was issued; empty when it was
     */
    void issue(Outcome outcome) {
        tried = true;
        Answer<FactorIssue> answer = attempt();
        keep(answer, Draft::of, answer.value().map(FactorIssue::reason).orElse(""), outcome);
    }

    /** Withdraws the factor from today on; the outcome hears why it was not withdrawn. */
    void withdraw(String reason, Outcome outcome) {
        Answer<FactorIssue> answer =
                Issuing.withdraw(evidence().orElseThrow(), desk.tools().today(), desk.person(), reason);
        keep(answer, Draft::of, reason, outcome);
    }

    /** Returns whether there is a factor that could be withdrawn. */
    boolean canWithdraw() {
        return evidence()
                .flatMap(Evidence::newestIssue)
                .filter(FactorIssue::isIssue)
                .isPresent();
    }

    /** Returns how it stands with the factor today. */
    Optional<FactorState> state() {
        return evidence().map(known -> known.stateOn(desk.tools().today()));
    }

    /** Returns the revision in force today. */
    Optional<FactorIssue> inForce() {
        return evidence().flatMap(known -> known.inForceOn(desk.tools().today()));
    }

    List<FactorIssue> revisions() {
        return evidence()
                .map(known -> known.issues().stream().map(Version::value).toList())
                .orElse(List.of());
    }

    /** Looks at the card of one revision. */
    void look(int revision) {
        shownRevision = revision;
        readCard();
    }

    /** Reads what the card needs of the lab book: once for a revision, not at every letter typed into the form. */
    private void readCard() {
        Optional<FactorIssue> issue = looked();
        card = issue.filter(FactorIssue::isIssue)
                .flatMap(known -> desk.answer(new Question.HeadOfBook())
                        .map(head -> FactorCard.of(
                                evidence().orElseThrow(),
                                known,
                                desk.laboratory(),
                                head,
                                desk.tools().today())));
        prints = issue.stream()
                .flatMap(one -> desk.answer(new PrintsOf(one.mixId())).orElse(List.of()).stream()
                        .filter(print -> print.value().revision() == one.revision()))
                .toList();
    }

    /** Asks for the cards of a mix that left the laboratory. */
    private record PrintsOf(MixId mix) implements Question<List<Version<CardPrint>>> {
        @Override
        public List<Version<CardPrint>> answer(Reading seen) {
            return seen.book().latestOf(Belonging.PRINTS_OF_MIX, mix.text());
        }
    }

    /** Returns the revision whose card is looked at. */
    Optional<FactorIssue> looked() {
        return revisions().stream()
                .filter(issue -> issue.revision() == shownRevision)
                .findFirst();
    }

    /** Returns the card of the revision looked at; a withdrawal has none. */
    Optional<FactorCard> card() {
        return card;
    }

    /** Returns whether the card looked at may leave the laboratory today without its state across it. */
    boolean isCardCurrent() {
        return card.filter(known -> !known.isMarked()).isPresent();
    }

    /** Returns the cards of the revision looked at that left the laboratory. */
    List<Version<CardPrint>> prints() {
        return prints;
    }

    /** Returns the wish to let the card looked at leave; {@code marked} where a copy with its state across it would do. */
    CardHandout.Wish wish(Paper paper, boolean marked, String why) {
        FactorIssue issue = card.orElseThrow().issue();
        return new CardHandout.Wish(
                issue.mixId(),
                Optional.of(issue.revision()),
                paper,
                marked,
                desk.tools().today(),
                desk.person(),
                why);
    }
}
