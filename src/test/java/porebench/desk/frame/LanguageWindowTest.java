package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Window;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.MenuElement;
import javax.swing.MenuSelectionManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.exchange.PracticeLaboratory;
import porebench.port.DraftStore;
import porebench.port.SerialLines;
import porebench.print.PdfPress;
import porebench.record.book.LabBook;
import porebench.store.SqliteShelf;

/** The language is changed in the window as it is started, with a real lab book. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class LanguageWindowTest {
    @TempDir
    Path folder;

    private static Optional<JFrame> frame(String titleOfTheBookMenu) {
        return Stream.of(Window.getWindows())
                .filter(Window::isShowing)
                .filter(JFrame.class::isInstance)
                .map(JFrame.class::cast)
                .filter(each -> each.getJMenuBar() != null
                        && each.getJMenuBar().getMenu(1).getText().equals(titleOfTheBookMenu))
                .findFirst();
    }

    private static boolean isOn(JFrame frame, String mix) {
        JLabel title = Named.in(frame.getRootPane(), JLabel.class, "head.title");
        return title.isShowing() && title.getText().startsWith(mix);
    }

    private static List<MenuElement> chosen() {
        return List.of(MenuSelectionManager.defaultManager().getSelectedPath());
    }

    private static boolean isChosen(JMenu menu) {
        return chosen().contains(menu);
    }

    private static void isOpen(JFrame frame, int menu) throws Exception {
        assertThat(EventThread.comes(() -> frame.getJMenuBar().getMenu(menu).isPopupMenuVisible()))
                .as("menu " + menu + " is open")
                .isTrue();
        EventThread.settle();
    }

    @Test
    void theWindowSpeaksTheOtherLanguageAtOnceOnTheSameBookMixAndPage() throws Exception {
        Path file = folder.resolve("own.porebench");
        try (LabBook book = new SqliteShelf(DemoDesk.DAY).create(file)) {
            new DemoYear().fill(book);
        }
        Settings settings = Settings.inMemory();
        new WindowMemory(settings).rememberMix("HG-106");
        new WindowMemory(settings).rememberPage("sample");
        Outside outside = new Outside(
                new SqliteShelf(DemoDesk.DAY),
                new CsvSheets(),
                new PdfPress("Porebench", DemoDesk.DAY, ZoneId.of("UTC")),
                DemoDesk.DAY,
                ZoneId.of("UTC"),
                Locale.ENGLISH,
                settings,
                DraftStore.none(),
                new InventedBooks(folder.resolve("demo.porebench"), made -> {}, new PracticeLaboratory()),
                Optional::empty,
                SerialLines.none());
        Workbench.start(outside, Optional.of(file));
        assertThat(EventThread.comes(
                        () -> frame("Edit").filter(one -> isOn(one, "HG-106")).isPresent()))
                .isTrue();
        JFrame english = EventThread.call(() -> frame("Edit").orElseThrow());
        assertThat(english.getTitle()).as("of the lab book named").startsWith("own.porebench");
        // Lab book, Edit, View; in that down to the languages, of which one is Español.
        Keys keys = new Keys();
        Keys.bringTo(() -> Named.in(english.getRootPane(), JList.class, "mixes"));
        keys.strike(KeyEvent.VK_F10);
        isOpen(english, 0);
        keys.strike(KeyEvent.VK_RIGHT);
        isOpen(english, 1);
        keys.strike(KeyEvent.VK_RIGHT);
        isOpen(english, 2);
        JMenu languages = Named.in(english.getJMenuBar().getMenu(2).getPopupMenu(), JMenu.class, "menu.language");
        for (int item = 0; item < 15 && !EventThread.call(() -> isChosen(languages)); item++) {
            List<MenuElement> before = EventThread.call(LanguageWindowTest::chosen);
            keys.strike(KeyEvent.VK_DOWN);
            assertThat(EventThread.comes(() -> !chosen().equals(before))).isTrue();
        }
        keys.strike(KeyEvent.VK_RIGHT);
        assertThat(EventThread.comes(languages::isPopupMenuVisible)).isTrue();
        keys.strike(KeyEvent.VK_S);
        assertThat(EventThread.comes(
                        () -> frame("Editar").filter(one -> isOn(one, "HG-106")).isPresent()))
                .isTrue();
        assertThat(english.isDisplayable()).isFalse();
        JFrame now = EventThread.call(() -> frame("Editar").orElseThrow());
        assertThat(Named.in(now.getRootPane(), JLabel.class, "mass.Brackwater sand")
                        .isShowing())
                .isTrue();
        EventThread.run(() -> now.dispatchEvent(new WindowEvent(now, WindowEvent.WINDOW_CLOSING)));
        assertThat(EventThread.comes(() -> !now.isDisplayable())).isTrue();
    }
}
