package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.SheetImport;
import porebench.evidence.intake.Sheet;
import porebench.record.Kept;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.id.DeterminationId;
import porebench.record.id.TrialId;

/** The commands of the page, pressed without a display; questions are answered from a script. */
class TrialsPageTest {
    /** The column behind the name and the factor of a trial. */
    private static final int STATE = 2;

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private TrialsPage page() {
        return new TrialsPage(bench.select().desk);
    }

    private void oneTrial() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY, "6.4"));
    }

    private static Optional<Component> find(Container container, String name) {
        for (Component each : container.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            if (each instanceof Container inner) {
                Optional<Component> found = find(inner, name);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private static <C extends Component> C named(TrialsPage page, Class<C> type, String name) {
        return type.cast(find(page.component(), name).orElseThrow());
    }

    private static void press(TrialsPage page, String button) {
        named(page, AbstractButton.class, button).doClick();
    }

    private static String said(TrialsPage page, String text) {
        return named(page, JTextComponent.class, text).getText();
    }

    @Test
    void theCautionsStandWhereTheHazardIs() {
        TrialsPage page = page();
        assertThat(said(page, "caution.pressure")).contains("shield your eyes", "petcocks");
        assertThat(said(page, "caution.release")).contains("main air valve", "open the clamps");
        assertThat(said(page, "caution.lifting")).contains("20 to 25 kg", "Wet floors");
        assertThat(said(page, "caution.dust")).contains("silica", "caustic");
        assertThat(said(page, "caution.rules")).contains("responsible (licensed) engineer");
    }

    @Test
    void aTrialIsStruckFromElsewhereOnlyWhileItIsLookedAtAndNotStruckYet() {
        oneTrial();
        TrialsPage page = page();
        TrialId id = new TrialId("K7-T1");
        page.open(new DeterminationId("K7/1"), id);
        bench.asker.reasons.add("spilled");
        page.strike(new TrialId("K7-T2"));
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(1);
        page.strike(id);
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(2);
        bench.asker.reasons.add("once more");
        page.strike(id);
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(2);
        assertThat(bench.asker.reasons).hasSize(1);
    }

    @Test
    void aTrialIsStruckAndTakenBackWithAReasonOrNotAtAll() {
        oneTrial();
        TrialsPage page = page();
        named(page, JTable.class, "trials").setRowSelectionInterval(0, 0);
        press(page, "strike");
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(1);
        bench.asker.reasons.add("spilled");
        press(page, "strike");
        assertThat(said(page, "story")).contains("struck: spilled");
        assertThat(named(page, JTable.class, "trials").getValueAt(0, STATE)).isEqualTo("struck");
        bench.asker.reasons.add("it was the other one");
        press(page, "restore");
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(3);
        assertThat(said(page, "story")).contains("It counts.");
        assertThat(bench.asker.acts).containsExactly("Strike", "Strike", "Undo the strike");
    }

    @Test
    void aCorrectionIsSavedWithItsReason() {
        oneTrial();
        TrialsPage page = page();
        named(page, JTable.class, "trials").setRowSelectionInterval(0, 0);
        press(page, "correct");
        JTextField gauge = named(page, JTextField.class, "gauge");
        assertThat(gauge.getText()).isEqualTo("6.4");
        assertThat(named(page, AbstractButton.class, "save").isEnabled()).isFalse();
        gauge.setText("6.5");
        assertThat(page.history().orElseThrow().isChanged()).isTrue();
        bench.asker.reasons.add("misread");
        page.save();
        assertThat(bench.book.latest(Trial.class, "K7-T1").orElseThrow().stamp().why())
                .isEqualTo("misread");
        assertThat(page.history().orElseThrow().isChanged()).isFalse();
    }

    @Test
    void typingIsTakenBackAndDoneAgain() {
        TrialsPage page = page();
        JTextField fine = named(page, JTextField.class, "fine");
        fine.setText("4900");
        assertThat(page.undoLabel()).contains("Fine aggregate");
        page.undo();
        assertThat(fine.getText()).isEmpty();
        page.redo();
        assertThat(fine.getText()).isEqualTo("4900");
        page.dropDraft();
        assertThat(fine.getText()).isEmpty();
        assertThat(page.history().orElseThrow().isChanged()).isFalse();
    }

    @Test
    void itsImportIsTheOneOfTheWindowAndTakesTheTrialsOfItsMix() {
        List<SheetImport.Taking> asked = new ArrayList<>();
        TrialsPage page = new TrialsPage(bench.select().desk, over -> {}, (over, taking) -> asked.add(taking));
        press(page, "import");
        assertThat(asked).hasSize(1);
        Sheet<Kept> sheet = new Sheet<>(
                "monday.csv",
                List.of(
                        new Sheet.Row<>(2, Samples.trial("T-1", "M-1", "M-1/1", "5.4")),
                        new Sheet.Row<>(3, BenchBook.trial("K7-T1", 1, DAY, "6.4"))),
                List.of());
        assertThat(asked.get(0).rows().apply(sheet).values())
                .extracting(Kept::recordId)
                .containsExactly("K7-T1");
    }

    @Test
    void aNewDeterminationIsBegunWithItsPurpose() {
        oneTrial();
        TrialsPage page = page();
        bench.asker.reasons.add("new proportions");
        press(page, "begin");
        assertThat(said(page, "purpose")).isEqualTo("Made for: new proportions");
        assertThat(named(page, JTable.class, "trials").getRowCount()).isZero();
        assertThat(find(page.component(), "noTrial").orElseThrow().isVisible()).isTrue();
    }

    @Test
    void nobodyWithoutANameKeepsAnything() {
        bench.desk.setPerson("");
        bench.asker.person = null;
        TrialsPage page = page();
        for (String[] each : new String[][] {
            {"operator", "M. Sorrel"},
            {"fine", "4900"},
            {"coarse", "7350"},
            {"soak", "15"},
            {"withdrawn", "420"},
            {"gauge", "6.4"}
        }) {
            named(page, JTextField.class, each[0]).setText(each[1]);
        }
        press(page, "save");
        assertThat(bench.book.latest(Trial.class)).isEmpty();
        bench.asker.person = "M. Sorrel";
        press(page, "save");
        assertThat(bench.book.latest(Trial.class)).hasSize(1);
    }

    @Test
    void withoutAMixItSaysWhatToDo() {
        TrialsPage page = new TrialsPage(bench.desk);
        assertThat(find(page.component(), "noMix").orElseThrow().isVisible()).isTrue();
        assertThat(said(page, "noMix")).startsWith("Choose a mix on the left");
    }
}
