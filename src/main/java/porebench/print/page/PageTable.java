package porebench.print.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** A ruled table over the full width of a flow; its heading stands again on top of every page it reaches. */
public final class PageTable {
    private static final double PADDING = 3;
    private static final double CELL = 9.5;
    private static final double HEADING = 8;
    private static final double NOTE = 8;

    /** How far what is said of a row stands in, in points. */
    private static final double INDENT = 12;

    private final Flow flow;
    private final List<Column> columns;
    private final double unit;

    /**
     * One column.
     *
     * @param heading what stands on top
     * @param share how wide it is beside the others
     * @param align where its cells stand
     * @param weight how heavy its cells are set
     */
    public record Column(String heading, double share, Align align, Weight weight) {}

    public PageTable(Flow flow, List<Column> columns) {
        this.flow = flow;
        this.columns = List.copyOf(columns);
        this.unit = flow.width() / columns.stream().mapToDouble(Column::share).sum();
    }

    /** Draws the heading, making sure that a height below it is on the same page. */
    public void heading(double below) throws IOException {
        List<FittedText> texts = new ArrayList<>();
        for (Column column : columns) {
            texts.add(new TextFit(Weight.BOLD, HEADING, 5.5, inside(column), 3).fit(flow.faces(), column.heading()));
        }
        double height = height(texts);
        flow.need(height + below);
        flow.pen().shade(flow.left(), flow.top(), flow.width(), height, 0.9);
        drawRow(texts, height);
    }

    /** Draws a row of texts. */
    public void row(List<String> cells) throws IOException {
        List<FittedText> texts = fitted(cells);
        row(texts, height(texts));
    }

    private List<FittedText> fitted(List<String> cells) throws IOException {
        List<FittedText> texts = new ArrayList<>();
        for (int index = 0; index < columns.size(); index++) {
            Column column = columns.get(index);
            texts.add(TextFit.first(
                    flow.faces(),
                    cells.get(index),
                    new TextFit(column.weight(), CELL, CELL - 1, inside(column), 1),
                    new TextFit(column.weight(), CELL - 1, 6.5, inside(column), 3)));
        }
        return texts;
    }

    /** Draws a row and, below it over the full width, what is said of it; both stand on one page. */
    public void row(List<String> cells, List<String> said) throws IOException {
        List<FittedText> notes = new ArrayList<>();
        for (String note : said) {
            notes.add(new TextFit(Weight.REGULAR, NOTE, 6, flow.width() - 2 * PADDING - INDENT, 12)
                    .fit(flow.faces(), note));
        }
        List<FittedText> texts = fitted(cells);
        double height = height(texts);
        double below = notes.stream().mapToDouble(FittedText::height).sum() + (notes.isEmpty() ? 0 : 3);
        if (flow.need(height + below)) {
            heading(height + below);
        }
        drawRow(texts, height);
        if (!notes.isEmpty()) {
            flow.pen().frame(flow.left(), flow.top(), flow.width(), below, 0.5);
            double y = flow.top() + 1;
            for (FittedText note : notes) {
                flow.pen()
                        .text(note, flow.left() + PADDING + INDENT, y, flow.width() - 2 * PADDING - INDENT, Align.LEFT);
                y += note.height();
            }
            flow.down(below);
        }
    }

    /** Draws a row to be written in by hand, with small texts in the upper corner of its cells. */
    public void blankRow(List<String> corners, double height) throws IOException {
        blankRow(corners, height, 7);
    }

    /** Draws a row to be written in by hand, with texts of a size in the upper corner of its cells. */
    public void blankRow(List<String> corners, double height, double size) throws IOException {
        List<FittedText> texts = new ArrayList<>();
        for (int index = 0; index < columns.size(); index++) {
            TextFit corner = TextFit.line(Weight.REGULAR, size, inside(columns.get(index)));
            texts.add(corner.fit(flow.faces(), corners.get(index)));
        }
        row(texts, height);
    }

    private void row(List<FittedText> texts, double height) throws IOException {
        if (flow.need(height)) {
            heading(height);
        }
        drawRow(texts, height);
    }

    private void drawRow(List<FittedText> texts, double height) throws IOException {
        double x = flow.left();
        for (int index = 0; index < columns.size(); index++) {
            Column column = columns.get(index);
            double width = column.share() * unit;
            flow.pen().frame(x, flow.top(), width, height, 0.5);
            flow.pen().text(texts.get(index), x + PADDING, flow.top() + 2, inside(column), column.align());
            x += width;
        }
        flow.down(height);
    }

    private double inside(Column column) {
        return column.share() * unit - 2 * PADDING;
    }

    private static double height(List<FittedText> texts) {
        return texts.stream().mapToDouble(FittedText::height).max().orElse(0) + 4;
    }
}
