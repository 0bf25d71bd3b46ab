package porebench.evidence;

import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorProposal;
import porebench.record.book.Version;

/** What is proposed as the next revision of a mix's factor, and not done with. */
public final class OpenProposal {
    private OpenProposal() {}

    /** Returns the newest proposal of a mix that is not done with. */
    public static Optional<Version<FactorProposal>> of(Evidence evidence) {
        return evidence.proposals().stream()
                .filter(version -> version.value().isOpen())
                .reduce((earlier, later) -> later);
    }

    /** Returns what is due about it. */
    static Optional<Problem> due(Evidence evidence) {
        return of(evidence).map(Version::value).map(OpenProposal::due);
    }

    /** Returns what is due about an open one. */
    public static Problem due(FactorProposal open) {
        String code = switch (open.step()) {
            case CHECKED -> "register.draft-checked";
            case SENT_BACK -> "register.draft-sent-back";
            default -> "register.draft-to-check";
        };
        return Problem.warning(
                "proposal",
                code,
                open.factorPercent(),
                open.by(),
                open.at().toLocalDate().toString());
    }
}
