package porebench.evidence.source;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import porebench.evidence.Basis;
import porebench.evidence.Evidence;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.record.book.Belonging;
import porebench.record.book.Records;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.id.TrialId;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/**
 * A trial made with a source.
 *
 * @param trial the trial
 * @param mix its mix
 * @param determination its determination
 * @param on its day
 * @param stones the stones of the source that its determination was made of, the earliest first; one unless it went on across a change
 * @param factorPercent the factor it gives, in % air; empty where it gives none
 * @param counts whether it counts
 */
public record SourceTrial(
        TrialId trial,
        MixId mix,
        DeterminationId determination,
        LocalDate on,
        List<SourcePeriod> stones,
        OptionalDouble factorPercent,
        boolean counts) {
    public SourceTrial {
        stones = List.copyOf(stones);
    }

    /**
     * Returns the trials made with a source, the newest first, also those of mixes that no longer use it.
     *
     * @param book what the lab book holds; of it only the determinations of the source are asked for
     * @param reader hands out everything known about some mixes, one after the other
     */
    public static List<SourceTrial> of(
            Records book, BiConsumer<Collection<MixId>, Consumer<Evidence>> reader, SourceId source) {
        List<MixId> mixes = book.latestOf(Belonging.DETERMINATIONS_OF_SOURCE, source.text()).stream()
                .map(determination -> determination.value().mixId())
                .distinct()
                .toList();
        List<SourceTrial> trials = new ArrayList<>();
        reader.accept(
                mixes, evidence -> evidence.determinations().forEach(judged -> add(evidence, judged, source, trials)));
        trials.sort(Comparator.comparing(SourceTrial::on)
                .thenComparing(SourceTrial::trial)
                .reversed());
        return List.copyOf(trials);
    }

    private static void add(Evidence evidence, JudgedDetermination judged, SourceId source, List<SourceTrial> trials) {
        DeterminationId id = judged.determination().value().id();
        Basis basis = evidence.made().get(id);
        SourceStory story = basis == null ? null : basis.stories().get(source);
        if (basis == null || story == null) {
            return;
        }
        Set<Integer> numbers = basis.stonesOf(source);
        List<SourcePeriod> stones = story.periods().stream()
                .filter(period -> period.number() == period.stone() && numbers.contains(period.stone()))
                .toList();
        for (JudgedTrial one : judged.trials()) {
            trials.add(new SourceTrial(
                    one.trial().value().id(),
                    evidence.mix().value().id(),
                    id,
                    one.trial().value().testedAt().toLocalDate(),
                    stones,
                    one.factorPercent(),
                    one.counts()));
        }
    }
}
