package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.RandomAccessFile;
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
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.DeskModel;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoLaboratory;
import porebench.print.PdfPress;
import porebench.record.LabBook;
import porebench.record.port.LabBookShelf;
import porebench.store.SqliteShelf;

/** Starts the window on lab books that cannot be opened, and goes on from there. */
@NeedsDisplay
class StartWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private final List<String> onTheEventThread = Collections.synchronizedList(new ArrayList<>());
    private WorkbenchFrame window;

    /** Returns a real shelf that writes down what is done with it on the event thread. */
    private LabBookShelf watchedShelf() {
        SqliteShelf shelf = new SqliteShelf(DemoDesk.DAY);
        return (LabBookShelf) Proxy.newProxyInstance(
                LabBookShelf.class.getClassLoader(),
                new Class<?>[] {LabBookShelf.class},
                (proxy, method, arguments) -> {
                    watch(method.getName());
                    try {
                        return method.invoke(shelf, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    private void watch(String what) {
        if (EventQueue.isDispatchThread()) {
            onTheEventThread.add(what);
        }
    }

    private Path demoFile() {
        return folder.resolve("data").resolve("demo.porebench");
    }

    private void makeDemo(Path file) {
        watch("make the demo");
        if (!Files.exists(file)) {
            try {
                Files.createDirectories(file.getParent());
            } catch (IOException failure) {
                throw new UncheckedIOException("making the folder " + file.getParent(), failure);
            }
            try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
                new DemoLaboratory().fill(book);
            }
        }
    }

    @BeforeEach
    void openWindow() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        window = EventThread.call(() -> {
            Tools tools = new Tools(
                    GuardedBook.shelf(watchedShelf()),
                    new CsvSheets(),
                    new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC")),
                    Tasks.inBackground(() -> window == null ? null : window.content(), Locale.ENGLISH),
                    asker,
                    DemoDesk.DAY,
                    ZoneId.of("UTC"),
                    Locale.ENGLISH);
            DeskModel desk = new DeskModel(tools);
            asker.serve(desk);
            return Workbench.open(
                    desk,
                    new WindowMemory(Settings.inMemory()),
                    new DemoFile(demoFile(), this::makeDemo),
                    () -> Optional.of(folder.resolve("porebench.log")));
        });
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(window::close);
        assertThat(window.isClosed()).isTrue();
        assertThat(onTheEventThread).isEmpty();
        assertThat(asker.failures).isEmpty();
    }

    private void start(Path file) throws Exception {
        EventThread.run(() -> window.turning().first(Optional.ofNullable(file)));
    }

    private void startInVain(Path file) throws Exception {
        start(file);
        assertThat(EventThread.comes(() -> button("noBook.open").isShowing())).isTrue();
    }

    private boolean comesOpen() throws Exception {
        return EventThread.comes(() ->
                window.desk().hasBook() && named(JLabel.class, "head.title").isShowing());
    }

    private <T extends java.awt.Component> T named(Class<T> type, String name) {
        return Named.in(window.content(), type, name);
    }

    private JButton button(String name) {
        return named(JButton.class, name);
    }

    private String text(String name) {
        return named(JTextComponent.class, name).getText();
    }

    private boolean isOffered(String menuItem) {
        return Named.in(window.frame().getJMenuBar().getMenu(0).getPopupMenu(), JMenuItem.class, menuItem)
                .isEnabled();
    }

    @Test
    void aStartWithoutAnArgumentMakesAndOpensTheDemo() throws Exception {
        start(null);
        assertThat(comesOpen()).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("demo.porebench – Porebench");
        assertThat(window.desk().rows()).hasSize(8);
        assertThat(isOffered("menu.export")).isTrue();
    }

    @Test
    void aDamagedDemoLeavesTheWindowOpenAndSaysWhyAndWhatIsSafe() throws Exception {
        makeDemo(demoFile());
        try (RandomAccessFile file = new RandomAccessFile(demoFile().toFile(), "rw")) {
            // The first 100 bytes are SQLite's header, the rest of the page its schema.
            file.seek(100);
            file.write(new byte[900]);
        }
        startInVain(null);
        assertThat(window.frame().getTitle()).isEqualTo("No lab book is open – Porebench");
        assertThat(text("noBook.file")).isEqualTo(demoFile().toString());
        assertThat(text("noBook.why")).contains("demo.porebench");
        assertThat(text("noBook.safe")).contains("everything kept before is still in the file");
        assertThat(text("noBook.log")).isEqualTo("Details stand in " + folder.resolve("porebench.log") + ".");
        assertThat(isOffered("menu.export")).isFalse();
        assertThat(isOffered("menu.open")).isTrue();
    }

    @Test
    void aFileThatIsNoLabBookIsNamedAndLeftAsItIs() throws Exception {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear laboratory");
        startInVain(letter);
        assertThat(text("noBook.why")).isEqualTo("letter.txt is not a Porebench lab book. It was left untouched.");
        assertThat(text("noBook.safe")).contains("no file was changed");
        assertThat(named(JTextComponent.class, "noBook.log").isVisible()).isFalse();
        assertThat(letter).hasContent("Dear laboratory");
    }

    @Test
    void aNewerLabBookIsNamed() throws Exception {
        makeDemo(demoFile());
        try (RandomAccessFile file = new RandomAccessFile(demoFile().toFile(), "rw")) {
            // SQLite keeps the number of the newest schema step, user_version, at byte 60.
            file.seek(60);
            file.writeInt(99);
        }
        startInVain(null);
        assertThat(text("noBook.why")).contains("was made by a newer Porebench").contains("99");
    }

    @Test
    void aMissingFileIsNamedAndAnotherIsOpenedWithTheKeyboard() throws Exception {
        Path other = folder.resolve("other.porebench");
        makeDemo(other);
        startInVain(folder.resolve("none.porebench"));
        assertThat(text("noBook.why")).isEqualTo("There is no file " + folder.resolve("none.porebench") + ".");
        asker.filesToOpen.add(other);
        Keys keys = new Keys();
        assertThat(EventThread.comes(() -> button("noBook.open").isFocusOwner()))
                .isTrue();
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(comesOpen()).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("other.porebench – Porebench");
        assertThat(button("noBook.open").isShowing()).isFalse();
    }

    @Test
    void aNewLabBookIsBegunWithItsKey() throws Exception {
        startInVain(folder.resolve("none.porebench"));
        asker.newFiles.add(folder.resolve("new.porebench"));
        assertThat(EventThread.comes(() -> button("noBook.open").isFocusOwner()))
                .isTrue();
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_N);
        assertThat(EventThread.comes(() ->
                        window.desk().hasBook() && button("welcome.newMix").isShowing()))
                .isTrue();
        assertThat(folder.resolve("new.porebench")).isNotEmptyFile();
    }

    @Test
    void aDemoThatCannotBeMadeIsSaid() throws Exception {
        Files.writeString(folder.resolve("data"), "a file where the folder should be");
        startInVain(null);
        assertThat(text("noBook.file")).isEqualTo(demoFile().toString());
        assertThat(text("noBook.why")).contains("making the folder " + folder.resolve("data"));
    }

    @Test
    void theDemoOpensFromThePageOfAWrongArgument() throws Exception {
        startInVain(folder.resolve("none.porebench"));
        EventThread.run(() -> button("noBook.demo").doClick());
        assertThat(comesOpen()).isTrue();
        assertThat(demoFile()).isNotEmptyFile();
    }

    @Test
    void nothingThatNeedsALabBookIsDoneByItsKeyWhileNoneIsOpen() throws Exception {
        startInVain(folder.resolve("none.porebench"));
        assertThat(EventThread.comes(() -> button("noBook.open").isFocusOwner()))
                .isTrue();
        Keys keys = new Keys();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_E);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_1);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_SHIFT, KeyEvent.VK_N);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
        // The last key opens a dialog of the script: when it has come, those before it were handled.
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_O);
        assertThat(EventThread.comes(() -> !asker.asked.isEmpty())).isTrue();
        assertThat(asker.asked).containsExactly("Open a lab book");
        assertThat(window.desk().hasBook()).isFalse();
    }
}
