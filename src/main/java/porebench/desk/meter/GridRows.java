package porebench.desk.meter;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.table.AbstractTableModel;

/** The cells of a grid as a table to type in, with the empty row to go on in at its foot. */
final class GridRows extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient Supplier<Grid> grid;
    private final transient Consumer<Grid> changed;
    private final transient List<String> headings;
    private int shownRows;

    /**
     * Makes the rows.
     *
     * @param grid the cells as they are
     * @param changed takes the cells after something was typed
     */
    GridRows(List<String> headings, Supplier<Grid> grid, Consumer<Grid> changed) {
        this.headings = List.copyOf(headings);
        this.grid = grid;
        this.changed = changed;
        this.shownRows = getRowCount();
    }

    /** Tells the table that the draft changed; a cell being typed in stays open while the rows are the same. */
    void draftChanged() {
        int rows = getRowCount();
        if (rows > shownRows) {
            fireTableRowsInserted(shownRows, rows - 1);
        } else if (rows < shownRows) {
            fireTableRowsDeleted(rows, shownRows - 1);
        }
        shownRows = rows;
        fireTableRowsUpdated(0, rows - 1);
    }

    /** Returns whether a row is the empty one to go on in. */
    boolean isFoot(int row) {
        return row == grid.get().rows().size();
    }

    void remove(int row) {
        if (row >= 0 && !isFoot(row)) {
            changed.accept(grid.get().without(row));
        }
    }

    @Override
    public int getRowCount() {
        return grid.get().rows().size() + 1;
    }

    @Override
    public int getColumnCount() {
        return headings.size();
    }

    @Override
    public String getColumnName(int column) {
        return headings.get(column);
    }

    @Override
    public Object getValueAt(int row, int column) {
        return grid.get().cell(row, column);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return true;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (row < getRowCount()) {
            changed.accept(grid.get().with(row, column, String.valueOf(value)));
        }
    }
}
