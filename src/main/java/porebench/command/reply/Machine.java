package porebench.command.reply;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.method.Texts;
import porebench.record.book.Progress;

/**
 * Where and when a command runs, asked of the machine once and handed on.
 *
 * @param clock tells the moment
 * @param zone the zone in which a day begins and ends
 * @param locale the language of messages and the numbers of text for people; numbers in JSON do not depend on it
 * @param out where answers go
 * @param err where problems go in text, and wrong usage always
 * @param folder the folder that relative paths start from
 * @param user who keeps records when no other name is given
 * @param log returns the file in which the details of a failure stand; empty when there is none
 * @param line where it is shown how far a command is; empty where nobody looks
 */
public record Machine(
        Clock clock,
        ZoneId zone,
        Locale locale,
        PrintStream out,
        PrintStream err,
        Path folder,
        String user,
        Supplier<Optional<Path>> log,
        Optional<ProgressLine> line) {

    /** Returns the words of the command line's answers. */
    public Texts words() {
        return Texts.of("porebench.command.command", locale);
    }

    /** Returns what hears how far a command is. */
    public Progress progress() {
        return line.<Progress>map(shown -> shown).orElse(Progress.UNHEARD);
    }

    /** Returns the day and time it is. */
    public LocalDateTime now() {
        return LocalDateTime.now(clock.withZone(zone));
    }

    /** Returns today's date. */
    public LocalDate today() {
        return LocalDate.now(clock.withZone(zone));
    }
}
