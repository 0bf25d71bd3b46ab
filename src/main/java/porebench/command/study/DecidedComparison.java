package porebench.command.study;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import porebench.evidence.DecisionChanges;
import porebench.evidence.Evidence;
import porebench.evidence.change.SourceChange;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.book.Version;

/**
 * A comparison with what was decided on it and on those before it.
 *
 * @param change the comparison
 * @param made what is decided now; empty where nothing is
 * @param all every decision of the mix, the last one first
 */
record DecidedComparison(SourceChange change, Optional<ChangeDecision> made, List<Told> all) {
    /**
     * A decision of the mix.
     *
     * @param decision the decision
     * @param since what happened since to what it rests on
     */
    record Told(ChangeDecision decision, List<Problem> since) {}

    static DecidedComparison of(Evidence evidence, SourceChange change, Optional<ChangeDecision> made) {
        List<Told> all = evidence.decisions().stream()
                .map(Version::value)
                .map(one -> new Told(one, DecisionChanges.since(evidence, one)))
                .toList();
        return new DecidedComparison(change, made, reversed(all));
    }

    private static List<Told> reversed(List<Told> all) {
        return IntStream.range(0, all.size())
                .mapToObj(i -> all.get(all.size() - 1 - i))
                .toList();
    }
}
