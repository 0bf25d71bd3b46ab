package porebench.evidence.issue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.method.Problem;
import porebench.record.TakenDoubt;

/**
 * That a person takes doubts on.
 *
 * @param who the person; an issue is refused while it is blank
 * @param reason why; an issue is refused while it is blank
 * @param doubts the doubts, each with the words that the person read
 */
public record TakingOn(String who, String reason, Map<IssueDoubt.Key, String> doubts) {
    public TakingOn {
        doubts = Map.copyOf(doubts);
    }

    /** Returns that a person takes on all of some doubts. */
    public static TakingOn all(String who, String reason, List<IssueDoubt> doubts, Function<Problem, String> words) {
        return new TakingOn(
                who,
                reason,
                doubts.stream()
                        .collect(Collectors.toMap(
                                IssueDoubt::key,
                                doubt -> words.apply(doubt.problem()),
                                (one, other) -> one + " " + other)));
    }

    /** Says all doubts, holds them against what somebody takes on, and returns those taken on: all of them or none. */
    static List<TakenDoubt> takeOn(List<Problem> problems, List<IssueDoubt> doubts, Optional<TakingOn> takingOn) {
        doubts.forEach(doubt -> problems.add(doubt.asSaid()));
        if (doubts.isEmpty()) {
            takingOn.ifPresent(any -> problems.add(Problem.warning("override", "issue.override-not-needed")));
            return List.of();
        }
        long open = doubts.stream()
                .filter(doubt -> takingOn.isEmpty() || !takingOn.get().doubts().containsKey(doubt.key()))
                .count();
        if (open > 0) {
            problems.add(Problem.error("override", "issue.doubts-open", open).of(Problem.Kind.NOT_YET));
        }
        boolean isNamed = takingOn.filter(
                        taking -> !taking.who().isBlank() && !taking.reason().isBlank())
                .isPresent();
        if (takingOn.isPresent() && !isNamed) {
            problems.add(Problem.error("override", "issue.override-incomplete").of(Problem.Kind.NOT_YET));
        }
        return open > 0 || !isNamed
                ? List.of()
                : doubts.stream().map(takingOn.get()::taken).toList();
    }

    private TakenDoubt taken(IssueDoubt doubt) {
        return new TakenDoubt(
                doubt.trial(),
                doubt.problem().code(),
                Optional.ofNullable(doubts.get(doubt.key())).orElse(""),
                who.strip(),
                reason.strip());
    }
}
