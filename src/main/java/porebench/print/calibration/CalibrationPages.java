package porebench.print.calibration;

import java.io.IOException;
import java.util.List;
import porebench.evidence.paper.CalibrationRecord;
import porebench.method.Answer;
import porebench.method.meter.MeterCheck;
import porebench.print.page.Align;
import porebench.print.page.CautionBox;
import porebench.print.page.Flow;
import porebench.print.page.Imprint;
import porebench.print.page.OpenPages;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedFigures;
import porebench.print.page.SheetParts;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.MeterCalibration;

/** Draws the record of one calibration: the verdict first, then bowl, dial or column with everything measured. */
public final class CalibrationPages {
    private final CalibrationRecord record;
    private final MeterCalibration measured;
    private final Flow flow;
    private final Words words;
    private final PrintedFigures figures;
    private final SheetParts parts;
    private final Imprint imprint;

    public CalibrationPages(CalibrationRecord record, OpenPages leaves, Words words, Imprint imprint)
            throws IOException {
        this.record = record;
        this.measured = record.judged().calibration().value();
        this.words = words;
        this.figures = new PrintedFigures(words);
        this.imprint = imprint;
        this.flow = new Flow(
                leaves,
                words,
                words.say("calibration.running-head", record.meter().id().text(), words.date(measured.calibratedOn())),
                record.isTraining());
        this.parts = new SheetParts(flow, words);
    }

    public void draw() throws IOException {
        parts.head(
                record.laboratory(),
                words.say("calibration.kind"),
                words.say("calibration.subject", record.meter().id().text(), words.date(measured.calibratedOn())));
        drawFacts();
        drawChecks();
        drawDue();
        CalibrationBowl bowl = new CalibrationBowl(flow, words, parts);
        if (measured.bowl().isPresent()) {
            bowl.draw(measured.bowl().get(), record.judged().bowl().flatMap(Answer::value));
        }
        if (measured.dial().isPresent()) {
            new CalibrationDial(flow, words, parts).draw(measured.dial().get(), record);
        }
        if (measured.column().isPresent()) {
            new CalibrationColumn(words, parts).draw(measured.column().get(), record);
        }
        drawEnd();
        flow.finish(imprint);
    }

    private void drawFacts() throws IOException {
        parts.facts(List.of(
                parts.fact("sheet.meter-type", words.say("meter." + measured.meterType()), 1),
                parts.fact("sheet.serial", orNone(record.meter().serial()), 1.2),
                parts.fact("calibration.by", orNone(measured.by()), 1.6),
                parts.fact(
                        "calibration.reason",
                        words.say("reason." + measured.reason().symbol()),
                        1.4)));
        parts.facts(List.of(
                parts.fact("calibration.id", measured.id().text(), 1),
                parts.fact("calibration.division", divided(), 1.2),
                parts.fact(
                        "calibration.elevation",
                        measured.elevationMetres()
                                .map(metres -> words.say("calibration.metres", words.number(metres)))
                                .orElse(PrintedFigures.NONE),
                        1.6),
                parts.fact("sheet.profile", record.profile().title(), 1.4)));
        if (!measured.remarks().isBlank()) {
            flow.text(new TextFit(Weight.REGULAR, 9, 7, flow.width(), 3), measured.remarks());
        }
    }

    private String divided() {
        return words.say("sheet.percent", words.number(record.meter().divisionPercent()));
    }

    private static String orNone(String text) {
        return text.isBlank() ? PrintedFigures.NONE : text;
    }

    private void drawChecks() throws IOException {
        List<MeterCheck> checks = record.judged().checks();
        parts.section("calibration.checks", 40 + 16 * checks.size());
        String verdict = measured.isNote()
                ? "calibration.verdict.note"
                : record.judged().passes() ? "calibration.verdict.passed" : "calibration.verdict.failed";
        flow.text(new TextFit(Weight.BOLD, 15, 10, flow.width(), 1), words.say(verdict));
        flow.down(2);
        if (checks.isEmpty()) {
            return;
        }
        PageTable table = new PageTable(
                flow,
                List.of(
                        column("calibration.check", 2.3, Align.LEFT),
                        column("calibration.found", 1.3, Align.RIGHT),
                        column("calibration.limit", 1.6, Align.RIGHT),
                        column("calibration.verdict", 0.9, Align.LEFT),
                        column("calibration.clause", 4, Align.LEFT)));
        table.heading(16);
        for (MeterCheck check : checks) {
            table.row(List.of(
                    words.say("check." + check.subject().symbol()),
                    figure(check, check.value()),
                    limit(check),
                    words.say(check.passes() ? "calibration.passes" : "calibration.fails"),
                    words.source(check.clause())));
        }
    }

    private PageTable.Column column(String key, double share, Align align) {
        return new PageTable.Column(words.say(key), share, align, Weight.REGULAR);
    }

    private String figure(MeterCheck check, double value) {
        String number = figures.fixed(value, check.subject() == MeterCheck.Subject.BOWL_VOLUME ? 4 : 2);
        return (number + " " + words.unit(check.subject().unit())).strip();
    }

    private String limit(MeterCheck check) {
        if (check.lowInclusive().isPresent() && check.highInclusive().isPresent()) {
            return words.say(
                    "calibration.limit.within",
                    figure(check, check.lowInclusive().getAsDouble()),
                    figure(check, check.highInclusive().getAsDouble()));
        }
        return check.lowInclusive().isPresent()
                ? words.say(
                        "calibration.limit.least",
                        figure(check, check.lowInclusive().getAsDouble()))
                : words.say(
                        "calibration.limit.most",
                        figure(check, check.highInclusive().orElse(0)));
    }

    private void drawDue() throws IOException {
        flow.down(4);
        boolean holds = record.judged().passes() && !measured.isNote();
        flow.text(
                new TextFit(Weight.BOLD, 11, 8, flow.width(), 2),
                !holds
                        ? words.say("calibration.next-due.now")
                        : record.nextDue()
                                .map(day -> words.say("calibration.next-due", words.date(day)))
                                .orElseGet(() -> words.say("calibration.next-due.unknown")));
    }

    private void drawEnd() throws IOException {
        flow.down(4);
        for (String key : CautionBox.ofCalibration(measured.meterType())) {
            CautionBox.draw(flow, words.say(key), 4);
        }
        parts.signatures(List.of("calibration.signed-by", "sheet.checked-by"), 60);
        parts.authority(record.profile());
        parts.small(words.say(
                "print.head",
                Long.toString(record.head().entries()),
                record.head().printed()));
    }
}
