package porebench.desk.field;

import java.time.Clock;
import java.time.Instant;
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
import porebench.record.FieldReading;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.store.SqliteShelf;

/** A desk on the demo laboratory on a Wednesday, the 25th of November 2026, at half past nine. */
final class FieldDesk {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);

    final ScriptedAsker asker = new ScriptedAsker();
    final Settings settings = Settings.inMemory();
    final MemoryLabBook book = new MemoryLabBook(CLOCK);
    final DeskModel desk;

    FieldDesk() {
        this(Locale.ENGLISH, CLOCK);
    }

    FieldDesk(Locale locale, Clock clock) {
        new DemoYear().fill(book);
        desk = new DeskModel(
                new Tools(
                        new SqliteShelf(clock),
                        new CsvSheets(),
                        new PdfPress("Porebench", clock, ZoneOffset.UTC),
                        Tasks.direct(),
                        asker,
                        clock,
                        ZoneOffset.UTC,
                        locale),
                book);
        desk.setPerson("R. Vale");
        asker.serve(desk);
    }

    FieldsModel model() {
        FieldsModel model = new FieldsModel(desk, settings);
        model.entry().follow();
        return model;
    }

    /** Returns the readings that the lab book keeps of a mix, by name. */
    List<Version<FieldReading>> kept(String mix) {
        return book.latest(FieldReading.class).stream()
                .filter(version -> version.value().mixId().text().equals(mix))
                .toList();
    }
}
