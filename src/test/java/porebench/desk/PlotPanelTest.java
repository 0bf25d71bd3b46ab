package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JButton;
import javax.swing.JToggleButton;
import javax.swing.KeyStroke;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.chart.factor.BudgetBars;
import porebench.desk.form.Tasks;
import porebench.desk.form.WrappedText;
import porebench.exchange.CsvSheets;
import porebench.port.DataTable;
import porebench.print.PdfPress;

/** What is taken along of a plot in a training book says that it was simulated, whichever plot it is. */
class PlotPanelTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private String saved(Locale locale, String name, boolean isTraining) throws IOException {
        Path file = folder.resolve(name);
        ScriptedAsker asker = new ScriptedAsker();
        asker.filesToWrite.add(file);
        Tools tools = new Tools(
                new BenchBook(Locale.ENGLISH).desk.tools().shelf(),
                new CsvSheets(),
                new PdfPress("Porebench", NOON, ZoneOffset.UTC),
                Tasks.direct(),
                asker,
                NOON,
                ZoneOffset.UTC,
                locale);
        PlotPanel plot = new PlotPanel(
                tools, "parts", 200, new PlotPanel.Words("Parts", () -> "parts.png", () -> "K7", () -> isTraining));
        plot.view().show(new BudgetBars(List.of(new BudgetBars.Bar("repeats", 0.03, 1, false)), 0.03), Looks.now());
        Named.in(plot.component(), JButton.class, "save.parts").doClick();
        assertThat(asker.failures).isEmpty();
        return Files.readString(file);
    }

    @Test
    void aPlotIsSaidInWordsByAButtonAndByW() {
        PlotPanel plot = new PlotPanel(
                new BenchBook(Locale.ENGLISH).desk.tools(),
                "parts",
                200,
                new PlotPanel.Words("Parts", () -> "parts.png", () -> "K7", () -> false));
        JToggleButton inWords = Named.in(plot.component(), JToggleButton.class, "words.parts");
        WrappedText said = Named.in(plot.component(), WrappedText.class, "said.parts");
        inWords.doClick();
        assertThat(said.isVisible()).as("while nothing is shown").isFalse();
        plot.view().show(new BudgetBars(List.of(new BudgetBars.Bar("repeats", 0.03, 1, false)), 0.03), Looks.now());
        assertThat(said.isVisible()).isTrue();
        assertThat(said.getText())
                .isEqualTo(String.join("\n", plot.view().said()))
                .contains("repeats: 0.030 (100 %)", "all together: 0.030");
        AccessibleContext spoken = plot.view().component().getAccessibleContext();
        assertThat(spoken.getAccessibleName()).isEqualTo("Parts");
        assertThat(spoken.getAccessibleDescription()).isEqualTo(said.getText());
        assertThat(spoken.getAccessibleRole()).isEqualTo(AccessibleRole.CANVAS);
        Object byKey = plot.view().component().getInputMap().get(KeyStroke.getKeyStroke("W"));
        plot.view().component().getActionMap().get(byKey).actionPerformed(new ActionEvent(this, 0, ""));
        assertThat(said.isVisible()).isFalse();
        assertThat(said.getText()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"en,SIMULATED", "es,SIMULADO"})
    void aPictureSaysItInItsTitle(String language, String word) throws IOException {
        Locale locale = Locale.forLanguageTag(language);
        assertThat(saved(locale, "real.svg", false)).contains("K7: Parts").doesNotContain(word);
        assertThat(saved(locale, "training.svg", true)).contains("<title>" + word + " \u2013 K7: Parts</title>");
    }

    @Test
    void theFiguresSayItInEveryRow() throws IOException {
        assertThat(saved(Locale.ENGLISH, "real.csv", false).lines()).allMatch(line -> !line.contains("simulated"));
        assertThat(saved(Locale.ENGLISH, "training.csv", true).lines())
                .hasSize(2)
                .first()
                .asString()
                .endsWith(",simulated");
        assertThat(saved(Locale.ENGLISH, "again.csv", true).lines().skip(1)).allMatch(line -> line.endsWith(",yes"));
    }

    @Test
    void figuresThatHaveTheColumnAlreadySayItInEveryRowToo() {
        DataTable table = new DataTable(
                List.of("series", "simulated", "value"),
                List.of(List.of("trial", "yes", "1"), List.of("in-force", "", "2")));
        assertThat(table.simulated())
                .isEqualTo(new DataTable(
                        List.of("series", "simulated", "value"),
                        List.of(List.of("trial", "yes", "1"), List.of("in-force", "yes", "2"))));
    }
}
