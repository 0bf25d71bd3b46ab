package porebench.desk.change;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.TimeBook;
import porebench.exchange.CsvSheets;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** A desk on a small laboratory whose mix M-1 was tested before its stone came from another ledge. */
final class ChangeDesk {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T09:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate NEW = TimeBook.START.plusDays(60);

    final TimeBook laboratory = new TimeBook();
    final ScriptedAsker asker = new ScriptedAsker();
    final DeskModel desk;

    ChangeDesk(Locale locale) {
        laboratory.begin("M-1/1", "M-1");
        laboratory.trials("M-1/1", "M-1", TimeBook.START, 0.4, 0.5, 0.4);
        desk = new DeskModel(
                new Tools(
                        new SqliteShelf(CLOCK),
                        new CsvSheets(),
                        new PdfPress("Porebench", CLOCK, ZoneOffset.UTC),
                        Tasks.direct(),
                        asker,
                        CLOCK,
                        ZoneOffset.UTC,
                        locale),
                laboratory.book);
        asker.serve(desk);
        desk.select(new MixId("M-1"));
    }

    /** The stone comes from another ledge from now on. */
    void changeLedge() {
        laboratory.correct(Source.class, Samples.source("S-2", Role.COARSE, "Ledge 2"));
        desk.refresh();
    }

    /** The new ledge is tested. */
    void testNew(double... factors) {
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, factors);
        desk.refresh();
    }
}
