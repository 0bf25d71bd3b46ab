package porebench.desk.variability;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.BenchBook;

class VariabilityPageTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    @TempDir
    Path folder;

    private final BenchBook bench = new BenchBook();

    private VariabilityPage page() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(
                BenchBook.trial("T1", 1, DAY, "6.4"),
                BenchBook.trial("T2", 1, DAY.plusDays(1), "6.5"),
                BenchBook.trial("T3", 1, DAY.plusDays(2), "6.4"),
                BenchBook.leaked("T4", 1, DAY.plusDays(2)));
        return new VariabilityPage(bench.select().desk);
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

    @Test
    void aPlotIsSavedAsAPicture() {
        Path file = folder.resolve("plot.png");
        bench.asker.filesToWrite.add(file);
        ((AbstractButton) named(page(), "save.by-trial")).doClick();
        assertThat(Files.exists(file)).isTrue();
    }

    @Test
    void aPictureThatCannotBeSavedIsTold() {
        bench.asker.filesToWrite.add(folder.resolve("missing").resolve("plot.png"));
        ((AbstractButton) named(page(), "save.over-time")).doClick();
        assertThat(bench.asker.failures).hasSize(1);
    }

    @Test
    void withoutAMixItSaysWhatToDo() {
        VariabilityPage page = new VariabilityPage(bench.desk);
        assertThat(named(page, "noMix").isVisible()).isTrue();
    }
}
