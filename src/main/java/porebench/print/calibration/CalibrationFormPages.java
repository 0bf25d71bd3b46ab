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
import porebench.print.page.PrintedFigures;
import porebench.print.page.SheetParts;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.print.sheet.SheetSteps;
import porebench.record.Meter;
import porebench.record.MeterCalibration;

/**
 * Draws a blank form for a calibration, with the columns of a calibration file.
 *
 * <p>Source of the steps: JIS A 1128, clause 5.1, for the bowl (seen); ASTM C231, annex on calibration, for dial and column
 * (recalled); valves and petcocks of a Type B meter as in {@link SheetSteps}; in our own words.
 */
public final class CalibrationFormPages {
    private static final double ROW = 25;
    private static final double TO_WRITE = 18;
    private static final int FILLS = 6;
    private static final int POINTS = 12;
    private static final double BOX = 9;

    private final CalibrationForm form;
    private final Flow flow;
    private final Words words;
    private final PrintedFigures figures;
    private final SheetParts parts;
    private final Imprint imprint;

    public CalibrationFormPages(CalibrationForm form, OpenPages leaves, Words words, Imprint imprint)
            throws IOException {
        this.form = form;
        this.words = words;
        this.figures = new PrintedFigures(words);
        this.imprint = imprint;
        String meter = form.meter().map(known -> known.id().text()).orElse("");
        this.flow = new Flow(leaves, words, words.say("form.running-head", meter), form.isTraining());
        this.parts = new SheetParts(flow, words);
    }

    public void draw() throws IOException {
        String subject = form.meter()
                .map(meter -> words.say("form.subject", meter.id().text()))
                .orElseGet(() -> words.say("form.subject.any"));
        parts.head(form.laboratory(), words.say("form.kind"), subject);
        drawFacts();
        drawReasons();
        for (String key : CautionBox.ofCalibration(form.meterType())) {
            CautionBox.draw(flow, words.say(key), 4);
        }
        drawBowl();
        if (form.meterType() == MeterType.B) {
            drawDial();
        } else {
            drawColumn();
        }
        parts.signatures(List.of("calibration.signed-by", "sheet.checked-by"), 60);
        parts.small(words.say("form.file-note", form.massUnit().symbol()));
        parts.authority(form.profile());
        flow.finish(imprint);
    }

    private void drawFacts() throws IOException {
        parts.facts(List.of(
                parts.fact("sheet.meter-type", words.say("meter." + form.meterType()), 1),
                parts.fact(
                        "sheet.meter",
                        form.meter().map(meter -> meter.id().text()).orElse(""),
                        1.2),
                parts.fact("sheet.serial", form.meter().map(Meter::serial).orElse(""), 1.2),
                parts.fact("sheet.profile", form.profile().title(), 1.6)));
        parts.facts(List.of(
                parts.fact("calibration.id", "", 1),
                parts.fact("form.day", "", 1.2),
                parts.fact("form.elevation", "", 1.2),
                parts.fact("calibration.by", "", 1.6)));
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
        parts.section("calibration.bowl", 60 + FILLS * ROW);
        step("form.step.bowl-weigh");
        step("form.step.bowl-fill");
        step("form.step.bowl-again");
        String unit = form.massUnit().symbol();
        blank(
                List.of(
                        column("calibration.fill", 0.6),
                        column("form.empty", 1.6, unit),
                        column("form.plate", 1.6, unit),
                        column("form.full", 1.6, unit),
                        column("calibration.water", 1.2),
                        column("trial.remarks", 2)),
                FILLS);
        toWrite("calibration.air", "calibration.pressure", "calibration.diameter", "calibration.height");
        parts.small(words.say(
                "form.bowl-limits",
                figures.of(form.profile(), FigureName.LEAST_BOWL),
                figures.of(form.profile(), FigureName.BOWL_SHAPE_LOW),
                figures.of(form.profile(), FigureName.BOWL_SHAPE_HIGH)));
    }

    private void drawDial() throws IOException {
        parts.section("calibration.dial", 130 + POINTS * ROW);
        step("form.step.dial-fill");
        step("form.step.dial-line");
        step("form.step.dial-leak");
        step("form.step.dial-withdraw");
        step("form.step.dial-read");
        step("form.step.dial-release");
        toWrite("calibration.vessel", "calibration.water", "calibration.line", "form.leak");
        toWrite("calibration.maker-chamber", "calibration.maker-pressure");
        flow.down(4);
        blank(
                List.of(
                        column("form.point", 0.6),
                        column("form.withdrawn", 1.6),
                        column("form.unit", 1.8),
                        column("trial.gauge_pct", 1.2),
                        column("trial.remarks", 2.5)),
                POINTS);
        parts.small(words.say(
                "form.dial-limits",
                figures.of(form.profile(), FigureName.DIAL_TOLERANCE),
                figures.of(form.profile(), FigureName.LEAK_MARKS)));
    }

    private void drawColumn() throws IOException {
        parts.section("calibration.column", 120);
        step("form.step.column-weigh");
        step("form.step.column-expansion");
        step("form.step.column-pressure");
        toWrite("calibration.vessel-mass", "calibration.bowl-mass", "calibration.expansion", "calibration.working");
        parts.small(words.say(
                "form.column-limits",
                figures.of(form.profile(), FigureName.EXPANSION_LIMIT),
                figures.of(form.profile(), FigureName.ELEVATION_LIMIT)));
    }

    private void step(String key) throws IOException {
        flow.text(new TextFit(Weight.REGULAR, 9.5, 7, flow.width(), 3), words.say(key));
        flow.down(2.5);
    }

    private void toWrite(String... labels) throws IOException {
        parts.toWrite(TO_WRITE, List.of(labels));
    }

    private void blank(List<PageTable.Column> columns, int rows) throws IOException {
        PageTable table = new PageTable(flow, columns);
        table.heading(ROW);
        for (int row = 1; row <= rows; row++) {
            List<String> corners = new ArrayList<>(Collections.nCopies(columns.size(), ""));
            corners.set(0, Integer.toString(row));
            table.blankRow(corners, ROW);
        }
        flow.down(4);
    }

    private PageTable.Column column(String key, double share, Object... filled) {
        return new PageTable.Column(words.say(key, filled), share, Align.LEFT, Weight.REGULAR);
    }
}
