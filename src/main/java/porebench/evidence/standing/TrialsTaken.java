package porebench.evidence.standing;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import porebench.evidence.CountedTrials;
import porebench.evidence.EnoughTrials;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.method.trial.StopRule;
import porebench.record.Trial;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * A determination that took trials in, as it stands now.
 *
 * @param id the determination
 * @param mixId its mix
 * @param counted how many of its trials count
 * @param stop whether they are enough; empty when none counts
 */
public record TrialsTaken(DeterminationId id, MixId mixId, int counted, Optional<StopRule> stop) {
    /**
     * Returns the determinations of some trials that the lab book has just taken in, mix by mix. A mix that the standing of the
     * laboratory works out is read once for both.
     *
     * @param progress hears how far it is
     */
    public static List<TrialsTaken> of(LabBook book, Collection<Trial> trials, Progress progress) {
        SortedMap<MixId, Set<DeterminationId>> taken = new TreeMap<>();
        trials.forEach(trial ->
                taken.computeIfAbsent(trial.mixId(), mix -> new HashSet<>()).add(trial.determinationId()));
        if (taken.isEmpty()) {
            return List.of();
        }
        Map<MixId, List<EnoughTrials>> read = new HashMap<>();
        Consumer<Evidence> look = evidence -> {
            MixId mix = evidence.mix().value().id();
            Optional.ofNullable(taken.get(mix)).ifPresent(wanted -> read.put(mix, asked(evidence, wanted)));
        };
        LaboratoryStanding standing = LaboratoryStanding.of(book, progress, look);
        standing.each(
                taken.keySet().stream().filter(mix -> !read.containsKey(mix)).toList(), look);
        LaboratoryScatter laboratory = standing.scatter();
        List<TrialsTaken> stand = new ArrayList<>();
        for (MixId mix : taken.keySet()) {
            read.getOrDefault(mix, List.of()).forEach(one -> stand.add(of(one, laboratory)));
        }
        return stand;
    }

    private static List<EnoughTrials> asked(Evidence evidence, Set<DeterminationId> wanted) {
        List<CountedTrials> counted = evidence.counted();
        return evidence.determinations().stream()
                .filter(one -> wanted.contains(one.determination().value().id()))
                .map(one -> evidence.enough(one, counted))
                .toList();
    }

    private static TrialsTaken of(EnoughTrials one, LaboratoryScatter laboratory) {
        return new TrialsTaken(
                one.determination().id(),
                one.determination().mixId(),
                one.determination().factors().length,
                one.stop(laboratory));
    }
}
