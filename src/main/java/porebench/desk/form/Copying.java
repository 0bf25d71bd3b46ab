package porebench.desk.form;

import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;

/** Puts words on the clipboard. */
public final class Copying {
    private Copying() {}

    /**
     * Puts words on the clipboard.
     *
     * @return whether that went well; another program may hold the clipboard just then
     */
    public static boolean copy(String words) {
        try {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(words), null);
            return true;
        } catch (IllegalStateException held) {
            return false;
        }
    }
}
