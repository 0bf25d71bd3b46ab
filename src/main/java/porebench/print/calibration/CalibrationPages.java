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
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.MeterCalibration;

/** Draws the record of one calibration: the verdict first, then bowl, dial or column with everything measured. */
public final class CalibrationPages extends PrintedSheet {
    private final CalibrationRecord record;
    private final MeterCalibration measured;
    private final Imprint imprint;

    public CalibrationPages(CalibrationRecord record, OpenPages leaves, Words words, Imprint imprint)
            throws IOException {
        super(flow(record, leaves, words), words);
        this.record = record;
        this.measured = record.judged().calibration().value();
        this.imprint = imprint;
    }

    private static Flow flow(CalibrationRecord record, OpenPages leaves, Words words) throws IOException {
        String day = words.date(record.judged().calibration().value().calibratedOn());
        String head = words.say("calibration.running-head", record.meter().id().text(), day);
        return new Flow(leaves, words, head, record.isTraining());
    }

    public void draw() throws IOException {
        head(
                record.laboratory(),
                words.say("calibration.kind"),
                words.say("calibration.subject", record.meter().id().text(), words.date(measured.calibratedOn())));
        drawFacts();
        drawChecks();
        drawDue();
        CalibrationBowl bowl = new CalibrationBowl(flow, words);
        if (measured.bowl().isPresent()) {
            bowl.draw(measured.bowl().get(), record.judged().bowl().flatMap(Answer::value));
        }
        if (measured.dial().isPresent()) {
            new CalibrationDial(flow, words).draw(measured.dial().get(), record);
        }
        if (measured.column().isPresent()) {
            new CalibrationColumn(flow, words).draw(measured.column().get(), record);
        }
        drawEnd();
        flow.finish(imprint);
    }

    private void drawFacts() throws IOException {
        facts(
                fact("sheet.meter-type", words.say("meter." + measured.meterType()), 1),
                fact("sheet.serial", orNone(record.meter().serial()), 1.2),
                fact("calibration.by", orNone(measured.by()), 1.6),
                fact(
                        "calibration.reason",
                        words.say("reason." + measured.reason().symbol()),
                        1.4));
        facts(
                fact("calibration.id", measured.id().text(), 1),
                fact("calibration.division", divided(), 1.2),
                fact(
                        "calibration.elevation",
                        measured.elevationMetres()
                                .map(metres -> words.say("calibration.metres", words.number(metres)))
                                .orElse(PrintedFigures.NONE),
                        1.6),
                fact("sheet.profile", record.profile().title(), 1.4));
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
        section("calibration.checks", 40 + 16 * checks.size());
        String verdict = measured.isNote()
                ? "calibration.verdict.note"
                : record.judged().passes() ? "calibration.verdict.passed" : "calibration.verdict.failed";
        flow.text(new TextFit(Weight.BOLD, 15, 10, flow.width(), 1), words.say(verdict));
        flow.down(2);
        if (checks.isEmpty()) {
            return;
        }
        PageTable table = table(
                16,
                column("calibration.check", 2.3, Align.LEFT),
                column("calibration.found", 1.3, Align.RIGHT),
                column("calibration.limit", 1.6, Align.RIGHT),
                column("calibration.verdict", 0.9, Align.LEFT),
                column("calibration.clause", 4, Align.LEFT));
        for (MeterCheck check : checks) {
            table.row(List.of(
                    words.say("check." + check.subject().symbol()),
                    figure(check, check.value()),
                    limit(check),
                    words.say(check.passes() ? "calibration.passes" : "calibration.fails"),
                    words.source(check.clause())));
        }
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
        cautions(CautionBox.ofCalibration(measured.meterType()));
        signatures(List.of("calibration.signed-by", "sheet.checked-by"), 60);
        authority(record.profile());
        small(words.say(
                "print.head",
                Long.toString(record.head().entries()),
                record.head().printed()));
    }
}
