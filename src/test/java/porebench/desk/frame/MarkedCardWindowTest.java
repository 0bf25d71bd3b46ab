package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.AsideTasks;
import porebench.desk.DeskModel;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.frame.book.GuardedBook;
import porebench.desk.frame.book.InventedBooks;
import porebench.desk.frame.dialog.SwingAsker;
import porebench.evidence.paper.FactorCard;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.exchange.PracticeLaboratory;
import porebench.port.LabBookShelf;
import porebench.port.Press;
import porebench.port.Waiting;
import porebench.print.PdfPress;
import porebench.record.CardPrint;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The question before a lapsed card leaves, in the real dialog, answered with keys struck on the display. */
@NeedsDisplay
class MarkedCardWindowTest {
    /** To be rechecked by 2 September 2026, and it is 25 November. */
    private static final MixId LAPSED = new MixId("HG-103");

    private static final MixId IN_FORCE = new MixId("HG-101");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    /** The cards that reached the printer. */
    private final List<FactorCard> onPaper = new CopyOnWriteArrayList<>();

    private DeskModel desk;
    private WorkbenchFrame window;

    @BeforeEach
    void openWindow() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        window = EventThread.call(() -> {
            LabBookShelf shelf = GuardedBook.shelf(new SqliteShelf(DemoDesk.DAY));
            LabBook book = DemoDesk.aside(() -> shelf.create(folder.resolve("demo.porebench"), opened -> {
                        new DemoYear().fill(opened);
                        return true;
                    })
                    .orElseThrow());
            SwingAsker asker = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);
            Tools tools = new Tools(
                    shelf,
                    new CsvSheets(),
                    watchedPress(),
                    new AsideTasks(),
                    asker,
                    DemoDesk.DAY,
                    ZoneId.of("UTC"),
                    Locale.ENGLISH);
            desk = DemoDesk.aside(() -> new DeskModel(tools, book));
            asker.serve(desk);
            return Workbench.open(
                    desk,
                    new WindowMemory(Settings.inMemory()),
                    new InventedBooks(folder.resolve("demo.porebench"), made -> {}, new PracticeLaboratory()),
                    Optional::empty);
        });
        EventThread.run(() -> desk.setPerson("R. Vale"));
    }

    @AfterEach
    void closeWindow() throws Exception {
        // A question that a failed test left open would keep the window from closing.
        EventThread.run(() -> dialogs().forEach(Window::dispose));
        EventThread.run(window::close);
    }

    /** Returns a press whose printer is always chosen and takes everything. */
    private Press watchedPress() {
        Press real = new PdfPress("Porebench", DemoDesk.DAY, ZoneOffset.UTC);
        return (Press) Proxy.newProxyInstance(
                Press.class.getClassLoader(), new Class<?>[] {Press.class}, (proxy, method, arguments) -> {
                    if (method.getName().equals("readyForPrinter")) {
                        return Optional.of(new Waiting() {
                            @Override
                            public void release() {
                                onPaper.add((FactorCard) arguments[0]);
                            }

                            @Override
                            public void close() {}
                        });
                    }
                    try {
                        return method.invoke(real, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    /** Turns to the card of a mix and presses one of its buttons, which may ask and wait. */
    private void press(MixId mix, String name) throws Exception {
        EventThread.run(() -> window.openMix(mix));
        EventThread.run(() -> window.turnTo(window.pages().named("factor").orElseThrow()));
        EventQueue.invokeLater(
                () -> Named.in(window.content(), JButton.class, name).doClick());
    }

    private static Optional<JDialog> question() {
        return dialogs().filter(dialog -> "ask".equals(dialog.getName())).findFirst();
    }

    private static Stream<JDialog> dialogs() {
        return Stream.of(Window.getWindows())
                .filter(JDialog.class::isInstance)
                .map(JDialog.class::cast)
                .filter(Window::isShowing);
    }

    private JButton answer(String name) {
        return Named.in(question().orElseThrow(), JButton.class, name);
    }

    private void assertAskedSafely() throws Exception {
        assertThat(EventThread.comes(
                        () -> question().isPresent() && answer("cancel").isFocusOwner()))
                .as("the question is there and the safe button has the keys")
                .isTrue();
        assertThat(question().orElseThrow().getTitle()).isEqualTo("This card is not to be used today");
        assertThat(question().orElseThrow().getRootPane().getDefaultButton()).isSameAs(answer("cancel"));
    }

    private List<CardPrint> prints(MixId mix) {
        return DemoDesk.aside(() -> desk.book().latest(CardPrint.class)).stream()
                .map(Version::value)
                .filter(print -> print.mixId().equals(mix))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(ints = {KeyEvent.VK_ENTER, KeyEvent.VK_ESCAPE, KeyEvent.VK_SPACE})
    void noSingleKeyLetsALapsedCardLeave(int key) throws Exception {
        Keys keys = new Keys();
        for (String way : List.of("factor.print", "factor.savePdf")) {
            press(LAPSED, way);
            assertAskedSafely();
            keys.strikeUntil(() -> dialogs().findAny().isEmpty(), "the end of the question", key);
            EventThread.settle();
            assertThat(dialogs()).as("no question for a file follows").isEmpty();
        }
        assertThat(onPaper).isEmpty();
        assertThat(prints(LAPSED)).isEmpty();
    }

    @Test
    void whoAsksForAMarkedCopyGetsOne() throws Exception {
        press(LAPSED, "factor.print");
        assertAskedSafely();
        EventThread.run(() -> answer("accept").requestFocusInWindow());
        assertThat(EventThread.comes(() -> answer("accept").isFocusOwner())).isTrue();
        Keys keys = new Keys();
        keys.strikeUntil(() -> onPaper.size() == 1, "the copy", KeyEvent.VK_SPACE);
        assertThat(onPaper.get(0).isMarked()).isTrue();
        assertThat(prints(LAPSED))
                .extracting(CardPrint::way)
                .isEqualTo(Collections.nCopies(1, CardPrint.Way.MARKED_COPY));
        // What came of it is said, and read.
        assertThat(EventThread.comes(() -> question()
                        .filter(told -> told.getTitle().equals("A marked copy was made"))
                        .isPresent()))
                .isTrue();
        keys.strikeUntil(() -> dialogs().findAny().isEmpty(), "the end of what was said", KeyEvent.VK_ESCAPE);
    }

    @Test
    void aCardInForceLeavesWithoutAQuestion() throws Exception {
        press(IN_FORCE, "factor.print");
        assertThat(EventThread.comes(() -> onPaper.size() == 1)).isTrue();
        assertThat(onPaper.get(0).isMarked()).isFalse();
        assertThat(prints(IN_FORCE)).extracting(CardPrint::way).endsWith(CardPrint.Way.HANDED_OUT);
        // It is on paper by now; the one question that follows is to whom it goes, which may be left open.
        assertThat(EventThread.comes(() -> question()
                        .filter(asked -> asked.getTitle().equals("To whom does the card go?"))
                        .isPresent()))
                .isTrue();
        assertThat(dialogs()).hasSize(1);
        new Keys().strikeUntil(() -> dialogs().findAny().isEmpty(), "the end of the question", KeyEvent.VK_ESCAPE);
        assertThat(onPaper).hasSize(1);
    }
}
