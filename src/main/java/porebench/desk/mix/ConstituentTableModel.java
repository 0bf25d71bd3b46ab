package porebench.desk.mix;

import javax.swing.table.AbstractTableModel;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.quantity.MassUnit;

/** The rows of the draft as a table to type in. */
final class ConstituentTableModel extends AbstractTableModel {
    private static final long serialVersionUID = 1L;

    private final transient MixModel model;
    private final transient Texts texts;
    private int shownRows;

    ConstituentTableModel(MixModel model) {
        this.model = model;
        this.texts = model.texts();
        this.shownRows = getRowCount();
    }

    static MixColumn columnOf(int column) {
        return MixColumn.values()[column];
    }

    MixRow row(int row) {
        return model.draft().rows().get(row);
    }

    /** Tells the table that the draft changed; a cell being typed in stays open while the rows are the same. */
    void draftChanged() {
        if (shownRows == getRowCount()) {
            if (shownRows > 0) {
                fireTableRowsUpdated(0, shownRows - 1);
            }
        } else {
            shownRows = getRowCount();
            fireTableDataChanged();
        }
    }

    @Override
    public int getRowCount() {
        return model.draft().rows().size();
    }

    @Override
    public int getColumnCount() {
        return MixColumn.values().length;
    }

    @Override
    public String getColumnName(int column) {
        return texts.get(columnOf(column).headingKey());
    }

    @Override
    public Object getValueAt(int row, int column) {
        MixRow shown = row(row);
        return switch (columnOf(column)) {
            case ROLE -> shown.role();
            case MASS_UNIT -> shown.massUnit();
            case STATE -> shown.state();
            default -> shown.text(columnOf(column));
        };
    }

    /** Only aggregate has moisture and sieve sizes; what stands there for anything else can still be taken away. */
    @Override
    public boolean isCellEditable(int row, int column) {
        MixRow shown = row(row);
        return switch (columnOf(column)) {
            case STATE -> shown.role().isAggregate() || shown.state() != MoistureState.SSD;
            case ABSORPTION, MOISTURE, RETAINED ->
                shown.role().isAggregate() || !shown.text(columnOf(column)).isEmpty();
            default -> true;
        };
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
        if (row >= getRowCount()) {
            return;
        }
        if (value instanceof Role role) {
            model.steps().choose(row, role);
        } else if (value instanceof MassUnit unit) {
            model.steps().choose(row, unit);
        } else if (value instanceof MoistureState state) {
            model.steps().choose(row, state);
        } else if (columnOf(column).isTyped()) {
            model.steps().type(row, columnOf(column), String.valueOf(value));
        }
    }
}
