package porebench.desk.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.plan.LoadsAWeek;
import porebench.evidence.plan.WeekPlan;
import porebench.record.TestPlan;

/**
 * Asks for the tests of seven days.
 *
 * @param from the first day
 * @param today today
 * @param arranged the tests as they are arranged on the page; empty where they are as proposed
 * @param figures what else is asked
 */
record PlanAsked(LocalDate from, LocalDate today, Optional<TestPlan> arranged, Figures figures)
        implements Question<WeekPlan> {
    /**
     * What a person types beside the plan.
     *
     * @param most for how many mixes there is room
     * @param sparePercent what is fetched beyond the trials, in %
     * @param loadSpreadPercent how the air differs from load to load, in % air; empty where nobody says so
     */
    record Figures(int most, double sparePercent, OptionalDouble loadSpreadPercent) {}

    @Override
    public WeekPlan answer(Reading seen) {
        return WeekPlan.of(
                seen.book(),
                seen.standing(),
                new WeekPlan.Wish(
                        from,
                        today,
                        figures.most(),
                        figures.sparePercent(),
                        figures.loadSpreadPercent(),
                        List.of(),
                        Set.of()),
                arranged,
                LoadsAWeek.reportedTo(seen.book()));
    }
}
