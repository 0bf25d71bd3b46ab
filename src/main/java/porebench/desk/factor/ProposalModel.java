package porebench.desk.factor;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.desk.DeskModel;
import porebench.desk.Outcome;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.Evidence;
import porebench.evidence.OpenProposal;
import porebench.evidence.issue.FactorSteps;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.Issuing;
import porebench.evidence.issue.Proposing;
import porebench.method.Answer;
import porebench.method.Dates;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.GroupGround;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.Version;

/** The draft of the next revision that is open: how far it has come, and what the person may do about it. */
final class ProposalModel {
    /** What can be done about an open draft. */
    enum Act {
        CHECK,
        PUT_IN_FORCE,
        SEND_BACK,
        DROP
    }

    /** Stands for the person until somebody said who works here: what nobody could do is refused before. */
    private static final String NOBODY_YET = "-";

    private final DeskModel desk;
    private final Texts texts;
    private boolean isForGroup = true;

    ProposalModel(DeskModel desk, Texts texts) {
        this.desk = desk;
        this.texts = texts;
    }

    /** Returns whether a factor of the mix is drafted first. */
    boolean isDrafted() {
        return desk.evidence()
                .filter(known -> FactorSteps.of(known).areDrafted())
                .isPresent();
    }

    /** Returns what is kept of a decision: the revision, or its draft where several people bring it in force. */
    Answer<List<Draft>> deciding(Optional<Issuing.Decision> decision) {
        if (desk.evidence().isEmpty() || decision.isEmpty()) {
            return Answer.refused(List.of(Problem.missing("mix", RecordKind.MIX.word())));
        }
        Evidence evidence = desk.evidence().get();
        if (isDrafted()) {
            Answer<Proposing.Taken> draft = Proposing.draft(
                    evidence, desk.scatter(), decision.get(), desk.tools().now());
            return new Answer<>(draft.value().map(Proposing.Taken::drafts), draft.problems());
        }
        Answer<FactorIssue> issue = Issuing.issue(evidence, desk.scatter(), decision.get());
        return new Answer<>(issue.value().map(made -> List.of(Draft.of(made))), issue.problems());
    }

    /** Returns the draft that is open. */
    Optional<FactorProposal> open() {
        return desk.evidence().flatMap(OpenProposal::of).map(Version::value);
    }

    /** Returns how far the open draft has come, in words. */
    String title() {
        return open().map(draft -> texts.get("draft.title." + draft.step().symbol(), Integer.toString(draft.number())))
                .orElse("");
    }

    /** Returns what the open draft says, in words. */
    String content() {
        return open().map(draft -> texts.get(
                                "draft.content",
                                desk.tools().numbers().show(draft.factorPercent()),
                                draft.determinationId().text(),
                                (Dates.day(draft.inForceFrom()) + " "
                                                + draft.terms().atText())
                                        .strip(),
                                Dates.day(draft.recheckBy()),
                                draft.reason())
                        + (draft.terms().conditions().isEmpty()
                                ? ""
                                : " "
                                        + texts.get(
                                                "draft.conditions",
                                                draft.terms().conditions())))
                .orElse("");
    }

    /** Returns the group whose factor the open draft is; empty where it is of its mix alone. */
    Optional<GroupGround> group() {
        return open().flatMap(draft -> draft.grounds().group());
    }

    /** Says of which group the open draft is, or by which decision its factor is kept; blank where neither. */
    String ground() {
        return Stream.concat(
                        group().stream()
                                .map(ground -> texts.get(
                                        "draft.of-group",
                                        ground.group().text(),
                                        Integer.toString(ground.version()),
                                        ground.testedMix().text())),
                        open().flatMap(draft -> draft.grounds().keptBy()).stream()
                                .map(decision -> texts.get("draft.kept-by", decision.text())))
                .collect(Collectors.joining(" "));
    }

    /** Returns the words beside the choice whether a step is taken for all drafts of the group. */
    String groupWords() {
        return group().map(
                        ground -> texts.get("draft.whole-group", ground.group().text()))
                .orElse("");
    }

    /** Returns whether a step is taken for all open drafts of the group, not for that of this mix alone. */
    boolean isForGroup() {
        return isForGroup && group().isPresent();
    }

    /** Chooses whether a step is taken for all open drafts of the group. */
    void takeForGroup(boolean all) {
        isForGroup = all;
    }

    /** Returns the steps of the open draft in words, the first one first; none until they were looked up. */
    List<String> steps() {
        return open().map(StepsOf::new).flatMap(desk::answer).orElse(List.of()).stream()
                .map(draft -> texts.get(
                        draft.remark().isEmpty() ? "draft.step" : "draft.step-said",
                        texts.get("draft.step." + draft.step().symbol()),
                        draft.by(),
                        Dates.minute(draft.at()),
                        draft.remark()))
                .toList();
    }

    /** Returns why the person cannot do something about the open draft; empty when they can, once they have said a remark. */
    List<Problem> against(Act act) {
        String who = desk.person().isBlank() ? NOBODY_YET : desk.person();
        return take(act, who, "-").problems().stream().filter(Problem::isError).toList();
    }

    /** Returns why the person cannot take the step that the open draft waits for, in the order in which it is said. */
    List<Problem> why() {
        return open().map(draft -> switch (draft.step()) {
                    case DRAFTED -> against(isDrafted() ? Act.CHECK : Act.PUT_IN_FORCE);
                    case CHECKED -> against(Act.PUT_IN_FORCE);
                    default -> List.<Problem>of();
                })
                .orElse(List.of());
    }

    private Answer<Proposing.Taken> take(Act act, String who, String said) {
        if (desk.evidence().isEmpty()) {
            return Answer.refused(List.of(Problem.missing("mix", RecordKind.MIX.word())));
        }
        Evidence evidence = desk.evidence().get();
        LocalDateTime now = desk.tools().now();
        return switch (act) {
            case CHECK -> Proposing.check(evidence, who, said, now);
            case PUT_IN_FORCE -> Proposing.putInForce(evidence, who, said, now);
            case SEND_BACK -> Proposing.sendBack(evidence, who, said, now);
            case DROP -> Proposing.drop(evidence, who, said, now);
        };
    }

    /**
     * Does something about the open draft.
     *
     * @param said the remark or reason
     * @param outcome hears why nothing was done; empty when it was
     */
    void act(Act act, String said, Outcome outcome) {
        if (isForGroup()) {
            String who = desk.person();
            LocalDateTime now = desk.tools().now();
            String why = said.isBlank() ? texts.get("draft.step." + after(act).symbol()) : said;
            GroupOffer.step(
                    desk, group().orElseThrow().group(), steps -> take(act, steps, who, said, now), why, outcome);
            return;
        }
        Answer<Proposing.Taken> answer = take(act, desk.person(), said);
        if (answer.value().isEmpty()) {
            outcome.take(answer.problems());
        } else {
            String why = said.isBlank()
                    ? texts.get("draft.step."
                            + answer.value().get().proposal().step().symbol())
                    : said;
            Stating.keep(desk, texts, answer.value().get().drafts(), why, outcome);
        }
    }

    private static FactorProposal.Step after(Act act) {
        return switch (act) {
            case CHECK -> FactorProposal.Step.CHECKED;
            case PUT_IN_FORCE -> FactorProposal.Step.ISSUED;
            case SEND_BACK -> FactorProposal.Step.SENT_BACK;
            case DROP -> FactorProposal.Step.DROPPED;
        };
    }

    private static Answer<GroupSteps.Taken> take(
            Act act, GroupSteps steps, String who, String said, LocalDateTime now) {
        return switch (act) {
            case CHECK -> steps.check(who, said, now);
            case PUT_IN_FORCE -> steps.putInForce(who, said, now);
            case SEND_BACK -> steps.sendBack(who, said, now);
            case DROP -> steps.drop(who, said, now);
        };
    }

    /** Asks for the steps of a draft. */
    private record StepsOf(FactorProposal draft) implements Question<List<FactorProposal>> {
        @Override
        public List<FactorProposal> answer(Reading seen) {
            return seen.book().history(FactorProposal.class, draft.recordId()).stream()
                    .map(Version::value)
                    .toList();
        }
    }
}
