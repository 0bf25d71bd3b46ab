package porebench.print.calibration;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import porebench.evidence.paper.CalibrationRecord;
import porebench.method.Answer;
import porebench.method.FigureName;
import porebench.method.meter.ColumnCalibration;
import porebench.method.meter.ColumnCheck;
import porebench.print.page.PrintedFigures;
import porebench.print.page.SheetParts;
import porebench.print.page.Words;
import porebench.quantity.PressureUnit;

/** Draws the column check of a Type A meter. */
final class CalibrationColumn {
    private final Words words;
    private final SheetParts parts;
    private final PrintedFigures figures;

    CalibrationColumn(Words words, SheetParts parts) {
        this.words = words;
        this.parts = parts;
        this.figures = new PrintedFigures(words);
    }

    void draw(ColumnCheck measured, CalibrationRecord record) throws IOException {
        parts.section("calibration.column", 80);
        parts.facts(List.of(
                parts.fact("calibration.vessel-mass", figures.typed(measured.vesselWater()), 1),
                parts.fact("calibration.bowl-mass", figures.typed(measured.bowlWater()), 1),
                parts.fact(
                        "calibration.expansion",
                        words.say("sheet.percent", words.number(measured.expansionPercent())),
                        1),
                parts.fact("calibration.working", figures.typed(measured.workingPressure()), 1)));
        Optional<ColumnCalibration> found = record.judged().column().flatMap(Answer::value);
        if (found.isEmpty()) {
            parts.small(words.say("calibration.unusable"));
            return;
        }
        ColumnCalibration column = found.get();
        parts.facts(List.of(
                parts.fact("calibration.vessel-air", percent(column.vesselPercent()), 1),
                parts.fact("calibration.column-reading", percent(column.readingPercent()), 1),
                parts.fact(
                        "calibration.half-range",
                        words.say(
                                "calibration.kilopascals",
                                figures.fixed(column.halfRange().in(PressureUnit.KILOPASCAL), 1)),
                        1),
                parts.fact(
                        "calibration.elevation",
                        words.say("calibration.metres", words.number(measured.elevationMetres())),
                        1)));
        parts.small(words.say("calibration.column-note", figures.of(record.profile(), FigureName.ELEVATION_LIMIT)));
    }

    private String percent(double number) {
        return words.say("sheet.percent", figures.fixed(number, 2));
    }
}
