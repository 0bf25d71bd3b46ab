package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTEvent;
import java.awt.EventQueue;
import java.awt.Toolkit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import porebench.desk.DeskModel;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.ScriptedAsker;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.HeldInput;
import porebench.desk.form.Tasks;
import porebench.desk.frame.book.GuardedBook;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.exchange.PracticeLaboratory;
import porebench.port.LabBookShelf;
import porebench.port.LabSheets;
import porebench.port.Press;
import porebench.print.PdfPress;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** A window that has just been started in a folder, with real outer rooms and work beside the event thread. */
final class StartedWindow {
    private final Path folder;
    private final List<String> onTheEventThread = Collections.synchronizedList(new ArrayList<>());
    private final WorkbenchFrame window;
    private final Gate gate = new Gate();
    private final Gate outerGate = new Gate();
    private final Queue queue = new Queue();

    /** The events of the window, until it is closed. */
    private static final class Queue extends HeldInput {
        private final EventTimes times = new EventTimes();

        @Override
        protected void dispatchEvent(AWTEvent event) {
            times.dispatch(event, () -> super.dispatchEvent(event));
        }

        private void leave() {
            pop();
        }
    }

    /** Opens a window without a lab book. */
    StartedWindow(Path folder, ScriptedAsker asker) throws Exception {
        this(folder, asker, new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC")));
    }

    /** Opens a window without a lab book, which prints by a press. */
    StartedWindow(Path folder, ScriptedAsker asker, Press press) throws Exception {
        this.folder = folder;
        EventThread.run(Theme.LIGHT::apply);
        JComponent[] over = new JComponent[1];
        EventThread.run(() -> Toolkit.getDefaultToolkit().getSystemEventQueue().push(queue));
        window = EventThread.call(() -> {
            Tools tools = new Tools(
                    gated(GuardedBook.shelf(watched(LabBookShelf.class, new SqliteShelf(DemoDesk.DAY)))),
                    watched(LabSheets.class, new CsvSheets()),
                    watched(Press.class, press),
                    Tasks.inBackground(() -> over[0], Locale.ENGLISH, title -> title, queue),
                    asker,
                    DemoDesk.DAY,
                    ZoneId.of("UTC"),
                    Locale.ENGLISH);
            DeskModel desk = new DeskModel(tools);
            asker.serve(desk);
            WorkbenchFrame opened = Workbench.open(
                    desk,
                    new WindowMemory(Settings.inMemory()),
                    new InventedBooks(demoFile(), this::makeDemo, new PracticeLaboratory()),
                    () -> Optional.of(folder.resolve("porebench.log")));
            over[0] = opened.content();
            queue.onLost(opened::lost);
            return opened;
        });
    }

    /** Returns how long single events hold the event thread. */
    EventTimes times() {
        return queue.times;
    }

    /** Returns where calls of the lab book can be made to wait. */
    Gate gate() {
        return gate;
    }

    /** Returns where calls can be made to wait before the lab book is busy with them, as on a busy machine. */
    Gate outerGate() {
        return outerGate;
    }

    private LabBookShelf gated(LabBookShelf shelf) {
        return (LabBookShelf) Proxy.newProxyInstance(
                LabBookShelf.class.getClassLoader(),
                new Class<?>[] {LabBookShelf.class},
                (proxy, method, arguments) -> {
                    try {
                        Object result = method.invoke(shelf, arguments);
                        return result instanceof LabBook book ? outerGate.before(book) : result;
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    WorkbenchFrame window() {
        return window;
    }

    /** Closes the window; nothing may have been done with lab books on the event thread. */
    void close() throws Exception {
        gate.open();
        outerGate.open();
        EventThread.run(window::close);
        assertThat(EventThread.comes(() -> !window.frame().isDisplayable())).isTrue();
        EventThread.run(queue::leave);
        assertThat(window.isClosed()).isTrue();
        assertThat(onTheEventThread).isEmpty();
    }

    /** Starts with a lab book, or with the demo's when there is none, and waits until it is on view. */
    void startWith(Path file) throws Exception {
        EventThread.run(() -> window.turning().first(Optional.ofNullable(file)));
        assertThat(comesOpen()).isTrue();
    }

    /** Waits until a lab book is on view. */
    boolean comesOpen() throws Exception {
        return EventThread.comes(() -> window.desk().hasBook()
                && !window.desk().tools().tasks().isAwaited()
                && Named.in(window.content(), JLabel.class, "head.title").isShowing());
    }

    /** Chooses something in the menu of the lab book. */
    void choose(String menuItem) {
        EventQueue.invokeLater(
                () -> Named.in(window.frame().getJMenuBar().getMenu(0).getPopupMenu(), JMenuItem.class, menuItem)
                        .doClick(0));
    }

    /** Returns a real outer room that writes down what is done with it on the event thread. */
    private <T> T watched(Class<T> port, T room) {
        return port.cast(Proxy.newProxyInstance(
                port.getClassLoader(), new Class<?>[] {port}, (proxy, method, arguments) -> {
                    watch(method.getName());
                    try {
                        Object result = method.invoke(room, arguments);
                        return result instanceof LabBook book ? gate.before(book) : result;
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                }));
    }

    private void watch(String what) {
        if (EventQueue.isDispatchThread()) {
            onTheEventThread.add(what);
        }
    }

    /** Returns where the demo lab book is kept. */
    Path demoFile() {
        return folder.resolve("data").resolve("demo.porebench");
    }

    /** Makes the demo lab book in a file that is not there. */
    void makeDemo(Path file) {
        watch("make the demo");
        if (!Files.exists(file)) {
            try {
                Files.createDirectories(file.getParent());
            } catch (IOException failure) {
                throw new UncheckedIOException("making the folder " + file.getParent(), failure);
            }
            try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
                new DemoYear().fill(book);
            }
        }
    }
}
