package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTextField;
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
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.SourceStep;
import porebench.record.book.Belonging;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

/** The two acts on a source by the keyboard: another stone from a day on, and a typing mistake put right. */
@NeedsDisplay
class SourceActsWindowTest {
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
        started.startWith(null);
        EventThread.run(() -> window.turnTo(window.pages().named("sources").orElseThrow()));
        RowTable<?> table = Named.in(window.content(), RowTable.class, "source.table");
        assertThat(EventThread.comes(() -> table.getRowCount() > 1)).isTrue();
        EventThread.run(() -> table.setRowSelectionInterval(1, 1));
        assertThat(EventThread.comes(() -> mixes().getRowCount() == 3)).isTrue();
    }

    @AfterEach
    void close() throws Exception {
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private RowTable<?> mixes() {
        return Named.in(window.content(), RowTable.class, "source.mixes");
    }

    private JTextComponent field(String name) {
        return Named.in(window.current().component(), JTextComponent.class, name);
    }

    private AbstractButton button(String name) {
        return Named.in(window.current().component(), AbstractButton.class, name);
    }

    private void type(String field, String capitals) throws Exception {
        Keys.bringTo(() -> field(field));
        EventThread.run(() -> field(field).selectAll());
        capitals.chars().forEach(keys::strike);
        assertThat(EventThread.comes(() -> field(field).getText().equalsIgnoreCase(capitals)))
                .as(field)
                .isTrue();
    }

    private void choose(int times, String act) throws Exception {
        Keys.bringTo(() -> Named.in(window.current().component(), JComboBox.class, "step"));
        for (int i = 0; i < times; i++) {
            keys.strike(KeyEvent.VK_DOWN);
        }
        assertThat(EventThread.comes(() -> act.equals(Named.in(window.current().component(), JComboBox.class, "step")
                        .getSelectedItem())))
                .as(act)
                .isTrue();
    }

    private void save() throws Exception {
        Keys.bringTo(() -> button("source.save"));
        keys.strike(KeyEvent.VK_SPACE);
    }

    private List<Version<Source>> kept() {
        try (LabBook there = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            return there.history(Source.class, "S-02");
        }
    }

    private String cell(int row, int column) throws Exception {
        return EventThread.call(() -> String.valueOf(mixes().getValueAt(row, column)));
    }

    @Test
    void aChangeShowsWhatItWouldDoAndACorrectionDoesNothing() throws Exception {
        LocalDate today = EventThread.call(() -> window.desk().tools().today());
        type("ledge", "B 3");
        save();
        assertThat(EventThread.comes(() -> Named.in(window.current().component(), JTextComponent.class, "step.message")
                        .isShowing()))
                .as("it does not say what it is")
                .isTrue();
        assertThat(kept()).hasSize(1);
        choose(1, "changed");
        type("changedOn", today.toString());
        type("reason", "MOVED");
        assertThat(EventThread.comes(
                        () -> field("source.touch").getText().startsWith("If you save this, from " + today)))
                .isTrue();
        assertThat(cell(0, 2)).isEqualTo("in force");
        assertThat(cell(0, 3)).isEqualTo("source changed");
        asker.confirmations.add(true);
        save();
        assertThat(EventThread.comes(() -> kept().size() == 2)).isTrue();
        assertThat(asker.acts).as("the reason stands in the form").isEmpty();
        Source changed = kept().get(1).value();
        assertThat(changed.step()).contains(SourceStep.CHANGED);
        assertThat(changed.changedOn()).isEqualTo(Optional.of(today));
        assertThat(kept().get(1).stamp().why()).isEqualToIgnoringCase("moved");
        assertThat(EventThread.comes(() -> "source changed".equals(mixes().getValueAt(0, 2))))
                .isTrue();

        type("absorption", "0.7");
        choose(2, "corrected");
        type("reason", "SLIP");
        assertThat(EventThread.comes(() -> field("source.touch")
                        .getText()
                        .equals("A correction of a typing mistake changes " + "no factor.")))
                .isTrue();
        save();
        assertThat(EventThread.comes(() -> kept().size() == 3)).isTrue();
        assertThat(kept().get(2).value().step()).contains(SourceStep.CORRECTED);
        assertThat(EventThread.comes(() -> Named.in(window.content(), RowTable.class, "source.stones")
                                .getRowCount()
                        == 2))
                .isTrue();
        assertThat(EventThread.comes(() -> !((JTextField) field("changedOn")).isEditable()))
                .as("a version says anew what it is")
                .isTrue();
    }

    @Test
    void aMixThatUsesTheSourceIsOpenedFromItsTable() throws Exception {
        Keys.bringTo(this::mixes);
        EventThread.run(() -> mixes().setRowSelectionInterval(1, 1));
        String opened = cell(1, 0);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> window.pages().isStep(window.current())
                        && window.desk()
                                .selected()
                                .filter(mix -> opened.equals(mix.text()))
                                .isPresent()))
                .isTrue();
    }

    /** Enter on a trial made with the source turns the window to it, with its mix. */
    @Test
    void aTrialMadeWithTheSourceIsOpened() throws Exception {
        RowTable<?> trials = Named.in(window.content(), RowTable.class, "source.trials");
        assertThat(EventThread.comes(() -> trials.getRowCount() > 10)).isTrue();
        EventThread.run(() -> trials.setRowSelectionInterval(0, 0));
        String mix = EventThread.call(() -> String.valueOf(trials.getValueAt(0, 2)));
        Keys.bringTo(() -> trials);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> window.current().component().isShowing()
                        && window.desk()
                                .selected()
                                .filter(one -> one.text().equals(mix))
                                .isPresent()
                        && window.current() == window.pages().named("trials").orElseThrow()))
                .isTrue();
    }

    private List<Version<SourceMeasurement>> measured() {
        try (LabBook there = new SqliteShelf(DemoDesk.DAY).open(started.demoFile())) {
            return there.latestOf(Belonging.MEASUREMENTS_OF_SOURCE, "S-02");
        }
    }

    private RowTable<?> measurements() {
        return Named.in(window.content(), RowTable.class, "source.measured");
    }

    /** A measurement is typed by keys alone and corrected by the same form; the figures in use stay. */
    @Test
    void aMeasurementIsEnteredAndCorrected() throws Exception {
        int before = measured().size();
        type("measured.testedBy", "R VALE");
        type("measured.relativeDensity", "2.67");
        Keys.bringTo(() -> button("measured.keep"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(() -> measurements().getRowCount() == before + 1))
                .isTrue();
        assertThat(measured()).hasSize(before + 1);
        assertThat(EventThread.comes(
                        () -> field("measured.relativeDensity").getText().isEmpty()))
                .isTrue();
        EventThread.run(() -> measurements().setRowSelectionInterval(0, 0));
        Keys.bringTo(() -> button("measured.correct"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> field("measured.relativeDensity").getText().equals("2.67")))
                .isTrue();
        type("measured.relativeDensity", "2.68");
        asker.reasons.add("misread");
        Keys.bringTo(() -> button("measured.keep"));
        keys.strike(KeyEvent.VK_SPACE);
        assertThat(EventThread.comes(
                        () -> "2.68".equals(String.valueOf(measurements().getValueAt(0, 3)))))
                .isTrue();
        assertThat(measured()).hasSize(before + 1).anySatisfy(version -> {
            assertThat(version.number()).isEqualTo(2);
            assertThat(version.stamp().why()).isEqualTo("misread");
        });
        assertThat(kept()).hasSize(1);
    }
}
