package porebench.desk.mix;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import porebench.desk.form.MarkedCell;
import porebench.method.MoistureState;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.method.Texts;
import porebench.quantity.MassUnit;

/** Draws a cell of the table of constituents. */
final class ConstituentCell extends MarkedCell {
    private static final long serialVersionUID = 1L;

    private final transient MixModel model;
    private final transient Texts texts;

    ConstituentCell(MixModel model, ProblemText problemText) {
        super(problemText);
        this.model = model;
        this.texts = model.texts();
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        MixColumn shown = ConstituentTableModel.columnOf(column);
        super.getTableCellRendererComponent(table, say(value, row), isSelected, hasFocus, row, column);
        setHorizontalAlignment(shown.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        mark(model.shownProblems().stream()
                .filter(problem -> problem.field().equals(shown.fieldOf(row)))
                .toList());
        return this;
    }

    private String say(Object value, int row) {
        if (value instanceof Role role) {
            return texts.get("role." + role.symbol());
        }
        if (value instanceof MoistureState state) {
            boolean isUsed = model.draft().rows().get(row).role().isAggregate() || state != MoistureState.SSD;
            return isUsed ? texts.get("massState." + state.symbol()) : "";
        }
        return value instanceof MassUnit unit ? unit.symbol() : String.valueOf(value);
    }
}
