package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import com.formdev.flatlaf.FlatLaf;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.record.id.MixId;

/** How the whole window behaves, whatever page it shows. */
@NeedsDisplay
class MannersWindowTest {
    private static final MixId FIRST = new MixId("HG-101");
    private static final MixId OTHER = new MixId("HG-106");

    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;

    @BeforeEach
    void openWindow() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        demo.memory.remember(new Dimension(1024, 700));
        window = EventThread.call(() -> demo.open());
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(() -> window.pages().all().forEach(Page::dropDraft));
        EventThread.run(window::close);
    }

    private Page page(String name) {
        return window.pages().named(name).orElseThrow();
    }

    @Test
    void aClickOnTheSelectedMixLeavesARegister() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(page("sources")));
        JList<?> mixes = (JList<?>) named("mixes");
        Point middle = EventThread.call(() -> {
            Rectangle cell = mixes.getCellBounds(mixes.getSelectedIndex(), mixes.getSelectedIndex());
            Point place = new Point(cell.x + cell.width / 2, cell.y + cell.height / 2);
            SwingUtilities.convertPointToScreen(place, mixes);
            return place;
        });
        Robot mouse = new Robot();
        mouse.mouseMove(middle.x, middle.y);
        mouse.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        mouse.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        assertThat(EventThread.comes(() -> window.current().name().equals("mix")))
                .isTrue();
    }

    @Test
    void controlAndANumberLeadsToAStepFromARegisterToo() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(page("sources")));
        Keys.bringTo(() -> (JComponent) named("source.table"));
        new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_4);
        assertThat(EventThread.comes(() -> window.current().name().equals("variability")))
                .isTrue();
    }

    @Test
    void aFactorThatNobodyMaySubtractIsNotTheLargestThingInTheHead() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-102")));
        Keys.bringTo(() -> named("mixes"));
        new Keys().strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(
                        () -> ((JLabel) named("head.title")).getText().startsWith("HG-103")))
                .isTrue();
        assertThat(EventThread.call(() -> size("head.factor"))).isLessThan(EventThread.call(() -> size("head.title")));
        EventThread.run(() -> window.openMix(FIRST));
        assertThat(EventThread.comes(() -> size("head.factor") > size("head.title")))
                .as("a factor in force is")
                .isTrue();
    }

    private int size(String name) {
        return named(name).getFont().getSize();
    }

    @Test
    void eachPageOfEachMixIsFoundWhereItWasLeft() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(page("variability")));
        EventThread.run(() -> scroll("variability").getVerticalScrollBar().setValue(300));
        EventThread.run(() -> window.openMix(OTHER));
        assertThat(scroll("variability").getVerticalScrollBar().getValue()).isZero();
        EventThread.run(() -> window.turnTo(page("trials")));
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.run(() -> window.turnTo(page("variability")));
        assertThat(scroll("variability").getVerticalScrollBar().getValue()).isEqualTo(300);
    }

    /** The page is rolled by the wheel, left and come back to by the keys: another page, and the same page of another mix. */
    @Test
    void whereTheWheelLeftAPageTheKeysFindItAgain() throws Exception {
        Keys keys = new Keys();
        EventThread.run(() -> window.openMix(FIRST));
        Keys.bringTo(() -> named("mixes"));
        strikes(keys, KeyEvent.VK_4, "variability");
        Point middle = EventThread.call(() -> {
            JScrollPane page = scroll("variability");
            Point place = new Point(page.getWidth() / 2, 20);
            SwingUtilities.convertPointToScreen(place, page);
            return place;
        });
        Robot mouse = new Robot();
        mouse.mouseMove(middle.x, middle.y);
        mouse.mouseWheel(3);
        assertThat(EventThread.comes(() -> left("variability") > 0)).isTrue();
        EventThread.settle();
        int rolled = EventThread.call(() -> left("variability"));
        strikes(keys, KeyEvent.VK_2, "sample");
        assertThat(EventThread.call(() -> left("sample"))).isZero();
        strikes(keys, KeyEvent.VK_4, "variability");
        assertThat(EventThread.call(() -> left("variability"))).isEqualTo(rolled);
        Keys.bringTo(() -> named("mixes"));
        keys.strike(KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(
                        () -> !window.desk().selected().equals(Optional.of(FIRST)) && left("variability") == 0))
                .as("the same page of the next mix begins at its beginning")
                .isTrue();
        keys.strike(KeyEvent.VK_UP);
        assertThat(EventThread.comes(
                        () -> window.desk().selected().equals(Optional.of(FIRST)) && left("variability") == rolled))
                .isTrue();
    }

    private void strikes(Keys keys, int number, String page) throws Exception {
        keys.strike(KeyEvent.VK_CONTROL, number);
        assertThat(EventThread.comes(() -> window.current().name().equals(page)))
                .as(page)
                .isTrue();
        EventThread.settle();
    }

    private int left(String page) {
        return scroll(page).getVerticalScrollBar().getValue();
    }

    /** The window is as high as lets only the head of the weigh-out table be seen, to which the page must not run. */
    @Test
    void aPageThatIsChosenStandsAtItsBeginning() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        for (int height = 660; height <= 900; height += 40) {
            Dimension size = new Dimension(1280, height);
            EventThread.run(() -> window.turnTo(page("mix")));
            EventThread.run(() -> window.frame().setSize(size));
            EventThread.settle();
            new Keys().strike(KeyEvent.VK_CONTROL, KeyEvent.VK_2);
            assertThat(EventThread.comes(() -> window.current().name().equals("sample")))
                    .isTrue();
            EventThread.settle();
            assertThat(scroll("sample").getVerticalScrollBar().getValue())
                    .as("at " + height)
                    .isZero();
        }
    }

    @Test
    void anotherThemeBringsNoBorders() throws Exception {
        JComponent split = (JComponent) SwingUtilities.getAncestorOfClass(JSplitPane.class, named("rail"));
        JComponent list = (JComponent) SwingUtilities.getAncestorOfClass(JScrollPane.class, named("mixes"));
        for (Theme theme : new Theme[] {Theme.DARK, Theme.LIGHT}) {
            Keys.bringTo(() -> named("mixes"));
            MenuKeys.choose(window, 2, theme == Theme.DARK ? KeyEvent.VK_D : KeyEvent.VK_L);
            assertThat(EventThread.comes(() -> FlatLaf.isLafDark() == (theme == Theme.DARK)))
                    .isTrue();
            assertThat(split.getInsets().left).as("around everything").isZero();
            assertThat(list.getInsets().left).as("around the mixes").isZero();
        }
    }

    @Test
    void theTitlesOfTheStepsStandWhollyInTheSmallestWindow() throws Exception {
        EventThread.run(() -> window.openMix(FIRST));
        EventThread.settle();
        for (Page step : window.pages().steps()) {
            JComponent button = (JComponent) named("step." + step.name());
            for (Component part : button.getComponents()) {
                if (part instanceof JLabel label && step.title().equals(label.getText())) {
                    assertThat(label.getWidth())
                            .as(step.title())
                            .isGreaterThanOrEqualTo(label.getPreferredSize().width);
                }
            }
            assertThat(button.getToolTipText()).startsWith(step.title() + ": ").contains("Ctrl+");
        }
    }

    @Test
    void theWindowIsNeverLargerThanTheScreenHasRoomFor() {
        Rectangle twice = new Rectangle(0, 0, 800, 500);
        assertThat(WindowPlace.within(twice, new Dimension(1280, 800))).isEqualTo(new Dimension(800, 500));
        assertThat(WindowPlace.within(twice, new Dimension(700, 480))).isEqualTo(new Dimension(700, 480));
        assertThat(WindowPlace.rail(800, 300)).isEqualTo(200);
        assertThat(WindowPlace.rail(1440, 300)).isEqualTo(300);
        Rectangle free = WindowPlace.free(window.frame().getGraphicsConfiguration());
        assertThat(free.contains(window.frame().getBounds())).isTrue();
    }

    private JScrollPane scroll(String page) {
        return find(window.pages().named(page).orElseThrow().place(), JScrollPane.class)
                .orElseThrow();
    }

    private static <C> Optional<C> find(Container around, Class<C> type) {
        for (Component each : around.getComponents()) {
            Optional<C> found = type.isInstance(each)
                    ? Optional.of(type.cast(each))
                    : each instanceof Container inner ? find(inner, type) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Component named(String name) {
        return named(window.frame().getRootPane(), name).orElseThrow();
    }

    private static Optional<Component> named(Container around, String name) {
        for (Component each : around.getComponents()) {
            Optional<Component> found = name.equals(each.getName())
                    ? Optional.of(each)
                    : each instanceof Container inner ? named(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }
}
