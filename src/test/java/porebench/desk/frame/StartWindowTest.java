package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
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
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.ScriptedAsker;
import porebench.desk.frame.dialog.TrainingBand;
import porebench.store.SqliteShelf;

/** Starts the window on lab books that cannot be opened, and goes on from there. */
@NeedsDisplay
class StartWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    private Path demoFile() {
        return started.demoFile();
    }

    private void makeDemo(Path file) {
        started.makeDemo(file);
    }

    @BeforeEach
    void openWindow() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
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
    void theDemoIsMarkedAsInventedOnEveryPageWhereverItLies() throws Exception {
        Path elsewhere = folder.resolve("elsewhere").resolve("bench.porebench");
        makeDemo(elsewhere);
        start(elsewhere);
        assertThat(comesOpen()).isTrue();
        for (LatePage<?> page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            assertThat(EventThread.comes(() -> named(TrainingBand.class, "demo").isShowing()))
                    .as(page.name())
                    .isTrue();
        }
        Path own = folder.resolve("own.porebench");
        new SqliteShelf(DemoDesk.DAY).create(own).close();
        EventThread.run(() -> window.turning().open(own));
        assertThat(EventThread.comes(() -> window.desk().book().name().equals("own.porebench")
                        && !named(TrainingBand.class, "demo").isShowing()))
                .isTrue();
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
        assertThat(text("noBook.safe")).contains("everything saved before is still in the file");
        assertThat(text("noBook.log")).isEqualTo("Details are in " + folder.resolve("porebench.log") + ".");
        assertThat(isOffered("menu.export")).isFalse();
        assertThat(isOffered("menu.open")).isTrue();
    }

    @Test
    void aFileThatIsNoLabBookIsNamedAndLeftAsItIs() throws Exception {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear laboratory");
        startInVain(letter);
        assertThat(text("noBook.why"))
                .isEqualTo("letter.txt is not a Porebench lab book. It was left untouched. " + "Choose another file.");
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
    void aLabBookThatAnotherProgramHoldsIsSaidToBeInUse() throws Exception {
        Path held = folder.resolve("held.porebench");
        makeDemo(held);
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + held);
                Statement statement = other.createStatement()) {
            statement.execute("PRAGMA locking_mode = EXCLUSIVE");
            statement.execute("BEGIN EXCLUSIVE");
            startInVain(held);
            assertThat(text("noBook.why")).contains("Another window or program is using the file");
            assertThat(button("noBook.demoAnew").isShowing()).isFalse();
        }
    }

    @Test
    void aMissingFileIsNamedAndAnotherIsOpenedWithTheKeyboard() throws Exception {
        Path other = folder.resolve("other.porebench");
        makeDemo(other);
        startInVain(folder.resolve("none.porebench"));
        assertThat(text("noBook.why"))
                .isEqualTo("There is no file " + folder.resolve("none.porebench") + ". Check the name and the folder.");
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
