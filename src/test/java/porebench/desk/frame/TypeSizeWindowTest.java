package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import org.jfree.chart.ChartPanel;
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
import porebench.desk.form.Motion;
import porebench.record.id.MixId;

/** The type of the window is made larger in the menu, at once and for the next day; nothing is cut off that cannot be scrolled to. */
@NeedsDisplay
class TypeSizeWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        demo.memory.remember(new Dimension(1366, 768));
        window = EventThread.call(demo::open);
        EventThread.run(() -> window.openMix(new MixId("HG-101")));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(window::close);
        EventThread.run(() -> {
            TypeSize.USUAL.use();
            Theme.LIGHT.apply();
            Motion.keepStill(false);
        });
    }

    private JMenuItem item(String name) {
        JMenuBar bar = window.frame().getJMenuBar();
        return Stream.iterate(0, at -> at + 1)
                .limit(bar.getMenuCount())
                .flatMap(at -> items(bar.getMenu(at)))
                .filter(each -> name.equals(each.getName()))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name));
    }

    private static Stream<JMenuItem> items(JMenu menu) {
        return Stream.of(menu.getMenuComponents())
                .filter(JMenuItem.class::isInstance)
                .map(JMenuItem.class::cast)
                .flatMap(each -> each instanceof JMenu inner ? items(inner) : Stream.of(each));
    }

    private void choose(String size) throws Exception {
        EventThread.run(() -> item("menu.size." + size).doClick(0));
        EventThread.settle();
    }

    private float title() {
        return Named.in(window.content(), JLabel.class, "head.title").getFont().getSize2D();
    }

    private Page turnTo(String name) throws Exception {
        Page page = window.pages().named(name).orElseThrow();
        EventThread.run(() -> window.turnTo(page));
        EventThread.settle();
        return page;
    }

    @Test
    void everythingIsTwiceAsLargeAtOnceAndUsualAgain() throws Exception {
        Page page = turnTo("variability");
        ChartPanel plot = (ChartPanel) plot(page.component());
        float titleBefore = EventThread.call(this::title);
        int plotBefore = EventThread.call(
                () -> plot.getChart().getXYPlot().getRangeAxis().getLabelFont().getSize());
        Page sources = turnTo("sources");
        JTable table = Named.in(sources.component(), JTable.class, "source.table");
        int columnBefore =
                EventThread.call(() -> table.getColumnModel().getColumn(1).getPreferredWidth());
        int rowBefore = EventThread.call(table::getRowHeight);
        turnTo("variability");
        choose("200");
        // Half a dot may be lost where sizes are whole numbers.
        float titleAfter = EventThread.call(this::title);
        assertThat(titleAfter).isEqualTo(2 * titleBefore, within(10f));
        assertThat(EventThread.call(() -> plot.getChart()
                        .getXYPlot()
                        .getRangeAxis()
                        .getLabelFont()
                        .getSize()))
                .isEqualTo(2 * plotBefore);
        assertThat(EventThread.call(() -> table.getColumnModel().getColumn(1).getPreferredWidth()))
                .isEqualTo(2 * columnBefore);
        int rowAfter = EventThread.call(table::getRowHeight);
        assertThat(rowAfter).isGreaterThan(rowBefore * 3 / 2);
        assertThat(demo.memory.typeSize()).isEqualTo(TypeSize.DOUBLE);
        assertThat(TypeSize.inUse()).isEqualTo(TypeSize.DOUBLE);
        choose("100");
        float titleAgain = EventThread.call(this::title);
        assertThat(titleAgain).isEqualTo(titleBefore);
        assertThat(EventThread.call(() -> table.getColumnModel().getColumn(1).getPreferredWidth()))
                .isEqualTo(columnBefore);
        assertThat(TypeSize.inUse()).isEqualTo(TypeSize.USUAL);
    }

    private static Component plot(Component within) {
        return all(within)
                .filter(ChartPanel.class::isInstance)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no plot"));
    }

    private static Stream<Component> all(Component within) {
        return within instanceof java.awt.Container container
                ? Stream.concat(
                        Stream.of(within), Stream.of(container.getComponents()).flatMap(TypeSizeWindowTest::all))
                : Stream.of(within);
    }

    @Test
    void atTwiceTheSizeNothingIsCutOffThatCannotBeScrolledTo() throws Exception {
        choose("200");
        List<String> faults = new ArrayList<>();
        for (Page page : window.pages().all()) {
            EventThread.run(() -> window.turnTo(page));
            EventThread.settle();
            EventThread.settle();
            EventThread.call(() -> Room.lackingIn(window.frame().getRootPane()))
                    .forEach(fault -> faults.add(page.name() + ": " + fault));
        }
        assertThat(faults).isEmpty();
    }

    @Test
    void whatGetsTheKeyboardComesIntoSight() throws Exception {
        Page page = turnTo("mix");
        choose("200");
        JTextField last = Named.in(page.component(), JTextField.class, "remarks");
        Keys.bringTo(() -> last);
        assertThat(EventThread.comes(() -> {
                    JViewport outer = (JViewport) SwingUtilities.getAncestorOfClass(
                            JViewport.class, SwingUtilities.getAncestorOfClass(RoomForType.class, last));
                    Rectangle place = SwingUtilities.convertRectangle(last.getParent(), last.getBounds(), outer);
                    return new Rectangle(outer.getSize()).intersects(place)
                            && ((JComponent) last).getVisibleRect().height == last.getHeight();
                }))
                .isTrue();
    }

    @Test
    void thingsKeepStillOnceThePersonSaysSo() throws Exception {
        assertThat(demo.memory.isStill()).isFalse();
        JCheckBoxMenuItem still = (JCheckBoxMenuItem) item("menu.still");
        EventThread.run(() -> still.doClick(0));
        assertThat(Motion.isStill()).isTrue();
        assertThat(demo.memory.isStill()).isTrue();
        EventThread.run(() -> still.doClick(0));
        assertThat(Motion.isStill()).isFalse();
        assertThat(demo.memory.isStill()).isFalse();
    }

    @Test
    void whatADesktopSaysOfAnimationsIsHeard() {
        assertThat(Motion.isUnwanted(0)).isTrue();
        assertThat(Motion.isUnwanted(1)).isFalse();
        assertThat(Motion.isUnwanted(null)).isFalse();
        assertThat(Motion.isUnwanted("0")).isFalse();
    }

    @Test
    void anUnknownSizeIsTheUsualOne() {
        assertThat(TypeSize.ofSymbol("150")).isEqualTo(TypeSize.LARGE);
        assertThat(TypeSize.ofSymbol("400")).isEqualTo(TypeSize.USUAL);
    }
}
