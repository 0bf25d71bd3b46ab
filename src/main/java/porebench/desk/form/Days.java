package porebench.desk.form;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import porebench.method.Dates;
import porebench.method.Limit;
import porebench.method.Problem;

/** Days and moments as a person types and reads them: year-month-day, hour:minute, which is read the same everywhere. */
public final class Days {
    private Days() {}

    /** Returns a day as text, such as {@code 2026-03-01}. */
    public static String show(LocalDate day) {
        return Dates.day(day);
    }

    /** Returns a moment as day and minute at a place. */
    public static String show(Instant moment, ZoneId zone) {
        return Dates.minute(LocalDateTime.ofInstant(moment, zone));
    }

    /** Returns the problem that the year of a day is impossible, under the field in which the day was typed. */
    public static Optional<Problem> checkYear(String field, LocalDate day) {
        return Limit.YEAR.holds(day.getYear())
                ? Optional.empty()
                : Optional.of(Problem.error(
                        field,
                        "form.year-impossible",
                        show(day),
                        Limit.YEAR.lowInclusive(),
                        Limit.YEAR.highInclusive()));
    }

    /** Reads a day; empty when the text is no day of the calendar written that way. */
    public static Optional<LocalDate> parse(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip(), Dates.DAY));
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }

    /** Returns a moment by the laboratory's clock as text, such as {@code 2026-03-04 09:30}. */
    public static String show(LocalDateTime moment) {
        return Dates.minute(moment);
    }

    /** Reads a moment; empty when the text is no moment of the calendar written that way. */
    public static Optional<LocalDateTime> parseMoment(String text) {
        try {
            return Optional.of(LocalDateTime.parse(text.strip().replace('T', ' '), Dates.MINUTE));
        } catch (DateTimeParseException noMoment) {
            return Optional.empty();
        }
    }
}
