package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JButton;
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
import porebench.exchange.DemoCards;
import porebench.exchange.DemoTexts;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** The text of a card is pasted and typed with real keys, checked and closed, from both pages that lead there. */
@NeedsDisplay
class TextCheckWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;
    private String text;
    private String old;

    @BeforeEach
    void openTheBook() throws Exception {
        keys = new Keys();
        Path file = folder.resolve("cards.porebench");
        try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
            new DemoCards().fill(book);
            text = DemoTexts.of(book, "HG-101", 2, DemoDesk.DAY);
            old = DemoTexts.of(book, "HG-101", 1, DemoDesk.DAY);
        }
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(file);
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> dialog().ifPresent(Window::dispose));
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && "ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private static <T extends Component> T asked(Class<T> type, String name) {
        return Named.in(dialog().orElseThrow(), type, name);
    }

    private static String words(String name) throws Exception {
        return EventThread.call(() -> asked(JTextComponent.class, name).getText());
    }

    private void open(String button) throws Exception {
        Keys.bringTo(() -> named(button));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
        // The keyboard is in the text at once.
        assertThat(EventThread.comes(
                        () -> asked(JTextComponent.class, "check.text").isFocusOwner()))
                .isTrue();
    }

    private void openFromCardsOut() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("cards").orElseThrow()));
        open("cards.check");
    }

    private void paste(String pasted) throws Exception {
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(pasted), null);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        assertThat(EventThread.comes(() ->
                        asked(JTextComponent.class, "check.text").getText().equals(pasted)))
                .isTrue();
    }

    private void says(String name, String said) throws Exception {
        assertThat(EventThread.comes(
                        () -> asked(JTextComponent.class, name).getText().startsWith(said)))
                .as(words(name))
                .isTrue();
    }

    private static String everythingSaid() throws Exception {
        return EventThread.call(() -> {
            StringBuilder said = new StringBuilder();
            collect(dialog().orElseThrow(), said);
            return said.toString();
        });
    }

    private static void collect(Component part, StringBuilder said) {
        if (part instanceof JTextComponent words && words.isShowing()) {
            said.append(words.getText()).append('\n');
        } else if (part instanceof JLabel label && label.isShowing()) {
            said.append(label.getText()).append('\n');
        }
        if (part instanceof Container parts) {
            for (Component each : parts.getComponents()) {
                collect(each, said);
            }
        }
    }

    @Test
    void aPastedTextIsCheckedByCtrlEnterAndAnAlteredOneIsToldApart() throws Exception {
        openFromCardsOut();
        paste(text);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        says("check.verdict", "Unaltered:");
        assertThat(words("check.names")).contains("HG-101/r2", "today: in force", "Copies that left: 3");
        // One figure changed by hand: what was said is gone at the first key, and the line is named after the next
        // check.
        String altered = text.replace("SUBTRACT 0.", "SUBTRACT 1.");
        paste(altered);
        assertThat(EventThread.comes(
                        () -> !asked(Component.class, "check.verdict").isVisible()))
                .isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        says("check.verdict", "Altered:");
        String line = text.lines()
                .filter(one -> one.startsWith("SUBTRACT"))
                .findFirst()
                .orElseThrow();
        assertThat(everythingSaid())
                .contains("This line of the card is not in the text: " + line)
                .contains("This line of the text is not on the card: " + line.replace("SUBTRACT 0.", "SUBTRACT 1."));
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> dialog().isEmpty())).isTrue();
    }

    @Test
    void enterMakesALineInTheTextAndTabLeadsToTheButtonThatChecks() throws Exception {
        openFromCardsOut();
        keys.strike(KeyEvent.VK_X);
        keys.strike(KeyEvent.VK_ENTER);
        keys.strike(KeyEvent.VK_Y);
        assertThat(EventThread.comes(() ->
                        asked(JTextComponent.class, "check.text").getText().equals("x\ny")))
                .isTrue();
        assertThat(EventThread.call(
                        () -> asked(Component.class, "check.verdict").isVisible()))
                .isFalse();
        keys.strikeUntil(() -> asked(JButton.class, "check").isFocusOwner(), "check", KeyEvent.VK_TAB);
        keys.strike(KeyEvent.VK_ENTER);
        says("check.verdict", "No check code:");
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(() -> asked(JButton.class, "close").isFocusOwner()))
                .isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> dialog().isEmpty())).isTrue();
        assertThat(EventThread.comes(() -> named("cards.check").isFocusOwner()))
                .as("the keyboard is back where it was, not at "
                        + KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .isTrue();
    }

    @Test
    void thePageOfTheFactorLeadsThereTooAndSaysOfAnOldRevisionThatItWasReplaced() throws Exception {
        EventThread.run(() -> {
            window.desk().select(new MixId("HG-101"));
            window.turnTo(window.pages().steps().get(4));
        });
        assertThat(EventThread.comes(() -> window.desk().evidence().isPresent()))
                .isTrue();
        open("factor.checkText");
        paste(text);
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_C);
        says("check.verdict", "Unaltered:");
        Keys.bringTo(() -> asked(Component.class, "check.text"));
        paste(old);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        says("check.names", "It names HG-101/r1");
        assertThat(words("check.names")).contains("replaced");
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> dialog().isEmpty())).isTrue();
    }
}
