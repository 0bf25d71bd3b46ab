package porebench.desk.access;

import java.awt.EventQueue;
import java.awt.Window;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JDialog;
import porebench.desk.EventThread;

/** Opens dialogs one after another, has what they say looked at, and takes them away. */
public final class OpenedDialog {
    private OpenedDialog() {}

    private static Optional<JDialog> showing() {
        return Stream.of(Window.getWindows())
                .filter(each -> each instanceof JDialog && each.isShowing())
                .map(JDialog.class::cast)
                .findFirst();
    }

    /** Does something that opens a dialog and returns what in it has no name, the dialog's own name among it. */
    public static List<String> faults(String what, Runnable opening) throws Exception {
        EventQueue.invokeLater(opening);
        if (!EventThread.comes(() -> showing().isPresent())) {
            throw new AssertionError("no dialog came of " + what);
        }
        JDialog dialog = EventThread.call(() -> showing().orElseThrow());
        Unnamed unnamed = EventThread.call(() -> new Unnamed().in(dialog.getRootPane()));
        String title = EventThread.call(() -> dialog.getAccessibleContext().getAccessibleName());
        EventThread.run(dialog::dispose);
        if (!EventThread.comes(() -> showing().isEmpty())) {
            throw new AssertionError("the dialog of " + what + " stays");
        }
        Stream<String> own = title == null || title.isBlank() ? Stream.of("the dialog itself: no name") : Stream.of();
        Stream<String> empty = unnamed.looked() == 0 ? Stream.of("nothing was found in it") : Stream.of();
        return Stream.of(own, empty, unnamed.faults().stream())
                .flatMap(each -> each)
                .map(fault -> what + ": " + fault)
                .toList();
    }
}
