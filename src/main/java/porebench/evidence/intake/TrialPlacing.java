package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;

/**
 * Puts trials of one mix that name no determination into the one they belong to: that of the nearest trial, or another one
 * where the nearest was made too long before or after. Trials are given in the order in which they were made.
 */
final class TrialPlacing {
    /**
     * Trials of one determination are made one after the other, with the same stone in the same bowl: more days than these
     * between one and the next are another occasion. Common practice, no source.
     */
    static final int MOST_DAYS_APART = 14;

    private final MixId mixId;
    private final Predicate<DeterminationId> isTaken;
    private final Map<DeterminationId, Integer> joinable = new HashMap<>();
    /** The days on which a determination that can be joined has trials, and of those with one on a day that which was added first. */
    private final NavigableMap<LocalDate, DeterminationId> byDay = new TreeMap<>();

    /** Those without trials, which are as near as can be. */
    private final Set<DeterminationId> withoutTrials = new LinkedHashSet<>();

    private final List<Problem> problems = new ArrayList<>();
    private int last;

    /**
     * Begins with no determination that could be joined.
     *
     * @param mixId the mix
     * @param isTaken whether an id stands for a determination already
     * @param known how many determinations the mix has already
     */
    TrialPlacing(MixId mixId, Predicate<DeterminationId> isTaken, int known) {
        this.mixId = mixId;
        this.isTaken = isTaken;
        this.last = known;
    }

    /** Adds a determination that trials can join, with the days of trials it has. */
    void add(DeterminationId id, Collection<LocalDate> days) {
        boolean isNew = joinable.putIfAbsent(id, joinable.size()) == null;
        if (isNew && days.isEmpty()) {
            withoutTrials.add(id);
        } else if (!days.isEmpty()) {
            withoutTrials.remove(id);
        }
        days.forEach(day -> byDay.merge(day, id, this::earlier));
    }

    /** Returns whether trials can join a determination. */
    boolean hasJoinable(DeterminationId id) {
        return joinable.containsKey(id);
    }

    /** Returns the determination of a trial that names none; a new one is added, with a doubt where others are too far. */
    DeterminationId place(Trial trial) {
        LocalDate day = trial.testedAt().toLocalDate();
        DeterminationId nearest = nearest(day);
        long nearestDays = nearest == null ? Long.MAX_VALUE : daysApart(day);
        if (nearest != null && nearestDays <= MOST_DAYS_APART) {
            add(nearest, List.of(day));
            return nearest;
        }
        DeterminationId begun = next();
        if (nearest != null) {
            problems.add(Problem.warning(
                    "determination_id",
                    "import.begun-apart",
                    trial.id().text(),
                    day.toString(),
                    nearestDays,
                    nearest.text(),
                    begun.text(),
                    MOST_DAYS_APART));
        }
        add(begun, List.of(day));
        return begun;
    }

    /** Returns the determination of the nearest trial before or after a day, of two as near the one added first; null without any. */
    private @Nullable DeterminationId nearest(LocalDate day) {
        if (!withoutTrials.isEmpty()) {
            DeterminationId empty = withoutTrials.iterator().next();
            DeterminationId ofDay = byDay.get(day);
            return ofDay == null ? empty : earlier(ofDay, empty);
        }
        Map.Entry<LocalDate, DeterminationId> before = byDay.floorEntry(day);
        Map.Entry<LocalDate, DeterminationId> after = byDay.ceilingEntry(day);
        if (before == null || after == null) {
            return before != null ? before.getValue() : after != null ? after.getValue() : null;
        }
        long nearer = days(after.getKey(), day) - days(before.getKey(), day);
        return nearer == 0
                ? earlier(before.getValue(), after.getValue())
                : nearer > 0 ? before.getValue() : after.getValue();
    }

    /** Returns the days to the nearest trial; 0 where a determination has none yet. */
    private long daysApart(LocalDate day) {
        if (!withoutTrials.isEmpty()) {
            return 0;
        }
        return Stream.of(byDay.floorKey(day), byDay.ceilingKey(day))
                .filter(Objects::nonNull)
                .mapToLong(other -> days(other, day))
                .min()
                .orElseThrow();
    }

    private static long days(LocalDate one, LocalDate other) {
        return Math.abs(ChronoUnit.DAYS.between(one, other));
    }

    private DeterminationId earlier(DeterminationId one, DeterminationId other) {
        return Objects.requireNonNull(joinable.get(one)) <= Objects.requireNonNull(joinable.get(other)) ? one : other;
    }

    private DeterminationId next() {
        DeterminationId id;
        do {
            last++;
            id = new DeterminationId(mixId.text() + "/" + last);
        } while (joinable.containsKey(id) || isTaken.test(id));
        return id;
    }

    /** Returns a doubt for each trial that began another determination, and takes it off. */
    List<Problem> takeProblems() {
        List<Problem> taken = List.copyOf(problems);
        problems.clear();
        return taken;
    }
}
