package porebench.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.method.Problem;
import porebench.record.ChangeDecision;
import porebench.record.FactorIssue;
import porebench.record.book.Version;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/**
 * What happened since somebody decided on a changed source to all that the comparison rested on, and what is said of a decision where
 * its mix is seen.
 */
public final class DecisionChanges {
    private DecisionChanges() {}

    /**
     * Returns what is no longer as it stood when a decision was made: another stone, another version of a trial, calibration or
     * determination, one more or one gone. Empty while the comparison would be the same.
     */
    public static List<Problem> since(Evidence evidence, ChangeDecision decision) {
        List<Problem> changes = new ArrayList<>();
        decision.change().sourceVersions().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .filter(named -> !stone(evidence, named.getKey()).equals(Optional.of(named.getValue())))
                .forEach(named -> changes.add(problem(
                        "decision.source-changed", decision, named.getKey().text())));
        Map<DeterminationId, Integer> named = new HashMap<>(decision.change().before());
        named.putAll(decision.change().after());
        List<JudgedDetermination> now = evidence.determinations().stream()
                .filter(one -> named.containsKey(id(one)) || isOfNewStone(evidence, one))
                .toList();
        compare(
                changes,
                decision,
                List.of(
                        "decision.determination-added",
                        "decision.determination-changed",
                        "decision.determination-gone"),
                texts(named, DeterminationId::text),
                texts(
                        now.stream()
                                .collect(Collectors.toMap(
                                        DecisionChanges::id,
                                        one -> one.determination().number())),
                        DeterminationId::text));
        Map<TrialId, Integer> trials = new HashMap<>();
        Map<CalibrationId, Integer> calibrations = new HashMap<>();
        EvidenceChanges calibrated = new EvidenceChanges(evidence);
        now.stream().filter(one -> named.containsKey(id(one))).forEach(one -> {
            trials.putAll(EvidenceChanges.trialsNow(one));
            calibrations.putAll(calibrated.calibrationsNow(one));
        });
        compare(
                changes,
                decision,
                List.of("decision.trial-added", "decision.trial-changed", "decision.trial-gone"),
                texts(decision.change().trialVersions(), TrialId::text),
                texts(trials, TrialId::text));
        compare(
                changes,
                decision,
                List.of("decision.calibration-added", "decision.calibration-changed", "decision.calibration-gone"),
                texts(decision.change().calibrationVersions(), CalibrationId::text),
                texts(calibrations, CalibrationId::text));
        return changes;
    }

    private static Optional<Integer> stone(Evidence evidence, SourceId source) {
        return evidence.story(source).map(story -> story.last().begun().number());
    }

    private static DeterminationId id(JudgedDetermination judged) {
        return judged.determination().value().id();
    }

    private static boolean isOfNewStone(Evidence evidence, JudgedDetermination judged) {
        return judged.counted() > 0 && evidence.changesSince(judged).isEmpty();
    }

    private static <I> Map<String, Integer> texts(Map<I, Integer> versions, Function<I, String> text) {
        return versions.entrySet().stream()
                .collect(Collectors.toMap(entry -> text.apply(entry.getKey()), Map.Entry::getValue));
    }

    private static void compare(
            List<Problem> changes,
            ChangeDecision decision,
            List<String> codes,
            Map<String, Integer> then,
            Map<String, Integer> now) {
        Stream.concat(then.keySet().stream(), now.keySet().stream())
                .distinct()
                .sorted()
                .filter(id -> !Optional.ofNullable(then.get(id)).equals(Optional.ofNullable(now.get(id))))
                .forEach(id -> {
                    int how = !then.containsKey(id) ? 0 : now.containsKey(id) ? 1 : 2;
                    changes.add(problem(codes.get(how), decision, id));
                });
    }

    private static Problem problem(String code, ChangeDecision decision, String id) {
        return Problem.warning("decision", code, decision.id().text(), id);
    }

    /** Returns the decision on the newest change of a mix's sources; empty where nobody decided on it. */
    public static Optional<ChangeDecision> newest(Evidence evidence) {
        return evidence.decisions().stream()
                .map(Version::value)
                .filter(decision -> decision.change().sourceVersions().entrySet().stream()
                        .allMatch(named -> stone(evidence, named.getKey()).equals(Optional.of(named.getValue()))))
                .reduce((earlier, later) -> later);
    }

    /**
     * Returns what is said of decisions where a factor is seen: which one keeps it, and, where a source is or becomes another stone than
     * it rests on, what was decided of that, when and by whom, that it goes against the comparison, and whether its evidence is another
     * one since. Empty where nobody decided anything.
     *
     * @param issue a factor of the mix
     * @param day the day on which it is seen
     */
    public static List<Problem> of(Evidence evidence, FactorIssue issue, LocalDate day) {
        List<Problem> said = new ArrayList<>();
        boolean isOfOtherStone = evidence.changesSince(issue, day).stream()
                .anyMatch(change -> change.source().isPresent());
        if (isOfOtherStone || !evidence.changesToCome(issue, day).isEmpty()) {
            newest(evidence).ifPresent(decision -> said.addAll(said(evidence, decision)));
        }
        issue.grounds()
                .keptBy()
                .ifPresent(decision -> said.add(Problem.warning(
                        "factor",
                        "register.kept-by",
                        issue.revision(),
                        decision.text(),
                        issue.determinationId().text())));
        return said;
    }

    private static List<Problem> said(Evidence evidence, ChangeDecision decision) {
        List<Problem> said = new ArrayList<>();
        said.add(Problem.warning(
                "decision",
                switch (decision.choice()) {
                    case KEEP -> "register.decided-keep";
                    case REPLACE -> "register.decided-replace";
                    case TEST_MORE -> "register.decided-test-more";
                },
                decision.id().text(),
                decision.decidedOn().toString(),
                decision.decidedBy(),
                decision.more().orElse(0)));
        if (decision.isAgainstVerdict()) {
            said.add(Problem.warning(
                    "decision",
                    "register.decided-against",
                    decision.id().text(),
                    ChangeDecision.word(decision.figures().verdict()),
                    decision.reason()));
        }
        if (!since(evidence, decision).isEmpty()) {
            said.add(Problem.warning(
                    "decision", "register.decided-on-other", decision.id().text()));
        }
        return said;
    }
}
