package porebench.desk.meter;

import java.awt.Component;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.DefaultCellEditor;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import porebench.desk.form.Commands;
import porebench.desk.form.MarkedCell;
import porebench.desk.form.WideTable;
import porebench.method.Problem;
import porebench.method.ProblemText;

/** A table of readings to type in; a cell with a problem is marked. */
class GridTable extends WideTable {
    private static final long serialVersionUID = 1L;
    private static final int NUMBER_WIDTH = 90;

    private final GridRows rows;

    /**
     * Makes the table.
     *
     * @param name the table's name, which leads the fields of its problems: {@code name.row.column}
     * @param columns the names of the columns in the fields of problems
     * @param problems what is wrong now
     */
    GridTable(
            String name,
            GridRows rows,
            List<String> columns,
            Supplier<List<Problem>> problems,
            ProblemText problemText) {
        super(name, rows);
        this.rows = rows;
        setCellSelectionEnabled(true);
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        for (int column = 0; column < columns.size(); column++) {
            setColumn(column, NUMBER_WIDTH, true);
            getColumnModel().getColumn(column).setCellRenderer(cell(name, columns.get(column), problems, problemText));
        }
    }

    private MarkedCell cell(String name, String column, Supplier<List<Problem>> problems, ProblemText problemText) {
        return new MarkedCell(problemText) {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getTableCellRendererComponent(
                    JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
                super.getTableCellRendererComponent(table, say(at, value), isSelected, hasFocus, row, at);
                setHorizontalAlignment(SwingConstants.TRAILING);
                String field = name + "." + row + "." + column;
                mark(problems.get().stream()
                        .filter(problem -> problem.field().equals(field))
                        .toList());
                return this;
            }
        };
    }

    /** Returns how the value of a cell is said. */
    String say(int column, Object value) {
        return String.valueOf(value);
    }

    /** Lets a column be chosen from a box instead of typed. */
    void chooseBy(int column, JComboBox<?> box) {
        getColumnModel().getColumn(column).setCellEditor(new DefaultCellEditor(box));
    }

    /** Makes the command that takes the selected row away; control and delete do so too. */
    Action remover(String text) {
        Action remove = Commands.of(text, () -> {
            finishTyping();
            rows.remove(getSelectedRow());
        });
        getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(KeyEvent.VK_DELETE, InputEvent.CTRL_DOWN_MASK), remove);
        getActionMap().put(remove, remove);
        remove.setEnabled(false);
        getSelectionModel()
                .addListSelectionListener(
                        event -> remove.setEnabled(getSelectedRow() >= 0 && !rows.isFoot(getSelectedRow())));
        return remove;
    }

    /** Takes over what is being typed in a cell. */
    void finishTyping() {
        if (isEditing() && !getCellEditor().stopCellEditing()) {
            getCellEditor().cancelCellEditing();
        }
    }

    /** Follows the draft. */
    void refresh() {
        rows.draftChanged();
        revalidate();
        repaint();
    }
}
