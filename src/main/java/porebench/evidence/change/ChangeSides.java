package porebench.evidence.change;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import porebench.evidence.Basis;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceChanges;
import porebench.evidence.JudgedDetermination;
import porebench.method.Answer;
import porebench.method.Problem;
import porebench.record.DecidedChange;
import porebench.record.FactorIssue;
import porebench.record.id.CalibrationId;
import porebench.record.id.DeterminationId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;

/**
 * The determinations of a mix on both sides of the newest change of its sources, each with at least one trial that counts: made of the
 * stone as it was last, and of the stone as it is now.
 *
 * @param sources the sources that changed
 * @param before the determinations made before the change, the oldest first
 * @param after those made after it
 */
record ChangeSides(List<SourceId> sources, List<JudgedDetermination> before, List<JudgedDetermination> after) {
    ChangeSides {
        sources = List.copyOf(sources);
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** Returns both sides; refused where no source changed, or one side has no trial that counts. */
    static Answer<ChangeSides> of(Evidence evidence) {
        String mix = evidence.mix().value().id().text();
        List<JudgedDetermination> counting = evidence.determinations().stream()
                .filter(one -> one.counted() > 0)
                .toList();
        if (!happened(evidence)) {
            return refused(Problem.error("sources", "change.no-change", mix));
        }
        Optional<JudgedDetermination> last =
                counting.stream().filter(one -> isOfOlderSource(evidence, one)).reduce((earlier, later) -> later);
        if (last.isEmpty()) {
            return refused(Problem.error("sources", "change.nothing-before", mix));
        }
        List<SourceId> changed = evidence.changesSince(last.get()).stream()
                .flatMap(change -> change.source().stream())
                .distinct()
                .toList();
        List<JudgedDetermination> after = counting.stream()
                .filter(one -> evidence.changesSince(one).isEmpty())
                .toList();
        if (after.isEmpty()) {
            String names = changed.stream().map(SourceId::text).collect(Collectors.joining(", "));
            return refused(Problem.error("sources", "change.nothing-after", mix, names));
        }
        List<JudgedDetermination> before = counting.stream()
                .filter(one -> isOfOlderSource(evidence, one))
                .filter(one -> basis(evidence, one).isOfSameStonesAs(basis(evidence, last.get())))
                .toList();
        return Answer.of(new ChangeSides(changed, before, after), List.of());
    }

    /** Returns whether a source of a mix changed since one of its determinations, its own proportions being the same. */
    static boolean happened(Evidence evidence) {
        return evidence.determinations().stream().anyMatch(one -> isOfOlderSource(evidence, one));
    }

    private static Answer<ChangeSides> refused(Problem problem) {
        return Answer.refused(List.of(problem));
    }

    /** Returns whether a determination was made of the same mix of aggregates, and of another stone of some source. */
    private static boolean isOfOlderSource(Evidence evidence, JudgedDetermination one) {
        List<Evidence.AggregateChange> changes = evidence.changesSince(one);
        return !changes.isEmpty()
                && changes.stream().allMatch(change -> change.source().isPresent());
    }

    private static Basis basis(Evidence evidence, JudgedDetermination one) {
        return Objects.requireNonNull(
                evidence.made().get(one.determination().value().id()));
    }

    /** Returns the change, and the versions of all that stands on both sides of it now. */
    DecidedChange asTheyStand(Evidence evidence) {
        Map<SourceId, Integer> versions = new HashMap<>();
        Optional<LocalDate> changedOn = Optional.empty();
        for (SourceId source : sources) {
            evidence.story(source)
                    .ifPresent(
                            story -> versions.put(source, story.last().begun().number()));
            Optional<LocalDate> from =
                    evidence.story(source).flatMap(story -> story.last().from());
            changedOn = Stream.concat(changedOn.stream(), from.stream()).max(LocalDate::compareTo);
        }
        Map<TrialId, Integer> trials = new HashMap<>();
        Map<CalibrationId, Integer> calibrations = new HashMap<>();
        EvidenceChanges changes = new EvidenceChanges(evidence);
        Stream.of(before, after).flatMap(Collection::stream).forEach(one -> {
            trials.putAll(EvidenceChanges.trialsNow(one));
            calibrations.putAll(changes.calibrationsNow(one));
        });
        return new DecidedChange(
                versions,
                changedOn,
                evidence.newestIssue()
                        .filter(FactorIssue::isIssue)
                        .filter(issue -> versions(before).containsKey(issue.determinationId()))
                        .map(FactorIssue::revision),
                versions(before),
                versions(after),
                trials,
                calibrations);
    }

    private static Map<DeterminationId, Integer> versions(List<JudgedDetermination> some) {
        return some.stream()
                .map(JudgedDetermination::determination)
                .collect(Collectors.toMap(version -> version.value().id(), version -> version.number()));
    }
}
