package porebench.print.card;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import porebench.method.MeterType;
import porebench.method.air.PassWindow;
import porebench.print.page.Align;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.Weight;
import porebench.print.page.Words;

/** Draws the table of a factor card: reading of the meter, air content, and a tick where the load passes. */
final class CardTable {
    private static final double HEADING = 7.5;
    private static final double HEADING_HEIGHT = HEADING * FittedText.LEADING + 1.5;
    // All of these over the size of the type.
    private static final double MARGIN = 0.2;
    private static final double BETWEEN = 0.42;
    private static final double TICK_GAP = 0.14;
    private static final double TICK = 0.72;

    private final MeterType type;
    private final Pen pen;
    private final Words words;
    private final Map<PassWindow.Row, Cell> cells = new IdentityHashMap<>();

    CardTable(MeterType type, Pen pen, Words words) {
        this.type = type;
        this.pen = pen;
        this.words = words;
    }

    /** Returns the place that a width and a height, headings included, leave for readings. */
    ReadingGrid.Room place(double width, double height) {
        return new ReadingGrid.Room(width, height - HEADING_HEIGHT, this::cellWidth);
    }

    private double cellWidth(List<PassWindow.Row> rows) throws IOException {
        return widths(rows).cell();
    }

    private Widths widths(List<PassWindow.Row> rows) throws IOException {
        Numbers readings = Numbers.NONE;
        Numbers airs = Numbers.NONE;
        for (PassWindow.Row row : rows) {
            Cell cell = cell(row);
            readings = readings.with(cell.reading());
            airs = airs.with(cell.air());
        }
        return new Widths(readings, airs);
    }

    /** How wide readings and airs are, over the size of the type. */
    private record Widths(Numbers readings, Numbers airs) {
        double cell() {
            return 2 * MARGIN + readings.width() + BETWEEN + airs.width() + TICK_GAP + TICK;
        }
    }

    void draw(ReadingGrid grid, double left, double top, double width) throws IOException {
        double column = width / grid.columns();
        double bottom = top + HEADING_HEIGHT + grid.lines() * ReadingGrid.LINE * grid.size();
        double x = left;
        Widths widths = widths(grid.rows());
        for (int from = 0; from < grid.rows().size(); from += grid.lines()) {
            drawColumn(grid, widths, from, x, top, column);
            if (from > 0) {
                pen.line(x, top, x, bottom, 0.5);
            }
            x += column;
        }
        pen.line(left, top + HEADING_HEIGHT - 1, x, top + HEADING_HEIGHT - 1, 0.75);
    }

    private void drawColumn(ReadingGrid grid, Widths widths, int from, double left, double top, double width)
            throws IOException {
        double size = grid.size();
        Numbers readings = widths.readings();
        Numbers airs = widths.airs();
        double spare = (width - size * widths.cell()) / 3;
        double readingLeft = left + size * MARGIN + spare;
        double airLeft = readingLeft + size * (readings.width() + BETWEEN) + spare;
        double readingMiddle = readingLeft + size * readings.width() / 2;
        double airMiddle = airLeft + size * airs.width() / 2;
        double height = ReadingGrid.LINE * size;
        List<PassWindow.Row> rows =
                grid.rows().subList(from, Math.min(grid.rows().size(), from + grid.lines()));
        // All greys, then all ticks, then all words: what is set once lasts.
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).passes()) {
                pen.shade(left + 1, top + HEADING_HEIGHT + row * height + 0.3, width - 2, height - 0.6, 0.87);
            }
        }
        for (int row = 0; row < rows.size(); row++) {
            if (rows.get(row).passes()) {
                pen.tick(
                        airLeft + size * (airs.width() + TICK_GAP),
                        top + HEADING_HEIGHT + row * height + 0.27 * size,
                        TICK * size);
            }
        }
        headings(left + 2, readingMiddle, airMiddle, left + width - 2, top);
        double lineTop = top + HEADING_HEIGHT;
        for (PassWindow.Row row : rows) {
            Weight weight = row.passes() ? Weight.BOLD : Weight.REGULAR;
            Cell cell = cell(row);
            number(cell.reading().text(), readings, weight, size, readingLeft, lineTop);
            number(cell.air().text(), airs, weight, size, airLeft, lineTop);
            lineTop += height;
        }
    }

    /** Returns the air content of a row with no more decimals than it needs: 7.8, but 7.825. */
    private static BigDecimal air(PassWindow.Row row) {
        BigDecimal bare = row.air().stripTrailingZeros();
        return bare.setScale(Math.max(1, bare.scale()));
    }

    /** Draws a number with its decimal sign below those of the others. */
    private void number(String number, Numbers among, Weight weight, double size, double left, double top)
            throws IOException {
        FittedText text = new FittedText(List.of(number), weight, size, false);
        double whole = pen.faces().width(wholePart(number), weight, size);
        pen.text(text, left + size * among.whole() - whole, top, 0, Align.LEFT);
    }

    private static String wholePart(String number) {
        int end = 0;
        while (end < number.length() && (end == 0 || Character.isDigit(number.charAt(end)))) {
            end++;
        }
        return number.substring(0, end);
    }

    /** Sets both headings in one size, over the middles of their numbers as far as the column has room. */
    private void headings(double left, double readingMiddle, double airMiddle, double right, double top)
            throws IOException {
        String reading = pen.faces().printable(words.say("card.table.reading." + type));
        String air = pen.faces().printable(words.say("card.table.air"));
        double gap = 3;
        double unit = pen.faces().width(reading + air, Weight.BOLD, 1);
        double size = Math.min(HEADING, (right - left - gap) / unit);
        double readingWidth = pen.faces().width(reading, Weight.BOLD, size);
        double airWidth = pen.faces().width(air, Weight.BOLD, size);
        double readingLeft = Math.max(left, readingMiddle - readingWidth / 2);
        double airLeft = Math.max(readingLeft + readingWidth + gap, airMiddle - airWidth / 2);
        double lift = FittedText.BASELINE * (HEADING - size);
        heading(reading, size, readingLeft, top + lift);
        heading(air, size, Math.min(airLeft, right - airWidth), top + lift);
    }

    private void heading(String text, double size, double left, double top) throws IOException {
        pen.text(new FittedText(List.of(text), Weight.BOLD, size, false), left, top, 0, Align.LEFT);
    }

    /** Returns how a row is written; asked for many times while its size is looked for. */
    private Cell cell(PassWindow.Row row) throws IOException {
        Cell known = cells.get(row);
        if (known == null) {
            known = new Cell(number(row.reading()), number(air(row)));
            cells.put(row, known);
        }
        return known;
    }

    private Number number(BigDecimal number) throws IOException {
        String text = words.number(number);
        String before = wholePart(text);
        return new Number(
                text,
                pen.faces().width(before, Weight.BOLD, 1),
                pen.faces().width(text.substring(before.length()), Weight.BOLD, 1));
    }

    private record Cell(Number reading, Number air) {}

    /** How a number is written, and how wide it is before and from its decimal sign on, over the size of bold type. */
    private record Number(String text, double whole, double rest) {}

    /**
     * How wide some numbers are before and from their decimal sign on, over the size of the type.
     *
     * @param whole the widest part before the sign, a minus included
     * @param rest the widest part from the sign on
     */
    private record Numbers(double whole, double rest) {
        static final Numbers NONE = new Numbers(0, 0);

        Numbers with(Number number) {
            return number.whole <= whole && number.rest <= rest
                    ? this
                    : new Numbers(Math.max(whole, number.whole), Math.max(rest, number.rest));
        }

        double width() {
            return whole + rest;
        }
    }
}
