package porebench.desk.frame.rail;

import java.util.List;
import javax.swing.AbstractListModel;
import porebench.evidence.RegisterRow;

/** The mixes in the list; all of them change at once, which the list hears as one change. */
final class ShownMixes extends AbstractListModel<RegisterRow> {
    private static final long serialVersionUID = 1L;

    private transient List<RegisterRow> rows = List.of();

    /** Shows other mixes; the same ones again change nothing. */
    void show(List<RegisterRow> others) {
        if (rows.equals(others)) {
            return;
        }
        int before = rows.size();
        rows = List.copyOf(others);
        if (before > rows.size()) {
            fireIntervalRemoved(this, rows.size(), before - 1);
        } else if (before < rows.size()) {
            fireIntervalAdded(this, before, rows.size() - 1);
        }
        if (!rows.isEmpty()) {
            fireContentsChanged(this, 0, rows.size() - 1);
        }
    }

    @Override
    public int getSize() {
        return rows.size();
    }

    @Override
    public RegisterRow getElementAt(int index) {
        return rows.get(index);
    }
}
