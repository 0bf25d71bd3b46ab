package porebench.desk.study;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;
import porebench.desk.DeskModel;
import porebench.desk.Page;

/** The page of studies: who and what varies. */
public final class StudyPage implements Page {
    private final StudyModel model;
    private final JComponent component;

    public StudyPage(DeskModel desk) {
        model = new StudyModel(desk);
        component = new StudyPanel(model).component();
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
}
