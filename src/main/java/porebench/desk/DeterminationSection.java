package porebench.desk;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.record.id.DeterminationId;

/** A part of a page about one determination of the selected mix; it is made elsewhere and placed by the page. */
public interface DeterminationSection {
    /** Returns the section itself, always the same component. */
    JComponent component();

    /** Turns to a determination of the selected mix; to none while the mix has none. */
    void show(Optional<DeterminationId> determination);

    /** Returns two sections below one another, as one. */
    static DeterminationSection both(DeterminationSection above, DeterminationSection below) {
        JPanel panel = new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3, gapy 24", "[grow,fill]"));
        panel.setOpaque(false);
        panel.add(above.component(), "wmin 0");
        panel.add(below.component(), "wmin 0");
        return new DeterminationSection() {
            @Override
            public JComponent component() {
                return panel;
            }

            @Override
            public void show(Optional<DeterminationId> determination) {
                above.show(determination);
                below.show(determination);
            }
        };
    }

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
