package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;

/** A reason is asked for by a button named for its act, which says under the field when the reason is wanting. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class ReasonWindowTest {
    private static JDialog dialog() {
        return Arrays.stream(Window.getWindows())
                .filter(JDialog.class::isInstance)
                .map(JDialog.class::cast)
                .filter(each -> each.isShowing() && "ask".equals(each.getName()))
                .findFirst()
                .orElse(null);
    }

    private static boolean isFocused(String name) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && name.equals(owner.getName());
    }

    @Test
    void aDialogForAFileNamesItsTypeAndEscapeChoosesNone() throws Exception {
        FutureTask<Optional<Path>> asking =
                new FutureTask<>(() -> new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty)
                        .fileToOpen(new JPanel(), "Open a lab book", ".porebench"));
        EventQueue.invokeLater(asking);
        assertThat(EventThread.comes(() -> chooser().isPresent())).isTrue();
        JFileChooser chooser = EventThread.call(() -> chooser().orElseThrow());
        assertThat(EventThread.call(() -> chooser.getFileFilter().getDescription()))
                .isEqualTo("Lab book (*.porebench)");
        assertThat(EventThread.comes(() -> SwingUtilities.getWindowAncestor(chooser)
                                .isFocused()
                        && KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() != null))
                .isTrue();
        new Keys().strike(KeyEvent.VK_ESCAPE);
        assertThat(asking.get()).isEmpty();
    }

    private static Optional<JFileChooser> chooser() {
        return Stream.of(Window.getWindows())
                .filter(Component::isShowing)
                .filter(JDialog.class::isInstance)
                .flatMap(window -> Stream.of(((JDialog) window).getContentPane().getComponents()))
                .filter(JFileChooser.class::isInstance)
                .map(JFileChooser.class::cast)
                .findFirst();
    }

    /** On a page Ctrl and Enter saves: whoever strikes it here, too, must not lose the reason. */
    @Test
    void controlAndEnterDoesTheActAndNeverDropsTheReason() throws Exception {
        Keys keys = new Keys();
        FutureTask<Optional<String>> asking =
                new FutureTask<>(() -> new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty)
                        .reason(new JPanel(), "Strike trial T-1", "Why does it not count?", "Strike"));
        EventQueue.invokeLater(asking);
        assertThat(EventThread.comes(() -> dialog() != null)).isTrue();
        JDialog dialog = EventThread.call(ReasonWindowTest::dialog);
        JTextArea answer = Named.in(dialog, JTextArea.class, "answer");
        Keys.bringTo(() -> answer);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> Named.in(dialog, JLabel.class, "answer.message")
                        .getText()
                        .startsWith("Write the reason")))
                .as("Enter before there is a reason asks for one")
                .isTrue();
        assertThat(isFocused("answer")).as("and stays where it is typed").isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> Named.in(dialog, JLabel.class, "answer.message")
                        .getText()
                        .startsWith("Write the reason")))
                .isTrue();
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(() -> answer.getText().equals("x"))).isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_ENTER);
        assertThat(asking.get()).contains("x");
    }

    @Test
    void aMissingReasonIsSaidUnderItsFieldAndNothingMoves() throws Exception {
        Keys keys = new Keys();
        FutureTask<Optional<String>> asking =
                new FutureTask<>(() -> new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty)
                        .reason(new JPanel(), "Strike trial T-1", "Why does it not count?", "Strike"));
        EventQueue.invokeLater(asking);
        assertThat(EventThread.comes(() -> dialog() != null)).isTrue();
        JDialog dialog = EventThread.call(ReasonWindowTest::dialog);
        assertThat(EventThread.comes(() -> {
                    dialog.toFront();
                    Named.in(dialog, JTextArea.class, "answer").requestFocus();
                    return isFocused("answer");
                }))
                .isTrue();
        JButton act = Named.in(dialog, JButton.class, "accept");
        assertThat(act.getText()).isEqualTo("Strike");
        assertThat(act.isEnabled()).isTrue();
        assertThat(EventThread.call(
                        () -> dialog.getRootPane().getDefaultButton().getName()))
                .isEqualTo("cancel");
        Point before = EventThread.call(act::getLocationOnScreen);
        keys.strikeUntil(() -> isFocused("accept"), "the act", KeyEvent.VK_TAB);
        keys.strikeUntil(
                () -> Named.in(dialog, JLabel.class, "answer.message").getText().startsWith("Write the reason"),
                "the message",
                KeyEvent.VK_SPACE);
        assertThat(EventThread.call(act::getLocationOnScreen)).isEqualTo(before);
        assertThat(EventThread.comes(() -> isFocused("answer"))).isTrue();
        keys.strike(KeyEvent.VK_X);
        keys.strikeUntil(() -> isFocused("accept"), "the act", KeyEvent.VK_ENTER);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(asking.get()).contains("x");
    }

    /** What was given for an act is offered the next time it is asked about, and not taken by itself. */
    @Test
    void aReasonIsOfferedAgainForTheSameAct() throws Exception {
        SwingAsker asker = new SwingAsker(Locale.ENGLISH, Settings.inMemory(), Optional::empty);
        assertThat(ask(asker, "Strike trial T-1", "Why does it not count?", "leak at the gasket", false))
                .contains("leak at the gasket");
        assertThat(ask(asker, "Strike trial T-2", "Why does it not count?", "foam", true))
                .contains("foam");
        assertThat(ask(asker, "Withdraw", "Why is it withdrawn?", "new quarry", false))
                .contains("new quarry");
    }

    private static Optional<String> ask(
            SwingAsker asker, String title, String question, String answer, boolean isOffered) throws Exception {
        FutureTask<Optional<String>> asking =
                new FutureTask<>(() -> asker.reason(new JPanel(), title, question, "Do it"));
        EventQueue.invokeLater(asking);
        assertThat(EventThread.comes(() -> dialog() != null)).isTrue();
        JDialog dialog = EventThread.call(ReasonWindowTest::dialog);
        JTextArea field = Named.in(dialog, JTextArea.class, "answer");
        assertThat(field.getText()).isEmpty();
        boolean hasButton = EventThread.call(() -> hasReasons(dialog));
        assertThat(hasButton).as(title).isEqualTo(isOffered);
        EventThread.run(() -> field.setText(answer));
        EventThread.run(() -> Named.in(dialog, JButton.class, "accept").doClick());
        return asking.get();
    }

    private static boolean hasReasons(Container within) {
        return Stream.of(within.getComponents())
                .anyMatch(each ->
                        "reasons".equals(each.getName()) || each instanceof Container inner && hasReasons(inner));
    }
}
