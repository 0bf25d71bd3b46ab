package porebench.print.sheet;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.TrialSheet;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.sample.CorrectionSample;
import porebench.print.page.Align;
import porebench.print.page.Block;
import porebench.print.page.CautionBox;
import porebench.print.page.FittedText;
import porebench.print.page.Flow;
import porebench.print.page.PrintedSheet;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/**
 * The steps of a trial in their order, with boxes to tick for every trial and each caution just before its hazard.
 *
 * <p>Source: ASTM C231 and AASHTO T 152, procedure for the aggregate correction factor (recalled), in our own words. Type B, from
 * the closed cover to the released pressure: Illinois Modified AASHTO T 152, checklist in the print of 2009 (seen; written for
 * concrete); that the bleeder valve is closed before pumping and trims to the line, and that the water is withdrawn after
 * filling and before pumping: recalled. Type A, all steps and that the readings agree within 0.2 % air: recalled.
 */
public final class SheetSteps extends PrintedSheet {
    /** More boxes than these would leave no room for words; further trials tick a copy. */
    static final int MOST_BOXES = 6;

    private static final double SIZE = 9.5;
    private static final double BOX = 9;
    private static final double BOX_PITCH = 15;
    /** Room for the number of a step. */
    private static final double NUMBER = 20;

    private final TrialSheet sheet;
    private final SheetVolumes volumes;
    private final int boxes;

    SheetSteps(TrialSheet sheet, Flow flow, Words words) {
        super(flow, words);
        this.sheet = sheet;
        this.volumes = new SheetVolumes(words, sheet.massUnit());
        this.boxes = Math.min(MOST_BOXES, sheet.weighOut().trials());
    }

    /**
     * One line of the list.
     *
     * @param isCaution whether it warns, or is a step to tick
     * @param text what it says
     */
    record Step(boolean isCaution, String text) {}

    /** Returns the steps and cautions in their order. */
    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        steps.add(firstWater());
        steps.add(step("step.mix"));
        steps.add(step("step.scoops"));
        steps.add(step("step.rod"));
        steps.add(step("step.foam"));
        steps.add(soak());
        steps.add(caution("caution.lift"));
        steps.add(step("step.cover"));
        steps.add(caution("caution.pressure." + sheet.meterType()));
        if (sheet.meterType() == MeterType.B) {
            typeB(steps);
        } else {
            typeA(steps);
        }
        return steps;
    }

    private Step firstWater() {
        CorrectionSample sample = sheet.sample();
        return sample.isThirdTooMuch()
                ? step("step.less-than-third", volumes.large(sample.firstWater()), volumes.large(sample.oneThird()))
                : step("step.third", volumes.large(sample.firstWater()));
    }

    private void typeB(List<Step> steps) {
        steps.add(step("step.b.fill"));
        steps.add(step(
                "step.b.withdraw",
                volumes.small(sheet.sample().withdrawal()),
                words.number(sheet.mix().batch().targetAirPercent())));
        steps.add(step("step.b.pump"));
        steps.add(step("step.leak"));
        steps.add(step("step.b.petcocks"));
        steps.add(step("step.b.read"));
        steps.add(caution("caution.main-air-valve"));
        steps.add(step("step.b.vent"));
        steps.add(step("step.b.factor", volumes.small(sheet.sample().bowl())));
    }

    private void typeA(List<Step> steps) {
        steps.add(step("step.a.fill"));
        steps.add(step("step.a.zero"));
        steps.add(step("step.a.first"));
        steps.add(step("step.leak"));
        steps.add(step("step.a.second"));
        steps.add(step("step.a.again"));
        steps.add(step("step.a.vent"));
        steps.add(step("step.a.factor"));
    }

    private Step soak() {
        String tolerance = figures.of(sheet.profile(), FigureName.SOAK_TOLERANCE);
        return sheet.mix()
                .soakMinutes()
                .map(minutes -> step("step.soak", words.number(minutes), tolerance))
                .orElseGet(() -> step("step.soak.not-stated"));
    }

    private Step step(String key, Object... filled) {
        return new Step(false, words.say(key, filled));
    }

    private Step caution(String key) {
        return new Step(true, words.say(key));
    }

    /** Draws the list. */
    void draw() throws IOException {
        boxNumbers();
        for (Block line : lines()) {
            if (flow.need(line.height())) {
                boxNumbers();
            }
            line.drawing().draw(flow.top());
            flow.down(line.height());
        }
        if (sheet.weighOut().trials() > MOST_BOXES) {
            String more = words.say("sheet.more-boxes", Integer.toString(MOST_BOXES + 1));
            flow.text(TextFit.line(Weight.REGULAR, 8, flow.width()), more);
        }
        flow.text(source(), words.say("sheet.steps-source." + sheet.meterType()));
    }

    /** Returns the height of the whole list, in points. */
    double height() throws IOException {
        String source = words.say("sheet.steps-source." + sheet.meterType());
        return boxNumbersHeight()
                + Block.height(lines())
                + source().fit(flow.faces(), source).height();
    }

    private TextFit source() {
        return new TextFit(Weight.REGULAR, 8, 6.5, flow.width(), 2);
    }

    private List<Block> lines() throws IOException {
        List<Block> lines = new ArrayList<>();
        int number = 0;
        for (Step step : steps()) {
            number += step.isCaution() ? 0 : 1;
            lines.add(step.isCaution() ? CautionBox.block(flow, step.text(), indent()) : block(number, step.text()));
        }
        return lines;
    }

    private double indent() {
        return boxes * BOX_PITCH + NUMBER;
    }

    private static double boxNumbersHeight() {
        return 8 * FittedText.LEADING + 2;
    }

    private void boxNumbers() throws IOException {
        for (int box = 0; box < boxes; box++) {
            FittedText text = TextFit.line(Weight.REGULAR, 8, BOX).fit(flow.faces(), Integer.toString(box + 1));
            flow.pen().text(text, flow.left() + box * BOX_PITCH, flow.top(), BOX, Align.CENTRE);
        }
        double after = boxes * BOX_PITCH + 4;
        FittedText label =
                TextFit.line(Weight.REGULAR, 8, flow.width() - after).fit(flow.faces(), words.say("sheet.boxes"));
        flow.pen().text(label, flow.left() + after, flow.top(), flow.width() - after, Align.LEFT);
        flow.down(boxNumbersHeight());
    }

    private Block block(int number, String text) throws IOException {
        double width = flow.width() - indent();
        FittedText fitted = new TextFit(Weight.REGULAR, SIZE, 7, width, 4).fit(flow.faces(), text);
        FittedText label = TextFit.line(Weight.BOLD, SIZE, NUMBER - 5).fit(flow.faces(), Integer.toString(number));
        return new Block(Math.max(fitted.height(), BOX) + 3.5, top -> {
            for (int box = 0; box < boxes; box++) {
                flow.pen().frame(flow.left() + box * BOX_PITCH, top + 1, BOX, BOX, 0.75);
            }
            flow.pen().text(label, flow.left() + indent() - NUMBER, top, NUMBER - 5, Align.RIGHT);
            flow.pen().text(fitted, flow.left() + indent(), top, width, Align.LEFT);
        });
    }
}
