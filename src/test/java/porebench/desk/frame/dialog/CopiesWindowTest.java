package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

/** What a person is asked for on the telephone can be copied: versions, the log, and whatever went wrong. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class CopiesWindowTest {
    @TempDir
    Path folder;

    private final SwingAsker asker = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);

    @BeforeEach
    void nothingIsCopied() {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection("before"), null);
    }

    private static String copied() throws Exception {
        return (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
    }

    private static Optional<JDialog> dialog() {
        return Arrays.stream(Window.getWindows())
                .filter(JDialog.class::isInstance)
                .map(JDialog.class::cast)
                .filter(each -> each.isShowing() && "ask".equals(each.getName()))
                .reduce((before, last) -> last);
    }

    /** Opens a dialog, copies by the keyboard alone what one of its buttons copies, and closes it by Enter. */
    private String copyBy(String name, Runnable open) throws Exception {
        Keys keys = new Keys();
        EventQueue.invokeLater(open);
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
        JDialog dialog = EventThread.call(() -> dialog().orElseThrow());
        JButton close = EventThread.call(() -> Named.in(dialog, JButton.class, "close"));
        assertThat(EventThread.comes(close::isFocusOwner))
                .as("the keyboard is on what closes it")
                .isTrue();
        for (int buttons = 0; buttons < 5 && !EventThread.call(() -> isFocused(name)); buttons++) {
            Object before = EventThread.call(CopiesWindowTest::focused);
            keys.strike(KeyEvent.VK_SHIFT, KeyEvent.VK_TAB);
            assertThat(EventThread.comes(() -> focused() != null && focused() != before))
                    .isTrue();
        }
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> Named.in(dialog, JButton.class, name).getText().equals("Copied")))
                .isTrue();
        assertThat(EventThread.call(dialog::isShowing)).isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !dialog.isShowing())).isTrue();
        return copied();
    }

    private static boolean isFocused(String name) {
        Component owner = focused();
        return owner != null && name.equals(owner.getName());
    }

    private static Component focused() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    @Test
    void aboutSaysAndCopiesVersionsLibrariesAndLicences() throws Exception {
        String words = copyBy("copy", () -> new About(FrameTexts.in(Locale.ENGLISH)).showAbout(new JPanel()));
        assertThat(words)
                .contains("Porebench ", "Java " + System.getProperty("java.version"), System.getProperty("os.arch"));
        assertThat(Licences.libraries())
                .isNotEmpty()
                .allSatisfy(library -> assertThat(words)
                        .contains(library.name() + ", " + library.version() + ", " + library.licence()));
    }

    @Test
    void problemsAreCopiedAsLinesErrorsFirstWithTheirPlace() throws Exception {
        List<Problem> problems = List.of(
                Problem.warning("", "command.answer-lost"),
                Problem.error("file", "book.file-exists", "a.porebench").at(Place.of("trials.csv", 3, 2)));
        String words = copyBy("copy", () -> asker.problems(new JPanel(), "Import", problems));
        List<String> lines = words.lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0)).startsWith("to correct: ").contains("trials.csv", "3", "a.porebench");
        assertThat(lines.get(1)).startsWith("doubtful: ");
    }

    @Test
    void aFailureIsCopiedWithItsReason() throws Exception {
        String words = copyBy(
                "copy",
                () -> asker.failure(new JPanel(), "Writing the card", new IllegalStateException("the disk is full")));
        assertThat(words).contains("Writing the card", "the disk is full");
    }

    @Test
    void theLogIsShownAndItsNameAndItsWordsAreCopied() throws Exception {
        Path log =
                Files.writeString(folder.resolve("porebench.log"), "first line\nlast line\n", StandardCharsets.UTF_8);
        Tools tools = new Tools(
                new SqliteShelf(Clock.systemUTC()),
                new CsvSheets(),
                new PdfPress("Porebench", Clock.systemUTC(), ZoneOffset.UTC),
                Tasks.direct(),
                asker,
                Clock.systemUTC(),
                ZoneOffset.UTC,
                Locale.ENGLISH);
        LogDialog dialog = new LogDialog(tools, FrameTexts.in(Locale.ENGLISH), () -> Optional.of(log));
        assertThat(copyBy("log.copy-path", () -> dialog.show(new JPanel()))).isEqualTo(log.toString());
        assertThat(copyBy("log.copy-words", () -> dialog.show(new JPanel()))).isEqualTo("first line\nlast line\n");
        EventQueue.invokeLater(() -> dialog.show(new JPanel()));
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
        JDialog shown = EventThread.call(() -> dialog().orElseThrow());
        assertThat(Named.in(shown, JTextField.class, "log.path").getText()).isEqualTo(log.toString());
        assertThat(Named.in(shown, JTextArea.class, "log.words").getText()).contains("last line");
        EventThread.run(() -> Named.in(shown, JButton.class, "close").doClick());
    }

    /** The end of a long log is shown from the beginning of a line on. */
    @Test
    void ofALongLogTheLastLinesAreShown() throws Exception {
        Path log = Files.writeString(
                folder.resolve("long.log"), "x".repeat(99) + "\n" + ("y".repeat(99) + "\n").repeat(1000));
        String end = LogDialog.end(log);
        // 64 KiB are 655 lines of 100 letters and 36 letters of one more, which is left out.
        assertThat(end.lines().count()).isEqualTo(655);
        assertThat(end.lines()).allMatch(line -> line.length() == 99);
        assertThat(LogDialog.end(Files.writeString(folder.resolve("short.log"), "a\nb")))
                .isEqualTo("a\nb");
    }
}
