package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.form.Tasks;
import porebench.evidence.Bench;
import porebench.evidence.issue.Issuing;
import porebench.exchange.CsvSheets;
import porebench.print.PdfPress;
import porebench.record.FactorTerms;
import porebench.store.Books;

/** The window asks what holds now: at the hour of a revision another is on view, though nobody kept anything. */
class HourOnTheDeskTest {
    @TempDir
    Path folder;

    @Test
    void atItsMinuteTheNextRevisionIsOnView() {
        TurnedClock clock = new TurnedClock();
        try (Bench bench = new Bench(folder)) {
            bench.issue(Bench.START);
            Issuing.Decision next = bench.takingAll(bench.evidence(), Bench.decision(Bench.FIRST, Bench.START))
                    .under(new FactorTerms(FactorTerms.time("10:00"), "", ""));
            bench.keep(Issuing.issue(bench.evidence(), bench.scatter(), next));
            // 2026-03-04 09:30:20 and five days.
            clock.turn(Duration.ofDays(5));
            DeskModel desk = new DeskModel(
                    new Tools(
                            Books.SHELF,
                            new CsvSheets(),
                            new PdfPress("Porebench test", clock, ZoneOffset.UTC),
                            Tasks.direct(),
                            new ScriptedAsker(),
                            clock,
                            ZoneOffset.UTC,
                            Locale.ENGLISH),
                    bench.book);
            assertThat(desk.rows().get(0).revision()).contains(1);
            clock.turn(Duration.ofSeconds(29 * 60 + 39));
            desk.refresh();
            assertThat(desk.rows().get(0).revision()).as("at 09:59:59").contains(1);
            clock.turn(Duration.ofSeconds(1));
            desk.refresh();
            assertThat(desk.rows().get(0).revision()).as("at 10:00").contains(2);
        }
    }
}
