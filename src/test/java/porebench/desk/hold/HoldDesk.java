package porebench.desk.hold;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.Locale;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.Bench;
import porebench.evidence.hold.PairsBench;
import porebench.exchange.CsvSheets;
import porebench.print.PdfPress;
import porebench.store.SqliteShelf;

/** A desk on a small laboratory whose crews write down densities. */
public final class HoldDesk {
    private static final Clock CLOCK = Clock.fixed(PairsBench.NOW.toInstant(ZoneOffset.UTC), ZoneOffset.UTC);

    public final PairsBench made;
    public final DeskModel desk;
    final ScriptedAsker asker = new ScriptedAsker();

    public HoldDesk(Path folder, Locale locale) {
        made = new PairsBench(folder);
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
                made.bench.book);
        asker.serve(desk);
        desk.select(Bench.MIX);
    }

    public void read(double... differences) {
        made.keep(PairsBench.readings("M-1", differences));
        desk.refresh();
    }
}
