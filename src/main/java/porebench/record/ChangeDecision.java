package porebench.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.id.ChangeDecisionId;
import porebench.record.id.MixId;
import porebench.statistics.comparison.ComparisonVerdict;

/**
 * What a person decided about the factor of a mix one of whose sources changed, beside the comparison as it stood then.
 *
 * <p>It alters no factor by itself. Another decision is another record; the first one stays.
 *
 * @param id its name
 * @param mixId the mix
 * @param change the change, and what the comparison rested on
 * @param figures the comparison as it stood
 * @param choice what was decided: to keep the factor, to replace it, or to test more
 * @param more how many more trials are to be made; empty unless more are to be tested
 * @param decidedOn the day
 * @param decidedBy who decided
 * @param reason why; blank only where the comparison says the same
 * @param origin here, or imported: then nobody here saw the comparison
 */
public record ChangeDecision(
        ChangeDecisionId id,
        MixId mixId,
        DecidedChange change,
        DecidedFigures figures,
        ComparisonVerdict choice,
        Optional<Integer> more,
        LocalDate decidedOn,
        String decidedBy,
        String reason,
        FactorOrigin origin)
        implements Kept {
    /** Returns whether a person decided otherwise than the comparison says. */
    public boolean isAgainstVerdict() {
        return choice != figures.verdict();
    }

    /** Returns whether it keeps a factor that was shown to hold, in this lab book. */
    public boolean keepsWhatHolds() {
        return choice == ComparisonVerdict.KEEP && !isAgainstVerdict() && origin == FactorOrigin.HERE;
    }

    /** Returns the same decision, made here or elsewhere. */
    public ChangeDecision from(FactorOrigin other) {
        return new ChangeDecision(id, mixId, change, figures, choice, more, decidedOn, decidedBy, reason, other);
    }

    /**
     * Returns what is wrong with it, under the fields of its form, and that it goes against the comparison.
     *
     * @param today the day on which it is to be kept
     */
    public List<Problem> check(LocalDate today) {
        List<Problem> problems = new ArrayList<>();
        if (decidedBy.isBlank()) {
            problems.add(Problem.missing("decidedBy", "decidedBy"));
        }
        if (change.before().isEmpty() || change.after().isEmpty()) {
            problems.add(Problem.error("before", "decision.nothing-compared", id.text()));
        }
        if (decidedOn.isAfter(today)) {
            problems.add(Problem.error("decidedOn", "decision.to-come", decidedOn.toString(), today.toString()));
        }
        if (choice == ComparisonVerdict.TEST_MORE && more.isEmpty()) {
            problems.add(
                    Problem.error("more", "decision.more-wanting", id.text()).of(Problem.Kind.NOT_YET));
        }
        if (choice != ComparisonVerdict.TEST_MORE && more.isPresent()) {
            problems.add(Problem.error("more", "decision.more-unasked", id.text(), more.get()));
        }
        if (isAgainstVerdict()) {
            Problem.Word said = word(figures.verdict());
            problems.add(Problem.warning("choice", "decision.against-verdict", id.text(), said, word(choice)));
            if (reason.isBlank()) {
                problems.add(Problem.error("reason", "decision.reason-wanting", id.text(), said)
                        .of(Problem.Kind.NOT_YET));
            }
        }
        return problems;
    }

    /** Returns what is decided as a word inside a problem's message. */
    public static Problem.Word word(ComparisonVerdict choice) {
        return switch (choice) {
            case KEEP -> new Problem.Word("decision-keep");
            case REPLACE -> new Problem.Word("decision-replace");
            case TEST_MORE -> new Problem.Word("decision-test-more");
        };
    }

    @Override
    public RecordKind kind() {
        return RecordKind.CHANGE_DECISION;
    }

    @Override
    public String recordId() {
        return id.text();
    }
}
