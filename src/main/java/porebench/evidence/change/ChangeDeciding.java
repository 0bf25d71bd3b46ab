package porebench.evidence.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.DecidedChange;
import porebench.record.DecidedFigures;
import porebench.record.FactorOrigin;
import porebench.record.book.Version;
import porebench.record.id.ChangeDecisionId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonPlan.More;
import porebench.statistics.comparison.ComparisonVerdict;
import porebench.statistics.comparison.Equivalence;

/** The one gate by which a person decides about a factor whose source changed, whichever door the person comes through. */
public final class ChangeDeciding {
    private ChangeDeciding() {}

    /**
     * What a person decides.
     *
     * @param choice to keep the factor, to replace it, or to test more
     * @param more how many more trials; empty unless more are to be tested
     * @param on the day
     * @param by who decides
     * @param reason why; may be blank where the comparison says the same
     */
    public record Wish(ComparisonVerdict choice, Optional<Integer> more, LocalDate on, String by, String reason) {}

    /**
     * Makes the decision as it is kept, with the comparison as it stands.
     *
     * @param change the comparison that the person sees, of this evidence
     * @return the decision, with that it goes against the comparison where it does; or why there can be none
     */
    public static Answer<ChangeDecision> decide(Evidence evidence, SourceChange change, Wish wish) {
        DecidedChange about = ChangeSides.of(evidence).value().orElseThrow().asTheyStand(evidence);
        ChangeDecision decision = new ChangeDecision(
                nextId(evidence),
                evidence.mix().value().id(),
                about,
                figures(change.comparison()),
                wish.choice(),
                wish.more(),
                wish.on(),
                wish.by().strip(),
                wish.reason().strip(),
                FactorOrigin.HERE);
        List<Problem> problems = new ArrayList<>(decision.check(wish.on()));
        DecisionChanges.newest(evidence)
                .filter(newest -> isTheSame(newest, decision))
                .ifPresent(newest -> problems.add(Problem.error(
                                "choice", "decision.already-made", newest.id().text())
                        .of(Problem.Kind.NOT_YET)));
        return Problem.anyError(problems) ? Answer.refused(problems) : Answer.of(decision, problems);
    }

    private static boolean isTheSame(ChangeDecision one, ChangeDecision other) {
        return one.change().equals(other.change())
                && one.choice() == other.choice()
                && one.more().equals(other.more())
                && one.decidedBy().equals(other.decidedBy())
                && one.reason().equals(other.reason());
    }

    private static ChangeDecisionId nextId(Evidence evidence) {
        List<ChangeDecisionId> taken = evidence.decisions().stream()
                .map(Version::value)
                .map(ChangeDecision::id)
                .toList();
        int number = taken.size() + 1;
        while (taken.contains(ChangeDecisionId.of(evidence.mix().value().id(), number))) {
            number++;
        }
        return ChangeDecisionId.of(evidence.mix().value().id(), number);
    }

    private static DecidedFigures figures(Comparison comparison) {
        BeforeAndAfter found = comparison.found();
        Equivalence equivalence = comparison.equivalence();
        return new DecidedFigures(
                found.before().readings(),
                DecidedFigures.figure(found.before().mean()),
                found.after().readings(),
                DecidedFigures.figure(found.after().mean()),
                DecidedFigures.figure(found.difference()),
                DecidedFigures.figure(found.difference() - found.halfWidth()),
                DecidedFigures.figure(found.difference() + found.halfWidth()),
                DecidedFigures.figure(found.t()),
                DecidedFigures.figure(found.degreesOfFreedom()),
                DecidedFigures.figure(found.p()),
                DecidedFigures.figure(comparison.marginPercent()),
                DecidedFigures.figure(equivalence.low()),
                DecidedFigures.figure(equivalence.high()),
                DecidedFigures.figure(comparison.plan().power()),
                comparison.plan().after().map(More::readings),
                comparison.verdict());
    }

    /** Returns how many more trials are proposed where more are to be tested: as many as the comparison says it takes, if it can say. */
    public static Optional<Integer> proposed(Comparison comparison) {
        return comparison.plan().after().map(More::readings).filter(more -> more > 0);
    }
}
