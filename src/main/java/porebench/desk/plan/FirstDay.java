package porebench.desk.plan;

import java.time.LocalDate;
import porebench.desk.Question;
import porebench.desk.Reading;
import porebench.evidence.plan.KeptPlan;

/**
 * Asks with which day the plan begins that is opened first: the kept one in which a day lies, or else one from that day on.
 *
 * @param day the day
 */
record FirstDay(LocalDate day) implements Question<LocalDate> {
    @Override
    public LocalDate answer(Reading seen) {
        return KeptPlan.on(seen.book(), day).map(plan -> plan.value().from()).orElse(day);
    }
}
