package porebench.desk.variability;

import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Page;

/** The page that says whether the trials of a determination agree. */
public final class VariabilityPage implements Page {
    private final VariabilityModel model;
    private final JScrollPane scroll;

    /** Makes the page on its own. */
    public VariabilityPage(DeskModel desk) {
        this(desk, DeterminationSection.nothing());
    }

    /**
     * Makes the page.
     *
     * @param last what stands below everything else about the same determination
     */
    public VariabilityPage(DeskModel desk, DeterminationSection last) {
        model = new VariabilityModel(desk);
        scroll = new VariabilityPanel(model, last).component().scrolled();
    }

    @Override
    public String name() {
        return "variability";
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
