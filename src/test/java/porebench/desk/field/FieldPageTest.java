package porebench.desk.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.Named;
import porebench.record.FieldReading;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** What the page asks before it saves, and what it does with the chosen reading; without a display. */
class FieldPageTest {
    private final List<MixId> opened = new ArrayList<>();
    private int imports;
    private FieldDesk made;
    private FieldPage page;

    @BeforeEach
    void begin() {
        made = new FieldDesk();
        made.desk.select(new MixId("HG-104"));
        page = new FieldPage(made.desk, opened::add, (over, taking) -> imports++, made.settings);
        page.show(new MixId("HG-104"));
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(page.component(), type, name);
    }

    private void type(String field, String text) {
        named(JTextField.class, field).setText(text);
    }

    private void press(String button) {
        named(AbstractButton.class, button).doClick();
    }

    private boolean canPress(String button) {
        return named(AbstractButton.class, button).isEnabled();
    }

    private List<FieldReading> ours() {
        return made.kept("HG-104").stream()
                .map(Version::value)
                .filter(reading -> reading.truck().equals("ours"))
                .toList();
    }

    private void typeOne(String at) {
        type("truck", "ours");
        type("gauge", "5.4");
        type("readAt", at);
    }

    private void chooseOurs() {
        JTable table = named(JTable.class, "readings.table");
        for (int row = 0; row < table.getRowCount(); row++) {
            if ("ours".equals(table.getValueAt(row, 2))) {
                table.setRowSelectionInterval(row, row);
            }
        }
    }

    @Test
    void everyReadingThatIsSavedComesIntoTheTable() {
        JTable table = named(JTable.class, "readings.table");
        int before = table.getRowCount();
        typeOne("2026-11-25 09:10");
        press("reading.save");
        assertThat(table.getRowCount()).isEqualTo(before + 1);
        typeOne("2026-11-25 09:12");
        press("reading.save");
        assertThat(table.getRowCount()).isEqualTo(before + 2);
    }

    /**
     * HG-104 is wet-sieved with G 0.2: 4.2 is 4.0 in the sieved concrete. By pencil of its design, Vt 0.96069, Va 0.16132, Vc 0.79938, Vm
     * 0.45387: 3.1975 / (0.96069 - 0.00645) = 3.3508 and 3.1975 / (0.45387 + 0.01382) = 6.8368.
     */
    @Test
    void thePageSaysFullMixtureAndMortarOfAWetSievedConcrete() {
        type("truck", "ours");
        type("gauge", "4.2");
        type("readAt", "2026-11-25 09:10");
        press("reading.save");
        chooseOurs();
        assertThat(named(JTextArea.class, "readings.why").getText())
                .contains("Full mixture 3.4 %, mortar 6.8 %. Judged is the air of the sieved concrete, 4.0 %.");
    }

    @Test
    void aDoubtIsAskedAboutAndWithoutAReasonNothingIsSaved() {
        typeOne("2026-11-25 10:10");
        press("reading.save");
        assertThat(made.asker.asked).containsExactly("Save the reading of HG-104, truck ours with its doubts");
        assertThat(ours()).isEmpty();
        made.asker.reasons.add("the phone is ahead");
        page.save();
        assertThat(ours())
                .singleElement()
                .satisfies(reading -> assertThat(reading.keptBecause()).contains("the phone is ahead"));
        assertThat(named(JTextField.class, "gauge").getText()).isEmpty();
    }

    @Test
    void whatIsWrongIsSaidUnderItsFieldAndNothingIsAsked() {
        type("truck", "ours");
        press("reading.save");
        type("gauge", "5.4");
        type("mixId", "HG-999");
        press("reading.save");
        assertThat(made.asker.asked).isEmpty();
        assertThat(ours()).isEmpty();
        assertThat(page.undoLabel()).isPresent();
        page.dropDraft();
        assertThat(named(JTextField.class, "mixId").getText()).isEqualTo("HG-104");
        assertThat(page.undoLabel()).isEmpty();
        // Nothing is typed: there is nothing to save.
        page.save();
        assertThat(ours()).isEmpty();
    }

    @Test
    void aCorrectionAsksWhyAndIsANewVersion() {
        typeOne("2026-11-25 09:00");
        press("reading.save");
        chooseOurs();
        press("readings.correct");
        assertThat(canPress("reading.save")).isFalse();
        type("gauge", "5.5");
        press("reading.save");
        assertThat(made.asker.asked).containsExactly("Correct the reading of HG-104, truck ours");
        made.asker.reasons.add("read wrongly");
        press("reading.save");
        assertThat(ours())
                .singleElement()
                .satisfies(reading -> assertThat(reading.gaugePercent()).hasToString("5.5"));
        assertThat(made.book.history(FieldReading.class, ours().get(0).recordId()))
                .hasSize(2);
        chooseOurs();
        press("readings.correct");
        press("reading.clear");
        assertThat(named(JTextField.class, "gauge").getText()).isEmpty();
    }

    @Test
    void theChosenReadingIsStruckAndCountsAgainEachForAReason() {
        assertThat(List.of(
                        canPress("readings.strike"),
                        canPress("readings.restore"),
                        canPress("readings.correct"),
                        canPress("readings.open")))
                .containsOnly(false);
        typeOne("2026-11-25 09:00");
        press("reading.save");
        chooseOurs();
        assertThat(named(JTextArea.class, "readings.why").getText())
                .startsWith("HG-104, truck ours, 2026-11-25 09:00:");
        press("readings.strike");
        assertThat(ours().get(0).counts()).isTrue();
        made.asker.reasons.add("the clamp leaked");
        press("readings.strike");
        assertThat(ours().get(0).struckBecause()).contains("the clamp leaked");
        assertThat(canPress("readings.strike")).isFalse();
        assertThat(named(JTextArea.class, "readings.why").getText()).contains("struck", "the clamp leaked");
        made.asker.reasons.add("it held");
        press("readings.restore");
        assertThat(ours().get(0).counts()).isTrue();
        press("readings.open");
        assertThat(opened).containsExactly(new MixId("HG-104"));
        press("readings.import");
        assertThat(imports).isEqualTo(1);
    }

    @Test
    void theGuardBandIsOffAndChangesWhatIsAsked() {
        AbstractButton guard = named(AbstractButton.class, "readings.guard");
        assertThat(guard.isSelected()).isFalse();
        assertThat(guard.getToolTipText()).contains("Fewer bad loads pass");
        guard.doClick();
        assertThat(made.model().isGuarded()).isTrue();
        type("readings.first", "2026-11-25");
        type("readings.last", "2026-11-24");
        assertThat(canPress("readings.print")).isFalse();
        type("readings.last", "2026-11-25");
        assertThat(canPress("readings.print")).isTrue();
    }
}
