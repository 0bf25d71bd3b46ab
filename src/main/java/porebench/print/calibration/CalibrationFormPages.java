package porebench.print.calibration;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import porebench.evidence.paper.CalibrationForm;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.print.page.Align;
import porebench.print.page.CautionBox;
import porebench.print.page.FittedText;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.print.sheet.SheetSteps;
import porebench.record.Meter;
import porebench.record.MeterCalibration;
import porebench.record.column.CalibrationColumns;
import porebench.record.column.Column;
import porebench.record.column.Part;

/**
 * Draws a blank form for a calibration, with the columns of a calibration file.
 *
 * <p>Source of the steps: JIS A 1128, clause 5.1, for the bowl (seen); ASTM C231, annex on calibration, for dial and column
 * (recalled); valves and petcocks of a Type B meter as in {@link SheetSteps}; in our own words.
 */
public final class CalibrationFormPages extends PrintedSheet {
    private static final double ROW = 25;
    private static final double TO_WRITE = 18;
    private static final int FILLS = 6;

    /** With one fewer the form of a Type A meter is one page on every paper and in every language. */
    private static final int FILLS_TYPE_A = 5;

    private static final int POINTS = 12;
    private static final double BOX = 9;

    private final CalibrationForm form;
    private final Imprint imprint;

    public CalibrationFormPages(CalibrationForm form, OpenPages leaves, Words words, Imprint imprint)
            throws IOException {
        super(flow(form, leaves, words), words);
        this.form = form;
        this.imprint = imprint;
    }

    private static Flow flow(CalibrationForm form, OpenPages leaves, Words words) throws IOException {
        String meter = form.meter().map(known -> known.id().text()).orElse("");
        return new Flow(leaves, words, words.say("form.running-head", meter), form.isTraining());
    }

    public void draw() throws IOException {
        String subject = form.meter()
                .map(meter -> words.say("form.subject", meter.id().text()))
                .orElseGet(() -> words.say("form.subject.any"));
        head(form.laboratory(), words.say("form.kind"), subject);
        drawFacts();
        drawReasons();
        cautions(CautionBox.ofCalibration(form.meterType()));
        drawBowl();
        if (form.meterType() == MeterType.B) {
            drawDial();
        } else {
            drawColumn();
        }
        signatures(List.of("calibration.signed-by", "sheet.checked-by"), 60);
        small(words.say("form.file-note", form.massUnit().symbol()));
        authority(form.profile());
        flow.finish(imprint);
    }

    private void drawFacts() throws IOException {
        facts(
                fact("sheet.meter-type", words.say("meter." + form.meterType()), 1),
                fact("sheet.meter", form.meter().map(meter -> meter.id().text()).orElse(""), 1.2),
                fact("sheet.serial", form.meter().map(Meter::serial).orElse(""), 1.2),
                fact("sheet.profile", form.profile().title(), 1.6));
        facts(
                fact("calibration.id", "", 1),
                fact("form.day", "", 1.2),
                fact("form.elevation", "", 1.2),
                fact("calibration.by", "", 1.6));
    }

    private void drawReasons() throws IOException {
        flow.down(4);
        MeterCalibration.Reason[] reasons = MeterCalibration.Reason.values();
        double label = 52;
        double place = (flow.width() - label) / reasons.length;
        List<FittedText> texts = new ArrayList<>();
        for (MeterCalibration.Reason one : reasons) {
            texts.add(new TextFit(Weight.REGULAR, 9, 6, place - BOX - 8, 1)
                    .fit(flow.faces(), words.say("reason." + one.symbol())));
        }
        flow.need(BOX + 8);
        FittedText reason = TextFit.line(Weight.BOLD, 9, label - 6).fit(flow.faces(), words.say("calibration.reason"));
        flow.pen().text(reason, flow.left(), flow.top(), label - 6, Align.LEFT);
        for (int index = 0; index < reasons.length; index++) {
            double x = flow.left() + label + index * place;
            flow.pen().frame(x, flow.top() + 1, BOX, BOX, 0.75);
            flow.pen().text(texts.get(index), x + BOX + 4, flow.top(), place - BOX - 8, Align.LEFT);
        }
        flow.down(BOX + 8);
    }

    private void drawBowl() throws IOException {
        int fills = form.meterType() == MeterType.A ? FILLS_TYPE_A : FILLS;
        section("calibration.bowl", 60 + fills * ROW);
        step("form.step.bowl-weigh");
        step("form.step.bowl-fill");
        step("form.step.bowl-again");
        blank("calibration.fill", CalibrationColumns.OF_FILL, 2, fills);
        toWrite("calibration.air", "calibration.pressure", "calibration.diameter", "calibration.height");
        small(words.say(
                "form.bowl-limits",
                figures.of(form.profile(), FigureName.LEAST_BOWL),
                figures.of(form.profile(), FigureName.BOWL_SHAPE_LOW),
                figures.of(form.profile(), FigureName.BOWL_SHAPE_HIGH)));
    }

    private void drawDial() throws IOException {
        section("calibration.dial", 130 + POINTS * ROW);
        step("form.step.dial-fill");
        step("form.step.dial-line");
        step("form.step.dial-leak");
        step("form.step.dial-withdraw");
        step("form.step.dial-read");
        step("form.step.dial-release");
        toWrite("calibration.vessel", "calibration.water", "calibration.line", "form.leak");
        toWrite("calibration.maker-chamber", "calibration.maker-pressure");
        flow.down(4);
        blank("form.point", CalibrationColumns.OF_POINT, 2.5, POINTS);
        small(words.say(
                "form.dial-limits",
                figures.of(form.profile(), FigureName.DIAL_TOLERANCE),
                figures.of(form.profile(), FigureName.LEAK_MARKS)));
    }

    private void drawColumn() throws IOException {
        section("calibration.column", 120);
        step("form.step.column-weigh");
        step("form.step.column-expansion");
        step("form.step.column-pressure");
        toWrite("calibration.vessel-mass", "calibration.bowl-mass", "calibration.expansion", "calibration.working");
        small(words.say(
                "form.column-limits",
                figures.of(form.profile(), FigureName.EXPANSION_LIMIT),
                figures.of(form.profile(), FigureName.ELEVATION_LIMIT)));
    }

    private void step(String key) throws IOException {
        flow.text(new TextFit(Weight.REGULAR, 9.5, 7, flow.width(), 3), words.say(key));
        flow.down(2.5);
    }

    private void toWrite(String... labels) throws IOException {
        toWrite(TO_WRITE, List.of(labels));
    }

    /** Draws rows to be written in, under the columns that each of them states. */
    private <P> void blank(String counted, Part<P> part, double remarks, int rows) throws IOException {
        List<PageTable.Column> columns = new ArrayList<>();
        columns.add(column(counted, 0.6, Align.LEFT));
        for (Column<P, ?> each : part.columns().all()) {
            String key = "form.row." + each.name();
            columns.add(column(
                    key, each.hasUnit() ? 1.6 : 1.2, Align.LEFT, form.massUnit().symbol()));
            if (each == CalibrationColumns.AMOUNT) {
                columns.add(column("form.unit", 1.8, Align.LEFT));
            }
        }
        columns.add(column("trial.remarks", remarks, Align.LEFT));
        PageTable table = new PageTable(flow, columns);
        table.heading(ROW);
        for (int row = 1; row <= rows; row++) {
            List<String> corners = new ArrayList<>(Collections.nCopies(columns.size(), ""));
            corners.set(0, Integer.toString(row));
            table.blankRow(corners, ROW);
        }
        flow.down(4);
    }
}
