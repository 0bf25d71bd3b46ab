package porebench.desk.trial;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.Screen;
import porebench.desk.form.History;
import porebench.record.id.DeterminationId;
import porebench.record.id.TrialId;

/** The page of the selected mix's trials: seen, entered, corrected, struck and imported. */
public final class TrialsPage implements Screen {
    private final TrialsModel model;
    private final TrialsPanel panel;
    private final JScrollPane scroll;

    public TrialsPage(DeskModel desk) {
        model = new TrialsModel(desk);
        panel = new TrialsPanel(model);
        scroll = panel.component().scrolled();
    }

    /** Looks at a trial of the selected mix, which it brings into sight. */
    public void open(DeterminationId determination, TrialId trial) {
        model.lookAt(determination, trial);
        panel.reveal();
    }

    /** Asks why a trial should be struck, if it is the one looked at and is not struck already. */
    public void strike(TrialId trial) {
        boolean isLookedAt = model.selected()
                .map(row -> row.id().equals(trial) && !row.judged().isStruck())
                .orElse(false);
        if (isLookedAt) {
            panel.actions().strike();
        }
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.entry().history());
    }

    @Override
    public void dropDraft() {
        model.entry().startNew();
    }

    @Override
    public void save() {
        if (hasUnsavedDraft()) {
            panel.actions().save();
        }
    }
}
