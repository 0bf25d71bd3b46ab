package porebench.desk.frame;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import porebench.desk.Settings;
import porebench.desk.frame.book.InventedBooks;
import porebench.port.DraftStore;
import porebench.port.LabBookShelf;
import porebench.port.LabSheets;
import porebench.port.Press;
import porebench.port.SerialLines;

/**
 * What the window needs from outside.
 *
 * @param shelf opens and begins lab books
 * @param sheets reads and writes CSV
 * @param press puts cards and sheets on paper
 * @param clock the clock
 * @param zone the laboratory's time zone
 * @param machine the machine's language and number format; the person may have chosen another language
 * @param settings what was remembered of the last day
 * @param drafts keeps what is typed and not saved yet
 * @param invented the lab books of invented laboratories
 * @param log returns the file in which the details of a failure stand; empty when there is none
 * @param serial the serial lines on which a balance may be
 */
public record Outside(
        LabBookShelf shelf,
        LabSheets sheets,
        Press press,
        Clock clock,
        ZoneId zone,
        Locale machine,
        Settings settings,
        DraftStore drafts,
        InventedBooks invented,
        Supplier<Optional<Path>> log,
        SerialLines serial) {}
