package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
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
import porebench.desk.Page;
import porebench.desk.ScriptedAsker;
import porebench.record.id.MixId;

/** Goes through the window of the demo laboratory and sees that no single event holds the event thread for long. */
@NeedsDisplay
class EventTimesWindowTest {
    /** Beyond it a person notices that the window stood still. */
    private static final Duration LONG = Duration.ofMillis(100);

    /** A display of the tests has no graphics card: laying a whole page out and painting it took up to 122 ms, mostly painting. */
    private static final Duration LONG_PAINTING = Duration.ofMillis(300);

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openWindow() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void settles() throws Exception {
        assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()
                        && !window.desk().tools().tasks().isBusy()))
                .isTrue();
        EventThread.settle();
    }

    /** Every mix, every page, and a trial that is typed letter by letter and saved. */
    private void goThrough(int round) throws Exception {
        List<MixId> mixes = EventThread.call(
                () -> window.desk().rows().stream().map(row -> row.mixId()).toList());
        for (MixId mix : mixes) {
            during("open " + mix.text());
            EventThread.run(() -> window.openMix(mix));
            assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(mix))))
                    .isTrue();
            settles();
        }
        for (Page page : window.pages().all()) {
            during("turn to " + page.name());
            EventThread.run(() -> window.turnTo(page));
            settles();
        }
        EventThread.run(() -> window.openMix(mixes.get(0)));
        settles();
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        asker.reasons.add("round " + round);
        EventThread.run(() -> Named.in(window.pages().trials().place(), AbstractButton.class, "begin")
                .doClick(0));
        during("type a trial");
        type("fine", "4868");
        type("coarse", "7409");
        type("withdrawn", "369");
        type("gauge", "5.6");
        asker.reasons.add("as it was read");
        during("save a trial");
        int before = trials();
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> trials() > before)).isTrue();
        settles();
    }

    private void during(String doing) throws Exception {
        EventThread.run(() -> started.times().during(doing));
    }

    private int trials() {
        return window.desk().evidence().orElseThrow().determinations().stream()
                .mapToInt(one -> one.trials().size())
                .sum();
    }

    private void type(String name, String text) throws Exception {
        JTextComponent field = Named.in(window.pages().trials().place(), JTextComponent.class, name);
        assertThat(EventThread.comes(() -> {
                    window.frame().toFront();
                    field.requestFocus();
                    return field.isFocusOwner();
                }))
                .isTrue();
        Keys keys = new Keys();
        for (char letter : text.toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comes(() -> field.getText().equals(text))).isTrue();
    }

    @Test
    void noEventHoldsTheEventThreadForLongOnceEverythingWasSeen() throws Exception {
        goThrough(1);
        goThrough(2);
        List<EventTimes.Held> once = longIn(3);
        List<EventTimes.Held> again = longIn(4);
        assertThat(again)
                .as("what is long each time, not by a chance such as a compilation")
                .noneMatch(one -> once.stream().anyMatch(other -> other.during().equals(one.during())));
    }

    /** Goes through everything and returns the events that were long. */
    private List<EventTimes.Held> longIn(int round) throws Exception {
        EventThread.run(() -> started.times().begin());
        goThrough(round);
        assertThat(EventThread.call(() -> started.times().count())).isGreaterThan(100);
        return EventThread.call(() -> started.times().longer(LONG, LONG_PAINTING));
    }

    @Test
    void anEventThatHoldsTheEventThreadIsSeen() throws Exception {
        EventThread.run(() -> started.times().begin());
        EventThread.run(() -> {
            ThreadMXBean threads = ManagementFactory.getThreadMXBean();
            long end = threads.getCurrentThreadCpuTime() + 2 * LONG.toNanos();
            while (threads.getCurrentThreadCpuTime() < end) {
                Thread.onSpinWait();
            }
        });
        assertThat(EventThread.call(() -> started.times().longer(LONG, LONG_PAINTING)))
                .hasSize(1);
    }
}
