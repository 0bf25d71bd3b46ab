package porebench.evidence;

import java.math.BigDecimal;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorOrigin;
import porebench.record.StatedUncertainty;

/**
 * How uncertain a factor was when it was issued, as it is shown beside it.
 *
 * @param expandedPercent U at 95 %, in % air; empty where nobody stated it
 * @param coverageFactor k; empty where the interval was drawn, and where nobody stated it
 * @param note why there is none, or that it came in from a file; empty where there is nothing to say
 */
public record ShownUncertainty(
        Optional<BigDecimal> expandedPercent, Optional<BigDecimal> coverageFactor, Optional<Problem> note) {
    /** Of no factor. */
    public static final ShownUncertainty NONE =
            new ShownUncertainty(Optional.empty(), Optional.empty(), Optional.empty());

    /** Returns what is shown of a revision; nothing of a withdrawal. */
    public static ShownUncertainty of(FactorIssue issue) {
        if (!issue.isIssue()) {
            return NONE;
        }
        Optional<StatedUncertainty> stated = issue.grounds().uncertainty();
        return new ShownUncertainty(
                stated.map(StatedUncertainty::expandedPercent),
                stated.flatMap(StatedUncertainty::coverageFactor),
                stated.isEmpty()
                        ? Optional.of(none(issue))
                        : stated.filter(one -> one.origin() == FactorOrigin.IMPORTED)
                                .map(any -> Problem.warning(
                                        "uncertainty", "register.uncertainty-from-file", issue.revision())));
    }

    private static Problem none(FactorIssue issue) {
        String code = issue.grounds().keptBy().isPresent()
                ? "register.uncertainty-of-kept"
                : "register.uncertainty-not-stated";
        return Problem.warning("uncertainty", code, issue.revision());
    }
}
