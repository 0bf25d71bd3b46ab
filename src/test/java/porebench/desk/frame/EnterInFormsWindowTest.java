package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;

/** Enter through every form, struck without looking: from field to field, never into a box with units or a tick, and on at its end. */
@NeedsDisplay
class EnterInFormsWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Keys keys;

    @BeforeEach
    void openTheDemo() throws Exception {
        keys = new Keys();
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(demo::open);
        EventThread.run(() -> window.desk().setPerson("M. Sorrel"));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(window::close);
        assertThat(demo.asker.failures).isEmpty();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private void press(String button) throws Exception {
        EventThread.run(() -> named(AbstractButton.class, button).doClick());
    }

    private void turnTo(String page) throws Exception {
        EventThread.run(() -> window.turnTo(window.pages().named(page).orElseThrow()));
    }

    private static String focused() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Component::getName)
                .orElse("");
    }

    /** Strikes Enter from a field on until the keyboard is on the last of some places, and returns where it went. */
    private List<String> way(String first, String last) throws Exception {
        Keys.bringTo(() -> named(JComponent.class, first));
        List<String> way = new ArrayList<>();
        String now = first;
        while (!now.equals(last) && way.size() < 30) {
            String before = now;
            keys.strike(KeyEvent.VK_ENTER);
            assertThat(EventThread.comes(
                            () -> !focused().equals(before) && !focused().isEmpty()))
                    .as("Enter goes on from " + before)
                    .isTrue();
            now = EventThread.call(EnterInFormsWindowTest::focused);
            way.add(now);
        }
        return way;
    }

    /** Pasted, since no keypad has a raised three; cubic decimetres are litres. */
    @ParameterizedTest
    @CsvSource({"27 ft\u00b3,27,ft3", "0.98 m\u00b3,0.98,m3", "27\u00a0ft3,27,ft3", "980 dm3,980,L"})
    void aVolumeIsUnderstoodInEverySpelling(String pasted, String number, String unit) throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        turnTo("mix");
        Keys.bringTo(() -> named(JTextField.class, "batchVolume"));
        EventThread.run(() -> named(JTextField.class, "batchVolume").selectAll());
        Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(pasted), null);
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_V);
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "batchVolume").getText().equals(number)))
                .as(EventThread.call(
                        () -> named(JTextField.class, "batchVolume").getText()))
                .isTrue();
        assertThat(EventThread.call(
                        () -> named(JComboBox.class, "batchVolumeUnit").getSelectedItem()))
                .hasToString(unit);
        EventThread.run(() -> window.current().dropDraft());
    }

    @Test
    void throughTheMixDesignIntoItsConstituents() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        turnTo("mix");
        assertThat(way("title", "constituents"))
                .containsExactly(
                        "plant",
                        "profile",
                        "volumeFrom",
                        "batchVolume",
                        "targetAir",
                        "airTolerance",
                        "soakMinutes",
                        "remarks",
                        "constituents");
    }

    @Test
    void throughTheSettingsOfTheSample() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        turnTo("sample");
        press("sample.settings");
        assertThat(way("trials", "sheet.print")).containsExactly("spare", "moisture.0", "moisture.1", "sheet.print");
    }

    @Test
    void throughTheFormOfAFactorToItsButton() throws Exception {
        EventThread.run(() -> window.openMix(new MixId("HG-108")));
        turnTo("factor");
        assertThat(way("inForceFrom", "factor.issue"))
                .containsExactly("inForceAt", "recheckBy", "conditions", "approvedBy", "reason", "factor.issue");
    }

    @Test
    void throughTheRegistersToTheirButtonsWhichEnterPresses() throws Exception {
        turnTo("sources");
        press("source.new");
        assertThat(EventThread.comes(() -> focused().equals("id"))).isTrue();
        EventThread.run(() -> named(JTextField.class, "id").setText("S-77"));
        assertThat(way("id", "source.save"))
                .containsExactly(
                        "name",
                        "producer",
                        "product",
                        "size",
                        "role",
                        "place",
                        "ledge",
                        "relativeDensity",
                        "absorption",
                        "retained",
                        "remarks",
                        "changedOn",
                        "source.save");
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(
                        () -> named(JComponent.class, "name.message").isShowing()))
                .as("what is missing is said under its field")
                .isTrue();
        EventThread.run(() -> window.current().dropDraft());
        turnTo("meters");
        press("meter.new");
        EventThread.run(() -> named(JTextField.class, "id").setText("B-77"));
        assertThat(way("id", "meter.save"))
                .noneMatch(name -> name.endsWith("Unit"))
                .doesNotContain("inService");
        EventThread.run(() -> window.current().dropDraft());
        turnTo("equipment");
        press("equipment.new");
        EventThread.run(() -> named(JTextField.class, "id").setText("E-77"));
        assertThat(way("id", "equipment.save")).noneMatch(name -> name.endsWith("Unit"));
        EventThread.run(() -> window.current().dropDraft());
    }

    @Test
    void throughACalibrationIntoEachTableAndToItsButton() throws Exception {
        EventThread.run(() -> window.openMeter(new MeterId("B-1")));
        press("meter.begin");
        assertThat(way("calibratedOn", "bowl.fills"))
                .containsExactly("by", "reason", "elevation", "id", "remarks", "bowl.fills");
        JTable fills = named(JTable.class, "bowl.fills");
        assertThat(EventThread.call(() -> fills.getSelectedRow() + "/" + fills.getSelectedColumn()))
                .isEqualTo("0/0");
        keys.strike(KeyEvent.VK_3);
        assertThat(EventThread.comes(() -> Keys.isTyping(fills, "3"))).isTrue();
        keys.strike(KeyEvent.VK_ENTER);
        assertThat(EventThread.comes(() -> !fills.isEditing() && fills.getSelectedRow() == 1))
                .as("Enter goes down a table")
                .isTrue();
        assertThat(EventThread.call(() -> String.valueOf(fills.getValueAt(0, 0))))
                .isEqualTo("3");
        assertThat(way("bowl.height", "dial.vesselWater")).containsExactly("dial.vesselWater");
        assertThat(way("dial.vesselWater", "dial.points")).containsExactly("dial.waterTemperature", "dial.points");
        assertThat(way("dial.initialLine", "entry.save"))
                .containsExactly("dial.leakMarks", "dial.chamber", "dial.initialPressure", "entry.save");
        EventThread.run(() -> window.current().dropDraft());
    }
}
