package porebench.evidence;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import porebench.record.MixDesign;
import porebench.record.book.Version;
import porebench.record.id.SourceId;
import porebench.record.source.SourcePeriod;
import porebench.record.source.SourceStory;

/**
 * What trials are made with and a factor rests on: the mix design as it was, and the stones of its sources.
 *
 * @param mix the mix design of that day
 * @param versions the versions of its sources that were written down
 * @param stories what those sources were, of which the lab book has the version
 * @param days the days on which the trials that count were made
 * @param terms on which terms it holds for a mix of the same group; empty where it is of the mix itself
 */
public record Basis(
        MixDesign mix,
        Map<SourceId, Integer> versions,
        Map<SourceId, SourceStory> stories,
        Set<LocalDate> days,
        Optional<GroupTerms> terms) {
    public Basis {
        versions = Map.copyOf(versions);
        stories = Map.copyOf(stories);
        days = Set.copyOf(days);
    }

    /** Returns the sources named in a version that the lab book does not have, as after an import from another book. */
    private List<SourceId> lost() {
        return versions.keySet().stream()
                .filter(source -> !stories.containsKey(source))
                .sorted()
                .toList();
    }

    /** Returns the numbers of the stones of a source that trials of some days were made of; none where it names none. */
    Set<Integer> stones(SourceId source, Set<LocalDate> onDays) {
        SourceStory story = stories.get(source);
        Integer version = versions.get(source);
        return story == null || version == null ? Set.of() : story.stones(version, onDays);
    }

    /** Returns whether its trials were made of one stone of a source, and that is it. */
    boolean isOf(SourceId source, SourcePeriod stone) {
        return stones(source, days).equals(Set.of(stone.stone()));
    }

    /** Returns whether its trials were made of the same stones as those of another, source by source. */
    public boolean isOfSameStonesAs(Basis other) {
        return versions.keySet().equals(other.versions.keySet())
                && lost().equals(other.lost())
                && stories.keySet().stream()
                        .allMatch(source -> stones(source, days).equals(other.stones(source, other.days)));
    }

    /** Returns the numbers of the stones of a source that its trials were made of, the first one first. */
    public SortedSet<Integer> stonesOf(SourceId source) {
        return new TreeSet<>(stones(source, days));
    }

    /** Returns the same with another story of a source. */
    Basis with(SourceStory story) {
        Map<SourceId, SourceStory> others = new HashMap<>(stories);
        others.computeIfPresent(story.id(), (id, before) -> story);
        return new Basis(mix, versions, others, days, terms);
    }

    /** Returns some with another story of a source. */
    static <K> Map<K, Basis> with(Map<K, Basis> bases, SourceStory story) {
        Map<K, Basis> others = new HashMap<>();
        bases.forEach((key, basis) -> others.put(key, basis.with(story)));
        return others;
    }

    /** Returns the same for another mix of a group. */
    Basis on(GroupTerms other) {
        return new Basis(mix, versions, stories, days, Optional.of(other));
    }

    /**
     * Returns since when it no longer holds for a mix because of its design, or of that of the tested mix; empty while it holds.
     *
     * @param points how far the proportions of its own aggregates may drift, in percentage points
     */
    Optional<Instant> otherSince(Version<MixDesign> today, double points) {
        return terms.isPresent()
                ? terms.get().drifts(today, mix).stream()
                        .map(GroupTerms.Drift::begun)
                        .min(Comparator.naturalOrder())
                : Optional.of(today.stamp().at()).filter(any -> !mix.hasSameAggregatesAs(today.value(), points));
    }

    /**
     * Returns what is not what it was made with.
     *
     * @param today the mix design as it is now
     * @param points how far the proportions of its aggregates may drift, in percentage points
     * @param sources what its sources were
     * @param inUse which stone of a source counts
     */
    List<Evidence.AggregateChange> changes(
            Version<MixDesign> today,
            double points,
            List<SourceStory> sources,
            Function<SourceStory, SourcePeriod> inUse) {
        List<Evidence.AggregateChange> changes = new ArrayList<>();
        terms.ifPresent(group -> group.drifts(today, mix)
                .forEach(drift ->
                        changes.add(new Evidence.AggregateChange(Optional.empty(), Optional.of(drift.why())))));
        if (terms.isEmpty() && !mix.hasSameAggregatesAs(today.value(), points)) {
            changes.add(new Evidence.AggregateChange(Optional.empty()));
        }
        lost().forEach(source -> changes.add(new Evidence.AggregateChange(Optional.of(source))));
        sources.stream()
                .filter(story -> stories.containsKey(story.id()))
                .filter(story -> !isOf(story.id(), inUse.apply(story)))
                .forEach(story -> changes.add(new Evidence.AggregateChange(Optional.of(story.id()))));
        return changes;
    }

    /**
     * Returns the days on which every source was the stone it was made of, as far as is known.
     *
     * <p>A stone that states no first day ends the one before on the day on which it was kept, by UTC.
     *
     * @return the first of these days, and the first one after them; empty where there are none
     */
    Optional<LocalDate[]> daysOfItsStones() {
        LocalDate first = LocalDate.MIN;
        LocalDate end = LocalDate.MAX;
        if (!lost().isEmpty()) {
            return Optional.empty();
        }
        for (SourceStory story : stories.values()) {
            Optional<SourcePeriod> its = story.periods().stream()
                    .filter(period -> isOf(story.id(), period))
                    .findFirst();
            if (its.isEmpty()) {
                return Optional.empty();
            }
            first = Collections.max(List.of(first, its.get().from().orElse(LocalDate.MIN)));
            end = Collections.min(List.of(
                    end,
                    story.periods().stream()
                            .skip(its.get().number())
                            .filter(period -> !isOf(story.id(), period))
                            .findFirst()
                            .map(Basis::firstDay)
                            .orElse(LocalDate.MAX)));
        }
        return first.isBefore(end) ? Optional.of(new LocalDate[] {first, end}) : Optional.empty();
    }

    private static LocalDate firstDay(SourcePeriod period) {
        return period.from()
                .orElseGet(() ->
                        period.begun().stamp().at().atOffset(ZoneOffset.UTC).toLocalDate());
    }

    /** Returns the sources that become another stone than it was made of after a day, by the first day of that. */
    SortedMap<LocalDate, SourceId> toCome(List<SourceStory> sources, LocalDate day) {
        SortedMap<LocalDate, SourceId> toCome = new TreeMap<>();
        for (SourceStory story : sources) {
            if (stories.containsKey(story.id()) && isOf(story.id(), story.on(day))) {
                story.toComeOn(day).stream()
                        .flatMap(period -> period.from().stream())
                        .findFirst()
                        .ifPresent(from -> toCome.putIfAbsent(from, story.id()));
            }
        }
        return toCome;
    }
}
