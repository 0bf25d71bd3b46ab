package porebench.desk.frame;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPanel;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.desk.form.Texts;
import porebench.method.ProblemText;
import porebench.record.LabBook;
import porebench.record.port.LabBookShelf;
import porebench.record.port.LabSheets;
import porebench.record.port.OpeningRefused;
import porebench.record.port.Press;

/** Opens the workbench window; all that {@code app} knows of it. */
public final class Workbench {
    private Workbench() {}

    /**
     * Opens the window on a lab book and returns at once; the program goes on until the window is closed.
     *
     * @param shelf opens and begins lab books
     * @param sheets reads and writes CSV
     * @param press puts cards and sheets on paper
     * @param clock the clock
     * @param zone the laboratory's time zone
     * @param machine the machine's language and number format; the person may have chosen another language
     * @param bookFile the lab book to open; if it cannot be opened the person is asked for another
     * @param settings what was remembered of the last day
     */
    public static void start(
            LabBookShelf shelf,
            LabSheets sheets,
            Press press,
            Clock clock,
            ZoneId zone,
            Locale machine,
            Path bookFile,
            Settings settings) {
        System.setProperty("apple.laf.useScreenMenuBar", "true");
        EventQueue.invokeLater(() -> {
            WindowMemory memory = new WindowMemory(settings);
            Locale locale = memory.language().on(machine);
            JComponent.setDefaultLocale(locale);
            memory.theme().apply();
            SwingAsker asker = new SwingAsker(locale, settings);
            AtomicReference<JComponent> over = new AtomicReference<>(new JPanel());
            Tools tools = new Tools(
                    GuardedBook.shelf(shelf),
                    sheets,
                    press,
                    Tasks.inBackground(over::get, locale),
                    asker,
                    clock,
                    zone,
                    locale);
            Toolkit.getDefaultToolkit()
                    .getSystemEventQueue()
                    .push(new WatchedEvents(asker, FrameTexts.in(locale), over::get));
            new FirstBook(tools, asker).open(bookFile).ifPresent(first -> {
                DeskModel desk = new DeskModel(tools, first.book());
                asker.serve(desk);
                WorkbenchFrame window = open(desk, first.file(), memory);
                over.set(window.content());
            });
        });
    }

    /** Opens the window on a lab book that is already open; on the event thread. */
    static WorkbenchFrame open(DeskModel desk, Path file, WindowMemory memory) {
        desk.setPerson(memory.person());
        desk.show(memory.units());
        WorkbenchFrame window = new WorkbenchFrame(desk, file, memory);
        window.show();
        return window;
    }

    /** A lab book and its file. */
    private record Opened(LabBook book, Path file) {}

    /** Opens the first lab book, asking for another as long as one is refused. */
    private record FirstBook(Tools tools, SwingAsker asker) {
        Optional<Opened> open(Path bookFile) {
            Texts texts = FrameTexts.in(tools.locale());
            Optional<Path> file = Optional.of(bookFile);
            boolean begin = false;
            while (file.isPresent()) {
                Path tried = file.get();
                try {
                    return Optional.of(new Opened(
                            begin ? tools.shelf().create(tried) : tools.shelf().open(tried), tried));
                } catch (OpeningRefused refused) {
                    String why = ProblemText.in(tools.locale()).say(refused.problem());
                    begin = false;
                    switch (asker.anotherBook(why)) {
                        case 0 ->
                            file = asker.fileToOpen(new JPanel(), texts.get("book.open.title"), BookCommands.EXTENSION);
                        case 1 -> {
                            file = asker.newFile(
                                    new JPanel(),
                                    texts.get("book.new.title"),
                                    texts.get("book.new.name") + BookCommands.EXTENSION);
                            begin = true;
                        }
                        default -> file = Optional.empty();
                    }
                }
            }
            return Optional.empty();
        }
    }

    /** Tells the person of a fault of the program instead of letting it vanish on the console. */
    private static final class WatchedEvents extends EventQueue {
        private final SwingAsker asker;
        private final Texts texts;
        private final Supplier<JComponent> over;
        private boolean telling;

        WatchedEvents(SwingAsker asker, Texts texts, Supplier<JComponent> over) {
            this.asker = asker;
            this.texts = texts;
            this.over = over;
        }

        @Override
        protected void dispatchEvent(AWTEvent event) {
            try {
                super.dispatchEvent(event);
            } catch (RuntimeException fault) {
                System.getLogger(Workbench.class.getName())
                        .log(System.Logger.Level.ERROR, "on the event thread", fault);
                tell(fault);
            }
        }

        private void tell(RuntimeException fault) {
            if (!telling) {
                telling = true;
                try {
                    asker.failure(over.get(), texts.get("frame.fault"), fault);
                } finally {
                    telling = false;
                }
            }
        }
    }
}
