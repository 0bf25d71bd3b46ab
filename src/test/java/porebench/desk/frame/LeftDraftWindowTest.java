package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
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
import porebench.desk.Page;
import porebench.desk.ScriptedAsker;
import porebench.record.id.MixId;

/** Drafts live: what is half typed is left without a question, and found again where it was left. */
@NeedsDisplay
class LeftDraftWindowTest {
    /** A mix whose trials are still wanted, and the one above it in the list. */
    private static final MixId WANTED = new MixId("HG-108");

    private static final MixId BESIDE = new MixId("HG-107");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private Keys keys;
    private StartedWindow started;
    private WorkbenchFrame window;

    @BeforeEach
    void openTheBook() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        EventThread.run(() -> window.frame().setSize(new Dimension(1024, 700)));
        started.startWith(null);
        EventThread.run(() -> window.openMix(WANTED));
        onView(WANTED);
        Keys.bringTo(() -> Named.in(window.content(), JList.class, "mixes"));
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private JTextComponent field(String name) {
        return Named.in(window.current().component(), JTextComponent.class, name);
    }

    private AbstractButton button(String name) {
        return Named.in(window.current().component(), AbstractButton.class, name);
    }

    /** Types digits in the place of what a field says. */
    private void type(String field, String digits) throws Exception {
        Keys.bringTo(() -> field(field));
        EventThread.run(() -> field(field).selectAll());
        digits.chars().forEach(keys::strike);
        assertThat(EventThread.comes(() -> field(field).getText().equals(digits)))
                .as("what is typed into " + field + ", which says "
                        + field(field).getText())
                .isTrue();
    }

    /** What the list says of a mix. */
    private boolean isBegunInTheList(MixId mix) {
        JList<?> mixes = Named.in(window.content(), JList.class, "mixes");
        return rowsOf(mixes).anyMatch(words -> words.startsWith(mix.text()) && words.contains("typing begun"));
    }

    private void isSaidToBeBegun(boolean yes) throws Exception {
        assertThat(EventThread.comes(() -> isBegunInTheList(WANTED) == yes))
                .as("the list says that typing was begun: %s", yes)
                .isTrue();
    }

    private static <E> Stream<String> rowsOf(JList<E> list) {
        return IntStream.range(0, list.getModel().getSize())
                .mapToObj(row -> list.getCellRenderer()
                        .getListCellRendererComponent(list, list.getModel().getElementAt(row), row, false, false)
                        .getAccessibleContext()
                        .getAccessibleName());
    }

    private void onView(MixId mix) throws Exception {
        assertThat(EventThread.comes(() -> window.desk().selected().equals(Optional.of(mix))
                        && !window.desk().tools().tasks().isAwaited()))
                .isTrue();
    }

    /** Typed, left for the masses and for another mix, come back to, cleared and undone: with the keys alone. */
    @Test
    void aHalfTypedTrialIsThereAfterTheMassesAndAnotherMixAndUndoReachesClear() throws Exception {
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_1);
        assertThat(EventThread.comes(() -> window.current().name().equals("mix")))
                .isTrue();
        type("soakMinutes", "20");
        isSaidToBeBegun(true);
        assertThat(EventThread.call(() -> isBegunInTheList(BESIDE))).isFalse();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        isSaidToBeBegun(false);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_3);
        assertThat(EventThread.comes(() -> window.current().name().equals("trials")))
                .isTrue();
        type("fine", "4868");
        isSaidToBeBegun(true);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
        assertThat(EventThread.comes(() -> window.current().name().equals("sample")))
                .isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_3);
        assertThat(EventThread.comes(() -> window.current().name().equals("trials")))
                .isTrue();
        assertThat(EventThread.call(() -> field("fine").getText())).isEqualTo("4868");
        Keys.bringTo(() -> Named.in(window.content(), JList.class, "mixes"));
        keys.strike(KeyEvent.VK_UP);
        onView(BESIDE);
        assertThat(EventThread.call(() -> field("fine").getText())).isEmpty();
        isSaidToBeBegun(true);
        keys.strike(KeyEvent.VK_DOWN);
        onView(WANTED);
        assertThat(EventThread.comes(() -> field("fine").getText().equals("4868")))
                .isTrue();
        Keys.bringTo(() -> button("clear"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> field("fine").getText().isEmpty())).isTrue();
        assertThat(EventThread.comes(() -> field("fine").isFocusOwner()))
                .as("the keyboard stands where the trial begins anew")
                .isTrue();
        isSaidToBeBegun(false);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(EventThread.comes(() -> field("fine").getText().equals("4868")))
                .isTrue();
        isSaidToBeBegun(true);
        assertThat(asker.asked).isEmpty();
    }
}
