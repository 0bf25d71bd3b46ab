package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.EventQueue;
import java.awt.Point;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JTextField;
import javax.swing.table.JTableHeader;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.dialog.ProfileDialog;
import porebench.desk.table.RowTable;
import porebench.method.FigureName;
import porebench.method.Profile;
import porebench.record.LaboratoryProfile;

/** Enter in the dialog of profiles never drops what was typed. */
@NeedsDisplay
class ProfileDialogWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDialog() throws Exception {
        keys = new Keys();
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(demo::open);
        EventQueue.invokeLater(() -> ProfileDialog.open(window.desk(), window.texts(), window.content()));
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> dialog().ifPresent(Window::dispose));
        EventThread.run(window::close);
        assertThat(demo.asker.failures).isEmpty();
    }

    private static Optional<JDialog> dialog() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing() && "ask".equals(each.getName()))
                .map(JDialog.class::cast)
                .findFirst();
    }

    private static <T extends Component> T named(Class<T> type, String name) {
        return Named.in(dialog().orElseThrow(), type, name);
    }

    @Test
    void enterAsksWhyTheCopyIsKeptInsteadOfClosingOverIt() throws Exception {
        Keys.bringTo(() -> named(JButton.class, "copy"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> named(JTextField.class, "title").isShowing()))
                .isTrue();
        Keys.bringTo(() -> named(JTextField.class, "title"));
        keys.strike(KeyEvent.VK_END);
        keys.strike(KeyEvent.VK_X);
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "title").getText().endsWith("x")))
                .isTrue();
        String typed = EventThread.call(() -> named(JTextField.class, "title").getText());
        // Nobody says why, so that nothing is kept; and nothing is lost.
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> !demo.asker.acts.isEmpty())).isTrue();
        assertThat(EventThread.call(() -> named(JTextField.class, "title").getText()))
                .isEqualTo(typed);
        // Escape asks before it drops; to stay is the answer where nobody says otherwise.
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> demo.asker.asked.size() == 2)).isTrue();
        assertThat(EventThread.call(() -> named(JTextField.class, "title").getText()))
                .isEqualTo(typed);
        demo.asker.confirmations.add(true);
        Keys.bringTo(() -> named(AbstractButton.class, "close"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> dialog().isEmpty())).isTrue();
    }

    /** The days of the year on which a season begins are typed as any other figure, and kept with the laboratory's own. */
    @Test
    void aRuleForRecheckingIsTypedAndKept() throws Exception {
        Keys.bringTo(() -> named(JButton.class, "copy"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> named(JTextField.class, "title").isShowing()))
                .isTrue();
        RowTable<?> figures = named(RowTable.class, "figures");
        int row = FigureName.RECHECK_SEASONS.ordinal();
        Keys.bringTo(() -> figures);
        EventThread.run(() -> figures.changeSelection(row, 1, false, false));
        for (char c : "10-01".toCharArray()) {
            keys.strike(c == '-' ? KeyEvent.VK_MINUS : KeyEvent.getExtendedKeyCodeForChar(c));
        }
        assertThat(EventThread.comes(() -> Keys.isTyping(figures, "10-01"))).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> !figures.isEditing() && "10-01".equals(figures.getValueAt(row, 1))))
                .isTrue();
        demo.asker.reasons.add("our rules");
        Keys.bringTo(() -> named(JTextField.class, "title"));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> !named(AbstractButton.class, "save").isEnabled()))
                .as("it is kept")
                .isTrue();
        Profile kept =
                demo.desk.book().latest(LaboratoryProfile.class).get(0).value().profile();
        assertThat(kept.seasons().firstAfter(LocalDate.of(2026, 11, 25))).contains(LocalDate.of(2027, 10, 1));
    }

    @Test
    void theFiguresAreSeenWholeFilteredByCtrlFAndTheirColumnsAreRemembered() throws Exception {
        RowTable<?> figures = named(RowTable.class, "figures");
        assertThat(EventThread.comes(() -> figures.getParent().getWidth() >= figures.getPreferredSize().width))
                .as("the dialog is as wide as its table")
                .isTrue();
        Keys.bringTo(() -> figures);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_F);
        JTextField field = named(JTextField.class, "figures.filter");
        assertThat(EventThread.comes(field::isFocusOwner)).isTrue();
        int all = EventThread.call(figures::getRowCount);
        for (char letter : "soak".toCharArray()) {
            keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter));
        }
        assertThat(EventThread.comes(() -> figures.getRowCount() < all && figures.getRowCount() > 0))
                .isTrue();
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> figures.getRowCount() == all)).isTrue();
        assertThat(EventThread.call(() -> dialog().isPresent()))
                .as("Escape showed all rows and left the dialog open")
                .isTrue();
        Keys.bringTo(() -> figures);
        JTableHeader header = figures.getTableHeader();
        int before =
                EventThread.call(() -> figures.getColumnModel().getColumn(0).getWidth());
        Point edge = EventThread.call(() -> {
            Point corner = header.getLocationOnScreen();
            return new Point(corner.x + before - 2, corner.y + header.getHeight() / 2);
        });
        Robot hand = new Robot();
        hand.mouseMove(edge.x, edge.y);
        assertThat(EventThread.comes(() -> header.getCursor().getType() == Cursor.E_RESIZE_CURSOR))
                .isTrue();
        hand.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        assertThat(EventThread.comes(() -> header.getResizingColumn() != null)).isTrue();
        hand.mouseMove(edge.x - 60, edge.y);
        assertThat(EventThread.comes(() -> figures.getColumnModel().getColumn(0).getWidth() < before - 40))
                .isTrue();
        hand.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        assertThat(EventThread.comes(() -> header.getResizingColumn() == null)).isTrue();
        int left = EventThread.call(() -> figures.getColumnModel().getColumn(0).getWidth());
        EventThread.run(() -> dialog().ifPresent(Window::dispose));
        EventQueue.invokeLater(() -> ProfileDialog.open(window.desk(), window.texts(), window.content()));
        assertThat(EventThread.comes(() -> dialog().isPresent())).isTrue();
        assertThat(EventThread.comes(() -> named(RowTable.class, "figures")
                                .getColumnModel()
                                .getColumn(0)
                                .getPreferredWidth()
                        == left))
                .as("the column is as a person left it")
                .isTrue();
    }
}
