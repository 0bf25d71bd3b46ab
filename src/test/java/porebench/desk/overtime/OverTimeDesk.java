package porebench.desk.overtime;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.stream.IntStream;
import porebench.desk.DeskModel;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.evidence.TimeBook;
import porebench.exchange.CsvSheets;
import porebench.print.PdfPress;
import porebench.record.book.LabBook;
import porebench.statistics.control.PhasedChart;
import porebench.statistics.control.RunRule;
import porebench.store.SqliteShelf;

/** A desk on a small laboratory made for control charts. */
final class OverTimeDesk {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-12-01T09:00:00Z"), ZoneOffset.UTC);

    final ScriptedAsker asker = new ScriptedAsker();
    final TimeBook lab;
    final DeskModel desk;
    private int begun;

    OverTimeDesk() {
        this(new TimeBook());
    }

    OverTimeDesk(TimeBook lab) {
        this.lab = lab;
        this.desk = deskOn(lab.book);
    }

    DeskModel deskOn(LabBook book) {
        return new DeskModel(
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
    }

    /** Looks at what was kept until now. */
    OverTimeModel model() {
        desk.refresh();
        return new OverTimeModel(desk);
    }

    /** Makes quiet determinations of M-1, 0.40 and 0.50 in turn: moving ranges of 0.1, centre 0.45, limits 0.18 and 0.72. */
    LocalDate quiet(int count) {
        return determinations("M-1", TimeBook.START, alternating(count));
    }

    /** Makes determinations of two equal trials, one a day; returns the day after the last. */
    LocalDate determinations(String mix, LocalDate first, double... means) {
        LocalDate day = first;
        for (double mean : means) {
            begun++;
            String id = mix + "/" + begun;
            lab.begin(id, mix);
            lab.keep(lab.trial(id, mix, day, "R. Vale", "B-1", mean), lab.trial(id, mix, day, "R. Vale", "B-1", mean));
            day = day.plusDays(1);
        }
        return day;
    }

    /** Makes one determination of M-1, 0.40 and 0.50 in turn, a trial a day; returns the day after the last. */
    LocalDate one(int count) {
        lab.begin("M-1/1", "M-1");
        return lab.trials("M-1/1", "M-1", TimeBook.START, alternating(count));
    }

    static double[] alternating(int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> i % 2 == 0 ? 0.4 : 0.5)
                .toArray();
    }

    static void choose(OverTimeModel model, GroupedBy by) {
        model.type(ChartFields.BY, ChartFields.symbol(by));
    }

    static void choose(OverTimeModel model, String id) {
        model.type(ChartFields.WHICH, id);
    }

    static void choose(OverTimeModel model, PhasedChart.Kind kind) {
        model.type(ChartFields.KIND, ChartFields.symbol(kind));
    }

    static void keepLimits(OverTimeModel model, boolean isKept) {
        model.type(ChartFields.LIMITS, isKept ? "kept" : "anew");
    }

    static void ask(OverTimeModel model, RunRule rule, boolean isAsked) {
        model.tick(ChartFields.of(rule), isAsked);
    }

    static void split(OverTimeModel model, Split split, boolean isSplit) {
        model.tick(ChartFields.of(split), isSplit);
    }

    /** Types the base. */
    static void typeBase(OverTimeModel model, boolean byDays, String count, String from, String to) {
        model.update(
                "",
                model.draft()
                        .with(ChartFields.BASE, byDays ? "days" : "first")
                        .with(ChartFields.COUNT, count)
                        .with(ChartFields.FROM, from)
                        .with(ChartFields.TO, to));
    }
}
