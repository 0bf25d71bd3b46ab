package porebench.desk.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
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

/** The section in a real window: empty, with a shift, in both themes, and its plot taken along. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class HoldWindowTest {
    @TempDir
    Path folder;

    private HoldDesk made;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            made = new HoldDesk(folder, Locale.ENGLISH);
            HoldSection section = new HoldSection(made.desk);
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
