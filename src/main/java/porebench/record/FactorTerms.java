package porebench.record;

import java.time.LocalTime;
import java.util.Optional;
import porebench.method.Dates;

/**
 * On what terms a factor is in force: from which hour of its first day, under which standing conditions, and who checked it.
 *
 * @param at the time of its first day from which it holds, by the laboratory's clock, to the minute; empty for the start of that day
 * @param conditions what must be so for it to hold, in words that stand on its card; blank for none
 * @param checkedBy who checked it before it was put in force; blank where nobody did
 */
public record FactorTerms(Optional<LocalTime> at, String conditions, String checkedBy) {
    /** From the start of its first day, without conditions, checked by nobody. */
    public static final FactorTerms NONE = new FactorTerms(Optional.empty(), "", "");

    /** Returns the time of day that a text says, such as 14:30 or 7:05; empty when it says none. */
    public static Optional<LocalTime> time(String text) {
        return Dates.hour(text);
    }

    /** Returns a time of day as it is written, such as 07:05. */
    public static String written(LocalTime time) {
        return Dates.hour(time);
    }

    /** Returns the time from which it holds as it is written; empty text for the start of the day. */
    public String atText() {
        return at.map(FactorTerms::written).orElse("");
    }

    /** Returns the same terms, checked by somebody. */
    public FactorTerms checked(String by) {
        return new FactorTerms(at, conditions, by);
    }
}
