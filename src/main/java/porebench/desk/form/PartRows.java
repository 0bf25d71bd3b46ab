package porebench.desk.form;

import java.util.ArrayList;
import java.util.List;
import javax.swing.table.AbstractTableModel;
import porebench.record.column.Column;

/** What a record has several of as a table to type in: a cell a column, and one more where a unit stands for itself. */
public final class PartRows extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient PartModel model;
    private final transient List<Cell> cells = new ArrayList<>();
    private int shownRows;

    /** A column of the table: a column of the record, or the unit beside it. */
    record Cell(Column<?, ?> column, boolean isUnit) {
        String field() {
            return isUnit ? column.unitField() : column.field();
        }

        /** Returns what is chosen from; none where it is typed. */
        List<String> choices() {
            return isUnit ? column.type().units() : column.type().choices();
        }

        String text(TypedDraft row) {
            return isUnit ? row.unit(column) : row.text(column);
        }
    }

    public PartRows(PartModel model, List<? extends Column<?, ?>> columns) {
        this.model = model;
        columns.forEach(column -> {
            cells.add(new Cell(column, false));
            if (model.hasUnitCell(column)) {
                cells.add(new Cell(column, true));
            }
        });
        shownRows = getRowCount();
    }

    Cell cell(int column) {
        return cells.get(column);
    }

    /** Returns where a column stands, by its field or that of its unit. */
    public int indexOf(String field) {
        return cells.stream().map(Cell::field).toList().indexOf(field);
    }

    /** Tells the table that the draft changed; a cell being typed in stays open unless rows go. */
    public void draftChanged() {
        int before = shownRows;
        shownRows = getRowCount();
        if (shownRows < before) {
            fireTableDataChanged();
            return;
        }
        if (shownRows > before) {
            fireTableRowsInserted(before, shownRows - 1);
        }
        if (shownRows > 0) {
            fireTableRowsUpdated(0, shownRows - 1);
        }
    }

    @Override
    public int getRowCount() {
        return model.rows().size();
    }

    @Override
    public int getColumnCount() {
        return cells.size();
    }

    @Override
    public String getColumnName(int column) {
        return model.texts().get(model.key(cell(column).field()));
    }

    /** Returns the text or the symbol in a cell. */
    @Override
    public Object getValueAt(int row, int column) {
        return cell(column).text(model.rows().get(row));
    }

    @Override
    public boolean isCellEditable(int row, int column) {
        return cell(column).isUnit() || model.isEditable(row, cell(column).column());
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        List<String> choices = cell(column).choices();
        if (row >= getRowCount() || !choices.isEmpty() && !choices.contains(String.valueOf(value))) {
            return;
        }
        if (cell(column).isUnit()) {
            model.chooseUnit(row, cell(column).column(), String.valueOf(value));
        } else {
            model.type(row, cell(column).column(), String.valueOf(value));
        }
    }
}
