package porebench.desk.frame;

import static java.nio.charset.StandardCharsets.US_ASCII;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
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
import porebench.record.FieldReading;
import porebench.record.book.Belonging;
import porebench.record.id.MixId;

/** Field readings entered by the keyboard alone in a started window, work beside the event thread. */
@NeedsDisplay
class ReadingsWindowTest {
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
        started.startWith(null);
        window = started.window();
        EventThread.run(() -> window.openMix(new MixId("HG-104")));
        assertThat(EventThread.comes(() -> window.desk()
                        .selected()
                        .filter(new MixId("HG-104")::equals)
                        .isPresent()))
                .isTrue();
        EventThread.run(() -> window.turnTo(window.pages().named("readings").orElseThrow()));
    }

    @AfterEach
    void close() throws Exception {
        EventThread.run(() -> window.current().dropDraft());
        started.close();
        assertThat(asker.failures).isEmpty();
    }

    private <T extends Component> T named(Class<T> type, String name) {
        return Named.in(window.current().component(), type, name);
    }

    private static String focused() {
        return Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Component::getName)
                .orElse("");
    }

    /** Strikes a text and Enter after it, waiting for nothing. */
    private void strike(String text) {
        for (char c : text.toCharArray()) {
            if (Character.isUpperCase(c)) {
                keys.strike(KeyEvent.VK_SHIFT, KeyEvent.getExtendedKeyCodeForChar(c));
            } else {
                keys.strike(KeyEvent.getExtendedKeyCodeForChar(c));
            }
        }
        keys.strike(KeyEvent.VK_ENTER);
    }

    private List<FieldReading> kept() {
        return DemoDesk.aside(() -> window.desk().book().latestOf(Belonging.READINGS_OF_MIX, "HG-104").stream()
                .map(version -> version.value())
                .filter(reading -> reading.remarks().startsWith("seen"))
                .toList());
    }

    @Test
    void threeReadingsAreStruckInOneGoAndNoKeyIsLostOrLandsElsewhere() throws Exception {
        int before = kept().size();
        Keys.bringTo(() -> named(JComponent.class, "mixId"));
        EventThread.run(() -> named(JTextField.class, "mixId").selectAll());
        strike("HG-104");
        for (String load : List.of("11", "12", "13")) {
            strike(load);
            strike("5.4");
            strike("2310");
            strike("19.5");
            strike("seen " + load);
        }
        assertThat(EventThread.comes(() -> named(JTable.class, "readings.table").getRowCount() >= 3
                        && named(JTextField.class, "truck").getText().isEmpty()))
                .isTrue();
        assertThat(EventThread.comes(() -> kept().size() == before + 3)).isTrue();
        assertThat(kept())
                .extracting(FieldReading::truck, FieldReading::remarks)
                .containsExactlyInAnyOrder(tuple("11", "seen 11"), tuple("12", "seen 12"), tuple("13", "seen 13"));
        for (FieldReading reading : kept()) {
            assertThat(reading.gaugePercent()).isEqualByComparingTo("5.4");
            assertThat(reading.density().orElseThrow()).hasToString("2310 kg/m3");
            assertThat(reading.temperatureCelsius().orElseThrow()).isEqualByComparingTo("19.5");
            assertThat(reading.keptBecause()).isEmpty();
        }
    }

    @Test
    void theListIsSavedAsPdfAndAsCsvAndAMixLeadsToItsReadingsAndBack() throws Exception {
        Keys.bringTo(() -> named(JComponent.class, "truck"));
        for (String field : List.of("21", "5.4", "", "", "seen 21")) {
            strike(field);
        }
        assertThat(EventThread.comes(() -> kept().size() == 1)).isTrue();
        assertThat(EventThread.comes(
                        () -> named(AbstractButton.class, "readings.write").isEnabled()))
                .isTrue();
        asker.filesToWrite.add(folder.resolve("list.pdf"));
        asker.filesToWrite.add(folder.resolve("list.csv"));
        for (String file : List.of("list.pdf", "list.csv")) {
            EventThread.run(() -> named(AbstractButton.class, "readings.write").doClick());
            assertThat(EventThread.comes(() ->
                            named(JTextArea.class, "readings.told").getText().endsWith(file)))
                    .isTrue();
        }
        assertThat(Files.readAllBytes(folder.resolve("list.pdf"))).startsWith("%PDF".getBytes(US_ASCII));
        assertThat(Files.readAllLines(folder.resolve("list.csv")))
                .anySatisfy(line -> assertThat(line).contains("HG-104", ",21,", "5.4", "seen 21"));
        // From the mix to its readings, and from one of them back.
        EventThread.run(() -> window.turnTo(window.pages().steps().get(0)));
        EventThread.run(() -> named(AbstractButton.class, "mix.readings").doClick());
        assertThat(EventThread.comes(() -> window.current().name().equals("readings")))
                .isTrue();
        assertThat(EventThread.call(
                        () -> named(JTextField.class, "readings.mix").getText()))
                .isEqualTo("HG-104");
        EventThread.run(() -> named(JTable.class, "readings.table").setRowSelectionInterval(0, 0));
        EventThread.run(() -> named(AbstractButton.class, "readings.open").doClick());
        assertThat(EventThread.comes(() -> window.pages().isStep(window.current())))
                .isTrue();
    }

    @Test
    void rowsCopiedInASpreadsheetAreSeenAndKept() throws Exception {
        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(
                        new StringSelection("HG-104\t2026-11-25 08:10\t31\t\t5.4\t2310\t\tseen 31\n"
                                + "HG-104\t2026-11-25 08:20\t32\t\t5.5\t\t\tseen 32\n"),
                        null);
        asker.confirmations.add(true);
        EventThread.run(() -> named(AbstractButton.class, "readings.paste").doClick());
        assertThat(EventThread.comes(() -> !asker.told.isEmpty())).isTrue();
        assertThat(kept()).extracting(FieldReading::truck).containsExactlyInAnyOrder("31", "32");
        // The same rows once more are there already.
        EventThread.run(() -> named(AbstractButton.class, "readings.paste").doClick());
        assertThat(EventThread.comes(() -> asker.told.size() == 2)).isTrue();
        assertThat(kept()).hasSize(2);
    }

    @Test
    void aReadingThatCannotBeReadIsNotSavedAndTheCaretGoesThere() throws Exception {
        int before = kept().size();
        Keys.bringTo(() -> named(JComponent.class, "truck"));
        strike("14");
        assertThat(EventThread.comes(() -> focused().equals("gauge"))).isTrue();
        EventThread.run(() -> named(AbstractButton.class, "reading.save").doClick());
        assertThat(EventThread.comes(() -> focused().equals("gauge"))).isTrue();
        assertThat(EventThread.comes(
                        () -> named(JComponent.class, "gauge.message").isShowing()))
                .isTrue();
        assertThat(kept()).hasSize(before);
        EventThread.run(() -> named(AbstractButton.class, "reading.clear").doClick());
        assertThat(EventThread.comes(
                        () -> named(JTextField.class, "truck").getText().isEmpty()))
                .isTrue();
    }
}
