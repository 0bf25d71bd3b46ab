package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Cursor;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;
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
import porebench.desk.form.UnitSystem;

/** The plan of a week by the keyboard: moved, given to somebody, left out, saved, printed, and on to the trials. */
@NeedsDisplay
class PlanWindowTest {
    private static final int MIX = 1;
    private static final int WHO = 6;

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openThePlan() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        started.startWith(null);
        EventThread.run(() -> window.turnTo(window.pages().named("plan").orElseThrow()));
        assertThat(EventThread.comes(() -> table().getRowCount() == 4)).isTrue();
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private Component named(String name) {
        return Named.in(window.content(), Component.class, name);
    }

    private JTable table() {
        return (JTable) named("plan.table");
    }

    private List<String> mixes() {
        return IntStream.range(0, table().getRowCount())
                .mapToObj(row -> String.valueOf(table().getValueAt(row, MIX)))
                .toList();
    }

    private void come(List<String> mixes) throws Exception {
        assertThat(EventThread.comes(() -> mixes().equals(mixes)))
                .as(EventThread.call(() -> mixes().toString()))
                .isTrue();
    }

    private boolean says(String name, String words) {
        return ((JTextComponent) named(name)).getText().contains(words);
    }

    private void press(String button) throws Exception {
        Keys.bringTo(() -> named(button));
        keys.strike(KeyEvent.VK_SPACE);
    }

    @Test
    void aPersonArrangesTheWeekByKeysAndKeepsIt() throws Exception {
        come(List.of("HG-103", "HG-106", "HG-108", "HG-102"));
        EventThread.run(() -> table().changeSelection(1, MIX, false, false));
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_UP);
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_UP);
        come(List.of("HG-106", "HG-103", "HG-108", "HG-102"));
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        come(List.of("HG-103", "HG-106", "HG-108", "HG-102"));
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Y);
        come(List.of("HG-106", "HG-103", "HG-108", "HG-102"));
        EventThread.run(() -> table().changeSelection(0, WHO, false, false));
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_Q);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> "q".equals(table().getValueAt(0, WHO))))
                .isTrue();
        EventThread.run(() -> table().changeSelection(2, MIX, false, false));
        asker.reasons.add("no stone");
        press("plan.leave-out");
        come(List.of("HG-106", "HG-103", "HG-102", "HG-108"));
        assertThat(EventThread.comes(() -> says("plan.sentence", "changed, not saved")))
                .isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_S);
        assertThat(EventThread.comes(() -> says("plan.sentence", "arranged by Test Person")))
                .isTrue();
        JTable fetches = (JTable) named("plan.fetches");
        assertThat(EventThread.call(() -> fetches.getColumnName(3))).isEqualTo("Bring, kg");
        EventThread.run(() -> window.show(UnitSystem.US));
        assertThat(EventThread.comes(() -> fetches.getColumnName(3).equals("Bring, lb")))
                .isTrue();
        Path pdf = folder.resolve("plan.pdf");
        asker.filesToWrite.add(pdf);
        press("plan.pdf");
        assertThat(EventThread.comes(() -> says("plan.told", "plan.pdf"))).isTrue();
        assertThat(Files.size(pdf)).isGreaterThan(1000);
        EventThread.run(() -> table().changeSelection(1, MIX, false, false));
        press("plan.open");
        assertThat(EventThread.comes(() -> window.current() == window.pages().trials()
                        && window.desk().selected().orElseThrow().text().equals("HG-103")))
                .isTrue();
    }

    private void mouse(int what, int modifiers, int row) {
        Rectangle cell = table().getCellRect(row, MIX, true);
        table().dispatchEvent(new MouseEvent(
                table(),
                what,
                0,
                modifiers,
                (int) cell.getCenterX(),
                (int) cell.getCenterY(),
                1,
                false,
                MouseEvent.BUTTON1));
    }

    private void drag(int from, int to) throws Exception {
        EventThread.run(() -> {
            mouse(MouseEvent.MOUSE_PRESSED, InputEvent.BUTTON1_DOWN_MASK, from);
            mouse(MouseEvent.MOUSE_DRAGGED, InputEvent.BUTTON1_DOWN_MASK, to);
            assertThat(table().getCursor().getType()).isEqualTo(Cursor.MOVE_CURSOR);
            mouse(MouseEvent.MOUSE_RELEASED, 0, to);
            assertThat(table().getCursor().getType()).isNotEqualTo(Cursor.MOVE_CURSOR);
        });
    }

    @Test
    void aTestIsDraggedToThePlaceOfAnother() throws Exception {
        come(List.of("HG-103", "HG-106", "HG-108", "HG-102"));
        drag(3, 0);
        come(List.of("HG-102", "HG-103", "HG-106", "HG-108"));
        drag(1, 1);
        come(List.of("HG-102", "HG-103", "HG-106", "HG-108"));
        Keys.bringTo(this::table);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_Z);
        come(List.of("HG-103", "HG-106", "HG-108", "HG-102"));
    }
}
