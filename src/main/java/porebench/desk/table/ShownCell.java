package porebench.desk.table;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.util.List;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.method.Problem;

/**
 * Draws a cell of a table; one with a problem gets a frame and a corner, filled for an error and empty for a doubt, and says its
 * problem when pointed at.
 */
final class ShownCell<R> extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int CORNER = 8;
    private static final int MARK_GAP = 8;

    private final transient ShownColumn<R> column;
    private final transient ShownRows<R> rows;
    private transient List<Problem> problems = List.of();

    ShownCell(ShownColumn<R> column, ShownRows<R> rows) {
        this.column = column;
        this.rows = rows;
        setHorizontalAlignment(column.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        setIconTextGap(MARK_GAP);
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
        R shown = rows.all().get(table.convertRowIndexToModel(row));
        super.getTableCellRendererComponent(table, column.words(shown), isSelected, hasFocus, row, at);
        Optional<Color> selected = isSelected ? Optional.of(table.getSelectionForeground()) : Optional.empty();
        setIcon(column.mark(shown, selected).orElse(null));
        problems = column.problems(shown);
        setToolTipText(problems.isEmpty() ? null : column.said(problems));
        return this;
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJLabel() {
                private static final long serialVersionUID = 1L;

                @Override
                public String getAccessibleName() {
                    return SpokenCells.words(getText(), getLocale());
                }

                @Override
                public String getAccessibleDescription() {
                    return SpokenCells.about(column.heading(), problems.isEmpty() ? "" : column.said(problems));
                }
            };
        }
        return accessibleContext;
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
