package porebench.desk.trial;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import porebench.desk.DeskModel;
import porebench.desk.Page;

/** The page of the selected mix's trials: seen, entered, corrected, struck and imported. */
public final class TrialsPage implements Page {
    private final TrialsModel model;
    private final TrialsPanel panel;
    private final JScrollPane scroll;

    public TrialsPage(DeskModel desk) {
        model = new TrialsModel(desk);
        panel = new TrialsPanel(model);
        scroll = panel.component().scrolled();
    }

    @Override
    public String name() {
        return "trials";
    }

    @Override
    public String title() {
        return model.texts().get("page.title");
    }

    @Override
    public JComponent component() {
        return scroll;
    }

    @Override
    public boolean hasUnsavedDraft() {
        return model.entry().history().isChanged();
    }

    @Override
    public void dropDraft() {
        model.entry().startNew();
    }

    @Override
    public void undo() {
        model.entry().history().undo();
    }

    @Override
    public void redo() {
        model.entry().history().redo();
    }

    @Override
    public Optional<String> undoLabel() {
        return model.entry().history().undoLabel();
    }

    @Override
    public Optional<String> redoLabel() {
        return model.entry().history().redoLabel();
    }

    @Override
    public void save() {
        if (hasUnsavedDraft()) {
            panel.actions().save();
        }
    }
}
