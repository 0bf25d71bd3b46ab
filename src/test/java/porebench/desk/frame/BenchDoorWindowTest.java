package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.Bowl;
import porebench.desk.Bowls;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.desk.form.TypedDraft;
import porebench.evidence.RegisterRow;
import porebench.record.id.MixId;

/** The way from the desk to the bench, and what the list of mixes says of it. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class BenchDoorWindowTest {
    private static final MixId MIX = new MixId("HG-108");

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openWindow() throws Exception {
        keys = new Keys();
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(() -> demo.open());
        EventThread.run(() -> window.openMix(MIX));
        assertThat(EventThread.comes(
                        () -> demo.desk.selected().filter(MIX::equals).isPresent()))
                .isTrue();
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> {
            bench().ifPresent(Window::dispose);
            window.pages().all().forEach(Page::dropDraft);
            window.close();
        });
    }

    private Optional<Window> bench() {
        return Stream.of(window.frame().getOwnedWindows())
                .filter(Component::isShowing)
                .filter(owned -> "benchView".equals(owned.getName()))
                .findFirst();
    }

    private static Stream<Component> all(Container parent) {
        return Stream.of(parent.getComponents())
                .flatMap(part ->
                        Stream.concat(Stream.of(part), part instanceof Container inner ? all(inner) : Stream.empty()));
    }

    private Component named(String name) {
        return all(window.content())
                .filter(part -> name.equals(part.getName()))
                .findFirst()
                .orElseThrow();
    }

    /** Returns what the list says of the mix, as it is painted. */
    private List<String> inTheList() {
        @SuppressWarnings("unchecked")
        JList<RegisterRow> list = (JList<RegisterRow>) named("mixes");
        for (int i = 0; i < list.getModel().getSize(); i++) {
            RegisterRow row = list.getModel().getElementAt(i);
            if (row.mixId().equals(MIX)) {
                Container cell =
                        (Container) list.getCellRenderer().getListCellRendererComponent(list, row, i, false, false);
                return all(cell)
                        .filter(JLabel.class::isInstance)
                        .map(part -> ((JLabel) part).getText())
                        .toList();
            }
        }
        return List.of();
    }

    @Test
    void f11OpensTheBenchOverTheWholeScreen() throws Exception {
        assertThat(EventThread.comes(() -> {
                    window.frame().toFront();
                    named("mixes").requestFocusInWindow();
                    return named("mixes").isFocusOwner();
                }))
                .isTrue();
        keys.strike(KeyEvent.VK_F11);
        assertThat(EventThread.comes(() -> bench().isPresent()))
                .as("F11 opens it")
                .isTrue();
        assertThat(EventThread.call(() -> bench().orElseThrow().getBounds()))
                .isEqualTo(EventThread.call(
                        () -> window.frame().getGraphicsConfiguration().getBounds()));
        assertThat(EventThread.call(this::inTheList)).anyMatch(words -> words.contains("on the bench"));
    }

    @Test
    void theTrialsPageHasAButtonForIt() throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().trials()));
        EventThread.run(() -> all(window.content())
                .filter(part -> "bench".equals(part.getName()) && part instanceof AbstractButton)
                .map(AbstractButton.class::cast)
                .findFirst()
                .orElseThrow()
                .doClick());
        assertThat(EventThread.call(() -> bench().isPresent())).isTrue();
    }

    @Test
    void theListSaysHowLongABowlStillSoaks() throws Exception {
        soaksSince(Duration.ofMinutes(7));
        Keys.bringTo(() -> named("mixes"));
        keys.strike(KeyEvent.VK_F11);
        assertThat(EventThread.comes(() -> bench().isPresent())).isTrue();
        Keys.bringTo(() -> ((JDialog) bench().orElseThrow()).getContentPane());
        keys.strike(KeyEvent.VK_ESCAPE);
        assertThat(EventThread.comes(() -> bench().isEmpty())).isTrue();
        assertThat(EventThread.call(this::inTheList)).anyMatch(words -> words.endsWith("soaking, 8 min left"));
    }

    /** Whoever sits at the desk hears the bell too; a bowl that everybody forgot does not ring all day. */
    @Test
    void aSoakThatIsOverRingsAtTheDesk() throws Exception {
        AtomicInteger rung = new AtomicInteger();
        EventThread.run(() -> window.pages().bench().ringBy(rung::incrementAndGet));
        soaksSince(Duration.ofMinutes(14));
        EventThread.run(() -> window.pages().bench().look(window.content()));
        soaksSince(Duration.ofMinutes(21));
        EventThread.run(() -> window.pages().bench().look(window.content()));
        assertThat(rung).as("not yet, or no more").hasValue(0);
        soaksSince(Duration.ofMinutes(16));
        assertThat(EventThread.comes(() -> rung.get() >= 2)).isTrue();
        Keys.bringTo(() -> named("mixes"));
        keys.strike(KeyEvent.VK_F11);
        assertThat(EventThread.comes(() -> bench().isPresent())).isTrue();
        int before = rung.get();
        assertThat(EventThread.comes(() -> rung.get() > before))
                .as("on the bench it rings on")
                .isTrue();
    }

    private void soaksSince(Duration ago) throws Exception {
        EventThread.run(() -> new Bowls(demo.desk)
                .keep(new Bowl(MIX, 1, Bowls.SOAK, TypedDraft.BLANK, "", Optional.empty(), Optional.empty())
                        .soaking(DemoDesk.DAY.instant().minus(ago), Optional.of(new BigDecimal("15")))));
    }
}
