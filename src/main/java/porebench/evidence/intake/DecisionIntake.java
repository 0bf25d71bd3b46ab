package porebench.evidence.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.FactorOrigin;
import porebench.record.Kept;
import porebench.record.RecordKind;

/** Checks a decision on a changed source from a file, and marks it as one that was made elsewhere. */
final class DecisionIntake {
    private DecisionIntake() {}

    /** Returns what is wrong with a decision, by itself or because what it names is not known, and that it was made elsewhere. */
    static List<Problem> check(
            ChangeDecision decision,
            Touched touched,
            BiFunction<RecordKind, String, Optional<Kept>> known,
            LocalDate today) {
        List<Problem> problems = new ArrayList<>(decision.check(today));
        if (known.apply(RecordKind.MIX, decision.mixId().text()).isEmpty()) {
            problems.add(Problem.error(
                    "mixId",
                    "import.unknown-mix",
                    RecordKind.CHANGE_DECISION.word(),
                    decision.recordId(),
                    decision.mixId().text()));
        }
        Stream.of(decision.change().before(), decision.change().after())
                .flatMap(side -> side.keySet().stream())
                .sorted()
                .filter(id -> known.apply(RecordKind.DETERMINATION, id.text()).isEmpty())
                .forEach(id -> problems.add(
                        Problem.error("before", "decision.unknown-determination", decision.recordId(), id.text())));
        if (there(decision, touched).isEmpty() && !Problem.anyError(problems)) {
            problems.add(Problem.warning("origin", "decision.not-seen-here", decision.recordId()));
        }
        return problems;
    }

    private static Optional<ChangeDecision> there(ChangeDecision decision, Touched touched) {
        return touched.value(ChangeDecision.class, RecordKind.CHANGE_DECISION, decision.recordId());
    }

    /** Returns a decision as it is kept: one that the lab book has keeps its mark, another was made elsewhere. */
    static Incoming marked(Incoming one, Touched touched) {
        ChangeDecision decision = (ChangeDecision) one.value();
        return new Incoming(
                one.place(),
                decision.from(
                        there(decision, touched).map(ChangeDecision::origin).orElse(FactorOrigin.IMPORTED)));
    }
}
