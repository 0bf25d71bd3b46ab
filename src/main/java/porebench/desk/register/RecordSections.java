package porebench.desk.register;

import javax.swing.JComponent;
import javax.swing.JPanel;

/** What stands of the record on view below the register, in sight of its form. */
interface RecordSections {
    /** Nothing besides. */
    RecordSections NONE = new RecordSections() {
        @Override
        public JComponent component() {
            return new JPanel();
        }

        @Override
        public void refresh() {}
    };

    /** Returns the panel with the sections. */
    JComponent component();

    /** Shows what they say of the record and its draft as they are. */
    void refresh();
}
