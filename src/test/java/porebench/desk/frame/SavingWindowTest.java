package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JList;
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
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.store.SqliteShelf;

/** What is struck, clicked and closed while a lab book on a slow disk keeps a trial or reads a mix. */
@NeedsDisplay
class SavingWindowTest {
    private static final MixId MIX = new MixId("HG-101");
    private static final MixId OTHER = new MixId("HG-102");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private final Keys keys = newKeys();
    private StartedWindow started;
    private WorkbenchFrame window;
    private String saved = "";
    private int before;

    private static Keys newKeys() {
        try {
            return new Keys();
        } catch (AWTException failure) {
            throw new IllegalStateException(failure);
        }
    }

    @BeforeEach
    void openTheTrials() throws Exception {
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
        EventThread.run(() -> window.openMix(MIX));
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(MIX))))
                .isTrue();
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        settles();
        before = trials().size();
    }

    @AfterEach
    void closeWindow() throws Exception {
        started.gate().open();
        if (!window.isClosed()) {
            EventThread.run(() -> window.pages().all().forEach(page -> page.dropDraft()));
        }
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void settles() throws Exception {
        assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                .isTrue();
        EventThread.settle();
    }

    private List<Trial> trials() throws Exception {
        LabBook book = EventThread.call(() -> window.desk().book());
        return book.latest(Trial.class).stream().map(Version::value).toList();
    }

    private Trial kept() throws Exception {
        return trials().stream()
                .filter(trial -> trial.id().text().equals(saved))
                .findFirst()
                .orElseThrow();
    }

    private JTextComponent field(String name) {
        return Named.in(window.pages().trials().place(), JTextComponent.class, name);
    }

    private String text(String field) throws Exception {
        return EventThread.call(() -> field(field).getText());
    }

    private static String focused() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner == null ? "" : String.valueOf(owner.getName());
    }

    /** Begins a determination and fills the form of its first trial, the caret in the remarks. */
    private void fill() throws Exception {
        asker.reasons.add("yearly check");
        Keys.bringTo(() -> Named.in(window.pages().trials().place(), AbstractButton.class, "begin"));
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_N);
        assertThat(EventThread.comes(() -> asker.reasons.isEmpty()))
                .as("it was asked what the determination is for")
                .isTrue();
        settles();
        EventThread.run(() -> {
            field("fine").setText("4868");
            field("coarse").setText("7409");
            field("soak").setText("15");
            field("waterTemperature").setText("21");
            field("withdrawn").setText("369");
            field("gauge").setText("5.6");
            field("remarks").setText("slow disk");
        });
        saved = text("trialId");
        assertThat(EventThread.comes(() -> {
                    window.frame().toFront();
                    field("remarks").requestFocus();
                    return focused().equals("remarks");
                }))
                .isTrue();
    }

    /** Saves with the keys; the lab book is at it when this returns. */
    private void beginToSave() throws Exception {
        asker.reasons.add("as it was read");
        started.gate().shut("keep");
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> started.gate().isWaitedAt())).isTrue();
    }

    private boolean isSaid() throws Exception {
        return EventThread.call(() -> Named.in(window.content(), JLabel.class, "strip.doing")
                .getText()
                .equals("Saving …"));
    }

    /** Waits until the keys struck so far have reached the window. */
    private void keysArrive() throws Exception {
        Robot robot = new Robot();
        robot.waitForIdle();
        EventThread.settle();
    }

    private void letSave() throws Exception {
        started.gate().open();
        assertThat(EventThread.comes(() -> !field("trialId").getText().equals(saved)))
                .as("the form of the next trial comes")
                .isTrue();
        settles();
    }

    @Test
    void whatIsStruckWhileATrialIsSavedGoesIntoTheNextOne() throws Exception {
        fill();
        beginToSave();
        assertThat(isSaid()).isTrue();
        // The next trial begins with its first mass.
        for (int key : new int[] {KeyEvent.VK_4, KeyEvent.VK_2}) {
            keys.strike(key);
        }
        keysArrive();
        assertThat(text("remarks")).isEqualTo("slow disk");
        assertThat(text("trialId")).isEqualTo(saved);
        letSave();
        assertThat(EventThread.comes(() -> field("fine").getText().equals("42")))
                .as("what was typed ahead, but there is " + text("fine"))
                .isTrue();
        assertThat(isSaid()).isFalse();
        assertThat(text("remarks")).isEmpty();
        assertThat(kept().remarks()).isEqualTo("slow disk");
        assertThat(kept().readings().fine().orElseThrow().number()).hasToString("4868");
        assertThat(trials()).hasSize(before + 1);
    }

    @Test
    void savingTwiceSavesOnce() throws Exception {
        fill();
        beginToSave();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        keysArrive();
        letSave();
        assertThat(trials()).hasSize(before + 1);
        assertThat(asker.problemsShown).isEmpty();
    }

    @Test
    void aClickOnAnotherMixWhileATrialIsSavedComesAfterIt() throws Exception {
        fill();
        beginToSave();
        JList<?> mixes = Named.in(window.content(), JList.class, "mixes");
        EventThread.run(() -> {
            Rectangle cell = mixes.getCellBounds(1, 1);
            for (int id : new int[] {MouseEvent.MOUSE_PRESSED, MouseEvent.MOUSE_RELEASED}) {
                Toolkit.getDefaultToolkit()
                        .getSystemEventQueue()
                        .postEvent(new MouseEvent(
                                mixes,
                                id,
                                System.currentTimeMillis(),
                                id == MouseEvent.MOUSE_PRESSED ? MouseEvent.BUTTON1_DOWN_MASK : 0,
                                20,
                                (int) cell.getCenterY(),
                                1,
                                false,
                                MouseEvent.BUTTON1));
            }
        });
        assertThat(EventThread.call(() -> window.desk().selected())).contains(MIX);
        started.gate().open();
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(OTHER))))
                .isTrue();
        assertThat(asker.asked).as("no draft is left").doesNotContain("Trials");
        assertThat(kept().mixId()).isEqualTo(MIX);
        assertThat(trials()).hasSize(before + 1);
        assertThat(text("fine")).isEmpty();
    }

    @Test
    void aWindowThatIsClosedWhileATrialIsSavedClosesAfterIt() throws Exception {
        fill();
        beginToSave();
        EventThread.run(() -> Toolkit.getDefaultToolkit()
                .getSystemEventQueue()
                .postEvent(new WindowEvent(window.frame(), WindowEvent.WINDOW_CLOSING)));
        assertThat(window.isClosed()).isFalse();
        started.gate().open();
        assertThat(EventThread.comes(() -> !window.frame().isDisplayable())).isTrue();
        try (LabBook again = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            assertThat(again.latest(Trial.class, saved)).isPresent();
        }
    }

    @Test
    void aTrialThatIsRefusedStaysInTheForm() throws Exception {
        fill();
        beginToSave();
        try (LabBook other = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            Trial any = other.latest(Trial.class).get(0).value();
            Trial taken = new Trial(
                    new TrialId(saved),
                    any.mixId(),
                    any.determinationId(),
                    any.testedAt(),
                    any.operator(),
                    any.meterId(),
                    any.readings(),
                    "somebody else's",
                    any.keptBecause(),
                    any.struckBecause(),
                    Optional.empty(),
                    false);
            assertThat(other.keep(List.of(Draft.of(taken)), "N. Orrin", "meanwhile"))
                    .isEmpty();
        }
        started.gate().open();
        assertThat(EventThread.comes(() -> !asker.problemsShown.isEmpty())).isTrue();
        assertThat(asker.problemsShown).extracting(Problem::code).contains("book.already-there");
        settles();
        assertThat(text("remarks")).isEqualTo("slow disk");
        assertThat(text("fine")).isEqualTo("4868");
        assertThat(kept().remarks()).isEqualTo("somebody else's");
        assertThat(isSaid()).isFalse();
    }

    @Test
    void keysStruckWhileAMixIsReadGoToTheMixThatComes() throws Exception {
        JList<?> mixes = Named.in(window.content(), JList.class, "mixes");
        assertThat(EventThread.comes(() -> {
                    window.frame().toFront();
                    mixes.requestFocus();
                    return mixes.isFocusOwner();
                }))
                .isTrue();
        started.gate().shut("changeNumber");
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() -> window.desk().tools().tasks().isAwaited()))
                .isTrue();
        keys.strike(KeyEvent.VK_DOWN);
        keysArrive();
        assertThat(EventThread.call(() -> window.desk().selected())).contains(MIX);
        started.gate().open();
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(new MixId("HG-103")))))
                .as("the second key goes on from the mix of the first")
                .isTrue();
    }
}
