package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.GridLayout;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JFrame;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.form.UnitSystem;
import porebench.desk.frame.Theme;
import porebench.desk.mix.MixPage;
import porebench.desk.sample.SamplePage;
import porebench.evidence.FactorState;
import porebench.method.Role;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Fills, saves and corrects a mix design in a real window, and reads what to weigh for it. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class MixSampleWindowTest {
    private static final int MASS = 3;
    private static final int SOURCE = 2;
    private static final int RELATIVE_DENSITY = 8;

    private MixDesk mixDesk;
    private MixPage mix;
    private SamplePage sample;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            mixDesk = new MixDesk(Locale.ENGLISH);
            mix = new MixPage(mixDesk.desk);
            sample = new SamplePage(mixDesk.desk);
            frame = new JFrame();
            frame.setLayout(new GridLayout(1, 2));
            frame.add(mix.component());
            frame.add(sample.component());
            frame.setSize(1500, 900);
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

    /** Opens a cell, types over what stands there and leaves it, as Enter does. */
    private void cell(int row, int column, String text) throws Exception {
        EventThread.run(() -> {
            JTable table = find(JTable.class, "constituents");
            assertThat(table.editCellAt(row, column)).isTrue();
            Component editor = table.getEditorComponent();
            if (editor instanceof JTextComponent typed) {
                typed.setText(text);
            } else if (editor instanceof JComboBox<?> box) {
                box.getEditor().setItem(text);
            }
            assertThat(table.getCellEditor().stopCellEditing()).isTrue();
        });
    }

    private String text(String label) throws Exception {
        return EventThread.call(() -> find(JLabel.class, label).getText());
    }

    @Test
    void aNewMixIsFilledInAndSavedAndItsSampleIsThere() throws Exception {
        EventThread.run(mix::begin);
        type("id", "N-7");
        type("title", "New mix");
        type("targetAir", "6.0");
        cell(0, MASS, "350");
        cell(0, RELATIVE_DENSITY, "3.15");
        cell(1, MASS, "160");
        cell(2, SOURCE, "S-1");
        cell(2, MASS, "700");
        cell(3, SOURCE, "S-2");
        press("mix.save");
        assertThat(mixDesk.book.latest(MixDesign.class, "N-7")).isEmpty();
        assertThat(EventThread.call(
                        () -> find(JTextComponent.class, "mix.refusal").getText()))
                .isEqualTo("One thing must be corrected before it can be saved.");
        assertThat(EventThread.call(() ->
                        find(JTextComponent.class, "constituents.problems.0").getText()))
                .endsWith("Coarse aggregate, mass is empty. Fill it in.");
        cell(3, MASS, "1050");
        press("mix.save");
        MixDesign kept =
                mixDesk.book.latest(MixDesign.class, "N-7").orElseThrow().value();
        assertThat(kept.batch().constituents().get(3).mass()).hasToString("1050 kg");
        assertThat(kept.batch().constituents().get(3).relativeDensity()).isEqualTo(Samples.some("2.650"));
        assertThat(EventThread.call(() -> mix.history().orElseThrow().isChanged()))
                .isFalse();
        assertThat(mixDesk.desk.selected()).contains(new MixId("N-7"));
        // Total 350 + 160 + 700 + 1050 kg.
        assertThat(text("figure.totalMass")).isEqualTo("2260.0");
        // A third of the meter's 7.050 L.
        assertThat(text("water.first")).isEqualTo("2350");
        assertThat(text("water.withdrawal")).isEqualTo("423");
    }

    @Test
    void aCellIsTypedIntoByKeyboardAlone() throws Exception {
        EventThread.run(() -> mixDesk.select("M-1"));
        CountDownLatch focused = new CountDownLatch(1);
        EventThread.run(() -> {
            JTable table = find(JTable.class, "constituents");
            table.changeSelection(0, MASS, false, false);
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
        JTable constituents = find(JTable.class, "constituents");
        keys.strikeUntil(() -> Keys.isTyping(constituents, "7"), "7", KeyEvent.VK_7);
        keys.strikeUntil(() -> Keys.isTyping(constituents, "72"), "72", KeyEvent.VK_2);
        keys.strikeUntil(() -> Keys.isTyping(constituents, "725"), "725", KeyEvent.VK_5);
        keys.strikeUntil(() -> constituents.getSelectedColumn() == MASS + 1, "the next column", KeyEvent.VK_TAB);
        assertThat(EventThread.call(() -> constituents.getValueAt(0, MASS))).isEqualTo("725");
        EventThread.run(mix::undo);
        assertThat(EventThread.call(() -> mix.history().orElseThrow().isChanged()))
                .isFalse();
    }

    @Test
    void aCorrectionThatMakesTheFactorUntrueIsSaidBeforeItIsSaved() throws Exception {
        Books.keep(
                mixDesk.book,
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 1)));
        EventThread.run(() -> mixDesk.select("M-1"));
        cell(1, MASS, "1060");
        press("mix.save");
        assertThat(mixDesk.asker.asked).containsExactly("Other aggregates in mix M-1");
        assertThat(mixDesk.book.history(MixDesign.class, "M-1")).hasSize(1);
        mixDesk.asker.confirmations.add(true);
        mixDesk.asker.reasons.add("More stone");
        press("mix.save");
        assertThat(mixDesk.book.history(MixDesign.class, "M-1")).hasSize(2);
        assertThat(mixDesk.desk.rows().get(0).state()).isEqualTo(FactorState.SOURCE_CHANGED);
        assertThat(EventThread.call(() -> find(JTable.class, "versions").getValueAt(0, 3)))
                .isEqualTo("More stone");
    }

    /** The forecast of a draft is asked for by its button, marked as one, and follows what is typed; nothing of it is kept. */
    @Test
    void aDraftIsForecastBesideWhatIsTypedAndNothingIsKept() throws Exception {
        int[] sand = {620, 780, 700, 640, 800, 720};
        for (int i = 0; i < sand.length; i++) {
            String id = "T-" + i;
            Books.keep(
                    mixDesk.book,
                    Samples.mix(
                            id,
                            Samples.constituent("Sand", Role.FINE, "S-1", Integer.toString(sand[i])),
                            Samples.constituent("Stone", Role.COARSE, "S-2", Integer.toString(1750 - sand[i]))));
            Books.keep(
                    mixDesk.book,
                    Samples.determination(id + "/1", id),
                    Samples.trial(id + "a", id, id + "/1", i % 3 == 0 ? "5.4" : "5.5"),
                    Samples.trial(id + "b", id, id + "/1", "5.5"));
        }
        EventThread.run(() -> mixDesk.desk.refresh());
        EventThread.run(() -> mixDesk.select("M-1"));
        long entries = mixDesk.book.changeNumber();
        press("forecast.ask");
        String first = EventThread.call(
                () -> find(JTextComponent.class, "forecast.headline").getText());
        assertThat(first).startsWith("Forecast, not a factor: 0.");
        assertThat(EventThread.call(() -> find(JTable.class, "forecast.sources").getRowCount()))
                .isEqualTo(2);
        assertThat(EventThread.call(
                        () -> find(Component.class, "plot.forecastCheck").isShowing()))
                .isTrue();
        cell(0, MASS, "900");
        assertThat(EventThread.call(
                        () -> find(JTextComponent.class, "forecast.headline").getText()))
                .startsWith("Forecast, not a factor: 0.")
                .isNotEqualTo(first);
        assertThat(EventThread.call(
                        () -> find(JTextComponent.class, "forecast.problems.0").getText()))
                .contains("more of it than in any mix tested");
        assertThat(mixDesk.book.changeNumber()).isEqualTo(entries);
    }

    @Test
    void theSampleFollowsTheUnitsAndTheSheetIsSaved(@TempDir Path folder) throws Exception {
        EventThread.run(() -> mixDesk.select("M-1"));
        assertThat(EventThread.call(() -> find(JTable.class, "weighOut").getValueAt(0, MASS)))
                .isEqualTo("4935");
        EventThread.run(() -> mixDesk.desk.show(UnitSystem.US));
        // 4.935 kg / 0.45359237 = 10.880 lb
        assertThat(EventThread.call(() -> find(JTable.class, "weighOut").getValueAt(0, MASS)))
                .isEqualTo("10.88");
        type("moisture.0", "5.0");
        // 4.935 / 1.012 x 1.05 = 5.120306 kg = 11.288 lb
        assertThat(EventThread.call(() -> find(JTable.class, "weighOut").getValueAt(0, MASS)))
                .isEqualTo("11.29");
        Path file = folder.resolve("sheet.pdf");
        mixDesk.asker.filesToWrite.add(file);
        press("sheet.save");
        assertThat(Files.size(file)).isPositive();
        assertThat(mixDesk.asker.failures).isEmpty();
    }
}
