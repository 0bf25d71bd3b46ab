package porebench.desk.overtime;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;
import porebench.record.id.TrialId;
import porebench.statistics.control.PhasedChart;

/** Chooses, reads and marks on the Over-time page in a real window. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class OverTimeWindowTest {
    @TempDir
    Path folder;

    private final OverTimeDesk made = new OverTimeDesk();
    private final List<TrialId> opened = new ArrayList<>();
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            LocalDate next = made.quiet(20);
            made.determinations("M-1", next, 0.8, 0.5);
            made.desk.refresh();
            frame = new JFrame();
            frame.add(new OverTimePage(made.desk, opened::add).component());
            frame.setSize(1000, 900);
            frame.setVisible(true);
        });
        EventThread.settle();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(frame::dispose);
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Named.in(frame.getContentPane(), type, name);
    }

    private void press(String button) throws Exception {
        EventThread.run(() -> find(AbstractButton.class, button).doClick());
        EventThread.settle();
    }

    private String text(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).getText());
    }

    @Test
    void aSignalIsSaidInWordsAndMarkedInThePlot() throws Exception {
        assertThat(text("overtime.verdict"))
                .startsWith("1 signal among 22 determinations, the last at M-1/21 (2026-01-25)");
        assertThat(text("signal.said.0")).contains("above the upper limit", "has the source changed");
        press("signal.0");
        assertThat(text("marked.control")).startsWith("M-1/21 (2026-01-25)").endsWith("Enter or a click opens it.");
        EventThread.run(() -> {
            Component plot = find(Component.class, "plot.control");
            Object key = ((JComponent) plot).getInputMap().get(KeyStroke.getKeyStroke("ENTER"));
            ((JComponent) plot).getActionMap().get(key).actionPerformed(new ActionEvent(plot, 0, "ENTER"));
        });
        assertThat(opened).containsExactly(new TrialId("T-041"));
    }

    @Test
    void everyChartByEverythingShowsAndIsSavedWithWhatItIs() throws Exception {
        for (GroupedBy by : GroupedBy.values()) {
            EventThread.run(() -> find(JComboBox.class, "overtime.by").setSelectedItem(ChartFields.symbol(by)));
            for (PhasedChart.Kind kind : PhasedChart.Kind.values()) {
                EventThread.run(() -> find(JComboBox.class, "overtime.kind").setSelectedItem(ChartFields.symbol(kind)));
                EventThread.settle();
            }
        }
        Path file = folder.resolve("chart.svg");
        made.asker.filesToWrite.add(file);
        press("save.control");
        assertThat(made.asker.failures).isEmpty();
        assertThat(Files.readString(file)).contains("Operator R. Vale: Control chart of single trials");
        EventThread.run(Theme.DARK::apply);
        EventThread.settle();
    }

    @Test
    void draggingZoomsInAndShowAllLeadsBack() throws Exception {
        AbstractButton all = find(AbstractButton.class, "all.control");
        assertThat(all.isEnabled()).isFalse();
        mouse(MouseEvent.MOUSE_PRESSED, 300, 60);
        mouse(MouseEvent.MOUSE_DRAGGED, 500, 180);
        mouse(MouseEvent.MOUSE_RELEASED, 500, 180);
        EventThread.settle();
        assertThat(all.isEnabled()).isTrue();
        press("all.control");
        assertThat(all.isEnabled()).isFalse();
    }

    private void mouse(int what, int x, int y) throws Exception {
        EventThread.run(() -> {
            Component plot = find(Component.class, "plot.control");
            plot.dispatchEvent(
                    new MouseEvent(plot, what, 0, InputEvent.BUTTON1_DOWN_MASK, x, y, 1, false, MouseEvent.BUTTON1));
        });
    }

    @Test
    void rulesLimitsPhasesAndBaseAreThePersonsChoice() throws Exception {
        press("overtime.rule.beyond-limits");
        assertThat(text("overtime.verdict")).startsWith("22 determinations and no signal");
        press("overtime.rule.beyond-limits");
        press("overtime.limits.anew");
        press("overtime.split.calibration");
        EventThread.run(() -> find(JTextComponent.class, "overtime.base.count").setText("x"));
        assertThat(text("overtime.base.refusal")).startsWith("Type a whole number");
        EventThread.run(() -> find(JTextComponent.class, "overtime.base.count").setText("22"));
        assertThat(EventThread.call(
                        () -> find(Component.class, "overtime.base.refusal").isVisible()))
                .isFalse();
        assertThat(text("overtime.phases")).contains("from 22 points");
        EventThread.run(() -> find(JTextComponent.class, "overtime.base.from").setText("2026-01-05"));
        EventThread.run(() -> find(JTextComponent.class, "overtime.base.to").setText("2026-01-08"));
        press("overtime.limits.kept");
        assertThat(text("overtime.phases")).contains("from 4 points");
    }
}
