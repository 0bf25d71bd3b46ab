package porebench.desk.budget;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
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
import porebench.desk.DeterminationSection;
import porebench.desk.EventThread;
import porebench.desk.Named;
import porebench.desk.NeedsDisplay;
import porebench.desk.Settings;
import porebench.desk.frame.Theme;
import porebench.desk.variability.VariabilityPage;

/** The budget below the variability of a determination, in a real window: it is shown, follows the trials, and takes a reading. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class BudgetWindowTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private BenchBook bench;
    private JFrame frame;

    @BeforeEach
    void open() throws Exception {
        EventThread.run(Theme.LIGHT::apply);
        EventThread.run(() -> {
            bench = new BenchBook(Locale.ENGLISH);
            bench.keep(BenchBook.determination(1, DAY));
            bench.keep(
                    BenchBook.trial("T1", 1, DAY, "6.4"),
                    BenchBook.trial("T2", 1, DAY, "6.4"),
                    BenchBook.trial("T3", 1, DAY, "6.5"),
                    BenchBook.trial("T4", 1, DAY, "6.5"));
            bench.select();
            VariabilityPage page = new VariabilityPage(
                    bench.desk,
                    trial -> {},
                    trial -> {},
                    DeterminationSection.nothing(),
                    new BudgetSection(bench.desk),
                    Settings.inMemory());
            frame = new JFrame();
            frame.add(page.component());
            frame.setSize(1100, 800);
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

    private String said(String name) throws Exception {
        return EventThread.call(() -> find(JTextComponent.class, name).getText());
    }

    /** Once the page is looked at, and again when the lab book grows under it. */
    @Test
    void saysWhatTheLaboratoryKnowsBesides() throws Exception {
        assertThat(said("answer.known")).startsWith("Not known yet");
        EventThread.run(() -> {
            bench.keep(BenchBook.trial("T5", 1, DAY, "6.9"));
            bench.desk.refresh();
        });
        EventThread.settle();
        assertThat(said("answer.known")).startsWith("Not known yet");
    }

    @Test
    void showsTheBudgetAndFollowsTheTrials() throws Exception {
        assertThat(said("budget.verdict")).startsWith("G = 0.45 % \u00b1 0.11 % (U, 95 %, by drawing)");
        JTable table = find(JTable.class, "budgetLines");
        int rows = EventThread.call(table::getRowCount);
        assertThat(rows).isEqualTo(6);
        EventThread.run(() -> {
            bench.keep(BenchBook.trial("T5", 1, DAY, "6.9"));
            bench.desk.refresh();
        });
        EventThread.settle();
        assertThat(said("budget.verdict")).startsWith("G = 0.54 %");
        EventThread.run(() -> {
            bench.keep(BenchBook.determination(2, DAY.plusDays(1)));
            bench.desk.refresh();
        });
        EventThread.settle();
        assertThat(said("budget.verdict")).startsWith("No trial counts");
    }

    @Test
    void takesAReadingFromTheField() throws Exception {
        EventThread.run(() -> find(JTextComponent.class, "budget.reading").setText("6.2"));
        EventThread.settle();
        assertThat(said("budget.field")).startsWith("Air = 5.80 % \u00b1 0.56 % (U, 95 %");
        JComboBox<?> meter = find(JComboBox.class, "budget.meter");
        assertThat(EventThread.call(meter::getItemCount)).isEqualTo(3);
        EventThread.run(() -> meter.setSelectedIndex(1));
        EventThread.run(() -> find(JTextComponent.class, "budget.reading").setText("six"));
        EventThread.settle();
        assertThat(said("budget.field")).isEmpty();
        assertThat(said("reading.message")).contains("\"six\" is not a number");
    }

    @Test
    void savesThePlotAndTurnsWithTheTheme() throws Exception {
        Path file = folder.resolve("budget.png");
        bench.asker.filesToWrite.add(file);
        EventThread.run(() -> find(AbstractButton.class, "save.budget").doClick());
        assertThat(Files.size(file)).isGreaterThan(1000);
        EventThread.run(Theme.DARK::apply);
        EventThread.settle();
        assertThat(said("budget.verdict")).startsWith("G = 0.45 %");
        EventThread.run(Theme.LIGHT::apply);
    }
}
