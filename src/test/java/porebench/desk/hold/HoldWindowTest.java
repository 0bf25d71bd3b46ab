package porebench.desk.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
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
import porebench.evidence.hold.PairsBench;
import porebench.record.FieldReading;
import porebench.record.id.MixId;

/** The section in a real window: empty, with a shift, in both themes, and its plot taken along. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class HoldWindowTest {
    @TempDir
    Path folder;

    private final List<MixId> opened = new ArrayList<>();
    private final List<FieldReading> read = new ArrayList<>();
    private HoldDesk made;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            made = new HoldDesk(folder, Locale.ENGLISH);
            HoldSection section = new HoldSection(made.desk, opened::add, read::add);
            section.show(Optional.empty());
            frame = new JFrame();
            frame.add(new JScrollPane(section.component()));
            frame.setSize(1100, 900);
            frame.setVisible(true);
        });
        EventThread.settle();
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(frame::dispose);
        made.made.close();
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Named.in(frame.getContentPane(), type, name);
    }

    private String said(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).getText());
    }

    @Test
    void aPointLeadsToItsReadingByKeyAndTheButtonToAllOfTheMix() throws Exception {
        EventThread.run(() -> made.read(PairsBench.SHIFTED));
        EventThread.settle();
        JComponent plot = find(JComponent.class, "plot.hold");
        EventThread.run(() -> {
            act(plot, "RIGHT");
            act(plot, "RIGHT");
            act(plot, "RIGHT");
            act(plot, "ENTER");
        });
        HoldModel model = new HoldModel(made.desk);
        FieldReading third = EventThread.call(() -> model.reading(
                        model.plot().orElseThrow().points().get(2).on().pair().name()))
                .orElseThrow();
        assertThat(read).containsExactly(third);
        assertThat(third.id().text()).as("the third of them by time").isEqualTo("M-1-R03");
        assertThat(said("marked.hold")).contains("Enter or a click opens it");
        EventThread.run(() -> find(AbstractButton.class, "hold.readings").doClick());
        assertThat(opened).containsExactly(third.mixId());
    }

    @Test
    void aClickOnAPointLeadsToItsReading() throws Exception {
        EventThread.run(() -> made.read(PairsBench.SHIFTED));
        EventThread.settle();
        JComponent plot = find(JComponent.class, "plot.hold");
        EventThread.run(() -> {
            plot.paintImmediately(0, 0, plot.getWidth(), plot.getHeight());
            // Every place of the plot, until a point is within reach.
            for (int y = 0; y < plot.getHeight() && read.isEmpty(); y += 4) {
                for (int x = 0; x < plot.getWidth() && read.isEmpty(); x += 4) {
                    plot.dispatchEvent(
                            new MouseEvent(plot, MouseEvent.MOUSE_CLICKED, 0, 0, x, y, 1, false, MouseEvent.BUTTON1));
                }
            }
        });
        assertThat(read).hasSize(1);
        assertThat(read.get(0).density()).isPresent();
    }

    private static void act(JComponent plot, String key) {
        plot.getActionMap().get(key).actionPerformed(new ActionEvent(plot, ActionEvent.ACTION_PERFORMED, key));
    }

    @Test
    void saysWhatIsWantedAndThenWhatThePairsSay() throws Exception {
        assertThat(said("hold.sentence")).startsWith("No field reading since");
        assertThat(EventThread.call(
                        () -> find(AbstractButton.class, "save.hold").isShowing()))
                .isFalse();
        EventThread.run(() -> made.read(PairsBench.SHIFTED));
        EventThread.settle();
        assertThat(said("hold.sentence")).startsWith("Recheck G: ");
        assertThat(said("hold.reasons")).contains("is seen in about 20 pairs");
        Path file = folder.resolve("hold.csv");
        made.asker.filesToWrite.add(file);
        EventThread.run(() -> find(AbstractButton.class, "save.hold").doClick());
        assertThat(Files.readAllLines(file))
                .hasSize(15)
                .first()
                .asString()
                .startsWith("reading_id,on,by_meter_pct_air");
        EventThread.run(Theme.DARK::apply);
        EventThread.settle();
        assertThat(said("hold.sentence")).startsWith("Recheck G: ");
        EventThread.run(Theme.LIGHT::apply);
    }
}
