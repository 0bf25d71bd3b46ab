package porebench.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import porebench.exchange.text.HeadedRow;
import porebench.record.column.CellWriter;
import porebench.record.column.Column;
import porebench.record.column.Columns;
import porebench.record.column.Part;

/** The cells of a row of a file while they are written, each under its heading. */
public final class SheetCells implements CellWriter {
    private final Map<String, String> cells = new HashMap<>();

    /** Puts what a record states about its whole; what it has several of stands in rows of its own. */
    static <R> SheetCells ofWhole(Columns<R> columns, R record) {
        SheetCells cells = new SheetCells();
        columns.all().stream()
                .filter(column -> column.type().partOf().isEmpty())
                .forEach(column -> column.write(record, cells));
        return cells;
    }

    /** Returns the cells in the order of some headings, empty where nothing was written. */
    public List<String> under(List<String> headings) {
        return headings.stream().map(heading -> cells.getOrDefault(heading, "")).toList();
    }

    /** Puts a text under a heading. */
    public void put(String heading, String text) {
        cells.put(heading, text);
    }

    @Override
    public void text(Column<?, ?> column, String text) {
        boolean isLeftBlank =
                column.isLeftBlank() && column.blank().orElseThrow().toString().equals(text);
        cells.put(column.heading(), isLeftBlank ? "" : text);
    }

    @Override
    public void number(Column<?, ?> column, BigDecimal number) {
        text(column, number.toString());
    }

    @Override
    public void whole(Column<?, ?> column, int number) {
        text(column, Integer.toString(number));
    }

    @Override
    public void day(Column<?, ?> column, LocalDate day) {
        text(column, day.toString());
    }

    @Override
    public void moment(Column<?, ?> column, LocalDateTime moment) {
        text(column, moment.toString());
    }

    @Override
    public void yesNo(Column<?, ?> column, boolean yes) {
        text(column, HeadedRow.yesNoWord(yes));
    }

    @Override
    public <P> void several(Column<?, ?> column, Part<P> part, List<P> things) {
        text(column, ListedCell.written(part, things));
    }

    /** The unit stands in the column that all share as far as it is the same, and else in the column's own. */
    @Override
    public void unit(Column<?, ?> column, String symbol) {
        List<String> headings = column.unitHeadings();
        String shared = headings.get(headings.size() - 1);
        String there = cells.putIfAbsent(shared, symbol);
        if (there != null && !there.equals(symbol)) {
            cells.put(headings.get(0), symbol);
        }
    }
}
