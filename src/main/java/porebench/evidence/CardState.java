package porebench.evidence;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Optional;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.book.Version;

/**
 * How it stands with the card of one revision at a moment: the one gate through which cards leave, whichever door they take.
 *
 * <p>A card that is in force or due for its recheck may leave the laboratory as it is. Any other is refused, or, where a person
 * asks for a copy for the file, carries its state across the whole card; it is then no card to work by.
 */
public enum CardState {
    NOT_ISSUED("not-issued"),
    IN_FORCE("in-force"),
    RECHECK_DUE("recheck-due"),
    NOT_YET("not-yet"),
    REPLACED("replaced"),
    WITHDRAWN("factor-withdrawn"),
    LAPSED("lapsed"),
    SOURCE_CHANGED("source-changed"),
    EVIDENCE_CHANGED("evidence-changed"),
    NOT_VERIFIED("not-verified");

    private final String word;

    CardState(String word) {
        this.word = word;
    }

    /** Returns the word by which files and the command line know the state. */
    public String symbol() {
        return word;
    }

    /** Returns the state as a word inside a problem's message. */
    public Problem.Word word() {
        return new Problem.Word(word);
    }

    /** Returns whether a card of this state may leave the laboratory without its state across it. */
    public boolean mayLeaveUnmarked() {
        return this == IN_FORCE || this == RECHECK_DUE;
    }

    /**
     * Returns how it stands with the card of a revision that issued a factor at a moment.
     *
     * <p>A revision that the lab book does not hold is not issued. One that has not begun is not in force yet, or never will be when a later one begins no later than it. One that
     * has begun ends when a later one begins; until then the state of the mix's factor is its own.
     */
    public static CardState of(Evidence evidence, FactorIssue issue, LocalDateTime moment) {
        if (evidence.issues().stream().noneMatch(known -> known.value().equals(issue))) {
            return NOT_ISSUED;
        }
        LocalDateTime looked = issue.begins().isAfter(moment) ? issue.begins() : moment;
        Optional<FactorIssue> later = evidence.issues().stream()
                .map(Version::value)
                .filter(other -> other.revision() > issue.revision())
                .filter(other -> !other.begins().isAfter(looked))
                .max(Comparator.comparingInt(FactorIssue::revision));
        if (later.isPresent()) {
            return later.get().isIssue() ? REPLACED : WITHDRAWN;
        }
        return issue.begins().isAfter(moment) ? NOT_YET : of(evidence.stateAt(moment));
    }

    /** Returns how it stands with the card in force of a mix whose factor is in a state. */
    static CardState of(FactorState state) {
        return switch (state) {
            case IN_FORCE -> IN_FORCE;
            case RECHECK_DUE -> RECHECK_DUE;
            case LAPSED -> LAPSED;
            case SOURCE_CHANGED -> SOURCE_CHANGED;
            case EVIDENCE_CHANGED -> EVIDENCE_CHANGED;
            case NOT_VERIFIED -> NOT_VERIFIED;
            case WITHDRAWN -> WITHDRAWN;
            case NO_FACTOR -> NOT_YET;
        };
    }

    /** Returns why the card of a revision may not leave unmarked at a moment; empty when it may. */
    public static Optional<Problem> refusal(Evidence evidence, FactorIssue issue, LocalDateTime moment) {
        CardState state = of(evidence, issue, moment);
        return state.mayLeaveUnmarked()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "factor", "issue.not-usable", issue.mixId().text(), state.word(), issue.revision()));
    }

    /** Returns why no card of a mix may leave unmarked at a moment; empty when that of the revision in force may. */
    public static Optional<Problem> refusal(Evidence evidence, LocalDateTime moment) {
        return evidence.inForceAt(moment)
                .map(issue -> refusal(evidence, issue, moment))
                .orElseGet(() -> Optional.of(Problem.error(
                        "factor",
                        "issue.none-in-force",
                        evidence.mix().value().id().text(),
                        Moments.said(evidence.issues(), moment))));
    }
}
