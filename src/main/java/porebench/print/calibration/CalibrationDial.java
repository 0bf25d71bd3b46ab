package porebench.print.calibration;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.evidence.paper.CalibrationRecord;
import porebench.method.Answer;
import porebench.method.meter.CheckPoint;
import porebench.method.meter.DialCalibration;
import porebench.method.meter.DialCheck;
import porebench.method.meter.DialCurve;
import porebench.method.meter.ImpliedChamber;
import porebench.method.meter.InitialLine;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedFigures;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.quantity.PressureUnit;

/** Draws the dial check of a Type B meter: its points, the curve, and what the model makes of them. */
final class CalibrationDial extends PrintedSheet {
    private static final double ROW = 16;
    private static final double MEASURED = 60;
    private static final double PLOT = 165;
    private static final double MODEL = 140;
    private static final double END = 165;

    CalibrationDial(Flow flow, Words words) {
        super(flow, words);
    }

    void draw(DialCheck measured, CalibrationRecord record) throws IOException {
        Optional<DialCalibration> found = record.judged().dial().flatMap(Answer::value);
        section("calibration.dial", found.map(CalibrationDial::toTheEnd).orElse(80.0));
        drawMeasured(measured);
        if (found.isEmpty()) {
            small(words.say("calibration.unusable"));
            return;
        }
        drawPoints(found.get());
        drawPlot(found.get());
        section("calibration.model-section", 75);
        drawLine(found.get());
        drawModel(found.get(), record.drift());
    }

    /**
     * Returns about how much room the section and all below it take, in points: what would not fit below the bowl begins a page,
     * so that no page is left with a signature alone.
     */
    private static double toTheEnd(DialCalibration found) {
        return MEASURED + ROW * (found.curve().knots().size() + 2) + PLOT + MODEL + END;
    }

    private void drawMeasured(DialCheck measured) throws IOException {
        facts(
                fact("calibration.vessel", figures.typed(measured.vesselWater()), 1.2),
                fact(
                        "calibration.water",
                        measured.waterCelsius().map(words::number).orElse(PrintedFigures.NONE),
                        0.8),
                fact("calibration.maker-chamber", figures.typed(measured.chamber()), 1.2),
                fact("calibration.maker-pressure", figures.typed(measured.initialPressure()), 1.2));
        String points = measured.points().stream().map(this::asRead).collect(Collectors.joining("; "));
        small(words.say("calibration.as-read", points));
        flow.down(3);
    }

    private String asRead(CheckPoint point) {
        return words.say(
                "calibration.as-read.point",
                words.number(point.amount().number()),
                words.say("amount." + point.amount().unit().symbol()),
                words.number(point.gaugePercent()));
    }

    private void drawPoints(DialCalibration found) throws IOException {
        PageTable table = table(
                ROW,
                column("calibration.true"),
                column("calibration.reading"),
                column("calibration.readings"),
                column("calibration.error"),
                column("calibration.point-uncertainty"),
                column("calibration.model"),
                new PageTable.Column(words.say("calibration.verdict"), 0.9, Align.LEFT, Weight.BOLD));
        for (DialCurve.Knot knot : found.curve().knots()) {
            table.row(List.of(
                    figures.fixed(knot.truePercent(), 3),
                    figures.fixed(knot.readingPercent(), 3),
                    Integer.toString(knot.count()),
                    figures.signed(knot.errorPercent(), 3),
                    figures.fixed(knot.standardUncertaintyPercent(), 3),
                    figures.fixed(found.predictedReading(knot.truePercent()), 3),
                    words.say(found.curve().passes(knot) ? "calibration.passes" : "calibration.fails")));
        }
        flow.down(6);
    }

    private PageTable.Column column(String key) {
        return column(key, 1, Align.RIGHT);
    }

    private void drawPlot(DialCalibration found) throws IOException {
        flow.keepTogether(PLOT + 30);
        new DialPlot(flow.pen(), words, found).draw(flow.left(), flow.top(), flow.width(), PLOT);
        flow.down(PLOT + 2);
        small(words.say("calibration.plot", figures.fixed(found.curve().tolerancePercent(), 2)));
        flow.down(3);
    }

    private void drawLine(DialCalibration found) throws IOException {
        InitialLine line = found.line();
        facts(
                fact(
                        "calibration.line",
                        line.stated()
                                .map(stated -> words.say("sheet.percent", words.number(stated)))
                                .orElse(PrintedFigures.NONE),
                        1),
                fact("calibration.line-shift", words.say("sheet.percent", figures.signed(line.shiftPercent(), 3)), 1.3),
                fact(
                        "calibration.line-errors",
                        words.say(
                                "calibration.line-errors.value",
                                figures.fixed(line.largestErrorBefore(), 3),
                                figures.fixed(line.largestErrorAfter(), 3)),
                        1.5),
                fact(
                        "calibration.leak",
                        found.leak()
                                .map(leak -> words.say("calibration.marks", figures.fixed(leak.value(), 2)))
                                .orElseGet(() -> words.say("calibration.not-watched")),
                        1));
    }

    private void drawModel(DialCalibration found, Optional<ImpliedChamber.Drift> drift) throws IOException {
        facts(
                fact(
                        "calibration.chamber",
                        found.chamber().map(this::chamber).orElseGet(() -> words.say("calibration.chamber.none")),
                        1.5),
                fact(
                        "calibration.initial-gauge",
                        found.chamber()
                                .map(implied -> words.say(
                                        "calibration.kilopascals",
                                        figures.fixed(implied.initialGauge().in(PressureUnit.KILOPASCAL), 1)))
                                .orElse(PrintedFigures.NONE),
                        1),
                fact("calibration.drift", drift.map(this::drift).orElse(PrintedFigures.NONE), 2));
        if (found.isScaleUsual()) {
            small(words.say("calibration.scale-usual"));
        }
    }

    private String chamber(ImpliedChamber implied) {
        return words.say(
                "calibration.chamber.value",
                figures.fixed(implied.litres(), 4),
                figures.fixed(100 * implied.relativeUncertainty(), 1));
    }

    private String drift(ImpliedChamber.Drift drift) {
        return words.say(
                drift.isFlagged() ? "calibration.drift.flagged" : "calibration.drift.within",
                figures.signed(drift.percent(), 1),
                figures.fixed(drift.limitPercent(), 1));
    }
}
