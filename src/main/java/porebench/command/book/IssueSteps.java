package porebench.command.book;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import porebench.command.reply.ReportLayout;
import porebench.evidence.Evidence;
import porebench.evidence.issue.GroupSteps;
import porebench.evidence.issue.Proposing;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.method.Texts;
import porebench.quantity.Symbolic;
import porebench.record.FactorProposal;
import porebench.record.id.ChangeDecisionId;

/** The steps of {@code issue} by which a factor is drafted, checked and put in force. */
final class IssueSteps {
    /** A step, by the word of its option. */
    enum Step implements Symbolic {
        DRAFT,
        CHECK,
        SEND_BACK,
        DROP,
        PUT_IN_FORCE;

        /** Returns the word, as the command line lists it. */
        @Override
        public String toString() {
            return symbol();
        }

        /** Returns the step of a word; empty when it is none. */
        static Optional<Step> of(String word) {
            for (Step step : values()) {
                if (step.symbol().equals(word.toLowerCase(Locale.ROOT))) {
                    return Optional.of(step);
                }
            }
            return Optional.empty();
        }
    }

    private IssueSteps() {}

    /** Returns the step of a word, or why it is none. */
    static Answer<Step> parsed(String word) {
        return Step.of(word)
                .map(step -> Answer.of(step, List.of()))
                .orElseGet(() -> Answer.refused(
                        List.of(Problem.error("step", "proposal.no-such-step", word, List.of(Step.values())))));
    }

    /**
     * Takes a step of the open drafts of a group.
     *
     * @param step any but {@link Step#DRAFT}
     */
    static Answer<GroupSteps.Taken> take(Step step, GroupSteps group, String who, String said, LocalDateTime now) {
        return switch (step) {
            case CHECK -> group.check(who, said, now);
            case SEND_BACK -> group.sendBack(who, said, now);
            case DROP -> group.drop(who, said, now);
            case PUT_IN_FORCE -> group.putInForce(who, said, now);
            case DRAFT -> throw new IllegalArgumentException("step must be of an open draft, but is " + step);
        };
    }

    /**
     * Takes a step of the open draft of a mix.
     *
     * @param step any but {@link Step#DRAFT}
     */
    static Answer<Proposing.Taken> take(Step step, Evidence evidence, String who, String said, LocalDateTime now) {
        return switch (step) {
            case CHECK -> Proposing.check(evidence, who, said, now);
            case SEND_BACK -> Proposing.sendBack(evidence, who, said, now);
            case DROP -> Proposing.drop(evidence, who, said, now);
            case PUT_IN_FORCE -> Proposing.putInForce(evidence, who, said, now);
            case DRAFT -> throw new IllegalArgumentException("step must be of an open draft, but is " + step);
        };
    }

    /** Puts what came of a step into an answer. */
    static ReportLayout<FactorProposal> said(ReportLayout<FactorProposal> layout, Texts words) {
        return layout.text("mixId", draft -> draft.mixId().text())
                .whole("draft", FactorProposal::number)
                .text("step", draft -> draft.step().symbol())
                .field((json, draft) -> json.number("factorPercent", draft.factorPercent()))
                .text("determinationId", draft -> draft.determinationId().text())
                .text("inForceFrom", draft -> draft.inForceFrom().toString())
                .field((json, draft) ->
                        json.text("inForceAt", filled(draft.terms().atText())))
                .text("recheckBy", draft -> draft.recheckBy().toString())
                .field((json, draft) ->
                        json.text("conditions", filled(draft.terms().conditions())))
                .text("draftedBy", FactorProposal::draftedBy)
                .field((json, draft) ->
                        json.text("checkedBy", filled(draft.terms().checkedBy())))
                .text("stepBy", FactorProposal::by)
                .text("stepAt", draft -> draft.at().toString())
                .field((json, draft) -> json.text("remark", filled(draft.remark())))
                .field((json, draft) -> json.whole("revision", draft.revision()))
                .field((json, draft) -> json.text(
                        "groupId",
                        draft.grounds().group().map(ground -> ground.group().text())))
                .text("testedMix", draft -> draft.testedMix().text())
                .field((json, draft) ->
                        json.text("keptBy", draft.grounds().keptBy().map(ChangeDecisionId::text)))
                .line(draft -> words.get(
                        "issue.step." + draft.step().symbol(),
                        Integer.toString(draft.number()),
                        draft.by(),
                        draft.revision().map(Object::toString).orElse("")));
    }

    private static Optional<String> filled(String text) {
        return Optional.of(text).filter(any -> !any.isEmpty());
    }
}
