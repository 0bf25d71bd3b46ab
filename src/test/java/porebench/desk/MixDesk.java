package porebench.desk;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** A desk over a lab book in memory with two sources, a meter, and mix M-1 of one sand and one stone. */
public final class MixDesk {
    public final ScriptedAsker asker = new ScriptedAsker();
    public final LabBook book = new MemoryLabBook(Books.CLOCK);
    public final DeskModel desk;

    public MixDesk(Locale locale) {
        Books.keep(
                book,
                List.of(
                        Samples.source("S-1", Role.FINE, "1"),
                        Samples.source("S-2", Role.COARSE, "1"),
                        Samples.meter("B-1", MeterType.B),
                        Samples.mix("M-1", "S-1", "S-2")));
        desk = new DeskModel(
                new Tools(
                        Books.SHELF,
                        new CsvSheets(),
                        new PdfPress("Porebench test", Books.CLOCK, ZoneOffset.UTC),
                        Tasks.direct(),
                        asker,
                        Books.CLOCK,
                        ZoneOffset.UTC,
                        locale),
                book);
        asker.serve(desk);
        desk.setPerson("R. Vale");
    }

    public void select(String mixId) {
        desk.select(new MixId(mixId));
    }

    /** Keeps records as somebody else at another desk would. */
    public void keepElsewhere(Draft... drafts) {
        if (!book.keep(List.of(drafts), "N. Orrin", "meanwhile").isEmpty()) {
            throw new IllegalStateException("the records must be kept");
        }
    }
}
