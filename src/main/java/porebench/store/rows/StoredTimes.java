package porebench.store.rows;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/**
 * Reads times as they stand in a lab book.
 *
 * <p>Nearly all of them are written in one way, by {@link LocalDateTime#toString} and {@link Instant#toString}, and a lab book of many
 * records has ten thousands. What is written so is read digit by digit; all else, and what is no time at all, is left to
 * {@code parse} of the class itself, which tells the same of both ways.
 */
public final class StoredTimes {
    private static final int MINUTE_LENGTH = 16;
    private static final int SECOND_LENGTH = 19;
    private static final int MOST_FRACTION = 9;
    private static final int HOURS = 24;
    private static final int MINUTES = 60;
    private static final int MONTHS = 12;
    private static final int NO_NUMBER = -1;
    private static final int TEN = 10;

    private StoredTimes() {}

    /** Returns the moment that a text says, as {@link LocalDateTime#parse(CharSequence)} does. */
    public static LocalDateTime moment(String text) {
        if (text.length() == MINUTE_LENGTH && isToMinutes(text)) {
            LocalDateTime minute = toMinute(text);
            if (minute != null) {
                return minute;
            }
        }
        return LocalDateTime.parse(text);
    }

    /** Returns the instant that a text says, as {@link Instant#parse(CharSequence)} does. */
    public static Instant instant(String text) {
        int end = text.length() - 1;
        if (end >= SECOND_LENGTH && text.charAt(end) == 'Z' && isToMinutes(text) && text.charAt(MINUTE_LENGTH) == ':') {
            LocalDateTime minute = toMinute(text);
            int second = number(text, MINUTE_LENGTH + 1, SECOND_LENGTH);
            int nanos = nanos(text, end);
            if (minute != null && second >= 0 && second < MINUTES && nanos >= 0) {
                return minute.toInstant(ZoneOffset.UTC).plusSeconds(second).plusNanos(nanos);
            }
        }
        return Instant.parse(text);
    }

    private static boolean isToMinutes(String text) {
        return text.charAt(4) == '-' && text.charAt(7) == '-' && text.charAt(10) == 'T' && text.charAt(13) == ':';
    }

    /** Returns null where the numbers are none of a day and a minute. */
    private static @Nullable LocalDateTime toMinute(String text) {
        int year = number(text, 0, 4);
        int month = number(text, 5, 7);
        int day = number(text, 8, 10);
        int hour = number(text, 11, 13);
        int minute = number(text, 14, MINUTE_LENGTH);
        boolean isSure = year >= 0
                && month >= 1
                && month <= MONTHS
                && day >= 1
                && day <= YearMonth.of(year, month).lengthOfMonth()
                && hour >= 0
                && hour < HOURS
                && minute >= 0
                && minute < MINUTES;
        return isSure ? LocalDateTime.of(year, month, day, hour, minute) : null;
    }

    /** Returns the part of a second before the last sign, in nanoseconds; below 0 where it is none. */
    private static int nanos(String text, int end) {
        if (end == SECOND_LENGTH) {
            return 0;
        }
        int digits = end - SECOND_LENGTH - 1;
        if (text.charAt(SECOND_LENGTH) != '.' || digits < 1 || digits > MOST_FRACTION) {
            return NO_NUMBER;
        }
        int number = number(text, SECOND_LENGTH + 1, end);
        for (int i = digits; i < MOST_FRACTION; i++) {
            number *= TEN;
        }
        return number;
    }

    /** Returns the whole number that some places say; below 0 where a sign among them is no digit. */
    private static int number(String text, int from, int end) {
        int number = 0;
        for (int i = from; i < end; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit >= TEN) {
                return NO_NUMBER;
            }
            number = TEN * number + digit;
        }
        return number;
    }
}
