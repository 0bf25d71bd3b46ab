package porebench.evidence.standing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;
import porebench.evidence.CoveredSpell;

/**
 * How many of a laboratory's mixes had a factor that might be used, day by day, as the lab book shows it today.
 *
 * <p>A mix counts from the first day of its first factor, or from the day on which its design was kept, whichever came first.
 *
 * @param days the days on which either number changes, the first one first; each holds until the next
 */
public record Coverage(List<Day> days) {
    public Coverage {
        days = List.copyOf(days);
    }

    /**
     * How many mixes there are from a day on, and how many of them are covered.
     *
     * @param from the day
     * @param mixes how many mixes count
     * @param covered how many of them have a factor that may be used
     */
    public record Day(LocalDate from, int mixes, int covered) {
        /** Returns the share of the mixes that is covered, in %; empty while there is no mix. */
        public OptionalDouble percent() {
            return mixes == 0 ? OptionalDouble.empty() : OptionalDouble.of(100.0 * covered / mixes);
        }
    }

    static Coverage of(Collection<RegisterLine> lines) {
        NavigableMap<LocalDate, int[]> steps = new TreeMap<>();
        for (RegisterLine line : lines) {
            step(steps, line.known(), 1, 0);
            for (CoveredSpell spell : line.covered()) {
                step(steps, spell.from(), 0, 1);
                step(steps, spell.untilExclusive(), 0, -1);
            }
        }
        List<Day> days = new ArrayList<>();
        int mixes = 0;
        int covered = 0;
        for (var step : steps.entrySet()) {
            mixes += step.getValue()[0];
            covered += step.getValue()[1];
            Day day = new Day(step.getKey(), mixes, covered);
            if (days.isEmpty() || !isAlike(days.get(days.size() - 1), day)) {
                days.add(day);
            }
        }
        return new Coverage(days);
    }

    private static void step(NavigableMap<LocalDate, int[]> steps, LocalDate day, int mixes, int covered) {
        int[] here = steps.computeIfAbsent(day, any -> new int[2]);
        here[0] += mixes;
        here[1] += covered;
    }

    private static boolean isAlike(Day one, Day other) {
        return one.mixes() == other.mixes() && one.covered() == other.covered();
    }

    /** Returns what held on a day; no mix and none covered before the first. */
    public Day on(LocalDate day) {
        Day found = new Day(day, 0, 0);
        for (Day one : days) {
            if (!one.from().isAfter(day)) {
                found = one;
            }
        }
        return found;
    }
}
