package porebench.print.sheet;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import porebench.evidence.paper.TrialSheet;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.Trial;
import porebench.record.column.Column;
import porebench.record.column.TrialColumns;

/** Draws the rows to be written in by hand, one a trial, with the columns of a trial file. */
final class SheetReadings extends PrintedSheet {
    private static final double ROW = 27;
    private static final double HEADINGS = 55;

    /** The share of the width that a short number takes. */
    private static final double NARROW = 1.15;

    private static final Map<Column<Trial, ?>, Double> WIDTHS = Map.of(
            TrialColumns.ID, 1.6,
            TrialColumns.TESTED_AT, 2.0,
            TrialColumns.OPERATOR, 1.7,
            TrialColumns.ELEVATION, 1.5,
            TrialColumns.FINE, 1.4,
            TrialColumns.COARSE, 1.4,
            TrialColumns.WITHDRAWN, 1.65,
            TrialColumns.REMARKS, 2.15);

    private final TrialSheet sheet;

    SheetReadings(TrialSheet sheet, Flow flow, Words words) {
        super(flow, words);
        this.sheet = sheet;
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
        List<Column<Trial, ?>> columns = TrialColumns.AT_THE_BENCH.stream()
                .filter(column -> column != TrialColumns.METER && TrialColumns.isAsked(column, sheet.meterType()))
                .toList();
        PageTable table = new PageTable(flow, columns.stream().map(this::headed).toList());
        table.heading(ROW);
        for (int trial = 1; trial <= sheet.weighOut().trials(); trial++) {
            String number = Integer.toString(trial);
            table.blankRow(
                    columns.stream().map(column -> corner(column, number)).toList(), ROW);
        }
    }

    /** Returns what is printed in the corner of a cell, for the hand that fills it. */
    private String corner(Column<Trial, ?> column, String number) {
        if (column == TrialColumns.LEAK) {
            return words.say("sheet.yes-no");
        }
        return column == TrialColumns.ID ? number : "";
    }

    private PageTable.Column headed(Column<Trial, ?> column) {
        double share = WIDTHS.getOrDefault(column, NARROW);
        return column(
                "trial." + column.name(), share, Align.LEFT, sheet.massUnit().symbol());
    }
}
