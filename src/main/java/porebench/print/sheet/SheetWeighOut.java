package porebench.print.sheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import porebench.evidence.paper.TrialSheet;
import porebench.method.FigureName;
import porebench.method.RoundingRule;
import porebench.method.sample.WeighOut;
import porebench.print.page.Align;
import porebench.print.page.CautionBox;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws what to weigh for each trial, within what limits, and what to fetch for all of them. */
final class SheetWeighOut {
    private final TrialSheet sheet;
    private final Flow flow;
    private final Words words;
    private final SheetMasses masses;

    SheetWeighOut(TrialSheet sheet, Flow flow, Words words) {
        this.sheet = sheet;
        this.flow = flow;
        this.words = words;
        this.masses = new SheetMasses(sheet.massUnit());
    }

    void draw() throws IOException {
        String unit = sheet.massUnit().symbol();
        CautionBox.draw(flow, words.say("caution.dust"), 4);
        if (sheet.mix().batch().wetSieved()) {
            flow.text(new TextFit(Weight.BOLD, 9.5, 7, flow.width(), 2), words.say("sheet.wet-sieved"));
            flow.down(3);
        }
        PageTable table = new PageTable(
                flow,
                List.of(
                        column("sheet.source", 2.2, Align.LEFT, Weight.REGULAR),
                        column("sheet.material", 2.2, Align.LEFT, Weight.REGULAR),
                        column("sheet.role", 1, Align.LEFT, Weight.REGULAR),
                        column("sheet.each", 1.4, Align.RIGHT, Weight.BOLD, unit),
                        column("sheet.lowest", 1.2, Align.RIGHT, Weight.REGULAR, unit),
                        column("sheet.highest", 1.2, Align.RIGHT, Weight.REGULAR, unit),
                        column("sheet.total", 1.6, Align.RIGHT, Weight.REGULAR, unit, trials(), spare())));
        table.heading(20);
        for (WeighOut.Line line : sheet.weighOut().lines()) {
            table.row(cells(line));
        }
        flow.down(2);
        String sums = words.say(
                "sheet.sums",
                words.number(masses.rounded(sheet.sample().fine())),
                words.number(masses.rounded(sheet.sample().coarse())),
                unit);
        flow.text(TextFit.line(Weight.BOLD, 9.5, flow.width()), sums);
        String step = words.number(masses.rule().step());
        String tolerance = words.number(
                new BigDecimal(sheet.profile().figure(FigureName.MASS_TOLERANCE).value()));
        flow.text(
                new TextFit(Weight.REGULAR, 8, 6.5, flow.width(), 2),
                words.say("sheet.mass-note", step, unit, tolerance));
    }

    private List<String> cells(WeighOut.Line line) {
        SheetMasses.Limits limits = masses.limits(line.lowest(), line.highest());
        return List.of(
                line.source(),
                line.name(),
                words.say("role." + line.role().symbol()),
                words.number(masses.rounded(line.each())),
                words.number(limits.lowest()),
                words.number(limits.highest()),
                words.number(masses.rounded(line.total())));
    }

    private String trials() {
        return Integer.toString(sheet.weighOut().trials());
    }

    private String spare() {
        return words.number(
                RoundingRule.withoutNoise(sheet.weighOut().sparePercent()).stripTrailingZeros());
    }

    private PageTable.Column column(String key, double share, Align align, Weight weight, Object... filled) {
        return new PageTable.Column(words.say(key, filled), share, align, weight);
    }
}
