package porebench.print.sheet;

import java.io.IOException;
import java.util.List;
import porebench.evidence.paper.TrialSheet;
import porebench.method.FigureName;
import porebench.method.RoundingRule;
import porebench.method.sample.WeighOut;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws what to weigh for each trial, within what limits, and what to fetch for all of them. */
final class SheetWeighOut extends PrintedSheet {
    private final TrialSheet sheet;
    private final SheetMasses masses;

    SheetWeighOut(TrialSheet sheet, Flow flow, Words words) {
        super(flow, words);
        this.sheet = sheet;
        this.masses = new SheetMasses(sheet.massUnit());
    }

    void draw() throws IOException {
        String unit = sheet.massUnit().symbol();
        cautions(List.of("caution.dust"));
        if (sheet.mix().batch().wetSieved()) {
            flow.text(new TextFit(Weight.BOLD, 9.5, 7, flow.width(), 2), words.say("sheet.wet-sieved"));
            flow.down(3);
        }
        PageTable table = table(
                20,
                column("sheet.source", 2.2, Align.LEFT),
                column("sheet.material", 2.2, Align.LEFT),
                column("sheet.role", 1, Align.LEFT),
                new PageTable.Column(words.say("sheet.each", unit), 1.4, Align.RIGHT, Weight.BOLD),
                column("sheet.lowest", 1.2, Align.RIGHT, unit),
                column("sheet.highest", 1.2, Align.RIGHT, unit),
                column("sheet.total", 1.6, Align.RIGHT, unit, trials(), spare()));
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
        String tolerance = figures.of(sheet.profile(), FigureName.MASS_TOLERANCE);
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
}
