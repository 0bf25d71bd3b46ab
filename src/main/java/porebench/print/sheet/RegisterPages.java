package porebench.print.sheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.evidence.paper.RegisterList;
import porebench.method.Digits;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws the factor register: how many mixes are covered, then a row a mix. */
public final class RegisterPages extends PrintedSheet {
    private final RegisterList list;
    private final Imprint imprint;

    public RegisterPages(RegisterList list, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(new Flow(leaves, words, words.say("register.running-head", when(list, words)), list.isTraining()), words);
        this.list = list;
        this.imprint = imprint;
    }

    private static String when(RegisterList list, Words words) {
        String day = words.date(list.moment().toLocalDate());
        return list.hour()
                .map(hour -> words.say(
                        "register.at", day, hour.truncatedTo(ChronoUnit.MINUTES).toString()))
                .orElse(day);
    }

    public void draw() throws IOException {
        head(list.laboratory(), words.say("register.kind"), words.say("register.subject", when(list, words)));
        flow.text(
                new TextFit(Weight.BOLD, 12, 9, flow.width(), 2),
                words.say("register.covered", Integer.toString(list.covered()), Integer.toString(list.all())));
        if (list.alarms().cards() > 0) {
            flow.text(
                    new TextFit(Weight.BOLD, 11, 8, flow.width(), 2),
                    words.say(
                            "register.alarm",
                            Integer.toString(list.alarms().cards()),
                            Integer.toString(list.alarms().mixes())));
        }
        if (list.isPart()) {
            small(words.say("register.part", Integer.toString(list.lines().size()), Integer.toString(list.all())));
        }
        flow.down(4);
        drawLines();
        flow.down(6);
        small(words.say("register.note"));
        small(words.say(
                "register.head",
                list.head().printed(),
                Long.toString(list.head().entries())));
        flow.finish(imprint);
    }

    private void drawLines() throws IOException {
        if (list.lines().isEmpty()) {
            small(words.say("register.none"));
            return;
        }
        PageTable table = table(
                16,
                column("register.state", 1.5, Align.LEFT),
                column("register.mix", 1.5, Align.LEFT),
                column("register.title", 3.2, Align.LEFT),
                column("register.factor", 0.7, Align.RIGHT),
                column("register.uncertainty", 0.8, Align.RIGHT),
                column("register.revision", 0.6, Align.RIGHT),
                column("register.from", 1.25, Align.LEFT),
                column("register.recheck", 1.25, Align.LEFT),
                column("register.trials", 0.7, Align.RIGHT),
                column("register.meters", 1.2, Align.LEFT),
                column("register.tested", 1.25, Align.LEFT),
                column("register.uncovered", 1.25, Align.LEFT));
        for (RegisterList.Line line : list.lines()) {
            RegisterRow row = line.row();
            TrialsBehind trials = row.trials();
            table.row(
                    List.of(
                            words.say("state." + row.state().symbol().replace(' ', '-')),
                            row.mixId().text(),
                            row.title(),
                            row.factorPercent().map(words::number).orElse(""),
                            row.uncertainty()
                                    .expandedPercent()
                                    .map(RegisterPages::rounded)
                                    .map(words::number)
                                    .orElse(""),
                            row.revision().map(Object::toString).orElse(""),
                            (day(row.inForceFrom()) + " " + row.terms().atText()).strip(),
                            day(row.recheckBy()),
                            Integer.toString(row.countedTrials()),
                            trials.meters().stream().map(meter -> meter.text()).collect(Collectors.joining(", ")),
                            day(trials.lastOn()),
                            day(row.uncoveredSince())),
                    line.all());
        }
    }

    private static BigDecimal rounded(BigDecimal uncertainty) {
        return uncertainty.setScale(Digits.AIR, RoundingMode.HALF_EVEN);
    }

    private String day(Optional<LocalDate> day) {
        return day.map(words::date).orElse("");
    }
}
