package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JList;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.access.Unnamed;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Everything that can be come to in the window says a name and a role to those who hear it read. */
@NeedsDisplay
class NamesWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    @Test
    void everyControlOfEveryPageSaysItsName() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(folder));
        WorkbenchFrame window = EventThread.call(demo::open);
        List<String> faults = new ArrayList<>();
        int looked = 0;
        for (String mix : List.of("HG-101", "HG-103")) {
            EventThread.run(() -> window.openMix(new MixId(mix)));
            for (Page page : window.pages().all()) {
                if (page == window.pages().meter()) {
                    EventThread.run(() -> window.openMeter(new MeterId("B-1")));
                } else {
                    EventThread.run(() -> window.turnTo(page));
                }
                Unnamed unnamed =
                        EventThread.call(() -> new Unnamed().in(window.frame().getRootPane()));
                unnamed.faults().forEach(fault -> faults.add(page.name() + ": " + fault));
                looked += unnamed.looked();
            }
        }
        EventThread.run(window::close);
        assertThat(faults).isEmpty();
        assertThat(looked).isGreaterThan(2_000);
    }

    @Test
    void theKeysThatTheWindowSpeaksOfGoFromTheMixesToThePageAndMoveTheEdge() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        DemoDesk demo = EventThread.call(() -> DemoDesk.filled(folder));
        WorkbenchFrame window = EventThread.call(demo::open);
        Keys keys = new Keys();
        JList<?> mixes = Named.in(window.content(), JList.class, "mixes");
        JSplitPane edge =
                (JSplitPane) EventThread.call(() -> SwingUtilities.getAncestorOfClass(JSplitPane.class, mixes));
        Keys.bringTo(() -> mixes);
        keys.strikeUntil(() -> isIn(edge.getRightComponent()), "the page", KeyEvent.VK_F6);
        keys.strikeUntil(() -> isIn(edge.getLeftComponent()), "the mixes", KeyEvent.VK_F6);
        Keys.bringTo(() -> mixes);
        int before = EventThread.call(edge::getDividerLocation);
        keys.strike(KeyEvent.VK_F8);
        keys.strikeUntil(() -> edge.getDividerLocation() > before, "the edge", KeyEvent.VK_RIGHT);
        assertThat(edge.getAccessibleContext().getAccessibleDescription()).contains("F8");
        EventThread.run(window::close);
    }

    private static boolean isIn(Component part) {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, part);
    }
}
