package porebench.desk.frame;

import java.awt.Desktop;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import porebench.desk.DeskModel;
import porebench.desk.Tools;
import porebench.desk.form.CutTexts;
import porebench.desk.form.Motion;
import porebench.desk.form.Tasks;
import porebench.desk.frame.book.GuardedBook;
import porebench.desk.frame.book.InventedBooks;
import porebench.desk.frame.book.Turning;
import porebench.desk.frame.dialog.FrameTexts;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.desk.frame.dialog.TrainingBand;
import porebench.desk.table.TableMemory;

/** Opens the workbench window; all that {@code app} knows of it. */
public final class Workbench {
    private Workbench() {}

    /**
     * Opens the window and returns at once; the program goes on until the window is closed.
     *
     * <p>The window opens before any lab book does. One that cannot be opened leaves it without a lab book, saying why.
     *
     * @param outside what the window needs from outside
     * @param book the lab book to turn to; when empty the one used last, and where none was the demo's
     */
    public static void start(Outside outside, Optional<Path> book) {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        EventQueue.invokeLater(() -> {
            WindowMemory memory = new WindowMemory(outside.settings());
            Locale locale = memory.language().on(outside.machine());
            JComponent.setDefaultLocale(locale);
            memory.typeSize().use();
            Motion.keepStill(memory.isStill());
            memory.theme().apply();
            SwingAsker asker = new SwingAsker(locale, outside.settings(), outside.log());
            AtomicReference<JComponent> over = new AtomicReference<>(new JPanel());
            WatchedEvents events = new WatchedEvents(asker, FrameTexts.in(locale), over::get);
            Tools tools = new Tools(
                    GuardedBook.shelf(outside.shelf(), Workbench::log),
                    outside.sheets(),
                    outside.press(),
                    Tasks.inBackground(
                            over::get,
                            locale,
                            title -> TrainingBand.title(over.get(), title, FrameTexts.in(locale)),
                            events),
                    asker,
                    outside.clock(),
                    outside.zone(),
                    locale);
            Toolkit.getDefaultToolkit().getSystemEventQueue().push(events);
            DeskModel desk = new DeskModel(tools);
            desk.unsaved().keepIn(outside.drafts());
            outside.drafts().onFailure(events::tellOfDrafts);
            asker.serve(desk);
            WorkbenchFrame window = open(desk, memory, outside.invented(), outside.log());
            window.pages().bench().connect(outside.serial(), outside.settings());
            over.set(window.content());
            events.onLost(window::lost);
            window.makeAnewBy(() -> {
                events.end();
                start(outside, memory.recentFiles().stream().findFirst());
            });
            openAsked(window.turning());
            window.turning().first(book.or(memory::lastFile));
        });
    }

    /** Turns to the lab book that the system asks to open, where it asks: a double click on macOS. */
    private static void openAsked(Turning turning) {
        if (Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.APP_OPEN_FILE)) {
            Desktop.getDesktop()
                    .setOpenFileHandler(asked -> asked.getFiles().stream()
                            .findFirst()
                            .map(File::toPath)
                            .ifPresent(file -> EventQueue.invokeLater(() -> turning.open(file))));
        }
    }

    /** Notes a fault of the program with which the person can go on: the window stands still for a moment. */
    private static void log(IllegalStateException stray) {
        System.getLogger(Workbench.class.getName()).log(System.Logger.Level.WARNING, "the event thread", stray);
    }

    /** Opens the window on a desk; on the event thread. */
    static WorkbenchFrame open(
            DeskModel desk, WindowMemory memory, InventedBooks invented, Supplier<Optional<Path>> log) {
        desk.setPerson(memory.person());
        desk.show(memory.units());
        WorkbenchFrame window = new WorkbenchFrame(desk, memory, invented, log);
        CutTexts.in(window.frame());
        TableMemory.keep(window.frame().getRootPane(), "dialog", memory.settings());
        window.show();
        return window;
    }
}
