package porebench.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.evidence.paper.FieldList;
import porebench.method.Dates;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Words;
import porebench.record.FieldReading;
import porebench.record.id.MeterId;

/** Draws a list of field readings: of which days and mix, then a row a reading. */
public final class FieldListPages extends PrintedSheet {
    private final FieldList list;
    private final Imprint imprint;

    public FieldListPages(FieldList list, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(new Flow(leaves, words, words.say("readings.running-head", days(list, words)), list.isTraining()), words);
        this.list = list;
        this.imprint = imprint;
    }

    private static String days(FieldList list, Words words) {
        return words.say(
                "readings.days",
                words.date(list.days().first()),
                words.date(list.days().last()));
    }

    public void draw() throws IOException {
        head(list.laboratory(), words.say("readings.kind"), words.say("readings.subject", days(list, words)));
        small(list.mix()
                .map(mix -> words.say("readings.of-mix", mix.text()))
                .orElseGet(() -> words.say("readings.of-all")));
        small(list.guard()
                .map(width -> words.say("readings.guarded", words.number(width)))
                .orElseGet(() -> words.say("readings.not-guarded")));
        flow.down(4);
        drawLines();
        flow.down(6);
        small(words.say("readings.note"));
        small(words.say(
                "readings.head",
                Dates.minute(list.moment()),
                list.head().printed(),
                Long.toString(list.head().entries())));
        flow.finish(imprint);
    }

    private void drawLines() throws IOException {
        if (list.lines().isEmpty()) {
            small(words.say("readings.none"));
            return;
        }
        PageTable table = table(
                16,
                column("readings.at", 1.7, Align.LEFT),
                column("readings.mix", 1.3, Align.LEFT),
                column("readings.truck", 1.5, Align.LEFT),
                column("readings.meter", 0.9, Align.LEFT),
                column("readings.gauge", 0.9, Align.RIGHT),
                column("readings.factor", 0.7, Align.RIGHT),
                column("readings.revision", 0.6, Align.RIGHT),
                column("readings.air", 0.8, Align.RIGHT),
                column("readings.uncertainty", 0.9, Align.RIGHT),
                column("readings.density", 1.4, Align.RIGHT),
                column("readings.verdict", 2, Align.LEFT));
        for (FieldList.Line line : list.lines()) {
            table.row(cells(line), notes(line));
        }
    }

    private List<String> cells(FieldList.Line line) {
        FieldReading reading = line.reading();
        return List.of(
                Dates.minute(reading.readAt()),
                reading.mixId().text(),
                reading.truck(),
                reading.meterId().map(MeterId::text).orElse(""),
                words.number(reading.gaugePercent()),
                air(line, made -> words.number(made.factorPercent())),
                air(line, made -> Integer.toString(made.revision())),
                air(line, made -> words.number(made.reportedPercent())),
                air(line, made -> made.expandedPercent().map(words::number).orElse("")),
                reading.density()
                        .map(density -> words.number(density.number()) + " "
                                + words.unit(density.unit().symbol()))
                        .orElse(""),
                line.words());
    }

    private static String air(FieldList.Line line, Function<FieldList.Air, String> said) {
        return line.air().map(said).orElse("");
    }

    private List<String> notes(FieldList.Line line) {
        List<String> notes = new ArrayList<>(line.notes());
        line.reading().keptBecause().ifPresent(why -> notes.add(words.say("readings.kept", why)));
        Optional.of(line.reading().remarks())
                .filter(remarks -> !remarks.isBlank())
                .ifPresent(remarks -> notes.add(words.say("readings.remarks", remarks)));
        return notes;
    }
}
