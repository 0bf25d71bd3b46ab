package porebench.desk.factor;

import java.util.Optional;
import porebench.desk.DeskModel;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.issue.KeptFactor;
import porebench.method.Texts;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.column.Column;
import porebench.record.id.ChangeDecisionId;

/** The choice to keep the factor from before a source changed, where somebody decided so and the trials bear it. */
record KeptChoice(DeskModel desk, Texts texts) {
    /** Whether the factor is kept as decided. */
    static final Column<FactorIssue, Boolean> COLUMN = Column.<FactorIssue>mark(
                    "kept_by", issue -> issue.grounds().keptBy().isPresent())
            .called("asDecided");

    private Optional<ChangeDecision> decision(Optional<JudgedDetermination> chosen) {
        return desk.evidence()
                .flatMap(known -> chosen.flatMap(judged ->
                        KeptFactor.offered(known, judged.determination().value().id())));
    }

    /** Returns the decision by which the factor may be kept on a determination; empty where none may. */
    Optional<ChangeDecisionId> offered(Optional<JudgedDetermination> chosen) {
        return decision(chosen).map(ChangeDecision::id);
    }

    /** Says which factor a decision keeps, and who decided when; blank where none does. */
    String words(Optional<JudgedDetermination> chosen) {
        return decision(chosen)
                .flatMap(decision -> KeptFactor.factor(desk.evidence().orElseThrow(), decision.id())
                        .map(factor -> texts.get(
                                "form.kept",
                                desk.tools().numbers().show(factor),
                                decision.id().text(),
                                decision.decidedBy(),
                                decision.decidedOn().toString())))
                .orElse("");
    }
}
