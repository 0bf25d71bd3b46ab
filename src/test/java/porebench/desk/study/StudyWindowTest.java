package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
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
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Keys;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;
import porebench.record.KeptStudy;
import porebench.record.SampleStudies;

/** Chooses studies, opens files and saves a form in a real window. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class StudyWindowTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private BenchBook bench;
    private StudyPage page;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            bench = new BenchBook();
            bench.keep(BenchBook.determination(1, DAY), BenchBook.determination(2, DAY));
            bench.keep(BenchBook.trial("T1", 1, DAY, "6.4"), BenchBook.trial("T2", 1, DAY, "6.5"));
            bench.keep(BenchBook.trial("T3", 2, DAY, "6.8"), BenchBook.trial("T4", 2, DAY, "6.9"));
            bench.desk.refresh();
            page = new StudyPage(bench.desk);
            frame = new JFrame();
            frame.add(page.component());
            frame.setSize(1000, 900);
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

    private String text(String name) {
        return find(JTextComponent.class, name).getText();
    }

    @Test
    void showsTheTrialsOfTheLabBookAtOnceAndByOtherLayers() throws Exception {
        EventThread.run(() -> {
            assertThat(text("study.verdict")).contains("\"Determination\"");
            assertThat(find(JTable.class, "study.components").getRowCount()).isEqualTo(4);
            assertThat(find(AbstractButton.class, "study.open").isVisible()).isFalse();
            find(JComboBox.class, "study.layer.0").setSelectedIndex(4);
            assertThat(find(JTable.class, "study.components").getValueAt(0, 0)).isEqualTo("Day");
            find(JComboBox.class, "study.layer.1").setSelectedIndex(4);
            assertThat(text("study.problems")).isEqualTo("Day is chosen twice: choose each layer once.");
            assertThat(find(JTextComponent.class, "study.verdict").isVisible()).isFalse();
        });
    }

    @Test
    void opensAFileShowsItsPlotsAndSavesAForm() throws Exception {
        Path file = Files.writeString(
                folder.resolve("r.csv"),
                "operator,sample,repeat,value\nA,1,1,1\nA,1,2,2\nA,2,1,5\nA,2,2,6\nB,1,1,2\nB,1,2,3\nB,2,1,7\nB,2,2,6\n");
        Path form = folder.resolve("form.csv");
        EventThread.run(() -> {
            find(JComboBox.class, "study.kind").setSelectedIndex(0);
            assertThat(text("study.howTo")).contains("operator,sample,repeat,value");
            bench.asker.filesToOpen.add(file);
            find(AbstractButton.class, "study.open").doClick();
        });
        EventThread.settle();
        EventThread.run(() -> {
            assertThat(text("study.verdict")).startsWith("Reading makes up 33 %");
            assertThat(find(Component.class, "plot.readings").isShowing()).isTrue();
            assertThat(find(JTable.class, "study.anova").getRowCount()).isEqualTo(5);
            find(AbstractButton.class, "study.interaction").doClick();
            assertThat(find(JTable.class, "study.anova").getRowCount()).isEqualTo(4);
            bench.asker.filesToWrite.add(form);
            find(AbstractButton.class, "study.form").doClick();
        });
        assertThat(form).hasContent("operator,sample,repeat,value");
        assertThat(bench.asker.failures).isEmpty();
        EventThread.run(Theme.DARK::apply);
        EventThread.settle();
        EventThread.run(() -> find(JComboBox.class, "study.kind").setSelectedIndex(1));
    }

    @Test
    void aComparisonOfLaboratoriesShowsHAndKAndSavesTheirFigures() throws Exception {
        Path file = Files.writeString(
                folder.resolve("l.csv"),
                "laboratory,level,value\nA,1,1\nA,1,2\nA,1,3\nB,1,2\nB,1,3\nB,1,4\nC,1,3\nC,1,4\nC,1,5\n");
        Path figures = folder.resolve("k.csv");
        EventThread.run(() -> {
            assertThat(find(Component.class, "plot.h").isShowing()).isFalse();
            find(JComboBox.class, "study.kind").setSelectedIndex(2);
            bench.asker.filesToOpen.add(file);
            find(AbstractButton.class, "study.open").doClick();
        });
        EventThread.settle();
        EventThread.run(() -> {
            assertThat(find(Component.class, "plot.h").isShowing()).isTrue();
            assertThat(find(Component.class, "plot.k").isShowing()).isTrue();
            assertThat(find(Component.class, "plot.readings").isShowing()).isFalse();
            bench.asker.filesToWrite.add(figures);
            find(AbstractButton.class, "save.k").doClick();
        });
        EventThread.settle();
        // Each s is 1, so each k is 1.
        assertThat(Files.readAllLines(figures))
                .hasSize(4)
                .satisfies(lines -> assertThat(lines.get(0))
                        .isEqualTo("statistic,laboratory,level,results,value,critical_5,critical_1,verdict,reason"))
                .satisfies(lines ->
                        assertThat(lines.get(3)).startsWith("k,C,1,3,1,1.526").endsWith(",none,"));
        assertThat(bench.asker.failures).isEmpty();
        EventThread.run(() -> find(JComboBox.class, "study.kind").setSelectedIndex(1));
        EventThread.settle();
        EventThread.run(
                () -> assertThat(find(Component.class, "plot.h").isShowing()).isFalse());
    }

    @Test
    void aTickMakesTheLayersCross() throws Exception {
        EventThread.run(() -> {
            find(JComboBox.class, "study.layer.0").setSelectedIndex(3);
            find(JComboBox.class, "study.layer.1").setSelectedIndex(0);
            find(JComboBox.class, "study.layer.2").setSelectedIndex(0);
            find(AbstractButton.class, "study.crossed").doClick();
            assertThat(text("study.problems")).isEmpty();
            JTable components = find(JTable.class, "study.components");
            assertThat(components.getValueAt(1, 0)).isEqualTo("What is left");
            find(JComboBox.class, "study.kind").setSelectedIndex(0);
            assertThat(find(AbstractButton.class, "study.crossed").isVisible()).isFalse();
        });
    }

    private void openOperators() throws Exception {
        Path file = Files.writeString(
                folder.resolve("r.csv"),
                "operator,sample,repeat,value\nA,1,1,1.0\nA,1,2,2.0\nA,2,1,5\nA,2,2,6\n"
                        + "B,1,1,2\nB,1,2,3\nB,2,1,7\nB,2,2,6\n");
        EventThread.run(() -> {
            find(JComboBox.class, "study.kind").setSelectedIndex(0);
            assertThat(find(AbstractButton.class, "study.keep").isEnabled()).isFalse();
            bench.asker.filesToOpen.add(file);
            find(AbstractButton.class, "study.open").doClick();
        });
        EventThread.settle();
    }

    /** Types into the field that has the focus, whose name is given. */
    private void type(Keys keys, String field, String text) throws Exception {
        JTextComponent input = find(JTextComponent.class, field);
        assertThat(EventThread.comes(input::isFocusOwner)).as(field).isTrue();
        for (int i = 0; i < text.length(); i++) {
            String sofar = text.substring(0, i + 1);
            keys.strikeUntil(
                    () -> input.getText().equals(sofar), sofar, KeyEvent.getExtendedKeyCodeForChar(text.charAt(i)));
        }
    }

    @Test
    void aStudyIsKeptCorrectedAndShownAgainByKeysAlone() throws Exception {
        openOperators();
        Keys keys = new Keys();
        EventThread.run(() -> find(AbstractButton.class, "study.open").requestFocusInWindow());
        assertThat(EventThread.comes(find(AbstractButton.class, "study.open")::isFocusOwner))
                .isTrue();
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_K);
        type(keys, "keep.id", "o1");
        keys.strike(KeyEvent.VK_TAB);
        type(keys, "keep.title", "dial");
        keys.strike(KeyEvent.VK_TAB);
        type(keys, "keep.madeOn", "2026-03-02");
        keys.strike(KeyEvent.VK_TAB);
        assertThat(EventThread.comes(find(JTextComponent.class, "keep.by")::isFocusOwner))
                .isTrue();
        keys.strike(KeyEvent.VK_TAB);
        type(keys, "keep.remarks", "wet");
        EventThread.run(() -> {
            assertThat(bench.desk.unsaved().names("study/")).hasSize(1);
            page.undo();
            assertThat(text("keep.remarks")).isEmpty();
            page.redo();
            assertThat(text("keep.remarks")).isEqualTo("wet");
            assertThat(text("keep.by")).isEqualTo("R. Vane");
            assertThat(text("keep.heading")).isEqualTo("Save the readings of r.csv in the lab book");
        });
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_V);
        assertThat(EventThread.comes(
                        () -> bench.book.latest(KeptStudy.class, "o1").isPresent()))
                .isTrue();
        EventThread.run(() -> {
            assertThat(find(Component.class, "keep.id").isShowing()).isFalse();
            assertThat(find(JLabel.class, "study.file").getText()).isEqualTo("o1, 2026-03-02, R. Vane, version 1");
            assertThat(find(JComboBox.class, "study.kept").getSelectedIndex()).isEqualTo(1);
            KeptStudy study =
                    bench.book.latest(KeptStudy.class, "o1").orElseThrow().value();
            assertThat(study.title() + study.remarks()).isEqualTo("dialwet");
            assertThat(study.readings().get(0).value()).hasToString("1.0");
        });
        bench.asker.reasons.add("was dry");
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_K);
        assertThat(EventThread.comes(find(JTextComponent.class, "keep.id")::isFocusOwner))
                .isTrue();
        EventThread.run(() -> assertThat(text("keep.heading"))
                .isEqualTo("Save as version 2 of o1: the readings of o1, 2026-03-02, R. Vane, version 1"));
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_R);
        assertThat(EventThread.comes(find(JTextComponent.class, "keep.remarks")::isFocusOwner))
                .isTrue();
        keys.strike(KeyEvent.VK_CONTROL, KeyEvent.VK_A);
        type(keys, "keep.remarks", "dry");
        keys.strike(KeyEvent.VK_ALT, KeyEvent.VK_V);
        assertThat(EventThread.comes(
                        () -> bench.book.history(KeptStudy.class, "o1").size() == 2))
                .isTrue();
        EventThread.run(() -> {
            assertThat(bench.asker.failures).isEmpty();
            assertThat(find(JLabel.class, "study.file").getText()).endsWith("version 2");
            find(JComboBox.class, "study.kept").setSelectedIndex(0);
        });
    }

    @Test
    void aKeptStudyIsChosenAndWhatIsWrongWithANewOneStandsUnderItsField() throws Exception {
        EventThread.run(() -> bench.keep(SampleStudies.operators("O-1"), SampleStudies.operators("O-2")));
        openOperators();
        Path figures = folder.resolve("s.csv");
        EventThread.run(() -> {
            JComboBox<?> kept = find(JComboBox.class, "study.kept");
            assertThat(kept.isShowing()).isTrue();
            assertThat(kept.getItemCount()).isEqualTo(3);
            assertThat(kept.getSelectedIndex()).isZero();
            kept.setSelectedIndex(2);
            assertThat(find(JLabel.class, "study.file").getText()).isEqualTo("O-2, 2026-03-02, R. Vale, version 1");
            bench.asker.filesToWrite.add(figures);
            find(AbstractButton.class, "save.shares").doClick();
            find(AbstractButton.class, "study.keep").doClick();
            assertThat(text("keep.id")).isEqualTo("O-2");
            find(JTextComponent.class, "keep.id").setText("");
            find(JTextComponent.class, "keep.madeOn").setText("2 March");
            find(AbstractButton.class, "keep.save").doClick();
            assertThat(text("keep.id.message")).isEqualTo("Name of the study is empty. Fill it in.");
            assertThat(text("keep.madeOn.message")).startsWith("2 March is not a date.");
            find(AbstractButton.class, "keep.drop").doClick();
            assertThat(find(Component.class, "keep.id").isShowing()).isFalse();
            assertThat(bench.desk.unsaved().names("study/")).isEmpty();
            assertThat(bench.book.latest(KeptStudy.class)).hasSize(2);
            find(JComboBox.class, "study.kind").setSelectedIndex(2);
            assertThat(find(JComboBox.class, "study.kept").isShowing()).isFalse();
        });
        EventThread.settle();
        assertThat(figures).exists();
        assertThat(bench.asker.failures).isEmpty();
    }
}
