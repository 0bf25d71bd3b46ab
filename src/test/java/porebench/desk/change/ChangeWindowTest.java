package porebench.desk.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.DeterminationSection;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.frame.Theme;
import porebench.evidence.TimeBook;

/** The section in a real window: it follows the lab book, takes what is typed, and saves its plots. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class ChangeWindowTest {
    @TempDir
    Path folder;

    private ChangeDesk made;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            made = new ChangeDesk(Locale.ENGLISH);
            DeterminationSection section = DeterminationSection.both(
                    new ChangeSection(made.desk), new RiskSection(made.desk, Settings.inMemory()));
            made.desk.onChange(() -> section.show(Optional.empty()));
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
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Named.in(frame.getContentPane(), type, name);
    }

    private String said(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).getText());
    }

    private boolean isSeen(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).isShowing());
    }

    @Test
    void comesWithAChangeAndSaysItsVerdictOnceTheNewIsTested() throws Exception {
        assertThat(isSeen("change.verdict")).isFalse();
        EventThread.run(made::changeLedge);
        EventThread.settle();
        assertThat(said("change.verdict")).startsWith("Mix M-1 has no trials that count of source S-2 as it is now");
        EventThread.run(() -> made.testNew(0.8, 0.9, 0.8));
        EventThread.settle();
        assertThat(isSeen("change.verdict")).isTrue();
        assertThat(said("change.verdict")).startsWith("Replace the factor: it moved by 0.400 %");
        assertThat(said("change.figure.2")).isEqualTo("mean 0.833 %, 3 trials of M-1/2");
        assertThat(said("change.reason.0")).startsWith("After less before: 0.400 %");
        assertThat(said("risk.error")).isEqualTo("0.40");
        Path file = folder.resolve("difference.png");
        made.asker.filesToWrite.add(file);
        EventThread.run(() -> find(AbstractButton.class, "save.difference").doClick());
        assertThat(Files.size(file)).isGreaterThan(1000);
    }

    /** The comparison says to replace the factor; the person decides by keys to have two more trials made, and says why. */
    @Test
    void aDecisionIsTypedKeptAndShownWithWhatFollows() throws Exception {
        EventThread.run(made::changeLedge);
        EventThread.run(() -> made.testNew(0.8, 0.9, 0.8));
        EventThread.settle();
        Keys keys = new Keys();
        Keys.bringTo(() -> find(JComboBox.class, "decision.choice"));
        keys.strikeUntil(
                () -> find(JTextComponent.class, "decision.more").isShowing(), "the field of more", KeyEvent.VK_DOWN);
        keys.strikeUntil(() -> find(JTextComponent.class, "decision.more").isFocusOwner(), "Enter", KeyEvent.VK_ENTER);
        keys.strikeUntil(
                () -> find(JTextComponent.class, "decision.more").getText().equals("2"), "the digit", KeyEvent.VK_2);
        keys.strikeUntil(
                () -> find(JTextComponent.class, "decision.reason").isFocusOwner(), "Enter", KeyEvent.VK_ENTER);
        keys.strikeUntil(
                () -> find(JTextComponent.class, "decision.reason").getText().equals("k"), "the reason", KeyEvent.VK_K);
        keys.strikeUntil(() -> find(AbstractButton.class, "decision.keep").isFocusOwner(), "Enter", KeyEvent.VK_ENTER);
        keys.strikeUntil(
                () -> find(JTable.class, "change.decisions").getRowCount() == 1, "the decision", KeyEvent.VK_ENTER);
        assertThat(said("decision.next")).startsWith("Decided to test more. Make 2 trials of the new material");
        assertThat(EventThread.call(() ->
                        find(JTable.class, "change.decisions").getValueAt(0, 1).toString()))
                .contains("test 2 more");
        assertThat(EventThread.call(() ->
                        find(JTable.class, "change.decisions").getValueAt(0, 3).toString()))
                .as("the margin with which it was made: half a step of 0.1 %")
                .isEqualTo("0.05");
        EventThread.run(() -> made.laboratory.trials("M-1/2", "M-1", TimeBook.START.plusDays(70), 0.8));
        EventThread.run(made.desk::refresh);
        EventThread.settle();
        assertThat(EventThread.call(() ->
                        find(JTable.class, "change.decisions").getValueAt(0, 7).toString()))
                .contains("came in. Compare again");
    }

    @Test
    void takesTheSpreadAndShowsTheCurveInBothThemes() throws Exception {
        assertThat(said("risk.sentence")).startsWith("Type how far the true air differs");
        EventThread.run(() -> {
            find(JTextComponent.class, "risk.spread").setText("0.6");
            find(JTextComponent.class, "risk.reading-spread").setText("0.2");
            find(JTextComponent.class, "risk.error").setText("0.3");
        });
        EventThread.settle();
        assertThat(said("risk.sentence"))
                .isEqualTo("An error of 0.30 % air passes 0.44 % and fails 2.31 % of all loads wrongly.");
        EventThread.run(Theme.DARK::apply);
        EventThread.settle();
        Path file = folder.resolve("risk.csv");
        made.asker.filesToWrite.add(file);
        EventThread.run(() -> find(AbstractButton.class, "save.risk").doClick());
        assertThat(Files.readAllLines(file)).hasSize(42).first().asString().startsWith("error_pct_air,");
        EventThread.run(() -> find(JTextComponent.class, "risk.tolerance").setText("0"));
        EventThread.settle();
        assertThat(said("risk.sentence")).isEmpty();
        assertThat(said("tolerance.message")).contains("Give one greater than 0");
        EventThread.run(Theme.LIGHT::apply);
    }
}
