package porebench.print;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.method.MeterType;
import porebench.record.Laboratory;
import porebench.record.Meter;
import porebench.record.TrialSheet;

/** Draws a weigh-out and trial sheet: what to weigh, the waters, the steps, and rows for the readings. */
final class SheetPages {
    private static final double GAP = 7;
    private static final double SIGNATURE = 20;

    private final TrialSheet sheet;
    private final Flow flow;
    private final Words words;
    private final Imprint imprint;
    private final SheetVolumes volumes;

    SheetPages(TrialSheet sheet, Leaves leaves, Words words, Imprint imprint) throws IOException {
        this.sheet = sheet;
        this.words = words;
        this.imprint = imprint;
        this.volumes = new SheetVolumes(words, sheet.massUnit());
        this.flow = new Flow(
                leaves,
                words,
                words.say(
                        "sheet.running-head",
                        sheet.mix().id().text(),
                        sheet.mix().title()));
    }

    void draw() throws IOException {
        drawHead();
        drawFacts();
        section("sheet.weigh-out", 70);
        new SheetWeighOut(sheet, flow, words).draw();
        drawWaters();
        SheetSteps steps = new SheetSteps(sheet, flow, words);
        section("sheet.steps", steps.height());
        steps.draw();
        SheetReadings readings = new SheetReadings(sheet, flow, words);
        section("sheet.readings", readings.height());
        readings.draw();
        drawEnd();
        flow.finish(imprint);
    }

    private void section(String key, double below) throws IOException {
        flow.down(GAP);
        flow.keepTogether(18 + below);
        flow.text(TextFit.line(Weight.BOLD, 12, flow.width()), words.say(key));
        flow.down(2);
    }

    private void drawHead() throws IOException {
        double half = flow.width() / 2 - 4;
        String name = sheet.laboratory().map(Laboratory::name).orElse("");
        FittedText laboratory = TextFit.first(
                flow.faces(),
                name,
                new TextFit(Weight.BOLD, 11, 8, half, 1),
                new TextFit(Weight.BOLD, 9, 6.5, half, 2));
        FittedText kind = TextFit.line(Weight.REGULAR, 11, half).fit(flow.faces(), words.say("sheet.kind"));
        flow.pen().text(laboratory, flow.left(), flow.top(), half, Align.LEFT);
        flow.pen().text(kind, flow.left() + half + 8, flow.top(), half, Align.RIGHT);
        flow.down(Math.max(laboratory.height(), kind.height()) + 1);
        flow.pen().line(flow.left(), flow.top(), flow.left() + flow.width(), flow.top(), 1);
        flow.down(3);
        flow.text(
                new TextFit(Weight.BOLD, 20, 10, flow.width(), 2),
                sheet.mix().id().text());
        if (!sheet.mix().title().isBlank()) {
            flow.text(
                    new TextFit(Weight.REGULAR, 12, 9, flow.width(), 2),
                    sheet.mix().title());
        }
        if (!sheet.mix().remarks().isBlank()) {
            flow.text(
                    new TextFit(Weight.REGULAR, 9, 7, flow.width(), 2),
                    sheet.mix().remarks());
        }
        flow.down(3);
    }

    private void drawFacts() throws IOException {
        String soak = sheet.mix()
                .soakMinutes()
                .map(minutes -> words.say("sheet.minutes", words.number(minutes)))
                .orElseGet(() -> words.say("sheet.not-stated"));
        facts(List.of(
                fact("sheet.meter-type", words.say("meter." + sheet.meterType()), 1),
                fact(
                        "sheet.meter",
                        sheet.meter().map(meter -> meter.id().text()).orElse(""),
                        1.4),
                fact("sheet.serial", sheet.meter().map(this::serial).orElse(""), 1.2),
                fact("sheet.bowl", bowl(), 1.6)));
        facts(List.of(
                fact(
                        "sheet.target",
                        words.say(
                                "sheet.percent",
                                words.number(sheet.mix().batch().targetAirPercent())),
                        1),
                fact("sheet.soak", soak, 1.4),
                fact("sheet.trials", Integer.toString(sheet.weighOut().trials()), 1.2),
                fact("sheet.profile", sheet.profile().title(), 1.6)));
    }

    private String serial(Meter meter) {
        return meter.serial().isBlank() ? "\u2013" : meter.serial();
    }

    private String bowl() {
        return sheet.meter()
                .map(meter -> volumes.typed(meter.bowl()))
                .orElseGet(() -> volumes.large(sheet.sample().bowl()));
    }

    private Facts.Fact fact(String label, String value, double share) {
        return new Facts.Fact(words.say(label), value, share);
    }

    private void facts(List<Facts.Fact> list) throws IOException {
        Facts facts = new Facts(flow.pen(), 11, flow.width(), list);
        facts.draw(flow.left(), flow.top());
        flow.down(facts.height() + 3);
    }

    private void drawWaters() throws IOException {
        section("sheet.waters", 45);
        List<Facts.Fact> waters = new ArrayList<>();
        waters.add(fact("sheet.one-third", volumes.large(sheet.sample().oneThird()), 1));
        waters.add(fact(
                "sheet.inundation",
                sheet.sample().inundation().map(volumes::large).orElseGet(() -> words.say("sheet.inundation-unknown")),
                1.3));
        waters.add(
                sheet.meterType() == MeterType.B
                        ? fact("sheet.withdraw", volumes.small(sheet.sample().withdrawal()), 1)
                        : fact("sheet.no-withdrawal", words.say("sheet.read-h1-h2"), 1));
        facts(waters);
    }

    private void drawEnd() throws IOException {
        flow.down(GAP);
        flow.need(SIGNATURE + 60);
        Facts signature = new Facts(
                flow.pen(),
                SIGNATURE,
                flow.width(),
                List.of(
                        fact("sheet.tested-by", "", 1.6),
                        fact("sheet.date", "", 1),
                        fact("sheet.checked-by", "", 1.6),
                        fact("sheet.date", "", 1)));
        signature.draw(flow.left(), flow.top());
        flow.down(signature.height() + GAP);
        TextFit small = new TextFit(Weight.REGULAR, 8, 6.5, flow.width(), 2);
        flow.text(small, words.say("sheet.limits"));
        flow.text(
                small,
                words.say(
                        "sheet.authority",
                        sheet.profile().title(),
                        sheet.profile().edition()));
    }
}
