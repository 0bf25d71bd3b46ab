package porebench.evidence.intake;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
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
    private final int known;
    private final Predicate<DeterminationId> isTaken;
    private final Map<DeterminationId, List<LocalDate>> joinable = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

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
        this.known = known;
    }

    /** Adds a determination that trials can join, with the days of trials it has. */
    void add(DeterminationId id, Collection<LocalDate> days) {
        joinable.computeIfAbsent(id, any -> new ArrayList<>()).addAll(days);
    }

    /** Returns whether trials can join a determination. */
    boolean hasJoinable(DeterminationId id) {
        return joinable.containsKey(id);
    }

    /** Returns the determination of a trial that names none; a new one is added, with a doubt where others are too far. */
    DeterminationId place(Trial trial) {
        LocalDate day = trial.testedAt().toLocalDate();
        DeterminationId nearest = null;
        long nearestDays = Long.MAX_VALUE;
        for (Map.Entry<DeterminationId, List<LocalDate>> one : joinable.entrySet()) {
            long days = daysApart(one.getValue(), day);
            if (nearest == null || days < nearestDays) {
                nearest = one.getKey();
                nearestDays = days;
            }
        }
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

    /** Returns the days to the nearest trial; 0 where a determination has none yet. */
    private static long daysApart(List<LocalDate> days, LocalDate day) {
        return days.stream()
                .mapToLong(other -> Math.abs(ChronoUnit.DAYS.between(other, day)))
                .min()
                .orElse(0);
    }

    private DeterminationId next() {
        int number = known + 1;
        DeterminationId id = new DeterminationId(mixId.text() + "/" + number);
        while (joinable.containsKey(id) || isTaken.test(id)) {
            number++;
            id = new DeterminationId(mixId.text() + "/" + number);
        }
        return id;
    }

    /** Returns a doubt for each trial that began another determination, and takes it off. */
    List<Problem> takeProblems() {
        List<Problem> taken = List.copyOf(problems);
        problems.clear();
        return taken;
    }
}
