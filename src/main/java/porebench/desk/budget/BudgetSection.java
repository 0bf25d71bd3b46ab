package porebench.desk.budget;

import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.record.id.DeterminationId;

/** The uncertainty budget of a determination's factor, and of a field reading corrected by it. */
public final class BudgetSection implements DeterminationSection {
    private final BudgetModel model;
    private final BudgetPanel panel;

    public BudgetSection(DeskModel desk) {
        model = new BudgetModel(desk);
        panel = new BudgetPanel(model);
    }

    @Override
    public JComponent component() {
        return panel.component();
    }

    @Override
    public void show(Optional<DeterminationId> determination) {
        model.turnTo(determination);
        panel.showSoon();
    }
}
