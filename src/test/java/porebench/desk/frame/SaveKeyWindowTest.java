package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
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
import porebench.record.Equipment;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Source;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** Control and Enter saves what was typed, on every page on which is typed. */
@NeedsDisplay
class SaveKeyWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void open() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.desk().setPerson("R. Vale"));
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
        settles();
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void settles() throws Exception {
        assertThat(EventThread.comes(() -> !window.desk().tools().tasks().isAwaited()))
                .isTrue();
        EventThread.settle();
    }

    /** Types a letter at the end of a field of a page and saves it by its key; returns the field's words before. */
    private String saves(String page, String name) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
        settles();
        String before = EventThread.call(() -> field(name).getText());
        Keys.bringTo(() -> field(name));
        EventThread.run(() -> field(name).setCaretPosition(before.length()));
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(() -> field(name).getText().equals(before + "x")))
                .as(page + " says " + EventThread.call(() -> field(name).getText()))
                .isTrue();
        asker.reasons.add("the key was tried on " + page);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> asker.reasons.isEmpty()))
                .as(() -> page + " asks why; " + said(name))
                .isTrue();
        settles();
        return before;
    }

    private String said(String name) {
        try {
            return EventThread.call(() -> "the field says " + field(name).getText() + ", the keyboard is with "
                    + KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() + ", asked was "
                    + asker.asked
                    + ", shown was " + asker.problemsShown);
        } catch (Exception broken) {
            return broken.toString();
        }
    }

    private JTextComponent field(String name) {
        return Named.in(window.current().component(), JTextComponent.class, name);
    }

    private <T extends Kept> List<Version<T>> kept(Class<T> kind, String page) {
        LabBook book = window.desk().book();
        return book.latest(kind).stream()
                .filter(version -> version.stamp().why().equals("the key was tried on " + page))
                .toList();
    }

    @Test
    void controlAndEnterSavesOnEveryPageOnWhichIsTyped() throws Exception {
        String title = saves("mix", "title");
        assertThat(kept(MixDesign.class, "mix"))
                .singleElement()
                .satisfies(mix -> assertThat(mix.value().title()).isEqualTo(title + "x"));
        String note = saves("sources", "remarks");
        assertThat(kept(Source.class, "sources"))
                .singleElement()
                .satisfies(source -> assertThat(source.value().remarks()).isEqualTo(note + "x"));
        String serviced = saves("meters", "remarks");
        assertThat(kept(Meter.class, "meters"))
                .singleElement()
                .satisfies(meter -> assertThat(meter.value().remarks()).isEqualTo(serviced + "x"));
        String remarks = saves("equipment", "remarks");
        assertThat(kept(Equipment.class, "equipment"))
                .singleElement()
                .satisfies(piece -> assertThat(piece.value().remarks()).isEqualTo(remarks + "x"));
    }

    /** Nothing was typed: nothing is kept, nothing asked. */
    @Test
    void whereNothingWasTypedItKeepsNothing() throws Exception {
        for (String page : List.of("mix", "sources", "meters", "equipment")) {
            EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
            settles();
            Keys.bringTo(() -> field(page.equals("mix") ? "title" : "remarks"));
            keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
            settles();
        }
        assertThat(asker.asked).isEmpty();
    }
}
