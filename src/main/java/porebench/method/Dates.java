package porebench.method;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;

/**
 * The one way a day and a moment are written wherever a person reads them, on screen, paper and in a terminal: year-month-day,
 * hour:minute, which nobody takes for another day in any language.
 */
public final class Dates {
    /** The year alone and the month of a year, for the marks of an axis. */
    public static final String YEAR_PATTERN = "yyyy";

    public static final String MONTH_PATTERN = "yyyy-MM";
    public static final String DAY_PATTERN = "yyyy-MM-dd";

    /** Reads and writes a day; refuses one that is not in the calendar. */
    public static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    /** Reads and writes a day with hour and minute. */
    public static final DateTimeFormatter MINUTE =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);

    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);
    private static final DateTimeFormatter TYPED_HOUR =
            DateTimeFormatter.ofPattern("H:mm", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final String MOMENT = "uuuu-MM-dd HH:mm:ss zzz";

    private Dates() {}

    /** Returns a day as text, such as {@code 2026-03-01}. */
    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    /** Returns a moment by the laboratory's clock as text, such as {@code 2026-03-04 09:30}. */
    public static String minute(LocalDateTime moment) {
        return MINUTE.format(moment);
    }

    /** Returns a time of day as text, such as {@code 07:05}. */
    public static String hour(LocalTime time) {
        return HOUR.format(time);
    }

    /** Returns the time of day that a text says, such as 14:30 or 7:05; empty when it says none. */
    public static Optional<LocalTime> hour(String text) {
        try {
            return Optional.of(LocalTime.parse(text.strip(), TYPED_HOUR));
        } catch (DateTimeException noTime) {
            return Optional.empty();
        }
    }

    /** Returns a moment with its seconds and the zone's name, so that nobody takes another place's clock for this one. */
    public static String moment(Instant moment, ZoneId zone, Locale locale) {
        return DateTimeFormatter.ofPattern(MOMENT, locale).format(moment.atZone(zone));
    }
}
