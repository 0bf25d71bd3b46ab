package porebench.desk.frame;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import porebench.desk.AsideTasks;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.frame.book.GuardedBook;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.exchange.PracticeLaboratory;
import porebench.print.PdfPress;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** The demo laboratory on a desk, in a real file, with real outer rooms and scripted answers. */
public final class DemoDesk {
    /** On this day all states of a factor are to be seen. */
    static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private static @Nullable Path filledBook;

    final ScriptedAsker asker = new ScriptedAsker();
    final Path file;
    public final DeskModel desk;
    final WindowMemory memory = new WindowMemory(Settings.inMemory());

    private DemoDesk(Path file, LabBook book, SqliteShelf shelf, Locale locale) {
        this.file = file;
        Tools tools = new Tools(
                GuardedBook.shelf(shelf),
                new CsvSheets(),
                new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                new AsideTasks(),
                asker,
                DAY,
                ZoneId.of("UTC"),
                locale);
        desk = aside(() -> new DeskModel(tools, book));
        asker.serve(desk);
    }

    /** Opens the window on it. */
    WorkbenchFrame open() {
        WorkbenchFrame window = Workbench.open(
                desk, memory, new InventedBooks(file, made -> {}, new PracticeLaboratory()), Optional::empty);
        window.opened(file);
        return window;
    }

    /** Makes the demo lab book in a folder. */
    public static DemoDesk filled(Path folder) {
        return filled(folder, Locale.ENGLISH);
    }

    /** Makes the demo lab book in a folder, the window in a language. */
    public static DemoDesk filled(Path folder, Locale locale) {
        SqliteShelf shelf = new SqliteShelf(DAY);
        Path file = folder.resolve("demo.porebench");
        copyFilledBook(file);
        return new DemoDesk(file, aside(() -> GuardedBook.shelf(shelf).open(file)), shelf, locale);
    }

    /** Lays a copy of the filled demo lab book at a place; it is filled once in a run of the tests. */
    private static synchronized void copyFilledBook(Path file) {
        try {
            if (filledBook == null) {
                Path made = Files.createTempDirectory("demo-book").resolve("demo.porebench");
                try (LabBook book = new SqliteShelf(DAY).create(made)) {
                    new DemoYear().fill(book);
                }
                made.toFile().deleteOnExit();
                filledBook = made;
            }
            Files.copy(filledBook, file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Makes an empty lab book in a folder. */
    static DemoDesk empty(Path folder) {
        return empty(folder, Locale.ENGLISH);
    }

    private static DemoDesk empty(Path folder, Locale locale) {
        SqliteShelf shelf = new SqliteShelf(DAY);
        Path file = folder.resolve("demo.porebench");
        return new DemoDesk(file, aside(() -> GuardedBook.shelf(shelf).create(file)), shelf, locale);
    }

    /** Does something with the lab book as the window does: never on the event thread, on which tests make the desk. */
    static <T> T aside(Callable<T> work) {
        try {
            return AsideTasks.aside(work);
        } catch (RuntimeException failure) {
            throw failure;
        } catch (Exception failure) {
            throw new IllegalStateException(failure);
        }
    }
}
