package porebench.desk.frame;

import javax.swing.BorderFactory;
import javax.swing.JFrame;
import javax.swing.JSplitPane;
import porebench.method.Texts;

/** What the window as a whole says to those who hear it read. */
final class Spoken {
    private Spoken() {}

    /** Names the edge between the mixes and the page, which is moved by keys as well. */
    static void dress(JFrame frame, JSplitPane split, Texts texts) {
        // Not none at all, which another theme would take for its own.
        split.setBorder(BorderFactory.createEmptyBorder());
        split.getAccessibleContext().setAccessibleName(texts.get("frame.edge"));
        split.getAccessibleContext().setAccessibleDescription(texts.get("frame.edge.keys"));
        frame.getAccessibleContext().setAccessibleDescription(texts.get("frame.spoken"));
    }
}
