package porebench.print.calibration;

import java.io.IOException;
import java.util.Optional;
import porebench.evidence.paper.CalibrationRecord;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.print.page.Flow;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Words;
import porebench.quantity.PressureUnit;

/** Draws the column check of a Type A meter. */
final class CalibrationColumn extends PrintedSheet {

    CalibrationColumn(Flow flow, Words words) {
        super(flow, words);
    }

    void draw(ColumnCheck measured, CalibrationRecord record) throws IOException {
        section("calibration.column", 80);
        facts(
                fact("calibration.vessel-mass", figures.typed(measured.vesselWater()), 1),
                fact("calibration.bowl-mass", figures.typed(measured.bowlWater()), 1),
                fact("calibration.expansion", words.say("sheet.percent", words.number(measured.expansionPercent())), 1),
                fact("calibration.working", figures.typed(measured.workingPressure()), 1));
        Optional<ColumnCalibration> found = record.judged().column().flatMap(Answer::value);
        if (found.isEmpty()) {
            small(words.say("calibration.unusable"));
            return;
        }
        ColumnCalibration column = found.get();
        facts(
                fact("calibration.vessel-air", percent(column.vesselPercent()), 1),
                fact("calibration.column-reading", percent(column.readingPercent()), 1),
                fact(
                        "calibration.half-range",
                        words.say(
                                "calibration.kilopascals",
                                figures.fixed(column.halfRange().in(PressureUnit.KILOPASCAL), 1)),
                        1),
                fact(
                        "calibration.elevation",
                        words.say("calibration.metres", words.number(measured.elevationMetres())),
                        1));
        small(words.say("calibration.column-note", figures.of(record.profile(), FigureName.ELEVATION_LIMIT)));
    }

    private String percent(double number) {
        return words.say("sheet.percent", figures.fixed(number, 2));
    }
}
