package porebench.desk;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import porebench.record.id.DeterminationId;

/** A part of a page about one determination of the selected mix; it is made elsewhere and placed by the page. */
public interface DeterminationSection {
    /** Returns the section itself, always the same component. */
    JComponent component();

    /** Turns to a determination of the selected mix; to none while the mix has none. */
    void show(Optional<DeterminationId> determination);

    /** Returns a section that shows nothing and takes no room. */
    static DeterminationSection nothing() {
        JPanel empty = new JPanel();
        empty.setVisible(false);
        return new DeterminationSection() {
            @Override
            public JComponent component() {
                return empty;
            }

            @Override
            public void show(Optional<DeterminationId> determination) {
                // There is nothing to show it in.
            }
        };
    }
}
