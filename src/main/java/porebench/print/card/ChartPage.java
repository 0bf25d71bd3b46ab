package porebench.print.card;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import porebench.evidence.paper.CardChart;
import porebench.evidence.paper.FactorCard;
import porebench.method.air.AlignmentChart;
import porebench.print.page.Align;
import porebench.print.page.Band;
import porebench.print.page.Facts;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/**
 * Draws the back of a factor card: three scales, the dot of G, how they are read, and that the table counts.
 *
 * <p>Whoever finds a back has to know to which card it belongs: mix, revision and the day to recheck by stand over it, and the state of
 * a card that is no card to work by stands across it.
 */
final class ChartPage {
    private static final double POINTS = 72 / 25.4;
    /** 6 mm, as on the front. */
    private static final double MARGIN = 6 * POINTS;
    /** Digits of 14 points are 3.5 mm high. */
    private static final double NUMBER = 14;

    private static final double NUMBER_OF_G = 18;
    /** Digits are as high as capitals. */
    private static final double DIGIT = 0.711;

    private static final double HEADING = 11;
    /** From the middle of a number to above its tallest character. */
    private static final double ABOVE_NUMBER = 8.2;

    private static final double SHORT = 3;
    private static final double LONG = 6;
    private static final double LONGEST = 9;
    private static final double AXIS = 0.9;
    private static final double DOT = 2.6;
    /** Nearer than this to the dot, in millimetres, a number of the scale of G would touch that of the dot. */
    private static final double ROOM_OF_DOT = 6;

    private final FactorCard card;
    private final CardChart chart;
    private final Pen pen;
    private final Words words;
    private final double width;
    private final double lowerEnd;
    private final double readingX;
    private final double airX;
    private final double factorX;

    ChartPage(FactorCard card, CardChart chart, Pen pen, Words words, PDRectangle page) {
        this.card = card;
        this.chart = chart;
        this.pen = pen;
        this.words = words;
        this.width = page.getWidth() - 2 * MARGIN;
        this.lowerEnd = page.getHeight() - CardChart.BOTTOM * POINTS;
        this.readingX = CardChart.LEFT * POINTS;
        this.airX = readingX + chart.lines().airFromLeft() * POINTS;
        this.factorX = readingX + chart.lines().width() * POINTS;
    }

    void draw() throws IOException {
        AlignmentChart lines = chart.lines();
        head();
        headings(top(lines.height()) - ABOVE_NUMBER - HEADING * FittedText.LEADING);
        scale(chart.readings(), readingX, -1, lines::heightOfReading);
        scale(chart.airs(), airX, 1, lines::heightOfAir);
        scale(chart.factors(), factorX, 1, lines::heightOfFactor);
        dot();
        below();
        if (card.isMarked()) {
            double bottom = lowerEnd + CardChart.BOTTOM * POINTS - MARGIN;
            pen.across(words.say("card.marked." + card.state()), MARGIN, MARGIN, width, bottom - MARGIN);
        }
    }

    /** Draws to which card the back belongs. */
    private void head() throws IOException {
        double top = MARGIN;
        if (card.isTraining()) {
            top = Band.ofTraining(pen, words).draw(MARGIN, top, width) + 2;
        }
        double left = width * 0.5;
        FittedText mix = TextFit.first(
                pen.faces(),
                card.mixId().text(),
                new TextFit(Weight.BOLD, card.isTraining() ? 15 : 17, 9.5, left, 1),
                new TextFit(Weight.BOLD, 8.5, 6, left, 2));
        Facts facts = new Facts(
                pen,
                card.isTraining() ? 8.5 : 11,
                width - left - 6,
                List.of(
                        new Facts.Fact(
                                words.say("card.revision"),
                                Integer.toString(card.issue().revision()),
                                0.7),
                        new Facts.Fact(words.say("card.recheck-by"), words.date(card.lastDay()), 1.3)));
        double height = card.isTraining() ? 19 : 22;
        pen.text(mix, MARGIN, top + (height - mix.height()) / 2, left, Align.LEFT);
        facts.draw(MARGIN + left + 6, top + (height - facts.height()) / 2);
        pen.line(MARGIN, top + height, MARGIN + width, top + height, 1);
    }

    private void headings(double top) throws IOException {
        double gap = 4;
        double between = airX - 10;
        heading(words.say("card.table.reading." + card.issue().meterType()), top, MARGIN, between - MARGIN, Align.LEFT);
        heading(words.say("card.table.air"), top, between + gap, factorX - 40 - between - gap, Align.LEFT);
        heading("G", top, factorX - 30, 60, Align.CENTRE);
    }

    private void heading(String what, double top, double left, double place, Align align) throws IOException {
        FittedText text =
                new TextFit(Weight.BOLD, HEADING, 6, place, 1).fit(pen.faces(), words.say("card.chart.axis", what));
        pen.text(text, left, top + HEADING * FittedText.LEADING - text.height(), place, align);
    }

    /**
     * Draws a scale.
     *
     * @param side 1 where its lines and numbers stand on the right of it, -1 where on the left
     */
    private void scale(CardChart.Scale scale, double x, int side, DoubleUnaryOperator height) throws IOException {
        pen.line(
                x,
                top(height.applyAsDouble(scale.from().doubleValue())),
                x,
                top(height.applyAsDouble(scale.to().doubleValue())),
                AXIS);
        for (BigDecimal mark : scale.marks()) {
            double top = top(height.applyAsDouble(mark.doubleValue()));
            double length = scale.isWhole(mark) ? LONGEST : scale.isHalf(mark) ? LONG : SHORT;
            pen.line(x, top, x + side * length, top, CardChart.LINE * POINTS);
            boolean isOfDot = scale.equals(chart.factors()) && nearDot(mark);
            if (scale.isWhole(mark) && scale.isNumbered(mark) && !isOfDot) {
                number(words.number(mark.setScale(0)), NUMBER, x + side * (LONGEST + 2), top, side);
            }
        }
    }

    private boolean nearDot(BigDecimal factor) {
        double distance = factor.subtract(card.issue().factorPercent()).abs().doubleValue();
        return distance * chart.lines().factorModulus() < ROOM_OF_DOT;
    }

    private void number(String number, double size, double x, double middle, int side) throws IOException {
        FittedText text = new FittedText(List.of(number), Weight.BOLD, size, false);
        double wide = pen.faces().width(number, Weight.BOLD, size);
        double top = middle + DIGIT * size / 2 - FittedText.BASELINE * size;
        pen.text(text, side > 0 ? x : x - wide, top, wide, Align.LEFT);
    }

    /** Draws the dot of the card's own G with its number. */
    private void dot() throws IOException {
        double top =
                top(chart.lines().heightOfFactor(card.issue().factorPercent().doubleValue()));
        pen.dot(factorX, top, DOT);
        String number = words.number(card.issue().factorPercent());
        double x = factorX + LONGEST + 2;
        double unit = pen.faces().width(number, Weight.BOLD, 1);
        number(number, Math.min(NUMBER_OF_G, (MARGIN + width - x) / unit), x, top, 1);
    }

    private void below() throws IOException {
        String how = words.say("card.chart.how", words.number(card.issue().factorPercent()));
        String counts = words.say("card.chart.table-counts", words.number(chart.error()));
        String said = chart.tableFrom()
                        .map(from -> words.say("card.chart.table-alone", words.number(from)) + " ")
                        .orElse("")
                + counts;
        double top = lowerEnd + DIGIT * NUMBER / 2 + 4;
        FittedText first = new TextFit(Weight.REGULAR, 8.5, 6, width, 2).fit(pen.faces(), how);
        FittedText second = new TextFit(Weight.BOLD, 8, 6, width, 2).fit(pen.faces(), said);
        pen.text(first, MARGIN, top, width, Align.LEFT);
        pen.text(second, MARGIN, top + first.height() + 1, width, Align.LEFT);
    }

    /** Returns how far a height above the lower end of the scales, in millimetres, lies below the upper edge, in points. */
    private double top(double height) {
        return lowerEnd - height * POINTS;
    }
}
