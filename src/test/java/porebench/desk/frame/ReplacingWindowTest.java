package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
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
import porebench.desk.Settings;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.SourceId;
import porebench.store.SqliteShelf;

/** Backs lab books up and restores them in a window whose questions are answered with keys. */
@NeedsDisplay
class ReplacingWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final Asking asker = new Asking();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Path book;

    /** Takes names of files from a script, and questions to the person at the keys. */
    private static final class Asking extends ScriptedAsker {
        private final SwingAsker dialogs = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);

        @Override
        public boolean confirm(JComponent over, String title, String question, String actionName) {
            asked.add(question);
            return dialogs.confirm(over, title, question, actionName);
        }

        @Override
        public Optional<Path> place(
                JComponent over,
                String title,
                String suggestedName,
                Function<Path, String> ifThere,
                String actionName) {
            asked.add(suggestedName);
            return Optional.ofNullable(places.poll())
                    .filter(file -> !Files.exists(file) || confirm(over, title, ifThere.apply(file), actionName));
        }
    }

    @BeforeEach
    void openWindow() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        book = folder.resolve("book.porebench");
        started.makeDemo(book);
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private Path backup() throws Exception {
        return new SqliteShelf(DemoDesk.DAY)
                .backUp(book, folder.resolve("backups"))
                .value()
                .orElseThrow()
                .file();
    }

    private void keepOneMore() {
        Source source = new Source(
                new SourceId("S-99"),
                "Kept after the backup",
                Role.FINE,
                "Pit",
                "",
                Optional.empty(),
                Optional.empty(),
                "");
        try (LabBook opened = new SqliteShelf(DemoDesk.DAY).open(book)) {
            assertThat(opened.keep(List.of(Draft.of(source)), "T. Ellwand", "new pit"))
                    .isEmpty();
        }
    }

    private boolean holdsTheNewOne() throws Exception {
        LabBook shown = EventThread.call(() -> window.desk().book());
        return shown.latest(Source.class, "S-99").isPresent();
    }

    private List<String> namesInTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .sorted()
                    .toList();
        }
    }

    private void answer(int key) throws Exception {
        assertThat(EventThread.comes(() -> question().isPresent())).isTrue();
        JDialog dialog = EventThread.call(() -> question().orElseThrow());
        assertThat(EventThread.comes(dialog::isFocused)).isTrue();
        new Keys().strike(key);
        assertThat(EventThread.comes(() -> !dialog.isShowing())).isTrue();
    }

    private static Optional<JDialog> question() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && "ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private void askToRestore(Path backup) throws Exception {
        asker.filesToOpen.add(backup);
        asker.places.add(book);
        started.choose("menu.restore");
    }

    @Test
    void enterAloneRestoresNothingOverALabBook() throws Exception {
        Path backup = backup();
        keepOneMore();
        started.startWith(book);
        askToRestore(backup);
        answer(KeyEvent.VK_ENTER);
        assertThat(asker.asked)
                .containsSubsequence(
                        "book.porebench",
                        "book.porebench is already there. The backup " + backup.getFileName()
                                + " replaces it. What is there now is moved aside beside it, under a name with"
                                + " \"replaced\" and the date; what was entered after the backup was made is then only in"
                                + " that file.");
        assertThat(holdsTheNewOne()).isTrue();
        assertThat(namesInTheFolder()).noneMatch(name -> name.contains("replaced"));
    }

    @Test
    void aDamagedBackupIsNotRestoredAndTheLabBookStaysOnView() throws Exception {
        Path backup = backup();
        try (RandomAccessFile file = new RandomAccessFile(backup.toFile(), "rw")) {
            file.seek(4096 * 3 + 20);
            file.write(new byte[600]);
        }
        started.startWith(book);
        askToRestore(backup);
        chooseRestore();
        assertThat(EventThread.comes(() -> !asker.problemsShown.isEmpty())).isTrue();
        assertThat(asker.problemsShown).extracting(Problem::code).first().isEqualTo("book.backup-damaged");
        assertThat(started.comesOpen()).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("book.porebench – Porebench");
    }

    /** Moves to the button that restores, with the keys, and presses it. */
    private void chooseRestore() throws Exception {
        assertThat(EventThread.comes(() -> question().isPresent())).isTrue();
        JDialog dialog = EventThread.call(() -> question().orElseThrow());
        assertThat(EventThread.comes(
                        () -> Named.in(dialog, JButton.class, "cancel").isFocusOwner()))
                .isTrue();
        Keys keys = new Keys();
        keys.strikeUntil(() -> Named.in(dialog, JButton.class, "accept").isFocusOwner(), "the focus", KeyEvent.VK_TAB);
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> !dialog.isShowing())).isTrue();
    }

    @Test
    void whatIsEnteredAfterTheBackupIsOnlyInTheFileSetAside() throws Exception {
        Path backup = backup();
        keepOneMore();
        started.startWith(book);
        askToRestore(backup);
        chooseRestore();
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        assertThat(started.comesOpen()).isTrue();
        assertThat(holdsTheNewOne()).isFalse();
        Path aside = folder.resolve("book.porebench.replaced-2026-11-25-090000");
        assertThat(asker.told.get(0))
                .startsWith(book + " is restored and open. It reaches to entry ")
                .endsWith("The lab book that was there is now " + aside + ".");
        try (LabBook set = new SqliteShelf(DemoDesk.DAY).open(aside)) {
            assertThat(set.latest(Source.class, "S-99")).isPresent();
        }
    }

    @Test
    void withoutALabBookABackupIsRestoredFromThePageWithTheKeyboard() throws Exception {
        Path backup = backup();
        EventThread.run(() -> window.turning().open(folder.resolve("none.porebench")));
        assertThat(EventThread.comes(() ->
                        Named.in(window.content(), JButton.class, "noBook.open").isFocusOwner()))
                .isTrue();
        asker.filesToOpen.add(backup);
        asker.places.add(folder.resolve("again.porebench"));
        Keys keys = new Keys();
        keys.strikeUntil(
                () -> Named.in(window.content(), JButton.class, "noBook.new").isFocusOwner(), "new", KeyEvent.VK_TAB);
        keys.strikeUntil(
                () -> Named.in(window.content(), JButton.class, "noBook.restore")
                        .isFocusOwner(),
                "restore",
                KeyEvent.VK_TAB);
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(started.comesOpen()).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("again.porebench – Porebench");
        assertThat(asker.asked).doesNotContain("Restore");
    }

    @Test
    void aBackupIsMadeOfTheLabBookOnViewAndNamed() throws Exception {
        started.startWith(book);
        asker.folders.add(folder.resolve("backups"));
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_B);
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        Path backup = folder.resolve("backups").resolve("book-2026-11-25-090000.porebench");
        assertThat(backup).isNotEmptyFile();
        assertThat(asker.told.get(0)).startsWith("The backup is " + backup + ". It was checked: it reaches to entry ");
    }

    @Test
    void aLabBookIsNoFolderToBackUpInto() throws Exception {
        started.startWith(book);
        Path other = folder.resolve("other.porebench");
        started.makeDemo(other);
        byte[] before = Files.readAllBytes(other);
        asker.folders.add(other);
        started.choose("menu.backup");
        assertThat(EventThread.comes(() -> !asker.failures.isEmpty())).isTrue();
        asker.failures.clear();
        assertThat(asker.told).isEmpty();
        assertThat(Files.readAllBytes(other)).isEqualTo(before);
    }

    @Test
    void aFullExportIsBuiltAnewIntoTheSameChain() throws Exception {
        started.startWith(book);
        Path whole = folder.resolve("whole");
        asker.folders.add(whole);
        started.choose("menu.whole");
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        String before = EventThread.call(() -> window.desk().book()).head().printed();
        asker.folders.add(whole);
        asker.newFiles.add(folder.resolve("anew.porebench"));
        started.choose("menu.rebuild");
        assertThat(EventThread.comes(() -> asker.told.size() == 2)).isTrue();
        assertThat(started.comesOpen()).isTrue();
        assertThat(window.frame().getTitle()).isEqualTo("anew.porebench – Porebench");
        assertThat(asker.told.get(1)).endsWith("hash " + before + ".");
    }

    @Test
    void aDamagedDemoIsSetAsideAndMadeAnewWhenThePersonSaysSo() throws Exception {
        Path demo = started.demoFile();
        started.makeDemo(demo);
        Files.write(demo, new byte[5000]);
        EventThread.run(() -> window.turning().first(Optional.empty()));
        assertThat(EventThread.comes(() -> Named.in(window.content(), JButton.class, "noBook.demoAnew")
                        .isFocusOwner()))
                .isTrue();
        assertThat(EventThread.call(() -> Named.in(window.content(), JTextComponent.class, "noBook.why")
                        .getText()))
                .isEqualTo(
                        "demo.porebench is not a Porebench lab book. It was left untouched. Choose another " + "file.");
        new Keys().strike(KeyEvent.VK_SPACE);
        assertThat(started.comesOpen()).isTrue();
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        Path aside = demo.resolveSibling("demo.porebench.replaced-2026-11-25-090000");
        assertThat(Files.readAllBytes(aside)).isEqualTo(new byte[5000]);
        assertThat(asker.told.get(0)).endsWith("The lab book that was there is now " + aside + ".");
    }

    private static void scribbleInto(Path file) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE scribble (x)");
        }
    }

    @Test
    void aDemoInWhichNothingCanBeKeptIsMadeAnewFromTheBar() throws Exception {
        Path demo = started.demoFile();
        started.makeDemo(demo);
        scribbleInto(demo);
        started.startWith(null);
        JButton anew = Named.in(window.content(), JButton.class, "warnings.demoAnew");
        assertThat(EventThread.call(anew::isShowing)).isTrue();
        EventThread.run(() -> anew.doClick(0));
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        assertThat(EventThread.call(() -> window.desk().book().notWritable())).isEmpty();
        assertThat(EventThread.call(anew::isShowing)).isFalse();
        assertThat(demo.resolveSibling("demo.porebench.replaced-2026-11-25-090000"))
                .isNotEmptyFile();
    }

    @Test
    void whatTheQuickLookFindsStaysOnView() throws Exception {
        scribbleInto(book);
        started.startWith(book);
        String words = EventThread.call(() -> Named.in(window.content(), JTextComponent.class, "warnings.words")
                .getText());
        assertThat(words)
                .startsWith("book.porebench can be read, but nothing can be saved in it")
                .contains("scribble does not belong in a lab book");
        assertThat(EventThread.call(() ->
                        Named.in(window.content(), JLabel.class, "head.title").isShowing()))
                .isTrue();
        EventThread.run(() -> window.turnTo(window.pages().all().get(6)));
        assertThat(EventThread.call(() ->
                        Named.in(window.content(), JComponent.class, "warnings").isShowing()))
                .isTrue();
    }
}
