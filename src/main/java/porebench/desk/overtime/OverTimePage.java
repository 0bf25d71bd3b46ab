package porebench.desk.overtime;

import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.record.id.TrialId;

/** The page of the laboratory that says whether the factor has changed over time. */
public final class OverTimePage implements Page {
    private final OverTimeModel model;
    private final JScrollPane scroll;

    /**
     * Makes the page.
     *
     * @param openTrial turns the window to a trial
     */
    public OverTimePage(DeskModel desk, Consumer<TrialId> openTrial) {
        model = new OverTimeModel(desk);
        scroll = new OverTimePanel(model, openTrial).component().scrolled();
    }

    @Override
    public String name() {
        return "overtime";
    }

    @Override
    public String title() {
        return model.texts().get("page.title");
    }

    @Override
    public JComponent component() {
        return scroll;
    }
}
