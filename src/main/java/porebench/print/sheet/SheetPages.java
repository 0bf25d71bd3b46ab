package porebench.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.TrialSheet;
import porebench.method.MeterType;
import porebench.print.page.Facts;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.SheetParts;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.Meter;

/** Draws a weigh-out and trial sheet: what to weigh, the waters, the steps, and rows for the readings. */
public final class SheetPages {
    private final TrialSheet sheet;
    private final Flow flow;
    private final Words words;
    private final Imprint imprint;
    private final SheetVolumes volumes;
    private final SheetParts parts;

    public SheetPages(TrialSheet sheet, OpenPages leaves, Words words, Imprint imprint) throws IOException {
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
                        sheet.mix().title()),
                sheet.isTraining());
        this.parts = new SheetParts(flow, words);
    }

    public void draw() throws IOException {
        drawHead();
        drawFacts();
        parts.section("sheet.weigh-out", 70);
        new SheetWeighOut(sheet, flow, words).draw();
        drawWaters();
        SheetSteps steps = new SheetSteps(sheet, flow, words);
        parts.section("sheet.steps", steps.height());
        steps.draw();
        SheetReadings readings = new SheetReadings(sheet, flow, words);
        parts.section("sheet.readings", readings.height());
        readings.draw();
        drawEnd();
        flow.finish(imprint);
    }

    private void drawHead() throws IOException {
        parts.head(sheet.laboratory(), words.say("sheet.kind"), sheet.mix().id().text());
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
        parts.facts(List.of(
                fact("sheet.meter-type", words.say("meter." + sheet.meterType()), 1),
                fact(
                        "sheet.meter",
                        sheet.meter().map(meter -> meter.id().text()).orElse(""),
                        1.4),
                fact("sheet.serial", sheet.meter().map(this::serial).orElse(""), 1.2),
                fact("sheet.bowl", bowl(), 1.6)));
        parts.facts(List.of(
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
        return parts.fact(label, value, share);
    }

    private void drawWaters() throws IOException {
        parts.section("sheet.waters", 45);
        List<Facts.Fact> waters = new ArrayList<>();
        waters.add(fact(
                sheet.sample().isThirdTooMuch() ? "sheet.less-than-third" : "sheet.one-third",
                volumes.large(sheet.sample().firstWater()),
                1));
        waters.add(fact(
                "sheet.inundation",
                sheet.sample().inundation().map(volumes::large).orElseGet(() -> words.say("sheet.inundation-unknown")),
                1.3));
        waters.add(
                sheet.meterType() == MeterType.B
                        ? fact("sheet.withdraw", volumes.small(sheet.sample().withdrawal()), 1)
                        : fact("sheet.no-withdrawal", words.say("sheet.read-h1-h2"), 1));
        parts.facts(waters);
    }

    private void drawEnd() throws IOException {
        parts.signatures(List.of("sheet.tested-by", "sheet.checked-by"), 60);
        parts.small(words.say("sheet.limits"));
        parts.authority(sheet.profile());
    }
}
