package porebench.chart.look;

import java.text.SimpleDateFormat;
import java.util.Locale;
import java.util.TimeZone;
import org.jfree.chart.axis.DateTickUnit;
import org.jfree.chart.axis.DateTickUnitType;
import org.jfree.chart.axis.TickUnits;
import porebench.method.Dates;

/** The marks an axis of days can have, from every day to every hundredth year, written as dates are written everywhere. */
final class DateMarks {
    private DateMarks() {}

    /** Returns the marks; which fit is decided where the axis is drawn. */
    static TickUnits in(TimeZone zone) {
        TickUnits marks = new TickUnits();
        add(marks, zone, DateTickUnitType.DAY, Dates.DAY_PATTERN, 1, 2, 7, 14);
        add(marks, zone, DateTickUnitType.MONTH, Dates.MONTH_PATTERN, 1, 2, 3, 6);
        add(marks, zone, DateTickUnitType.YEAR, Dates.YEAR_PATTERN, 1, 2, 5, 10, 25, 50, 100);
        return marks;
    }

    private static void add(TickUnits marks, TimeZone zone, DateTickUnitType type, String pattern, int... steps) {
        for (int step : steps) {
            SimpleDateFormat format = new SimpleDateFormat(pattern, Locale.ROOT);
            format.setTimeZone(zone);
            marks.add(new DateTickUnit(type, step, format));
        }
    }
}
