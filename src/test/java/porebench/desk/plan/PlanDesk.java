package porebench.desk.plan;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Settings;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.print.PdfPress;
import porebench.record.TestPlan;
import porebench.record.book.MemoryLabBook;
import porebench.store.SqliteShelf;

/** A desk on the demo laboratory on a Wednesday, the 25th of November 2026. */
final class PlanDesk {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    final ScriptedAsker asker = new ScriptedAsker();
    final Settings settings = Settings.inMemory();
    final MemoryLabBook book = new MemoryLabBook(CLOCK);
    final DeskModel desk;

    PlanDesk() {
        new DemoYear().fill(book);
        desk = new DeskModel(
                new Tools(
                        new SqliteShelf(CLOCK),
                        new CsvSheets(),
                        new PdfPress("Porebench", CLOCK, ZoneOffset.UTC),
                        Tasks.direct(),
                        asker,
                        CLOCK,
                        ZoneOffset.UTC,
                        Locale.ENGLISH),
                book);
        desk.setPerson("R. Vale");
        asker.serve(desk);
    }

    PlanModel model() {
        return new PlanModel(desk, settings);
    }

    /** Returns what the lab book keeps of the plan from today. */
    List<TestPlan> kept() {
        return book.history(TestPlan.class, TODAY.toString()).stream()
                .map(version -> version.value())
                .toList();
    }
}
