package porebench.evidence.plan;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.record.TestPlan;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/**
 * Puts what asks for a test today together with a plan as a person arranged it.
 *
 * <p>What is on the kept plan stays as it is there: day, person, trials, meter and order. A mix that is among the most pressing today and
 * is not on it is new, and stands first on the first day that is left; one that a person left out is not asked for again. Without a kept
 * plan the most pressing mixes are proposed, evenly over the days from Monday to Friday that are left.
 */
final class Arranging {
    private Arranging() {}

    /**
     * Where a mix stands on the plan.
     *
     * @param mixId the mix
     * @param place day, person, and how it came there
     * @param trials how many trials a person wants; empty for as many as are worked out
     * @param meter the meter that a person wants; empty for the one that is proposed
     */
    record Spot(MixId mixId, PlannedTest.Place place, Optional<Integer> trials, Optional<MeterId> meter) {}

    /**
     * Puts them together.
     *
     * @param kept the plan as a person arranged it; empty where none is kept
     * @param ranked the mixes that ask for a test or that were added, the most pressing first
     * @param wish the days, and for how many mixes there is room
     * @return by day, within a day in their order; what is left out stands last
     */
    static List<Spot> of(Optional<TestPlan> kept, List<MixId> ranked, WeekPlan.Wish wish) {
        List<MixId> top = ranked.subList(0, Math.min(ranked.size(), wish.most()));
        List<LocalDate> days = daysLeft(wish);
        List<Spot> spots = new ArrayList<>();
        if (kept.isEmpty()) {
            for (int at = 0; at < top.size(); at++) {
                MixId mix = top.get(at);
                spots.add(spot(
                        mix,
                        days.get(at * days.size() / top.size()),
                        wish.added().contains(mix) ? PlannedTest.Placing.BY_HAND : PlannedTest.Placing.PROPOSED));
            }
        } else {
            Set<MixId> there = kept.get().mixes();
            top.stream()
                    .filter(mix -> !there.contains(mix))
                    .forEach(mix -> spots.add(spot(
                            mix,
                            days.get(0),
                            wish.added().contains(mix) ? PlannedTest.Placing.BY_HAND : PlannedTest.Placing.NEW)));
            kept.get().rows().stream()
                    .filter(row -> !wish.without().contains(row.mixId()))
                    .forEach(row -> spots.add(new Spot(
                            row.mixId(),
                            new PlannedTest.Place(row.day(), row.who(), placing(row.mark()), row.remark()),
                            row.trials(),
                            row.meter())));
        }
        spots.sort(Comparator.comparing((Spot spot) -> !spot.place().isTested())
                .thenComparing(spot -> spot.place().day()));
        return spots;
    }

    private static Spot spot(MixId mix, LocalDate day, PlannedTest.Placing placing) {
        return new Spot(mix, new PlannedTest.Place(day, "", placing, ""), Optional.empty(), Optional.empty());
    }

    private static PlannedTest.Placing placing(TestPlan.Mark mark) {
        return switch (mark) {
            case ASKED -> PlannedTest.Placing.KEPT;
            case BY_HAND -> PlannedTest.Placing.BY_HAND;
            case LEFT_OUT -> PlannedTest.Placing.LEFT_OUT;
        };
    }

    /**
     * Returns the days on which a test is put that nobody put anywhere: those from Monday to Friday, our own choice, that are not over; of
     * a plan that has no such day left its last one, of one that is over altogether all of them.
     */
    static List<LocalDate> daysLeft(WeekPlan.Wish wish) {
        List<LocalDate> workdays = TestPlan.days(wish.from()).stream()
                .filter(day -> day.getDayOfWeek().getValue() <= DayOfWeek.FRIDAY.getValue())
                .toList();
        List<LocalDate> left =
                workdays.stream().filter(day -> !day.isBefore(wish.today())).toList();
        boolean isOver = wish.until().isBefore(wish.today());
        if (!left.isEmpty() || isOver) {
            return isOver ? workdays : left;
        }
        return List.of(wish.until());
    }
}
