package porebench.desk.study;

import java.awt.event.HierarchyEvent;
import java.util.Optional;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;
import porebench.desk.form.History;

/** The page of studies: who and what varies. */
public final class StudyPage implements Page {
    private final StudyModel model;
    private final StudyPanel panel;
    private final JComponent component;

    public StudyPage(DeskModel desk) {
        model = new StudyModel(desk);
        panel = new StudyPanel(model);
        component = panel.component();
        // A study can take a while: it is made for somebody who looks at it.
        component.addHierarchyListener(event -> {
            boolean isTurned = (event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0;
            if (isTurned && component.isShowing()) {
                model.update();
            }
        });
        desk.onChange(() -> {
            if (component.isShowing()) {
                model.update();
            }
        });
    }

    @Override
    public String name() {
        return "studies";
    }

    @Override
    public String title() {
        return model.texts().get("page.title");
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public boolean hasUnsavedDraft() {
        return model.keeping().hasUnsavedDraft();
    }

    @Override
    public void dropDraft() {
        panel.keeping().drop();
    }

    @Override
    public Optional<History<?>> history() {
        return Optional.of(model.keeping().history());
    }

    @Override
    public void save() {
        panel.save();
    }
}
