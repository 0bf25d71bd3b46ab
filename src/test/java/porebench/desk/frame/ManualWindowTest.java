package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JEditorPane;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.text.BadLocationException;
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
import porebench.desk.form.PushedInput;
import porebench.desk.manual.Manual;
import porebench.desk.manual.ManualLink;
import porebench.desk.manual.ManualModel;
import porebench.desk.manual.ManualPage;
import porebench.method.Problem;

/** The manual in the window: F1, contents, search, links, back and forward. */
@NeedsDisplay
class ManualWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private WorkbenchFrame window;
    private PushedInput input;
    private Keys keys;

    @BeforeEach
    void openWindow() throws Exception {
        keys = new Keys();
        input = EventThread.call(PushedInput::push);
        EventThread.run(Theme.LIGHT::apply);
        window = EventThread.call(() -> DemoDesk.filled(folder).open());
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(window::close);
        EventThread.run(input::leave);
    }

    private Optional<JFrame> manual() {
        return Stream.of(java.awt.Window.getWindows())
                .filter(java.awt.Window::isShowing)
                .filter(each -> "manual".equals(each.getName()))
                .map(JFrame.class::cast)
                .findFirst();
    }

    private JFrame opened() throws Exception {
        assertThat(EventThread.comes(() -> manual().isPresent())).isTrue();
        return EventThread.call(() -> manual().orElseThrow());
    }

    private static String words(JFrame manual) {
        JEditorPane pane = Named.in(manual, JEditorPane.class, "manual.page");
        try {
            return pane.getDocument().getText(0, pane.getDocument().getLength());
        } catch (BadLocationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private void assertReads(JFrame manual, String words) throws Exception {
        assertThat(EventThread.comes(() -> words(manual).contains(words)))
                .as(() -> words(manual))
                .isTrue();
    }

    @Test
    void f1OpensThePageAboutWhatIsOnView() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named("mix").orElseThrow()));
        EventThread.run(() -> window.frame().toFront());
        assertThat(EventThread.comes(() -> window.frame().isFocused())).isTrue();
        keys.strike(KeyEvent.VK_F1);
        JFrame manual = opened();
        assertReads(manual, "Weigh out, by pencil");
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> manual().isEmpty())).isTrue();
    }

    @Test
    void everyPageOfTheWindowHasItsPlaceInTheManual() throws Exception {
        Manual manual = Manual.read(Locale.ENGLISH);
        assertThat(window.pages().all()).hasSizeGreaterThan(15).allSatisfy(page -> {
            ManualModel.Spot spot = ManualDoor.about(page.name());
            assertThat(spot.page()).as(page.name()).isNotEqualTo(ManualPage.CONTENTS);
            assertThat(manual.named(spot.page())).as(spot.toString()).isPresent();
            assertThat(porebench.desk.manual.ManualAnchors.of(
                            manual.named(spot.page()).orElseThrow()))
                    .as(spot.toString())
                    .contains(spot.anchor());
        });
    }

    @Test
    void wordsAreFoundLinksFollowedAndTheWayLeadsBack() throws Exception {
        EventThread.run(() -> new ManualDoor(window).open());
        JFrame manual = opened();
        assertReads(manual, "Manual of Porebench");
        JTextField words = Named.in(manual, JTextField.class, "manual.words");
        EventThread.run(() -> words.setText("inundate"));
        JList<?> list = Named.in(manual, JList.class, "manual.list");
        int found = EventThread.call(() -> list.getModel().getSize());
        assertThat(found).isPositive();
        EventThread.run(() -> list.setSelectedIndex(0));
        assertThat(EventThread.comes(
                        () -> words(manual).toLowerCase(Locale.ROOT).contains("inundate")))
                .isTrue();
        JEditorPane pane = Named.in(manual, JEditorPane.class, "manual.page");
        assertThat(EventThread.comes(() -> pane.getHighlighter().getHighlights().length > 0))
                .as("what was looked for is marked")
                .isTrue();
        EventThread.run(() -> words.setText(""));
        assertThat(EventThread.call(() -> list.getModel().getSize())).isGreaterThan(found);
        EventThread.run(
                () -> Named.in(manual, AbstractButton.class, "manual.back").doClick());
        assertReads(manual, "Manual of Porebench");
        EventThread.run(
                () -> Named.in(manual, AbstractButton.class, "manual.forward").doClick());
        assertThat(EventThread.comes(() -> !words(manual).contains("Manual of Porebench")))
                .isTrue();
        EventThread.run(
                () -> Named.in(manual, AbstractButton.class, "manual.contents").doClick());
        assertReads(manual, "Manual of Porebench");
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        EventThread.run(window::close);
        assertThat(EventThread.comes(() -> manual().isEmpty()))
                .as("it closes with the workbench")
                .isTrue();
    }

    @Test
    void aProblemInADialogLeadsToWhatIsSaidOfIt() throws Exception {
        EventThread.run(() -> new ManualDoor(window));
        JDialog dialog = EventThread.call(() -> {
            JDialog over = new JDialog(window.frame(), "problems", true);
            over.add(new JLabel("a problem"));
            return over;
        });
        boolean opens = EventThread.call(() ->
                ManualLink.open(dialog.getContentPane(), Problem.error("mass", "mix.mass-negative", "Sand", "-1")));
        assertThat(opens).isTrue();
        JFrame manual = opened();
        assertReads(manual, "mix.mass-negative");
        JEditorPane pane = Named.in(manual, JEditorPane.class, "manual.page");
        assertThat(EventThread.comes(() -> pane.getVisibleRect().y > 0))
                .as("it stands at that code")
                .isTrue();
        EventThread.run(dialog::dispose);
        assertThat(EventThread.call(() -> ManualLink.open(new JLabel(), Problem.error("mass", "mix.mass-negative"))))
                .as("what stands in no window")
                .isFalse();
    }

    @Test
    void everyPageIsShownInBothThemes() throws Exception {
        EventThread.run(() -> new ManualDoor(window).open());
        JFrame manual = opened();
        JList<?> list = Named.in(manual, JList.class, "manual.list");
        int pages = EventThread.call(() -> list.getModel().getSize());
        for (int page = 0; page < pages; page++) {
            int index = page;
            EventThread.run(() -> list.setSelectedIndex(index));
            String title = Manual.read(Locale.ENGLISH).pages().get(index).title();
            assertReads(manual, title);
        }
        EventThread.run(() -> window.show(Theme.DARK));
        assertThat(EventThread.comes(() -> words(manual).length() > 10)).isTrue();
        EventThread.run(() -> window.show(Theme.LIGHT));
    }
}
