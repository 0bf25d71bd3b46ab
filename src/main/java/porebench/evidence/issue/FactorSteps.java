package porebench.evidence.issue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.evidence.Evidence;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.quantity.Symbolic;

/** Through how many hands a factor goes before it is in force, as its profile says. */
public enum FactorSteps implements Symbolic {
    /** Somebody issues it. */
    ONE,
    /** It is drafted, and somebody else checks it and puts it in force. */
    CHECKED,
    /** It is drafted, checked and put in force by three people. */
    THREE;

    /** Returns what the profile of a mix asks for. */
    public static FactorSteps of(Evidence evidence) {
        return of(evidence.profile());
    }

    private static FactorSteps of(Profile profile) {
        String word = profile.figure(FigureName.FACTOR_STEPS).value();
        return Arrays.stream(values())
                .filter(steps -> steps.symbol().equals(word))
                .findFirst()
                .orElseThrow();
    }

    /** Returns whether a factor is drafted first. */
    public boolean areDrafted() {
        return this != ONE;
    }

    /** Returns why no factor of a mix can be issued in one step, if its profile asks for more. */
    static List<Problem> inOneStep(Profile profile) {
        FactorSteps steps = of(profile);
        return steps.areDrafted()
                ? List.of(Problem.error("issuedBy", "issue.steps-needed", profile.title(), word(steps)))
                : List.of();
    }

    /** Returns why a person cannot check what somebody drafted. */
    Optional<Problem> checking(String draftedBy, String who) {
        return areDrafted() && Issuing.sameName(draftedBy, who)
                ? Optional.of(Problem.error("by", "proposal.own-draft-checked", who.strip(), word(this)))
                : Optional.empty();
    }

    /** Returns why a person cannot put in force what one person drafted and another checked. */
    Optional<Problem> puttingInForce(String draftedBy, String checkedBy, String who) {
        if (areDrafted() && Issuing.sameName(draftedBy, who)) {
            return Optional.of(Problem.error("by", "proposal.own-draft-in-force", who.strip(), word(this)));
        }
        return this == THREE && Issuing.sameName(checkedBy, who)
                ? Optional.of(Problem.error("by", "proposal.own-check-in-force", who.strip(), word(this)))
                : Optional.empty();
    }

    private static Problem.Word word(FactorSteps steps) {
        return new Problem.Word(
                switch (steps) {
                    case ONE -> "steps-one";
                    case CHECKED -> "steps-checked";
                    case THREE -> "steps-three";
                });
    }
}
