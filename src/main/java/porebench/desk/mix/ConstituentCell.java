package porebench.desk.mix;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.util.List;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.desk.form.Texts;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Role;
import porebench.quantity.MassUnit;

/**
 * Draws a cell of the table of constituents; one with a problem gets a frame and a corner, filled for an error and empty for
 * a doubt, and says its problem when pointed at.
 */
final class ConstituentCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int CORNER = 8;

    private final transient MixModel model;
    private final transient Texts texts;
    private final transient ProblemText problemText;
    private transient List<Problem> problems = List.of();

    ConstituentCell(MixModel model, ProblemText problemText) {
        this.model = model;
        this.texts = model.texts();
        this.problemText = problemText;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        MixColumn shown = ConstituentTableModel.columnOf(column);
        super.getTableCellRendererComponent(table, say(value, row), isSelected, hasFocus, row, column);
        setHorizontalAlignment(shown.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        problems = model.shownProblems().stream()
                .filter(problem -> problem.field().equals(shown.fieldOf(row)))
                .toList();
        setToolTipText(
                problems.isEmpty()
                        ? null
                        : String.join(
                                " ", problems.stream().map(problemText::say).toList()));
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

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        if (problems.isEmpty()) {
            return;
        }
        boolean isError = Problem.anyError(problems);
        graphics.setColor(UIManager.getColor(
                isError ? "Component.error.focusedBorderColor" : "Component.warning.focusedBorderColor"));
        graphics.drawRect(0, 0, getWidth() - 1, getHeight() - 1);
        int side = UIScale.scale(CORNER);
        int[] across = {0, side, 0};
        int[] down = {0, 0, side};
        if (isError) {
            graphics.fillPolygon(across, down, across.length);
        } else {
            graphics.drawPolygon(across, down, across.length);
        }
    }
}
