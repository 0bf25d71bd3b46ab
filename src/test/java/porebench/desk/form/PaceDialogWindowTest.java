package porebench.desk.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.AsideTasks;
import porebench.desk.NeedsDisplay;
import porebench.record.book.Progress.Stage;

/** The dialog over long work, on a real screen: what it says, and that Stop stops. */
@NeedsDisplay
class PaceDialogWindowTest {
    private JFrame over;
    private Tasks tasks;

    @BeforeEach
    void show() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            over = new JFrame("bench");
            over.setSize(400, 300);
            over.setVisible(true);
            tasks = Tasks.inBackground(() -> over.getRootPane(), Locale.ENGLISH, title -> title, new HeldInput());
        });
    }

    @AfterEach
    void close() throws Exception {
        SwingUtilities.invokeAndWait(() -> over.dispose());
    }

    private static Stream<Component> all(Container inside) {
        return Arrays.stream(inside.getComponents())
                .flatMap(each -> each instanceof Container container
                        ? Stream.concat(Stream.of(each), all(container))
                        : Stream.of(each));
    }

    private <C extends Component> Optional<C> find(Class<C> type, String name) {
        return Arrays.stream(Window.getWindows())
                .filter(window -> window instanceof JDialog && window.isShowing())
                .flatMap(window -> all((JDialog) window))
                .filter(each -> name.equals(each.getName()))
                .map(type::cast)
                .findFirst();
    }

    /** Waits until a component of the dialog is as wanted, and returns it. */
    private <C extends Component> C await(Class<C> type, String name, Predicate<C> wanted) throws Exception {
        for (int look = 0; look < 600; look++) {
            CompletableFuture<Optional<C>> seen = new CompletableFuture<>();
            SwingUtilities.invokeLater(() -> seen.complete(find(type, name).filter(wanted)));
            Optional<C> found = seen.get(10, TimeUnit.SECONDS);
            if (found.isPresent()) {
                return found.get();
            }
            Thread.sleep(25);
        }
        throw new AssertionError(name + " never came to be as wanted");
    }

    @Test
    void itSaysHowFarTheWorkIsAndStopEndsIt() throws Exception {
        CompletableFuture<Exception> failed = new CompletableFuture<>();
        SwingUtilities.invokeLater(() -> tasks.run(
                "Importing",
                progress -> {
                    for (long row = 0; true; row = Math.min(250, row + 1)) {
                        progress.at(Stage.CHECKING, row, 1000);
                        Thread.sleep(1);
                    }
                },
                done -> failed.completeExceptionally(new AssertionError("it came to an end")),
                failed::complete));
        await(JLabel.class, "task.reached", label -> label.getText().startsWith("Checking the records: 25 %, about "));
        JProgressBar bar = await(JProgressBar.class, "task.bar", shown -> !shown.isIndeterminate());
        assertThat(bar.getValue()).isEqualTo(250);
        JButton stop = await(JButton.class, "task.stop", Component::isEnabled);
        SwingUtilities.invokeLater(stop::doClick);
        assertThat(failed.get(10, TimeUnit.SECONDS)).isInstanceOf(CancellationException.class);
        assertThat(find(JButton.class, "task.stop")).isEmpty();
    }

    @Test
    void whatDoesNotSayHowFarItIsCannotBeStopped() throws Exception {
        CountDownLatch mayEnd = new CountDownLatch(1);
        CompletableFuture<String> done = new CompletableFuture<>();
        SwingUtilities.invokeLater(() -> tasks.run(
                "Computing",
                () -> {
                    mayEnd.await();
                    return "computed";
                },
                done::complete,
                done::completeExceptionally));
        await(JProgressBar.class, "task.bar", JProgressBar::isIndeterminate);
        assertThat(find(JButton.class, "task.stop")).isEmpty();
        mayEnd.countDown();
        assertThat(done.get(10, TimeUnit.SECONDS)).isEqualTo("computed");
    }

    /** What could say it, and has not yet, is not said to be stopped by a button that does nothing. */
    @Test
    void stopComesAliveOnceTheWorkSaidHowFarItIs() throws Exception {
        CountDownLatch mayTell = new CountDownLatch(1);
        CompletableFuture<Exception> failed = new CompletableFuture<>();
        SwingUtilities.invokeLater(() -> tasks.run(
                "Opening",
                progress -> {
                    mayTell.await();
                    return AsideTasks.aside(() -> {
                        for (long mix = 0; true; mix++) {
                            progress.at(Stage.WORKING_OUT, mix, 0);
                            Thread.sleep(1);
                        }
                    });
                },
                done -> failed.completeExceptionally(new AssertionError("it came to an end")),
                failed::complete));
        await(JButton.class, "task.stop", stop -> !stop.isEnabled());
        mayTell.countDown();
        JButton stop = await(JButton.class, "task.stop", Component::isEnabled);
        assertThat(await(JLabel.class, "task.reached", label -> true).getText()).isEqualTo("Computing the mixes");
        SwingUtilities.invokeLater(stop::doClick);
        assertThat(failed.get(10, TimeUnit.SECONDS)).isInstanceOf(CancellationException.class);
    }
}
