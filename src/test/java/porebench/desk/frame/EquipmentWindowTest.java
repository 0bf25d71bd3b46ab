package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Page;
import porebench.record.Equipment;
import porebench.record.EquipmentKind;

/** The register of equipment in the real window, on the demo laboratory in a real file. */
@NeedsDisplay
class EquipmentWindowTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    Path folder;

    private DemoDesk demo;
    private WorkbenchFrame window;
    private Page page;

    @BeforeEach
    void openWindow() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        demo = EventThread.call(() -> DemoDesk.filled(folder));
        window = EventThread.call(() -> demo.open());
        page = window.pages().named("equipment").orElseThrow();
        EventThread.run(() -> window.turnTo(page));
    }

    @AfterEach
    void closeWindow() throws Exception {
        EventThread.run(page::dropDraft);
        EventThread.run(window::close);
        assertThat(window.isClosed()).isTrue();
    }

    private JTextField field(String name) {
        return Named.in(page.component(), JTextField.class, name);
    }

    private void type(String name, String text) throws Exception {
        JTextField field = field(name);
        EventThread.run(() -> field.setText(text));
    }

    private void press(String name) throws Exception {
        AbstractButton button = Named.in(page.component(), AbstractButton.class, name);
        EventThread.run(button::doClick);
    }

    @Test
    void aNewPieceIsTypedInSavedAndStandsInTheRegister() throws Exception {
        press("equipment.new");
        JComboBox<?> kind = Named.in(page.component(), JComboBox.class, "type");
        EventThread.run(() -> kind.setSelectedItem(EquipmentKind.CYLINDER.symbol()));
        type("id", "CYL-9");
        type("division", "1");
        type("limit", "0.6");
        type("calibratedOn", "2026-11-02");
        type("dueOn", "2027-11-02");
        type("usedFrom", "2026-11-20");
        assertThat(page.history().orElseThrow().isChanged()).isTrue();
        press("equipment.save");
        assertThat(page.history().orElseThrow().isChanged()).isFalse();
        Equipment kept =
                demo.desk.book().latest(Equipment.class, "CYL-9").orElseThrow().value();
        assertThat(kept.type()).isEqualTo(EquipmentKind.CYLINDER);
        assertThat(kept.calibration().orElseThrow().dueOn()).isEqualTo(LocalDate.of(2027, 11, 2));
        JTable table = Named.in(page.component(), JTable.class, "equipment.table");
        assertThat(table.getRowCount()).isEqualTo(6);
        assertThat(table.getValueAt(2, 0)).isEqualTo("CYL-9");
        assertThat(table.getValueAt(2, 1)).isEqualTo("calibrated");
        assertThat(table.getValueAt(2, 4)).isEqualTo("1 mL");
    }

    @Test
    void aCalibrationIsKeptAsANewVersionWithItsReason() throws Exception {
        JTable table = Named.in(page.component(), JTable.class, "equipment.table");
        EventThread.run(() -> table.setRowSelectionInterval(2, 2));
        assertThat(field("id").getText()).isEqualTo("THM-1");
        assertThat(field("id").isEditable()).isFalse();
        type("calibratedOn", "2026-11-24");
        type("dueOn", "2027-11-24");
        demo.asker.reasons.add("back from calibration");
        press("equipment.save");
        assertThat(demo.desk.book().history(Equipment.class, "THM-1")).hasSize(2);
        assertThat(table.getValueAt(2, 1)).isEqualTo("calibrated");
    }
}
