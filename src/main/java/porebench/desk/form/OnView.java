package porebench.desk.form;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;

/** What waits until somebody looks at it. */
public final class OnView {
    private OnView() {}

    /** Calls back each time a part of the window comes into view. */
    public static void each(JComponent part, Runnable shown) {
        part.addHierarchyListener(event -> {
            if ((event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0 && part.isShowing()) {
                shown.run();
            }
        });
    }
}
