package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.ActionEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.BenchBook;
import porebench.record.id.TrialId;

class VariabilityPageTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();
    private final List<TrialId> opened = new ArrayList<>();

    private VariabilityPage page() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(
                BenchBook.trial("T1", 1, DAY, "6.4"),
                BenchBook.trial("T2", 1, DAY.plusDays(1), "6.5"),
                BenchBook.trial("T3", 1, DAY.plusDays(2), "6.4"),
                BenchBook.leaked("T4", 1, DAY.plusDays(2)));
        return new VariabilityPage(bench.select().desk, opened::add);
    }

    private static Component named(VariabilityPage page, String name) {
        return find(page.component(), name).orElseThrow();
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

    @Test
    void opensWithTheVerdictThenTheNumbersAndWhatIsLeftOut() {
        VariabilityPage page = page();
        assertThat(((JTextComponent) named(page, "verdict")).getText())
                .startsWith("3 trials agree within 0.10 %; G = 0.4 %; ");
        assertThat(((JLabel) named(page, "figure.0")).getText()).isEqualTo("0.4 % air");
        assertThat(((JTextComponent) named(page, "leftOut.0")).getText()).startsWith("Trial T4, no factor, void:");
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "svg", "pdf"})
    void aPlotIsSavedAsAPictureThatSaysWhatItIs(String ending) throws IOException {
        Path file = folder.resolve("plot." + ending);
        bench.asker.filesToWrite.add(file);
        ((AbstractButton) named(page(), "save.by-trial")).doClick();
        assertThat(bench.asker.failures).isEmpty();
        assertThat(file).isNotEmptyFile();
        if (ending.equals("svg")) {
            assertThat(Files.readString(file)).contains("determination", "mean of the trials that count");
        }
    }

    @Test
    void theFiguresOfAPlotAreSavedToo() throws IOException {
        Path file = folder.resolve("plot.CSV");
        bench.asker.filesToWrite.add(file);
        ((AbstractButton) named(page(), "save.by-trial")).doClick();
        assertThat(Files.readString(file))
                .startsWith("trial_id,tested_at,")
                .contains("T4,")
                .contains(",void,");
    }

    @Test
    void aPointThatIsOpenedLeadsToItsTrial() {
        JComponent plot = (JComponent) named(page(), "plot.by-trial");
        for (String stroke : List.of("RIGHT", "RIGHT", "ENTER")) {
            Object key = plot.getInputMap().get(KeyStroke.getKeyStroke(stroke));
            plot.getActionMap().get(key).actionPerformed(new ActionEvent(plot, 0, stroke));
        }
        assertThat(opened).containsExactly(new TrialId("T2"));
    }

    @Test
    void aTrialThatIsNamedCanBeStruckFromHere() {
        bench.keep(BenchBook.determination(1, DAY));
        List<String> gauges = List.of("6.4", "6.4", "6.5", "6.4", "6.5", "7.4");
        for (int i = 0; i < gauges.size(); i++) {
            bench.keep(BenchBook.trial("T" + (i + 1), 1, DAY.plusDays(i), gauges.get(i)));
        }
        VariabilityPage page = new VariabilityPage(bench.select().desk, opened::add);
        AbstractButton offer = (AbstractButton) named(page, "offer.strike.T6");
        assertThat(offer.getText()).isEqualTo("Check T6 and strike it...");
        offer.doClick();
        assertThat(opened).containsExactly(new TrialId("T6"));
        assertThat(find(page.component(), "offer.strike.T1")).isEmpty();
    }

    @Test
    void aPictureThatCannotBeSavedIsTold() {
        bench.asker.filesToWrite.add(folder.resolve("missing").resolve("plot.png"));
        ((AbstractButton) named(page(), "save.over-time")).doClick();
        assertThat(bench.asker.failures).hasSize(1);
    }

    @Test
    void withoutAMixItSaysWhatToDo() {
        VariabilityPage page = new VariabilityPage(bench.desk, opened::add);
        assertThat(named(page, "noMix").isVisible()).isTrue();
    }
}
