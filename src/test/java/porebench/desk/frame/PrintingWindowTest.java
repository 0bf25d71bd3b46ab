package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Container;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
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
import porebench.port.Press;
import porebench.print.DeskPrinter;
import porebench.record.id.MixId;

/** A page goes to the printer by the keys alone, is stopped by them, and becomes a PDF where there is no printer. */
@NeedsDisplay
class PrintingWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    /** Asks a yes or no as the window does, so that keys answer it; where a file goes is known beforehand. */
    private final ScriptedAsker asker = new ScriptedAsker() {
        private final SwingAsker real = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);

        @Override
        public boolean confirm(JComponent over, String title, String question, String actionName) {
            return real.confirm(over, title, question, actionName);
        }
    };

    private final DeskPrinter printer = new DeskPrinter(true);
    private final CountDownLatch goesOn = new CountDownLatch(1);
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    /** Opens the window on the sheet of a mix, the keyboard on the button that prints it. */
    private void openSheet(Press press) throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker, press);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        assertThat(EventThread.comes(() -> window.desk().selected().isPresent()
                        && !window.desk().tools().tasks().isAwaited()))
                .isTrue();
        Keys.bringTo(() -> Named.in(window.content(), JList.class, "mixes"));
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
        assertThat(EventThread.comes(() -> window.current().name().equals("sample")
                        && !window.desk().tools().tasks().isAwaited()))
                .isTrue();
        Keys.bringTo(() -> Named.in(window.current().component(), AbstractButton.class, "sheet.print"));
    }

    @AfterEach
    void close() throws Exception {
        goesOn.countDown();
        // A question that a failed test left open would keep the window from closing.
        EventThread.run(() -> dialogs().forEach(Window::dispose));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static Stream<JDialog> dialogs() {
        return Stream.of(Window.getWindows())
                .filter(one -> one instanceof JDialog && one.isShowing())
                .map(JDialog.class::cast);
    }

    private static Optional<JDialog> question() {
        return dialogs().filter(one -> "ask".equals(one.getName())).findFirst();
    }

    /** The one that shows how far the work is, which also comes where the machine is busy. */
    private static Optional<JDialog> pace() {
        return dialogs().filter(one -> !"ask".equals(one.getName())).findFirst();
    }

    private AbstractButton stop() {
        return Named.in(pace().orElseThrow(), AbstractButton.class, "task.stop");
    }

    private boolean isSaid(String words) {
        return Written.on((Container) window.current().component()).contains(words);
    }

    /** Takes the first page at once and waits before the second. */
    private void waits() {
        try {
            assertThat(printer.printed() == 0 || goesOn.await(60, TimeUnit.SECONDS))
                    .isTrue();
        } catch (InterruptedException broken) {
            throw new IllegalStateException(broken);
        }
    }

    @Test
    void theSheetGoesToThePrinter() throws Exception {
        openSheet(printer.press());
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isSaid("The trial sheet went to the printer.")))
                .isTrue();
        assertThat(printer.getJobName()).isEqualTo("the weigh-out and trial sheet of mix HG-101");
        assertThat(printer.printed()).isPositive();
        assertThat(printer.isCancelled()).isFalse();
    }

    /** A printer that takes its time: which page it is at is shown, and Escape takes the job back before the next one. */
    @Test
    void aSlowPrinterShowsHowFarItIsAndEscapeTakesTheJobBack() throws Exception {
        printer.slowBy(this::waits);
        openSheet(printer.press());
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> pace().isPresent() && stop().isEnabled()))
                .as("it can be stopped")
                .isTrue();
        assertThat(EventThread.call(() -> Named.in(pace().orElseThrow(), JLabel.class, "task.reached")
                        .getText()))
                .isEqualTo("Printing the pages: 0 %");
        Keys.bringTo(this::stop);
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !stop().isEnabled())).isTrue();
        goesOn.countDown();
        assertThat(EventThread.comes(() -> pace().isEmpty() && isSaid("Nothing was printed.")))
                .isTrue();
        assertThat(printer.isCancelled()).isTrue();
        assertThat(printer.printed()).isEqualTo(1);
    }

    @Test
    void whereNoPrinterIsKnownAPdfIsOfferedAndWritten() throws Exception {
        openSheet(DeskPrinter.pressWithout());
        Path file = folder.resolve("sheet.pdf");
        asker.filesToWrite.add(file);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> question().isPresent())).isTrue();
        assertThat(EventThread.call(() -> question().orElseThrow().getTitle())).isEqualTo("No printer");
        Keys.bringTo(() -> button("Save as PDF..."));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> isSaid("Saved as " + file + "."))).isTrue();
        assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void whoWantsNoPdfGetsNothingAndIsWhereHeWas() throws Exception {
        openSheet(DeskPrinter.pressWithout());
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> question().isPresent())).isTrue();
        // Of its two buttons the safe one has the keyboard.
        Keys.bringTo(() -> button("Cancel"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> question().isEmpty())).isTrue();
        assertThat(asker.asked).doesNotContain("Save the trial sheet");
    }

    private static AbstractButton button(String words) {
        return all(question().orElseThrow())
                .filter(each -> words.equals(each.getText()))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<AbstractButton> all(Container in) {
        return Stream.of(in.getComponents())
                .flatMap(each -> each instanceof AbstractButton button
                        ? Stream.of(button)
                        : each instanceof Container inner ? all(inner) : Stream.empty());
    }
}
