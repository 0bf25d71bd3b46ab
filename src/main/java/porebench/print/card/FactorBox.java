package porebench.print.card;

import java.io.IOException;
import porebench.print.page.Align;
import porebench.print.page.Block;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.FactorIssue;

/**
 * The frame on a factor card that says what to subtract.
 *
 * @param pen what it is drawn with
 * @param words the language
 * @param issue the revision with its factor, in % air, and the type of meter it is subtracted from
 * @param height the height of the frame, in points
 * @param bare whether what it is subtracted from, the formula and of what it is a share stand elsewhere because the frame has no room for
 *     them; all that is left is then legible at arm's length
 */
record FactorBox(Pen pen, Words words, FactorIssue issue, double height, boolean bare) {
    private static final double FRAME = 2.5;
    private static final double INSET = 8;
    private static final double BARE_INSET = 5;
    private static final double UNIT = 15;

    Block block(double left, double width) throws IOException {
        double inset = bare ? BARE_INSET : INSET;
        double inner = width - 2 * inset;
        String word = words.say("card.subtract");
        String share = bare ? "%" : words.say("card.unit");
        double least = bare ? LegibleType.AT_ARMS_LENGTH : 9;
        double say = Math.max(
                inner * (bare ? 0.4 : 0.44),
                bare ? pen.faces().width(pen.faces().printable(word), Weight.BOLD, least) : 0);
        double unit = bare ? pen.faces().width(share, Weight.BOLD, UNIT) : inner * 0.17;
        double digits = inner - say - unit - 8;
        // Sizes go down in quarters of a point: from a whole quarter the least is among them.
        double most = bare ? Math.floor(height * 0.38 * 4) / 4 : height * 0.38;
        FittedText subtract = new TextFit(Weight.BOLD, most, least, say, 1).fit(pen.faces(), word);
        FittedText from = text(height * 0.17, say, "card.from-the-reading." + issue.meterType());
        FittedText formula =
                text(height * 0.145, say, "card.formula." + issue.meterType(), words.signed(issue.factorPercent()));
        FittedText number = new TextFit(Weight.BOLD, height * 0.82, 12, digits, 1)
                .fit(pen.faces(), words.number(issue.factorPercent()));
        FittedText percent = TextFit.line(Weight.BOLD, UNIT, unit).fit(pen.faces(), share);
        double words = subtract.height() + (bare ? 0 : from.height() + formula.height());
        return new Block(height, top -> {
            pen.frame(left + FRAME / 2, top + FRAME / 2, width - FRAME, height - FRAME, FRAME);
            double y = top + (height - words) / 2;
            pen.text(subtract, left + inset, y, say, Align.LEFT);
            if (!bare) {
                pen.text(from, left + inset, y + subtract.height(), say, Align.LEFT);
                pen.text(formula, left + inset, y + subtract.height() + from.height(), say, Align.LEFT);
            }
            // Digits are as high as capitals, 0.711 of the size of the type.
            double baseline = top + height / 2 + 0.711 * number.size() / 2;
            double right = left + width - inset - unit;
            drawOnLine(number, right - digits, baseline, digits);
            drawOnLine(percent, right, baseline, unit);
        });
    }

    private FittedText text(double size, double width, String key, Object... filled) throws IOException {
        return new TextFit(Weight.REGULAR, size, Math.min(size, 6) * 0.7, width, 1)
                .fit(pen.faces(), words.say(key, filled));
    }

    private void drawOnLine(FittedText text, double left, double baseline, double width) throws IOException {
        pen.text(text, left, baseline - FittedText.BASELINE * text.size(), width, Align.RIGHT);
    }
}
