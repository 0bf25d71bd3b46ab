package porebench.desk.meter;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.MixDesk;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;
import porebench.method.MeterType;
import porebench.record.MeterCalibration;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.id.MeterId;

/** Enters, corrects and prints calibrations of a meter in a real window. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class MeterWindowTest {
    private MixDesk mixDesk;
    private MeterPage page;
    private JFrame frame;
    private String today = "";
    private int wentBack;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            mixDesk = new MixDesk(Locale.ENGLISH);
            mixDesk.keepElsewhere(Draft.of(Samples.meter("A-1", MeterType.A)));
            mixDesk.desk.refresh();
            today = mixDesk.desk.tools().today().toString();
            page = new MeterPage(mixDesk.desk, () -> wentBack++);
            page.open(new MeterId("B-1"));
            frame = new JFrame();
            frame.add(page.component());
            frame.setSize(1000, 900);
            frame.setVisible(true);
        });
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(frame::dispose);
    }

    private <T extends Component> T find(Class<T> type, String name) {
        return Named.in(frame.getContentPane(), type, name);
    }

    private void type(String field, String text) throws Exception {
        EventThread.run(() -> find(JTextComponent.class, field).setText(text));
    }

    private void press(String button) throws Exception {
        EventThread.run(() -> find(AbstractButton.class, button).doClick());
    }

    private void choose(String box, int index) throws Exception {
        EventThread.run(() -> find(JComboBox.class, box).setSelectedIndex(index));
    }

    private String text(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).getText());
    }

    /** Opens a cell, types over what stands there and leaves it, as Enter does. */
    private void cell(String name, int row, int column, String text) throws Exception {
        EventThread.run(() -> {
            JTable table = find(JTable.class, name);
            assertThat(table.editCellAt(row, column)).isTrue();
            ((JTextComponent) table.getEditorComponent()).setText(text);
            assertThat(table.getCellEditor().stopCellEditing()).isTrue();
        });
    }

    private void row(String name, int row, String... cells) throws Exception {
        for (int column = 0; column < cells.length; column++) {
            if (!cells[column].isEmpty()) {
                cell(name, row, column, cells[column]);
            }
        }
    }

    /** The bowl holds 7.020 kg of water, the vessel 351.0 g: 5.000 % of it. */
    private void enterAWholeCalibration(String second) throws Exception {
        press("meter.begin");
        row("bowl.fills", 0, "3500", "400", "10920", "20");
        row("bowl.fills", 1, "3.500 kg", "400", "10920", "20");
        type("dial.vesselWater", "351.0");
        type("dial.waterTemperature", "20");
        row("dial.points", 0, "1", "", "5.05");
        row("dial.points", 1, "2", "", second);
        type("dial.leakMarks", "0.2");
    }

    @Test
    void aWholeCalibrationIsEnteredAndPutsTheMeterInOrder() throws Exception {
        assertThat(text("meter.state")).startsWith("Never calibrated.");
        enterAWholeCalibration("10.08");
        assertThat(text("entry.results.0")).startsWith("Volume 7.0326 L");
        press("entry.save");
        MeterCalibration kept = mixDesk.book
                .latest(MeterCalibration.class, "B-1/" + today)
                .orElseThrow()
                .value();
        assertThat(kept.bowl().orElseThrow().fills()).hasSize(2);
        assertThat(kept.bowl().orElseThrow().fills().get(1).empty()).hasToString("3.500 kg");
        assertThat(kept.dial().orElseThrow().points()).hasSize(2);
        assertThat(kept.by()).isEqualTo("R. Vale");
        // Three months from the day, 2026-03-02.
        assertThat(text("meter.state")).isEqualTo("Calibrated. The calibration holds until 2026-06-02.");
        assertThat(EventThread.call(() -> find(JTable.class, "calibrations").getValueAt(0, 8)))
                .isEqualTo("passes");
        assertThat(EventThread.call(() -> find(JTable.class, "beside").getRowCount()))
                .isEqualTo(2);
        assertThat(EventThread.call(() -> find(Component.class, "plot.dial").isShowing()))
                .isTrue();
        assertThat(EventThread.call(() -> page.history().orElseThrow().isChanged()))
                .isFalse();
    }

    @Test
    void whatIsMissingIsSaidWhereItIsMissing() throws Exception {
        press("meter.begin");
        press("entry.save");
        assertThat(text("entry.refusal")).isEqualTo("One thing must be corrected before it can be saved.");
        assertThat(text("reason.message")).startsWith("Nothing is measured");
        row("dial.points", 0, "1", "", "5.05");
        press("entry.save");
        assertThat(text("dial.vesselWater.message"))
                .startsWith("The mass of water in the calibration vessel is missing");
        assertThat(text("dial.points.problems.0")).contains("Check the dial at two amounts at least");
        assertThat(mixDesk.book.latest(MeterCalibration.class)).isEmpty();
        press("entry.drop");
        assertThat(EventThread.call(() -> page.history().orElseThrow().isChanged()))
                .isFalse();
        press("meter.back");
        assertThat(wentBack).isEqualTo(1);
    }

    @Test
    void aMisreadDialIsCorrectedWithAReason() throws Exception {
        enterAWholeCalibration("10.20");
        press("entry.save");
        assertThat(text("meter.state")).startsWith("The last calibration did not pass.");
        press("meter.correct");
        cell("dial.points", 1, 2, "10.08");
        press("entry.save");
        assertThat(mixDesk.book.history(MeterCalibration.class, "B-1/" + today)).hasSize(1);
        mixDesk.asker.reasons.add("misread");
        press("entry.save");
        assertThat(mixDesk.book.history(MeterCalibration.class, "B-1/" + today)).hasSize(2);
        assertThat(text("meter.state")).startsWith("Calibrated.");
        assertThat(text("details.versions.0")).contains("Version 2").endsWith("misread");
    }

    @Test
    void aColumnOfATypeAMeterIsEnteredAndItsReadingsElsewhereAreSaid() throws Exception {
        choose("meter.choose", 0);
        press("meter.begin");
        type("elevation", "0");
        type("column.vesselWater", "280.0");
        type("column.bowlWater", "7000");
        type("column.expansion", "0.06");
        type("column.workingPressure", "100");
        press("entry.save");
        // R = 98 x 280 / 7000 = 3.92, K = 3.98.
        assertThat(text("meter.inForce.0")).startsWith("It must read K = 3.98 % air");
        type("meter.usedElevation", "500");
        assertThat(text("meter.used")).contains("more than 183 m: calibrate it there");
    }

    @Test
    void aFillIsTypedByKeyboardAlone() throws Exception {
        press("meter.begin");
        CountDownLatch focused = new CountDownLatch(1);
        EventThread.run(() -> {
            JTable table = find(JTable.class, "bowl.fills");
            table.changeSelection(0, 0, false, false);
            table.addFocusListener(new FocusAdapter() {
                @Override
                public void focusGained(FocusEvent event) {
                    focused.countDown();
                }
            });
            frame.toFront();
            table.requestFocus();
        });
        assertThat(focused.await(30, TimeUnit.SECONDS))
                .as("the table has the focus")
                .isTrue();
        Keys keys = new Keys();
        JTable table = find(JTable.class, "bowl.fills");
        keys.strikeUntil(() -> Keys.isTyping(table, "3"), "3", KeyEvent.VK_3);
        keys.strikeUntil(() -> Keys.isTyping(table, "35"), "35", KeyEvent.VK_5);
        keys.strikeUntil(() -> table.getSelectedColumn() == 1, "the next column", KeyEvent.VK_TAB);
        keys.strikeUntil(() -> Keys.isTyping(table, "4"), "4", KeyEvent.VK_4);
        keys.strikeUntil(() -> table.getSelectedColumn() == 2, "the column after it", KeyEvent.VK_TAB);
        assertThat(EventThread.call(() -> table.getValueAt(0, 0))).isEqualTo("35");
        assertThat(EventThread.call(() -> table.getValueAt(0, 1))).isEqualTo("4");
        assertThat(EventThread.call(table::getRowCount)).as("a row to go on in").isEqualTo(2);
        keys.strike(KeyEvent.VK_SHIFT, KeyEvent.VK_DOWN);
        assertThat(EventThread.comes(() -> table.getSelectedRowCount() == 2))
                .as("a block to copy")
                .isTrue();
        EventThread.run(page::undo);
        assertThat(EventThread.call(() -> page.history().orElseThrow().isChanged()))
                .isFalse();
    }

    @Test
    void recordAndBlankFormAreSavedAsPdf(@TempDir Path folder) throws Exception {
        enterAWholeCalibration("10.08");
        press("entry.save");
        Path record = folder.resolve("record.pdf");
        mixDesk.asker.filesToWrite.add(record);
        press("record.save");
        assertThat(Files.size(record)).isPositive();
        Path form = folder.resolve("form.pdf");
        mixDesk.asker.filesToWrite.add(form);
        press("form.save");
        assertThat(Files.size(form)).isPositive();
        assertThat(text("meter.told")).isEqualTo("Saved as " + form + ".");
        assertThat(mixDesk.asker.failures).isEmpty();
    }
}
