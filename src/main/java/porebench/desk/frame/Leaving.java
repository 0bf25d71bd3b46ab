package porebench.desk.frame;

import javax.swing.JComponent;
import porebench.desk.Page;
import porebench.desk.Tools;

/**
 * Asks about unsaved drafts before the window turns to something else.
 *
 * @param pages where drafts may be
 * @param over what questions stand over
 * @param stay shows again what is shown, where a draft is to be kept
 */
record Leaving(Pages pages, Tools tools, JComponent over, Runnable stay) {
    /** Asks about each draft, and goes on once none is left: one that is to be saved must be kept before. */
    void leave(Runnable then) {
        for (Page page : pages.all()) {
            if (page.hasUnsavedDraft()) {
                switch (tools.asker().draft(over, page.title())) {
                    case DROP -> page.dropDraft();
                    case SAVE -> {
                        page.save();
                        tools.tasks().whenAnswered(() -> leaveSaved(page, then));
                        return;
                    }
                    case KEEP_EDITING -> {
                        stay.run();
                        return;
                    }
                }
            }
        }
        then.run();
    }

    private void leaveSaved(Page page, Runnable then) {
        if (page.hasUnsavedDraft()) {
            stay.run();
        } else {
            leave(then);
        }
    }
}
