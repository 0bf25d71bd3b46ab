package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import porebench.method.Problem;
import porebench.record.FactorIssue;
import porebench.record.Grounds;
import porebench.record.MeterCalibration;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;
import porebench.record.id.TrialId;

/**
 * What happened to the trials and calibrations that a revision rests on since it was issued.
 *
 * <p>A revision names their versions; any other version, one more trial that is there, or one that is gone, makes its
 * evidence another one. A revision of a time when versions were not yet named is held against the day and time at which it
 * was kept.
 */
public final class EvidenceChanges {
    private final Evidence evidence;

    public EvidenceChanges(Evidence evidence) {
        this.evidence = evidence;
    }

    /** Returns the versions of all trials of a determination as they stand now. */
    public static Map<TrialId, Integer> trialsNow(JudgedDetermination judged) {
        return judged.trials().stream()
                .map(JudgedTrial::trial)
                .collect(Collectors.toMap(version -> version.value().id(), Version::number));
    }

    /** Returns the versions of the calibrations of a determination's meters up to the day of its last trial. */
    public Map<CalibrationId, Integer> calibrationsNow(JudgedDetermination judged) {
        Map<CalibrationId, Integer> versions = new HashMap<>();
        calibrations(judged).forEach(one -> versions.put(one.value().id(), one.number()));
        return versions;
    }

    private List<Version<MeterCalibration>> calibrations(JudgedDetermination judged) {
        Optional<LocalDate> last = judged.trials().stream()
                .map(trial -> trial.trial().value().testedAt().toLocalDate())
                .max(LocalDate::compareTo);
        Set<MeterId> meters = judged.trials().stream()
                .map(trial -> trial.trial().value().meterId())
                .collect(Collectors.toSet());
        return meters.stream()
                .flatMap(meter -> Optional.ofNullable(evidence.stories().get(meter)).stream())
                .flatMap(story -> story.calibrations().stream())
                .map(JudgedCalibration::calibration)
                .filter(one -> last.isPresent() && !one.value().calibratedOn().isAfter(last.get()))
                .toList();
    }

    /** Returns what changed since a revision was kept, in the order of the trials' names; empty when nothing did. */
    List<Problem> since(Version<FactorIssue> version) {
        FactorIssue issue = version.value();
        if (!issue.isIssue()) {
            return List.of();
        }
        Optional<JudgedDetermination> judged = evidence.determination(issue.determinationId());
        if (judged.isEmpty() || judged.get().trials().isEmpty()) {
            return List.of(Problem.warning(
                    "factor",
                    "register.no-trials",
                    issue.revision(),
                    issue.determinationId().text()));
        }
        if (issue.grounds().namesTrials()) {
            List<Problem> changes = new ArrayList<>();
            compare(
                    changes,
                    names(issue.grounds().trialVersions(), TrialId::text),
                    names(trialsNow(judged.get()), TrialId::text),
                    List.of("register.trial-added", "register.trial-changed", "register.trial-gone"));
            compare(
                    changes,
                    names(issue.grounds().calibrationVersions(), CalibrationId::text),
                    names(calibrationsNow(judged.get()), CalibrationId::text),
                    List.of("register.calibration-added", "register.calibration-changed", "register.calibration-gone"));
            return changes;
        }
        return since(judged.get(), version.stamp().at());
    }

    /**
     * Returns when the first of the changes since a revision was issued was kept; empty when nothing changed.
     *
     * <p>Of a trial or calibration that was corrected more than once since, its newest correction counts.
     */
    Optional<Instant> begun(Version<FactorIssue> version) {
        List<Problem> changes = since(version);
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        FactorIssue issue = version.value();
        Grounds grounds = issue.grounds();
        Predicate<Version<?>> isAnother = grounds.namesTrials()
                ? one -> !Integer.valueOf(one.number()).equals(named(grounds, one))
                : one -> one.stamp().at().isAfter(version.stamp().at());
        return evidence.determination(issue.determinationId()).stream()
                .flatMap(judged -> Stream.<Version<?>>concat(
                        judged.trials().stream().map(JudgedTrial::trial), calibrations(judged).stream()))
                .filter(isAnother)
                .map(one -> one.stamp().at())
                .min(Comparator.naturalOrder())
                // What is gone says no more when it went.
                .or(() -> Optional.of(version.stamp().at()));
    }

    private static @Nullable Integer named(Grounds grounds, Version<?> version) {
        return version.value() instanceof Trial trial
                ? grounds.trialVersions().get(trial.id())
                : grounds.calibrationVersions().get(((MeterCalibration) version.value()).id());
    }

    private static <I> Map<String, Integer> names(Map<I, Integer> versions, Function<I, String> text) {
        return versions.entrySet().stream()
                .collect(Collectors.toMap(entry -> text.apply(entry.getKey()), Map.Entry::getValue));
    }

    private static void compare(
            List<Problem> changes, Map<String, Integer> then, Map<String, Integer> now, List<String> codes) {
        now.keySet().stream().sorted().forEach(id -> {
            Integer before = then.get(id);
            if (before == null) {
                changes.add(Problem.warning("factor", codes.get(0), id));
            } else if (!before.equals(now.get(id))) {
                changes.add(Problem.warning("factor", codes.get(1), id));
            }
        });
        then.keySet().stream()
                .filter(id -> !now.containsKey(id))
                .sorted()
                .forEach(id -> changes.add(Problem.warning("factor", codes.get(2), id)));
    }

    private List<Problem> since(JudgedDetermination judged, Instant issuedAt) {
        List<Problem> changes = new ArrayList<>();
        judged.trials().stream()
                .map(JudgedTrial::trial)
                .filter(trial -> trial.stamp().at().isAfter(issuedAt))
                .forEach(trial -> changes.add(Problem.warning(
                        "factor",
                        trial.number() > 1 ? "register.trial-changed" : "register.trial-added",
                        trial.value().id().text())));
        calibrations(judged).stream()
                .filter(one -> one.stamp().at().isAfter(issuedAt))
                .forEach(one -> changes.add(Problem.warning(
                        "factor",
                        one.number() > 1 ? "register.calibration-changed" : "register.calibration-added",
                        one.value().id().text())));
        return changes;
    }
}
