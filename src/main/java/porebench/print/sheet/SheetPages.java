package porebench.print.sheet;

import java.io.IOException;
import java.util.List;
import porebench.evidence.paper.SheetCode;
import porebench.evidence.paper.TrialSheet;
import porebench.method.MeterType;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PrintedSheet;
import porebench.print.page.QrMark;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.Meter;

/** Draws a weigh-out and trial sheet: what to weigh, the waters, the steps, and rows for the readings. */
public final class SheetPages extends PrintedSheet {
    /** The side of the code that a reader at the bench takes the mix from, in points: 15 mm, no higher than the head. */
    private static final double CODE = 42;

    private final TrialSheet sheet;
    private final Imprint imprint;
    private final SheetVolumes volumes;

    public SheetPages(TrialSheet sheet, OpenPages leaves, Words words, Imprint imprint) throws IOException {
        super(flow(sheet, leaves, words), words);
        this.sheet = sheet;
        this.imprint = imprint;
        this.volumes = new SheetVolumes(words, sheet.massUnit());
    }

    private static Flow flow(TrialSheet sheet, OpenPages leaves, Words words) throws IOException {
        String head = words.say(
                "sheet.running-head", sheet.mix().id().text(), sheet.mix().title());
        return new Flow(leaves, words, head, sheet.isTraining());
    }

    public void draw() throws IOException {
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

    private void drawHead() throws IOException {
        head(sheet.laboratory(), words.say("sheet.kind"), sheet.mix().id().text(), CODE);
        double room = flow.width() - CODE;
        if (!sheet.mix().title().isBlank()) {
            flow.text(new TextFit(Weight.REGULAR, 12, 9, room, 2), sheet.mix().title());
        }
        if (sheet.mix().plant().isPresent()) {
            flow.text(
                    new TextFit(Weight.REGULAR, 9, 7, room, 1),
                    words.say("sheet.plant", sheet.mix().plant().get()));
        }
        if (!sheet.mix().remarks().isBlank()) {
            flow.text(new TextFit(Weight.REGULAR, 9, 7, room, 2), sheet.mix().remarks());
        }
        double code = ruleBelowHead + 1;
        QrMark.draw(flow.pen(), SheetCode.of(sheet.mix().id()), flow.left() + room, code, CODE);
        flow.down(Math.max(3, code + CODE - flow.top()));
    }

    private void drawFacts() throws IOException {
        String soak = sheet.mix()
                .soakMinutes()
                .map(minutes -> words.say("sheet.minutes", words.number(minutes)))
                .orElseGet(() -> words.say("sheet.not-stated"));
        facts(
                fact("sheet.meter-type", words.say("meter." + sheet.meterType()), 1),
                fact(
                        "sheet.meter",
                        sheet.meter().map(meter -> meter.id().text()).orElse(""),
                        1.4),
                fact("sheet.serial", sheet.meter().map(this::serial).orElse(""), 1.2),
                fact("sheet.bowl", bowl(), 1.6));
        facts(
                fact(
                        "sheet.target",
                        words.say(
                                "sheet.percent",
                                words.number(sheet.mix().batch().targetAirPercent())),
                        1),
                fact("sheet.soak", soak, 1.4),
                fact("sheet.trials", Integer.toString(sheet.weighOut().trials()), 1.2),
                fact("sheet.profile", sheet.profile().title(), 1.6));
    }

    private String serial(Meter meter) {
        return meter.serial().isBlank() ? "\u2013" : meter.serial();
    }

    private String bowl() {
        return sheet.meter()
                .map(meter -> volumes.typed(meter.bowl()))
                .orElseGet(() -> volumes.large(sheet.sample().bowl()));
    }

    private void drawWaters() throws IOException {
        section("sheet.waters", 45);
        facts(
                fact(
                        sheet.sample().isThirdTooMuch() ? "sheet.less-than-third" : "sheet.one-third",
                        volumes.large(sheet.sample().firstWater()),
                        1),
                fact(
                        "sheet.inundation",
                        sheet.sample()
                                .inundation()
                                .map(volumes::large)
                                .orElseGet(() -> words.say("sheet.inundation-unknown")),
                        1.3),
                sheet.meterType() == MeterType.B
                        ? fact("sheet.withdraw", volumes.small(sheet.sample().withdrawal()), 1)
                        : fact("sheet.no-withdrawal", words.say("sheet.read-h1-h2"), 1));
    }

    private void drawEnd() throws IOException {
        signatures(List.of("sheet.tested-by", "sheet.checked-by"), 60);
        small(words.say("sheet.limits"));
        authority(sheet.profile());
    }
}
