package porebench.print.calibration;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.method.meter.BowlCalibration;
import porebench.method.meter.BowlFill;
import porebench.method.meter.BowlFills;
import porebench.print.page.Align;
import porebench.print.page.Flow;
import porebench.print.page.PageTable;
import porebench.print.page.PrintedFigures;
import porebench.print.page.PrintedSheet;
import porebench.print.page.Words;
import porebench.quantity.VolumeUnit;

/** Draws the weighings of a bowl and what they tell of its volume. */
final class CalibrationBowl extends PrintedSheet {

    CalibrationBowl(Flow flow, Words words) {
        super(flow, words);
    }

    void draw(BowlFills measured, Optional<BowlCalibration> found) throws IOException {
        section("calibration.bowl", 70);
        PageTable table = table(
                16,
                column("calibration.fill", 0.7, Align.LEFT),
                column("calibration.empty", 1.5, Align.RIGHT),
                column("calibration.plate", 1.5, Align.RIGHT),
                column("calibration.full", 1.5, Align.RIGHT),
                column("calibration.water", 1.2, Align.RIGHT),
                column("calibration.volume", 1.5, Align.RIGHT));
        List<BowlFill> fills = measured.fills();
        for (int index = 0; index < fills.size(); index++) {
            table.row(cells(index, fills.get(index), found));
        }
        flow.down(4);
        drawMean(found);
        drawAbout(measured);
    }

    private List<String> cells(int index, BowlFill fill, Optional<BowlCalibration> found) {
        List<String> cells = new ArrayList<>();
        cells.add(Integer.toString(index + 1));
        cells.add(figures.typed(fill.empty()));
        cells.add(figures.typed(fill.plate()));
        cells.add(figures.typed(fill.full()));
        cells.add(words.number(fill.waterCelsius()));
        cells.add(found.map(bowl -> figures.fixed(bowl.fills().get(index).in(VolumeUnit.LITRE), 4))
                .orElse(PrintedFigures.NONE));
        return cells;
    }

    private void drawMean(Optional<BowlCalibration> found) throws IOException {
        if (found.isEmpty()) {
            small(words.say("calibration.unusable"));
            return;
        }
        BowlCalibration bowl = found.get();
        double mean = bowl.volume().in(VolumeUnit.LITRE);
        String cubicFeet = figures.fixed(bowl.volume().in(VolumeUnit.CUBIC_FOOT), 5);
        OptionalDouble spread = bowl.litres().standardDeviation();
        String scatter = spread.isPresent()
                ? words.say(
                        "calibration.spread.value", figures.fixed(spread, 4), figures.fixed(bowl.spreadPercent(), 3))
                : PrintedFigures.NONE;
        facts(
                fact("calibration.mean", words.say("calibration.litres", figures.fixed(mean, 4), cubicFeet), 1.5),
                fact("calibration.spread", scatter, 1.5),
                fact(
                        "calibration.uncertainty",
                        words.say("calibration.litre", figures.fixed(bowl.standardUncertaintyLitres(), 4)),
                        1));
    }

    private void drawAbout(BowlFills measured) throws IOException {
        facts(
                fact(
                        "calibration.buoyancy",
                        words.say(
                                measured.buoyancyCorrected()
                                        ? "calibration.buoyancy.taken-out"
                                        : "calibration.buoyancy.left-in"),
                        2),
                fact("calibration.air", with("calibration.celsius", measured.airCelsius()), 1),
                fact("calibration.pressure", with("calibration.kilopascals", measured.airKilopascals()), 1),
                fact("calibration.diameter", with("calibration.millimetres", measured.diameterMillimetres()), 1),
                fact("calibration.height", with("calibration.millimetres", measured.heightMillimetres()), 1));
    }

    private String with(String key, Optional<BigDecimal> number) {
        return number.map(value -> words.say(key, words.number(value))).orElse(PrintedFigures.NONE);
    }
}
