package porebench.method;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * The days of the year on which a season of a laboratory begins; none where it works by no seasons.
 *
 * @param starts the days, each once
 */
public record Seasons(List<MonthDay> starts) {
    /** The word for no season. */
    public static final String NONE = "none";

    /** How two of them are written. */
    static final String EXAMPLE = "04-01,10-01";

    private static final int MOST = 12;

    public Seasons {
        starts = List.copyOf(starts);
    }

    /**
     * Reads the days as they are written: month and day, such as {@code 04-01,10-01}, in any order, or the word {@code none}.
     *
     * @return the seasons; empty where that is no such text, states a day twice, 29 February or more than twelve days
     */
    public static Optional<Seasons> parse(String text) {
        String stripped = text.strip();
        if (stripped.equals(NONE)) {
            return Optional.of(new Seasons(List.of()));
        }
        String[] parts = stripped.split(",", -1);
        TreeSet<MonthDay> days = new TreeSet<>();
        for (String part : parts) {
            Optional<MonthDay> day = day(part.strip());
            if (day.isEmpty() || !days.add(day.get())) {
                return Optional.empty();
            }
        }
        return days.size() > MOST ? Optional.empty() : Optional.of(new Seasons(List.copyOf(days)));
    }

    private static Optional<MonthDay> day(String text) {
        try {
            return Optional.of(MonthDay.parse("--" + text)).filter(day -> day.isValidYear(2001));
        } catch (DateTimeException noDay) {
            return Optional.empty();
        }
    }

    /** Returns the first day after another on which a season begins; empty where none ever does. */
    public Optional<LocalDate> firstAfter(LocalDate day) {
        return IntStream.rangeClosed(day.getYear(), day.getYear() + 1)
                .boxed()
                .flatMap(year -> starts.stream().map(start -> start.atYear(year)))
                .filter(start -> start.isAfter(day))
                .min(Comparator.naturalOrder());
    }
}
