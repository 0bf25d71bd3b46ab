package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
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
import porebench.method.Problem;
import porebench.port.Press;
import porebench.print.PdfPress;
import porebench.record.book.Progress;

/** Cards of many mixes from the register, by the keyboard in a real window. */
@NeedsDisplay
class CardsWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private final Press press = new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC"));
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void begin() throws Exception {
        keys = new Keys();
    }

    private void openTheRegister(Press by) throws Exception {
        started = new StartedWindow(folder, asker, by);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.turnTo(window.pages().named("register").orElseThrow()));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> dialog("ask").ifPresent(Window::dispose));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static Optional<JDialog> dialog(String name) {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && name.equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private static Optional<JDialog> pace() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && !"ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private static <T extends Component> T asked(Class<T> type, String name) {
        return Named.in(dialog("ask").orElseThrow(), type, name);
    }

    private void askForCards() throws Exception {
        Keys.bringTo(() -> named("register.manyCards"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> dialog("ask").isPresent())).isTrue();
    }

    private void choose(String box, int letter, int index) throws Exception {
        Keys.bringTo(() -> asked(JComboBox.class, box));
        keys.strikeUntil(() -> asked(JComboBox.class, box).getSelectedIndex() == index, box, letter);
    }

    private boolean isTold(String words) {
        return ((JLabel) named("register.told")).getText().contains(words);
    }

    private String text(Path file) throws Exception {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void cardsOfAllInForceAreMadeInTwoLanguages() throws Exception {
        openTheRegister(press);
        Path file = folder.resolve("cards.pdf");
        asker.filesToWrite.add(file);
        askForCards();
        choose("which", KeyEvent.VK_A, 1);
        choose("second", KeyEvent.VK_G, 4);
        choose("sheet", KeyEvent.VK_L, 2);
        Keys.bringTo(() -> asked(JButton.class, "accept"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isTold("Cards made: 4."))).isTrue();
        assertThat(text(file))
                .contains("SUBTRACT", "ABZIEHEN", "HG-101", "HG-102")
                .doesNotContain("HG-103");
        assertThat(asker.problemsShown).isEmpty();
    }

    @Test
    void aMixOnViewThatMayNotHaveACardStopsAllUntilItIsLeftOut() throws Exception {
        openTheRegister(press);
        Path file = folder.resolve("cards.pdf");
        asker.filesToWrite.add(file);
        askForCards();
        Keys.bringTo(() -> asked(JButton.class, "accept"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isTold("No cards were made"))).isTrue();
        assertThat(asker.problemsShown).hasSize(4).allMatch(Problem::isError);
        assertThat(Files.exists(file)).isFalse();
        asker.problemsShown.clear();
        asker.filesToWrite.add(file);
        askForCards();
        Keys.bringTo(() -> asked(Component.class, "cards.leave-out"));
        keys.strike(KeyEvent.VK_SPACE);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isTold("Cards made: 4."))).isTrue();
        assertThat(asker.problemsShown).hasSize(4).noneMatch(Problem::isError);
    }

    /** Of the three mixes of the Velmar Road plant one has a factor. */
    @Test
    void thePlantsMixesStandOnOneCard() throws Exception {
        openTheRegister(press);
        Path file = folder.resolve("plant.pdf");
        asker.filesToWrite.add(file);
        askForCards();
        assertThat(EventThread.call(() -> asked(Component.class, "cards.on-one").isEnabled()))
                .isFalse();
        choose("which", KeyEvent.VK_END, 3);
        choose("plant", KeyEvent.VK_V, plantOf("V"));
        tick("cards.on-one");
        tick("cards.leave-out");
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isTold("Card of the plant made: 1 mixes on 1 cards.")))
                .isTrue();
        assertThat(text(file))
                .contains("Plant: Velmar Road plant", "HG-101", "HG-103", "NO FACTOR")
                .doesNotContain("HG-102");
        assertThat(asker.problemsShown).hasSize(2).noneMatch(Problem::isError);
    }

    /** Ticks a box of the dialog by the keyboard, and sees that it is ticked before the next key. */
    private void tick(String box) throws Exception {
        Keys.bringTo(() -> asked(Component.class, box));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> asked(AbstractButton.class, box).isSelected()))
                .as(box)
                .isTrue();
    }

    private static int plantOf(String letter) throws Exception {
        return EventThread.call(() -> {
            JComboBox<?> plants = asked(JComboBox.class, "plant");
            for (int row = 0; row < plants.getItemCount(); row++) {
                if (plants.getItemAt(row).toString().startsWith(letter)) {
                    return row;
                }
            }
            return -1;
        });
    }

    @Test
    void escapeMakesNone() throws Exception {
        openTheRegister(press);
        askForCards();
        keys.strikeUntil(() -> dialog("ask").isEmpty(), "the end of the dialog", KeyEvent.VK_ESCAPE);
        assertThat(asker.asked).isEmpty();
    }

    /** A press that is never ready, until it is ended. */
    private Press endless() {
        return (Press) Proxy.newProxyInstance(
                Press.class.getClassLoader(), new Class<?>[] {Press.class}, (proxy, called, arguments) -> {
                    if (called.getName().equals("ready") && arguments[3] instanceof Progress progress) {
                        while (true) {
                            progress.at(Progress.Stage.PRINTING, 1, 4);
                            Thread.onSpinWait();
                        }
                    }
                    try {
                        return called.invoke(press, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    @Test
    void whoeverStopsItFindsNoFile() throws Exception {
        openTheRegister(endless());
        Path file = folder.resolve("cards.pdf");
        asker.filesToWrite.add(file);
        askForCards();
        choose("which", KeyEvent.VK_A, 1);
        Keys.bringTo(() -> asked(JButton.class, "accept"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> pace().isPresent())).isTrue();
        Keys.bringTo(() -> Named.in(pace().orElseThrow(), JButton.class, "task.stop"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> isTold("Stopped"))).isTrue();
        assertThat(Files.exists(file)).isFalse();
        assertThat(asker.problemsShown).isEmpty();
    }
}
