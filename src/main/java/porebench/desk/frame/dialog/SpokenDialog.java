package porebench.desk.frame.dialog;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import porebench.desk.form.SpokenChoices;
import porebench.desk.form.TallPanel;

/** What a dialog says to those who hear it read: its title as its name, and what it asks or tells as what is said of it. */
final class SpokenDialog {
    private SpokenDialog() {}

    /** Says of a dialog what is to be read in it, and names what scrolls within it. */
    static void tell(JDialog dialog) {
        List<String> words = new ArrayList<>();
        gather(dialog.getContentPane(), words);
        dialog.getAccessibleContext().setAccessibleDescription(String.join("\n", words));
        TallPanel.name(dialog.getContentPane(), dialog.getTitle());
    }

    private static void gather(Container within, List<String> words) {
        for (Component each : within.getComponents()) {
            if (each instanceof JTextArea text
                    && !text.isEditable()
                    && !text.getText().isBlank()) {
                words.add(text.getText());
            } else if (each instanceof Container inner) {
                gather(inner, words);
            }
        }
    }

    /** Names the open lists of the boxes to choose from that stand somewhere within. */
    static void follow(Container within) {
        for (Component each : within.getComponents()) {
            if (each instanceof JComboBox<?> box) {
                SpokenChoices.follow(box);
            } else if (each instanceof Container inner) {
                follow(inner);
            }
        }
    }

    /** Gives a text that the keyboard can come to, to be scrolled, the title of its dialog once it stands there. */
    static void byItsDialog(JTextArea text) {
        text.addHierarchyListener(event -> {
            if (SwingUtilities.getWindowAncestor(text) instanceof JDialog dialog) {
                text.getAccessibleContext().setAccessibleName(dialog.getTitle());
            }
        });
    }
}
