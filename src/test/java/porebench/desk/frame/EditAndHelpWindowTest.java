package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dialog;
import java.awt.KeyboardFocusManager;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRootPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.MenuSelectionManager;
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
import porebench.desk.form.PushedInput;
import porebench.record.id.MixId;

/** The Edit and Help menus, by the keyboard alone. */
@NeedsDisplay
class EditAndHelpWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private WorkbenchFrame window;
    private Keys keys;
    private PushedInput input;

    @BeforeEach
    void openWindow() throws Exception {
        keys = new Keys();
        input = EventThread.call(PushedInput::push);
        EventThread.run(Theme.LIGHT::apply);
        window = EventThread.call(() -> DemoDesk.filled(folder).open());
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        focus("ledge");
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> MenuSelectionManager.defaultManager().clearSelectedPath());
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        EventThread.run(window::close);
        EventThread.run(input::leave);
    }

    private void focus(String name) throws Exception {
        EventThread.run(() -> {
            window.frame().toFront();
            field(name).requestFocus();
        });
        assertThat(EventThread.comes(() -> field(name).isFocusOwner())).as(name).isTrue();
    }

    private void openEdit() throws Exception {
        keys.strike(KeyEvent.VK_F10);
        assertThat(EventThread.comes(() -> menu("menu.book").isPopupMenuVisible()))
                .isTrue();
        keys.strike(KeyEvent.VK_RIGHT);
        // Open is not yet at the keys: a moment later the menu has the keyboard, which it takes for its whole window.
        assertThat(EventThread.comes(() -> edit().isPopupMenuVisible()
                        && KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() instanceof JRootPane))
                .isTrue();
    }

    @Test
    void undoIsGreyWhileThereIsNothingToUndoAndItsKeyWorksOnceThereIs() throws Exception {
        openEdit();
        assertThat(item("menu.undo").isEnabled()).isFalse();
        assertThat(item("menu.redo").isEnabled()).isFalse();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !edit().isPopupMenuVisible())).isTrue();
        String before = field("ledge").getText();
        EventThread.run(() -> field("ledge").setText("bench 9"));
        focus("ledge");
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(EventThread.comes(() -> field("ledge").getText().equals(before)))
                .isTrue();
        openEdit();
        assertThat(item("menu.undo").isEnabled()).isFalse();
        assertThat(item("menu.redo").isEnabled()).isTrue();
    }

    @Test
    void undoBringsBackWhatWasTypedOfACorrectionThatWasGivenUp() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        EventThread.run(() -> window.turnTo(window.pages().named("trials").orElseThrow()));
        EventThread.run(() -> part(JTable.class, "trials").changeSelection(0, 0, false, false));
        EventThread.run(() -> part(AbstractButton.class, "correct").doClick());
        focus("remarks");
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(() -> field("remarks").getText().equals("x")))
                .isTrue();
        String corrected = part(JLabel.class, "entryTitle").getText();
        Keys.bringTo(() -> part(AbstractButton.class, "clear"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> !part(JLabel.class, "entryTitle").getText().equals(corrected)))
                .isTrue();
        assertThat(field("remarks").getText()).isEmpty();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(EventThread.comes(() -> field("remarks").getText().equals("x")))
                .isTrue();
        assertThat(part(JLabel.class, "entryTitle").getText()).isEqualTo(corrected);
    }

    @Test
    void undoBringsBackANewEntryOfARegisterThatWasDropped() throws Exception {
        EventThread.run(() -> part(AbstractButton.class, "source.new").doClick());
        assertThat(EventThread.comes(() -> field("id").isFocusOwner()))
                .as("the keyboard stands where the entry begins")
                .isTrue();
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(() -> field("id").getText().equals("x"))).isTrue();
        Keys.bringTo(() -> part(AbstractButton.class, "source.drop"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> field("id").getText().startsWith("S-")))
                .isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        assertThat(EventThread.comes(() -> field("id").getText().equals("x"))).isTrue();
    }

    private String howItStands() {
        return "the text is " + field("ledge").getText() + ", selected "
                + field("ledge").getSelectedText()
                + ", the menu is open " + edit().isPopupMenuVisible() + ", can cut "
                + item("menu.cut").isEnabled()
                + ", path " + List.of(MenuSelectionManager.defaultManager().getSelectedPath()) + ", the keyboard is at "
                + KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private <T extends Component> T part(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    @Test
    void whatIsSelectedIsCutAndPastedByTheMenu() throws Exception {
        EventThread.run(() -> {
            field("ledge").setText("bench 9");
            field("ledge").select(0, 0);
        });
        openEdit();
        assertThat(item("menu.cut").isEnabled()).as("nothing is selected").isFalse();
        assertThat(item("menu.copy-text").isEnabled()).isFalse();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> !edit().isPopupMenuVisible())).isTrue();
        focus("ledge");
        EventThread.run(() -> field("ledge").selectAll());
        openEdit();
        keys.strike(KeyEvent.VK_T);
        assertThat(EventThread.comes(() -> field("ledge").getText().isEmpty()))
                .as(this::howItStands)
                .isTrue();
        focus("place");
        EventThread.run(() -> field("place").selectAll());
        openEdit();
        keys.strike(KeyEvent.VK_P);
        assertThat(EventThread.comes(() -> field("place").getText().equals("bench 9")))
                .isTrue();
    }

    @Test
    void helpHasTheStepsTheKeysAndTheWords() throws Exception {
        MenuKeys.open(window, window.frame().getJMenuBar().getComponentIndex(menu("menu.help")));
        assertReads("The steps of the work", "Correction sample:", KeyEvent.VK_S);
        assertReads("The keys", "Ctrl+Z", KeyEvent.VK_CONTROL, KeyEvent.VK_F1);
        assertThat(Stream.of(menu("menu.help").getMenuComponents()).map(Component::getName))
                .contains("menu.manual.here", "menu.manual", "menu.steps", "menu.keys", "menu.words", "menu.cautions");
    }

    /** A letter that two entries share, or that is taken for one typed into the field behind, does nothing. */
    @Test
    void everyUnderlinedLetterOfEveryMenuDoesWhatItNames() throws Exception {
        int places = EventThread.call(() -> {
            menu("menu.practice").setVisible(true);
            return window.frame().getJMenuBar().getMenuCount();
        });
        for (int place = 0; place < places; place++) {
            assertLettersOf(place, List.of());
        }
    }

    @Test
    void noTwoEntriesOfAMenuShareALetterInSpanishEither() throws Exception {
        closeWindow();
        input = EventThread.call(PushedInput::push);
        Path other = Files.createDirectory(folder.resolve("otro"));
        window = EventThread.call(
                () -> DemoDesk.filled(other, Locale.forLanguageTag("es")).open());
        for (Component menu : window.frame().getJMenuBar().getComponents()) {
            EventThread.run(() -> assertDistinct((JMenu) menu));
        }
    }

    private static void assertDistinct(JMenu menu) {
        List<JMenuItem> entries = Stream.of(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .toList();
        assertThat(entries.stream().map(JMenuItem::getMnemonic))
                .as(menu.getText())
                .doesNotHaveDuplicates()
                .doesNotContain(0);
        entries.stream().filter(JMenu.class::isInstance).map(JMenu.class::cast).forEach(each -> assertDistinct(each));
    }

    /** Strikes each letter of a menu, or of one in it that is reached by letters; entries tell only that they were chosen. */
    private void assertLettersOf(int place, List<JMenuItem> way) throws Exception {
        JMenu top = EventThread.call(() -> window.frame().getJMenuBar().getMenu(place));
        JMenu menu = way.isEmpty() ? top : (JMenu) way.get(way.size() - 1);
        AtomicReference<JMenuItem> chosen = new AtomicReference<>();
        List<JMenuItem> entries = EventThread.call(() -> tellingOnly(menu, chosen));
        assertThat(entries).as(menu.getText()).isNotEmpty();
        for (JMenuItem entry : entries) {
            MenuKeys.open(window, place);
            for (JMenuItem each : way) {
                keys.strike(each.getMnemonic());
                assertThat(EventThread.comes(((JMenu) each)::isPopupMenuVisible))
                        .as("the letter of " + each.getText() + " opens it")
                        .isTrue();
            }
            assertThat(entry.getMnemonic())
                    .as(entry.getName() + " has a letter")
                    .isNotZero();
            keys.strike(entry.getMnemonic());
            boolean isDone = EventThread.comesWithin(
                    5, () -> entry instanceof JMenu inner ? inner.isPopupMenuVisible() : chosen.get() == entry);
            assertThat(isDone)
                    .as("the letter of " + entry.getText() + " in " + menu.getText())
                    .isTrue();
            EventThread.run(() -> MenuSelectionManager.defaultManager().clearSelectedPath());
            focus("ledge");
        }
        for (JMenuItem entry : entries) {
            if (entry instanceof JMenu) {
                assertLettersOf(
                        place, Stream.concat(way.stream(), Stream.of(entry)).toList());
            }
        }
    }

    private static List<JMenuItem> tellingOnly(JMenu menu, AtomicReference<JMenuItem> chosen) {
        Stream.of(menu.getMenuListeners()).forEach(menu::removeMenuListener);
        List<JMenuItem> entries = Stream.of(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .toList();
        for (JMenuItem entry : entries) {
            entry.setEnabled(true);
            if (entry instanceof JMenu inner && inner.getItemCount() == 0) {
                inner.add(new JMenuItem("a book of last week", KeyEvent.VK_A));
            }
            if (!(entry instanceof JMenu)) {
                // What it does takes its words and its letter with it.
                String words = entry.getText();
                int letter = entry.getMnemonic();
                Stream.of(entry.getActionListeners()).forEach(entry::removeActionListener);
                entry.setText(words);
                entry.setMnemonic(letter);
                entry.addActionListener(event -> chosen.set(entry));
            }
        }
        return entries;
    }

    private void assertReads(String title, String words, int... stroke) throws Exception {
        keys.strike(stroke);
        assertThat(EventThread.comes(() -> dialog().isPresent())).as(title).isTrue();
        Dialog dialog = EventThread.call(() -> dialog().orElseThrow());
        assertThat(dialog.getTitle()).isEqualTo(title);
        assertThat(texts(dialog).anyMatch(text -> text.contains(words))).isTrue();
        assertThat(EventThread.comes(() ->
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusedWindow() == dialog))
                .isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> dialog().isEmpty())).isTrue();
        focus("ledge");
    }

    private static Stream<String> texts(Container around) {
        return Stream.of(around.getComponents())
                .flatMap(each -> each instanceof JTextComponent text
                        ? Stream.of(text.getText())
                        : each instanceof Container inner ? texts(inner) : Stream.empty());
    }

    private static Optional<Dialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(Window::isShowing)
                .filter(Dialog.class::isInstance)
                .map(Dialog.class::cast)
                .findFirst();
    }

    private JMenu edit() {
        return menu("menu.edit");
    }

    private JMenu menu(String name) {
        return (JMenu) Stream.of(window.frame().getJMenuBar().getComponents())
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow();
    }

    private JMenuItem item(String name) {
        return (JMenuItem) Stream.of(edit().getMenuComponents())
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow();
    }

    private JTextField field(String name) {
        return part(JTextField.class, name);
    }
}
