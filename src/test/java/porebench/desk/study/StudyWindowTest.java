package porebench.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
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
import porebench.desk.BenchBook;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;

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
        assertThat(page.name()).isEqualTo("studies");
        assertThat(page.title()).isEqualTo("Studies");
        EventThread.run(() -> {
            assertThat(text("study.verdict")).contains("\"Determination\"");
            assertThat(find(JTable.class, "study.components").getRowCount()).isEqualTo(4);
            assertThat(find(AbstractButton.class, "study.open").isVisible()).isFalse();
            find(JComboBox.class, "study.layer.0").setSelectedIndex(4);
            assertThat(find(JTable.class, "study.components").getValueAt(0, 0)).isEqualTo("Day");
            find(JComboBox.class, "study.layer.1").setSelectedIndex(4);
            assertThat(text("study.problems")).isEqualTo("Day is chosen twice: each layer can stand once.");
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
}
