package porebench.desk.form;

import java.awt.Component;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.JTableHeader;
import porebench.method.ProblemText;

/** A table of what a record has several of: typed in place, its choices by boxes, its problems marked in their cells. */
public class PartTable extends WideTable {
    private static final long serialVersionUID = 1L;

    private final transient PartModel model;
    private final PartRows rows;

    /**
     * Makes the table.
     *
     * @param widths of its columns at 100 %, in pixels
     */
    public PartTable(String name, PartModel model, PartRows rows, List<Integer> widths, ProblemText problemText) {
        super(name, rows);
        this.model = model;
        this.rows = rows;
        setCellSelectionEnabled(true);
        for (int column = 0; column < rows.getColumnCount(); column++) {
            PartRows.Cell cell = rows.cell(column);
            boolean isNumber = !cell.isUnit() && model.isNumber(cell.column());
            setColumn(column, widths.get(column), isNumber);
            getColumnModel().getColumn(column).setCellRenderer(new Marked(cell, isNumber, problemText));
            if (!cell.choices().isEmpty()) {
                getColumnModel()
                        .getColumn(column)
                        .setCellEditor(new DefaultCellEditor(
                                Choices.of(cell.field(), cell.choices(), symbol -> words(cell, symbol), symbol -> {})));
            }
        }
    }

    private String words(PartRows.Cell cell, String symbol) {
        return cell.isUnit() ? model.unitWords(cell.column(), symbol) : model.choiceWords(cell.column(), symbol);
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
        return new JTableHeader(getColumnModel()) {
            private static final long serialVersionUID = 1L;

            @Override
            public String getToolTipText(MouseEvent event) {
                int column = columnAtPoint(event.getPoint());
                return column < 0
                        ? ""
                        : model.texts()
                                .find(model.key(rows.cell(column).field()) + ".tip")
                                .orElse("");
            }
        };
    }

    /** Takes over what is being typed in a cell. */
    public final void finishTyping() {
        if (isEditing() && !getCellEditor().stopCellEditing()) {
            getCellEditor().cancelCellEditing();
        }
    }

    private final class Marked extends MarkedCell {
        private static final long serialVersionUID = 1L;

        private final transient PartRows.Cell cell;
        private final int alignment;

        Marked(PartRows.Cell cell, boolean isNumber, ProblemText problemText) {
            super(problemText);
            this.cell = cell;
            this.alignment = isNumber ? SwingConstants.TRAILING : SwingConstants.LEADING;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
            String text = String.valueOf(value);
            String shown = cell.isUnit() ? words(cell, text) : model.shown(row, cell.column(), text);
            super.getTableCellRendererComponent(table, shown, isSelected, hasFocus, row, at);
            setHorizontalAlignment(alignment);
            String field = model.problemsUnder() + row + "." + cell.field();
            mark(model.shownProblems().stream()
                    .filter(problem -> problem.field().equals(field))
                    .toList());
            return this;
        }
    }
}
