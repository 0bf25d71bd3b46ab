package porebench.desk.form;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.time.temporal.WeekFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import porebench.method.Limit;

/** The month that is shown to choose a day of, and the day that is marked in it. Immutable. */
final class MonthModel {
    /** A month of 31 days that begins on the last day of a week touches six weeks. */
    static final int WEEKS = 6;

    static final int WEEK = 7;

    private final LocalDate marked;
    private final Locale locale;

    private MonthModel(LocalDate marked, Locale locale) {
        this.marked = marked;
        this.locale = locale;
    }

    /**
     * Shows the month of a day, which is marked.
     *
     * @param locale says on which day a week begins, and how months and days are called
     */
    static MonthModel of(LocalDate marked, Locale locale) {
        return new MonthModel(marked, locale);
    }

    LocalDate marked() {
        return marked;
    }

    /** Marks another day, unless its year is one that no day of a laboratory can be in. */
    MonthModel mark(LocalDate day) {
        return Limit.YEAR.holds(day.getYear()) ? new MonthModel(day, locale) : this;
    }

    MonthModel plusDays(int days) {
        return mark(marked.plusDays(days));
    }

    /** Marks the same day of another month, or its last day where that is shorter. */
    MonthModel plusMonths(int months) {
        return mark(marked.plusMonths(months));
    }

    MonthModel firstOfWeek() {
        return mark(marked.minusDays(placeOf(marked.getDayOfWeek())));
    }

    MonthModel lastOfWeek() {
        return mark(marked.plusDays(WEEK - 1L - placeOf(marked.getDayOfWeek())));
    }

    /** Returns how many days a day of the week stands behind the first one. */
    private int placeOf(DayOfWeek day) {
        return Math.floorMod(
                day.getValue() - WeekFields.of(locale).getFirstDayOfWeek().getValue(), WEEK);
    }

    /** Returns the days on view, six weeks of them, from the first day of the week in which the month begins. */
    List<LocalDate> days() {
        LocalDate first = marked.withDayOfMonth(1);
        LocalDate from = first.minusDays(placeOf(first.getDayOfWeek()));
        List<LocalDate> days = new ArrayList<>();
        for (int i = 0; i < WEEKS * WEEK; i++) {
            days.add(from.plusDays(i));
        }
        return days;
    }

    boolean isOfMonth(LocalDate day) {
        return YearMonth.from(day).equals(YearMonth.from(marked));
    }

    /** Returns the month and its year, such as "November 2026". */
    String title() {
        return marked.getMonth().getDisplayName(TextStyle.FULL_STANDALONE, locale) + " " + marked.getYear();
    }

    /** Returns the days of the week in short, in the order of the locale. */
    List<String> weekDays() {
        DayOfWeek first = WeekFields.of(locale).getFirstDayOfWeek();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < WEEK; i++) {
            names.add(first.plus(i).getDisplayName(TextStyle.SHORT_STANDALONE, locale));
        }
        return names;
    }

    /** Returns the marked day as it is spoken: the day of the week, then the day as it is typed. */
    String spoken() {
        return marked.getDayOfWeek().getDisplayName(TextStyle.FULL_STANDALONE, locale) + " " + Days.show(marked);
    }
}
