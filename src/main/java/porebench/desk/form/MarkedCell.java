package porebench.desk.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Graphics;
import java.util.List;
import javax.swing.UIManager;
import javax.swing.table.DefaultTableCellRenderer;
import porebench.method.Problem;
import porebench.method.ProblemText;

/**
 * Draws a cell of a table to type in; one with a problem gets a frame and a corner, filled for an error and empty for a doubt,
 * and says its problem when pointed at.
 */
public class MarkedCell extends DefaultTableCellRenderer {
    private static final long serialVersionUID = 1L;
    private static final int CORNER = 8;

    private final transient ProblemText problemText;
    private transient List<Problem> problems = List.of();

    public MarkedCell(ProblemText problemText) {
        this.problemText = problemText;
    }

    /** Marks the cell that is drawn next with its problems; none takes the mark away. */
    protected final void mark(List<Problem> ofCell) {
        problems = List.copyOf(ofCell);
        setToolTipText(
                problems.isEmpty()
                        ? null
                        : String.join(
                                " ", problems.stream().map(problemText::say).toList()));
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
