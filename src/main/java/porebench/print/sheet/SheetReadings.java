package porebench.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.TrialSheet;
import porebench.method.MeterType;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws the rows to be written in by hand, one a trial, with the columns of a trial file. */
final class SheetReadings {
    private static final double ROW = 27;
    private static final double HEADINGS = 55;

    private final TrialSheet sheet;
    private final Flow flow;
    private final Words words;

    SheetReadings(TrialSheet sheet, Flow flow, Words words) {
        this.sheet = sheet;
        this.flow = flow;
        this.words = words;
    }

    /** Returns the height of all rows with their headings, in points. */
    double height() {
        return HEADINGS + sheet.weighOut().trials() * ROW;
    }

    void draw() throws IOException {
        flow.text(
                new TextFit(Weight.REGULAR, 8, 6.5, flow.width(), 2),
                words.say(
                        "sheet.readings-note",
                        sheet.mix().id().text(),
                        sheet.massUnit().symbol()));
        flow.down(2);
        PageTable table = new PageTable(flow, trialColumns());
        table.heading(ROW);
        for (int trial = 1; trial <= sheet.weighOut().trials(); trial++) {
            List<String> corners = new ArrayList<>();
            corners.add(Integer.toString(trial));
            for (int column = 1; column < trialColumns().size(); column++) {
                corners.add(column == trialColumns().size() - 2 ? words.say("sheet.yes-no") : "");
            }
            table.blankRow(corners, ROW);
        }
    }

    private List<PageTable.Column> trialColumns() {
        String unit = sheet.massUnit().symbol();
        boolean typeB = sheet.meterType() == MeterType.B;
        return List.of(
                column("trial.id", 1.6),
                column("trial.tested-at", 2),
                column("trial.operator", 1.7),
                column("trial.fine", 1.4, unit),
                column("trial.coarse", 1.4, unit),
                column("trial.soak", 1.1),
                column("trial.water", 1.1),
                column(typeB ? "trial.withdrawn" : "trial.h1", 1.65),
                column(typeB ? "trial.gauge" : "trial.h2", 1.2),
                column("trial.leak", 1.2),
                column("trial.remarks", 2.15));
    }

    private PageTable.Column column(String key, double share, Object... filled) {
        return new PageTable.Column(words.say(key, filled), share, Align.LEFT, Weight.REGULAR);
    }
}
