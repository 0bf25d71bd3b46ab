package porebench.desk.form;

import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComboBox;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** Gives the open list of a box to choose from the name of the box; of itself it has none. */
public final class SpokenChoices implements PopupMenuListener {
    private final JComboBox<?> box;

    private SpokenChoices(JComboBox<?> box) {
        this.box = box;
    }

    /** Names the list of a box whenever it opens, in whatever theme. */
    public static void follow(JComboBox<?> box) {
        SpokenChoices spoken = new SpokenChoices(box);
        box.addPopupMenuListener(spoken);
        box.addHierarchyListener(event -> spoken.nameField());
    }

    /** What is typed in has no name of itself either. */
    private void nameField() {
        String name = box.getAccessibleContext().getAccessibleName();
        if (box.isEditable() && name != null) {
            box.getEditor().getEditorComponent().getAccessibleContext().setAccessibleName(name);
        }
    }

    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
        Accessible list = box.getUI().getAccessibleChild(box, 0);
        String name = box.getAccessibleContext().getAccessibleName();
        if (list != null && name != null) {
            name(list.getAccessibleContext(), name);
        }
    }

    private static void name(AccessibleContext context, String name) {
        if (context.getAccessibleRole() == AccessibleRole.LIST) {
            context.setAccessibleName(name);
            return;
        }
        for (int at = 0; at < context.getAccessibleChildrenCount(); at++) {
            name(context.getAccessibleChild(at).getAccessibleContext(), name);
        }
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {
        // The name stays.
    }

    @Override
    public void popupMenuCanceled(PopupMenuEvent event) {
        // The name stays.
    }
}
