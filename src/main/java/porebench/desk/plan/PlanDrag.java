package porebench.desk.plan;

import java.awt.Cursor;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.SwingUtilities;
import org.jspecify.annotations.Nullable;
import porebench.desk.table.RowTable;

/** Lets a test be dragged to the place of another; while it is dragged the line under the pointer is the chosen one. */
final class PlanDrag extends MouseAdapter {
    private final RowTable<PlanLine> table;
    private final BiConsumer<String, String> move;
    private Optional<String> dragged = Optional.empty();

    private PlanDrag(RowTable<PlanLine> table, BiConsumer<String, String> move) {
        this.table = table;
        this.move = move;
    }

    /** From now on tests are dragged: the mix that is moved and the one whose place it takes are handed on. */
    static void on(RowTable<PlanLine> table, BiConsumer<String, String> move) {
        PlanDrag drag = new PlanDrag(table, move);
        table.addMouseListener(drag);
        table.addMouseMotionListener(drag);
    }

    private Optional<String> under(MouseEvent event) {
        int row = table.rowAtPoint(event.getPoint());
        return row < 0
                ? Optional.empty()
                : Optional.of(
                        table.shown().get(table.convertRowIndexToModel(row)).mix());
    }

    @Override
    public void mousePressed(MouseEvent event) {
        dragged = SwingUtilities.isLeftMouseButton(event) ? under(event) : Optional.empty();
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (dragged.isPresent()) {
            show(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        show(null);
        Optional<String> taken = dragged;
        dragged = Optional.empty();
        taken.ifPresent(mix -> under(event).filter(place -> !place.equals(mix)).ifPresent(place -> {
            table.finishTyping();
            move.accept(mix, place);
        }));
    }

    private void show(@Nullable Cursor cursor) {
        table.setCursor(cursor);
    }
}
