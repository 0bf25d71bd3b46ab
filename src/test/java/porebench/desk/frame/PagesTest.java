package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Page;
import porebench.desk.Settings;
import porebench.desk.frame.start.FirstStepsPage;
import porebench.record.Trial;
import porebench.record.id.TrialId;

class PagesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private static Optional<Component> find(Container container, String name) {
        for (Component each : container.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            if (each instanceof Container inner && find(inner, name).isPresent()) {
                return find(inner, name);
            }
        }
        return Optional.empty();
    }

    /** What Variability names is looked at on the Trials page, and struck there with the reason that a person gives. */
    @Test
    void aTrialThatVariabilityNamesIsStruckOnTheTrialsPage() {
        bench.keep(BenchBook.determination(1, DAY));
        List<String> gauges = List.of("6.4", "6.4", "6.5", "6.4", "6.5", "7.4");
        for (int i = 0; i < gauges.size(); i++) {
            bench.keep(BenchBook.trial("T" + (i + 1), 1, DAY.plusDays(i), gauges.get(i)));
        }
        bench.select();
        Pages[] pages = new Pages[1];
        pages[0] = Pages.of(
                bench.desk,
                mix -> {},
                meter -> {},
                () -> {},
                (TrialId trial) -> pages[0].trials()
                        .page()
                        .open(BenchBook.determination(1, DAY).id(), trial),
                new FirstStepsPage.Nowhere(),
                Settings.inMemory());
        Page variability = pages[0].named("variability").orElseThrow();
        AbstractButton offer = (AbstractButton)
                find(variability.component(), "offer.strike.T6").orElseThrow();
        bench.asker.reasons.add("a bubble under the cover");
        offer.doClick();
        assertThat(bench.book.latest(Trial.class, "T6").orElseThrow().value().struckBecause())
                .contains("a bubble under the cover");
    }
}
