package porebench.store.rows;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import porebench.record.column.CellWriter;
import porebench.record.column.Column;
import porebench.record.column.Part;

/** The rows of one record while they are written. */
final class WrittenCells implements CellWriter {
    private final StoredRow row;
    private final List<StoredRow> parts = new ArrayList<>();

    WrittenCells(String table) {
        this.row = new StoredRow(table);
    }

    StoredRecord record() {
        return new StoredRecord(row, parts);
    }

    @Override
    public void text(Column<?, ?> column, String text) {
        row.cell(column.name(), text);
    }

    @Override
    public void number(Column<?, ?> column, BigDecimal number) {
        row.cell(column.name(), number.toString());
    }

    @Override
    public void whole(Column<?, ?> column, int number) {
        row.cell(column.name(), number);
    }

    @Override
    public void day(Column<?, ?> column, LocalDate day) {
        row.cell(column.name(), day.toString());
    }

    @Override
    public void moment(Column<?, ?> column, LocalDateTime moment) {
        row.cell(column.name(), moment.toString());
    }

    @Override
    public void yesNo(Column<?, ?> column, boolean yes) {
        row.cell(column.name(), yes ? 1 : 0);
    }

    @Override
    public void unit(Column<?, ?> column, String symbol) {
        row.cell(column.unitName(), symbol);
    }

    @Override
    public <P> void several(Column<?, ?> column, Part<P> part, List<P> things) {
        int position = 0;
        for (P thing : things) {
            WrittenCells cells = new WrittenCells(part.table());
            part.columns().write(thing, cells);
            if (part.isOrdered()) {
                position++;
                Part.POSITION.write(position, cells);
            }
            parts.add(cells.row);
        }
    }
}
