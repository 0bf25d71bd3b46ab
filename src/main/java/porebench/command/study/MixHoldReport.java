package porebench.command.study;

import java.util.ArrayList;
import java.util.List;
import porebench.command.reply.JsonFields;
import porebench.command.reply.NumberText;
import porebench.command.reply.Report;
import porebench.command.reply.ReportLayout;
import porebench.command.reply.TextPage;
import porebench.evidence.hold.HoldText;
import porebench.evidence.hold.MixHold;
import porebench.method.Dates;
import porebench.method.Texts;
import porebench.method.hold.HoldPoint;

/** What {@code holds} has to say of a mix of a lab book: as of a file, and which pairs these are. */
final class MixHoldReport {
    private final HoldText text;
    private final Texts words;
    private final NumberText shown;

    MixHoldReport(HoldText text, Texts words, NumberText shown) {
        this.text = text;
        this.words = words;
        this.shown = shown;
    }

    /** A point beside its reading. */
    private record Read(MixHold.Pair pair, HoldPoint point) {}

    Report of(MixHold hold) {
        ReportLayout<MixHold> head = new ReportLayout<MixHold>(words, shown)
                .text("mixId", one -> one.mixId().text())
                .whole("revision", one -> one.spell().issue().revision())
                .field((json, one) ->
                        json.number("factorPercent", one.spell().issue().factorPercent()))
                .text("since", one -> one.spell().from().toString())
                .text("begunBy", one -> one.spell().begun().symbol())
                .text("begunByName", one -> one.spell().what())
                .number("airFreeDensity", one -> one.airFree().kilogramsPerCubicMetre())
                .whole("notCorrected", MixHold::notCorrected)
                .whole("earlierPairs", MixHold::earlier)
                .line(one -> words.get(
                        "holds.mix",
                        one.mixId().text(),
                        Integer.toString(one.spell().issue().revision()),
                        shown.exact(one.spell().issue().factorPercent()),
                        Dates.minute(one.spell().from())))
                .line(one ->
                        words.get("holds.air-free", shown.fixed(one.airFree().kilogramsPerCubicMetre(), 1)));
        ReportLayout<MixHold> chart = HoldsReport.layout(text, words, shown).of(MixHold::hold);
        ReportLayout<Read> point = new ReportLayout<Read>(words, shown)
                .text("readAt", one -> one.pair().reading().readAt().toString())
                .field((json, one) ->
                        json.number("pressurePercent", one.pair().corrected().airPercent()));
        ReportLayout<Read> charted = HoldsReport.points(words, shown).of(Read::point);
        return new Report() {
            @Override
            public void json(JsonFields json) {
                head.json(json, hold);
                chart.json(json, hold);
                json.list("points", read(hold), (fields, one) -> {
                    charted.json(fields, one);
                    point.json(fields, one);
                });
            }

            @Override
            public void text(TextPage page) {
                head.rows(page, hold);
                chart.rows(page, hold);
                charted.table(page, read(hold));
            }
        };
    }

    private static List<Read> read(MixHold hold) {
        List<Read> all = new ArrayList<>();
        for (int i = 0; i < hold.pairs().size(); i++) {
            all.add(new Read(hold.pairs().get(i), hold.hold().points().get(i)));
        }
        return all;
    }
}
