package porebench.desk.frame.rail;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.desk.form.Days;
import porebench.evidence.Evidence;
import porebench.evidence.FactorState;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.OpenProposal;
import porebench.evidence.Recheck;
import porebench.method.FigureName;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.FactorProposal;
import porebench.record.id.SourceId;

/**
 * What a mix's factor asks of the laboratory next.
 *
 * @param key the sentence in the bundle
 * @param values what it names
 * @param step the step in which it is done, counted from 1; 0 when nothing has to be done
 */
public record NextStep(String key, List<String> values, int step) {
    private static final int SAMPLE = 2;
    private static final int TRIALS = 3;
    private static final int VARIABILITY = 4;
    private static final int FACTOR = 5;

    public NextStep {
        values = List.copyOf(values);
    }

    /**
     * Returns what is next for a mix at a moment.
     *
     * @param words says why a rule of the laboratory asks for a new test
     */
    public static NextStep of(Evidence evidence, LocalDateTime moment, Function<Problem, String> words) {
        Optional<NextStep> open = OpenProposal.of(evidence).map(version -> of(version.value()));
        if (open.isPresent()) {
            return open.get();
        }
        LocalDate day = moment.toLocalDate();
        FactorState state = evidence.stateAt(moment);
        Optional<FactorIssue> begun = evidence.begunBy(moment);
        if (state == FactorState.IN_FORCE) {
            return new NextStep("next.in-force", List.of(recheckBy(begun)), 0);
        }
        Optional<Problem> rule = rule(evidence, state, begun, day);
        if (rule.isPresent()) {
            String key = state == FactorState.LAPSED ? "next.lapsed-rule" : "next.recheck-rule";
            return trials(evidence, key, List.of(words.apply(rule.get())));
        }
        String why = reason(evidence, state, begun, day);
        return trials(evidence, "next." + why, values(evidence, state, begun, day));
    }

    /** Returns what is next about a draft that is open. */
    private static NextStep of(FactorProposal open) {
        return new NextStep("next.draft-" + open.step().symbol(), List.of(open.by()), FACTOR);
    }

    /** Returns the rule that asks for a new test, where that is another one than the day on the card. */
    private static Optional<Problem> rule(
            Evidence evidence, FactorState state, Optional<FactorIssue> begun, LocalDate day) {
        return begun.filter(any -> state == FactorState.LAPSED || state == FactorState.RECHECK_DUE)
                .flatMap(issue -> evidence.recheck(issue).on(day).stream().findFirst())
                .map(Recheck.Due::why)
                .filter(why -> !why.field().equals("recheckBy"));
    }

    private static String recheckBy(Optional<FactorIssue> issue) {
        return issue.map(each -> Days.show(each.recheckBy())).orElse("");
    }

    private static String reason(Evidence evidence, FactorState state, Optional<FactorIssue> begun, LocalDate day) {
        return switch (state) {
            case RECHECK_DUE -> "recheck-due";
            case LAPSED -> "lapsed";
            case WITHDRAWN -> "withdrawn";
            case SOURCE_CHANGED -> changedSources(evidence, begun, day).isEmpty() ? "mix-changed" : "source-changed";
            case EVIDENCE_CHANGED -> "evidence-changed";
            case NOT_VERIFIED -> "not-verified";
            default -> evidence.newestIssue().isPresent() ? "not-yet" : "no-factor";
        };
    }

    private static List<String> values(
            Evidence evidence, FactorState state, Optional<FactorIssue> begun, LocalDate day) {
        return switch (state) {
            case RECHECK_DUE, LAPSED -> List.of(recheckBy(begun));
            case WITHDRAWN ->
                List.of(begun.map(issue -> Days.show(issue.inForceFrom())).orElse(""));
            case SOURCE_CHANGED -> List.of(changedSources(evidence, begun, day));
            default ->
                List.of(evidence.newestIssue()
                        .map(issue -> Days.show(issue.inForceFrom()))
                        .orElse(""));
        };
    }

    private static String changedSources(Evidence evidence, Optional<FactorIssue> begun, LocalDate day) {
        return begun.stream()
                .flatMap(issue -> evidence.changesSince(issue, day).stream())
                .flatMap(change -> change.source().stream())
                .map(SourceId::text)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** Adds to the reason how far the trials of the next factor are. */
    private static NextStep trials(Evidence evidence, String reasonKey, List<String> values) {
        int least = evidence.profile().count(FigureName.LEAST_TRIALS);
        Optional<JudgedDetermination> open = evidence.openDetermination();
        int counted = open.map(JudgedDetermination::counted).orElse(0);
        String first = values.get(0);
        if (reasonKey.equals("next.not-yet")) {
            return new NextStep(reasonKey, List.of(first), 0);
        }
        if (reasonKey.equals("next.evidence-changed") || reasonKey.equals("next.not-verified")) {
            return new NextStep(reasonKey, List.of(), FACTOR);
        }
        if (open.isEmpty() || open.get().trials().isEmpty()) {
            return new NextStep(reasonKey + ".begin", List.of(first, Integer.toString(least)), SAMPLE);
        }
        if (counted < least) {
            return new NextStep(
                    reasonKey + ".go-on", List.of(first, Integer.toString(counted), Integer.toString(least)), TRIALS);
        }
        return new NextStep(reasonKey + ".issue", List.of(first, Integer.toString(counted)), VARIABILITY);
    }
}
