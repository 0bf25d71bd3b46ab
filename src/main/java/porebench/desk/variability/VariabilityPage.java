package porebench.desk.variability;

import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.DeterminationSection;
import porebench.desk.Page;
import porebench.desk.Settings;
import porebench.record.id.TrialId;

/** The page that says whether the trials of a determination agree. */
public final class VariabilityPage implements Page {
    private final VariabilityModel model;
    private final JScrollPane scroll;

    /**
     * Makes the page on its own.
     *
     * @param openTrial turns the window to a trial, also where it is to be struck
     */
    public VariabilityPage(DeskModel desk, Consumer<TrialId> openTrial) {
        this(desk, new ToTrial(openTrial, openTrial), DeterminationSection.nothing(), Settings.inMemory());
    }

    /**
     * Makes the page.
     *
     * @param toTrial the ways to a trial
     * @param last what stands below everything else about the same determination
     * @param settings where it is remembered what a person wants to see
     */
    public VariabilityPage(DeskModel desk, ToTrial toTrial, DeterminationSection last, Settings settings) {
        model = new VariabilityModel(desk, settings);
        scroll = new VariabilityPanel(model, toTrial, last).component().scrolled();
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
