package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JPanel;
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
import porebench.desk.table.RowTable;
import porebench.evidence.Bench;
import porebench.evidence.GroupBench;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.book.LabBook;
import porebench.record.id.GroupId;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** A mix that is offered comes into a group, and its factor issued from the page of the tested mix, by the keyboard. */
@NeedsDisplay
class GroupsWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private final ScriptedAsker asker = new ScriptedAsker();
    private StartedWindow started;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDemo() throws Exception {
        keys = new Keys();
        started = new StartedWindow(folder, asker);
        window = started.window();
        new GroupBench(Files.createDirectories(folder.resolve("own"))).close();
        started.startWith(file());
        assertThat(EventThread.comes(
                        () -> window.desk().selected().filter(Bench.MIX::equals).isPresent()))
                .isTrue();
        turnTo("groups");
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> window.current().dropDraft());
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private void turnTo(String page) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
    }

    private JTextComponent field(String name) {
        return Named.in(window.current().component(), JTextComponent.class, name);
    }

    private RowTable<?> table(String name) {
        return Named.in(window.current().component(), RowTable.class, name);
    }

    private void type(String field, String letters) throws Exception {
        Keys.bringTo(() -> field(field));
        EventThread.run(() -> field(field).selectAll());
        letters.chars().forEach(letter -> keys.strike(KeyEvent.getExtendedKeyCodeForChar(letter)));
        assertThat(EventThread.comes(() -> field(field).getText().equalsIgnoreCase(letters)))
                .as(field)
                .isTrue();
    }

    private void press(String button) throws Exception {
        Keys.bringTo(() -> Named.in(window.current().component(), AbstractButton.class, button));
        keys.strike(KeyEvent.VK_SPACE);
    }

    private Path file() {
        return folder.resolve("own").resolve("book.porebench");
    }

    private List<FactorIssue> issues() {
        try (LabBook there = new SqliteShelf(DemoDesk.DAY).open(file())) {
            return there.latest(FactorIssue.class).stream()
                    .map(version -> version.value())
                    .toList();
        }
    }

    /** M-2 and M-3 are in group G-1 already; M-9 is as M-1 and comes in. */
    @Test
    void aMixIsAddedToAGroupAndTheFactorIssuedForAll() throws Exception {
        RowTable<?> members = table("group.members");
        RowTable<?> candidates = table("group.candidates");
        assertThat(EventThread.comes(() -> members.getRowCount() == 3 && candidates.getRowCount() == 1))
                .isTrue();
        assertThat(EventThread.call(() -> String.valueOf(members.getValueAt(0, 0))))
                .isEqualTo("M-1 (tested)");
        Keys.bringTo(() -> candidates);
        EventThread.run(() -> candidates.setRowSelectionInterval(0, 0));
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> field("members").getText().equals("M-2; M-3; M-9")))
                .isTrue();
        type("reason", "all of one quarry");
        press("group.save");
        assertThat(EventThread.comes(() -> members.getRowCount() == 4)).isTrue();

        turnTo("factor");
        assertThat(EventThread.comes(() -> button("factor.issueForGroup").isShowing()))
                .isTrue();
        type("reason", "one for all");
        for (int box = 0; hasBox(box); box++) {
            String name = "factor.doubt." + box;
            press(name);
            assertThat(EventThread.comes(() -> button(name).isSelected()))
                    .as(name)
                    .isTrue();
        }
        type("overrideBy", "ada");
        type("overrideReason", "looked at");
        asker.confirmations.add(true);
        press("factor.issueForGroup");
        assertThat(EventThread.comes(() -> issues().size() == 4))
                .as("%s %s %s", asker.problemsShown, asker.confirmations, asker.told)
                .isTrue();
        assertThat(issues()).extracting(issue -> issue.mixId().text()).containsExactly("M-1", "M-2", "M-3", "M-9");
        assertThat(issues())
                .extracting(issue -> issue.grounds().group().orElseThrow())
                .containsOnly(new GroupGround(new GroupId("G-1"), 2, Bench.MIX));

        EventThread.run(() -> window.openMix(new MixId("M-9")));
        assertThat(EventThread.comes(() -> field("factor.group")
                        .getText()
                        .equals("Factor of group G-1 (version 2), found on mix M-1, determination M-1/1.")))
                .isTrue();
        assertThat(EventThread.call(() -> button("factor.issueForGroup").isShowing()))
                .as("M-9 is tested for no group")
                .isFalse();
    }

    private AbstractButton button(String name) {
        return Named.in(window.current().component(), AbstractButton.class, name);
    }

    private boolean hasBox(int number) throws Exception {
        return EventThread.call(
                () -> ((JPanel) Named.in(window.current().component(), JPanel.class, "factor.doubt-boxes"))
                                .getComponentCount()
                        > 2 * number);
    }
}
