package porebench.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Locale;
import porebench.desk.form.Numbers;
import porebench.desk.form.ShownUnits;
import porebench.desk.form.Tasks;
import porebench.method.ProblemText;
import porebench.port.LabBookShelf;
import porebench.port.LabSheets;
import porebench.port.Press;

/**
 * What the screens work with, handed to them by whoever starts the window.
 *
 * @param shelf opens and begins lab books
 * @param sheets reads and writes CSV
 * @param press puts cards and sheets on paper
 * @param tasks the way off the event thread
 * @param asker the dialogs
 * @param clock the clock
 * @param zone the laboratory's time zone
 * @param locale the person's language and number format
 * @param units the units that are shown
 */
public record Tools(
        LabBookShelf shelf,
        LabSheets sheets,
        Press press,
        Tasks tasks,
        Asker asker,
        Clock clock,
        ZoneId zone,
        Locale locale,
        ShownUnits units) {
    /** Begins with SI units. */
    public Tools(
            LabBookShelf shelf,
            LabSheets sheets,
            Press press,
            Tasks tasks,
            Asker asker,
            Clock clock,
            ZoneId zone,
            Locale locale) {
        this(shelf, sheets, press, tasks, asker, clock, zone, locale, new ShownUnits());
    }

    /** Returns today's date at the laboratory. */
    public LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), zone);
    }

    /** Returns the day and time it is at the laboratory. */
    public LocalDateTime now() {
        return LocalDateTime.ofInstant(clock.instant(), zone);
    }

    /** Returns numbers as the person types and reads them. */
    public Numbers numbers() {
        return new Numbers(locale);
    }

    /** Returns the words for problems in the person's language and units. */
    public ProblemText problemText() {
        return ProblemText.in(locale, zone, units::isUs);
    }
}
