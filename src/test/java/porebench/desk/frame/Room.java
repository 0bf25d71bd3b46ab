package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import porebench.desk.form.CutTexts;

/** Looks for what has not the room to be seen: behind an edge where nothing scrolls, too narrow to type in, or a cut button. */
final class Room {
    /** So many pixels hold a day, or seven digits. */
    private static final int LEAST_FIELD = 70;

    /** The shade around buttons and fields may stand over an edge. */
    private static final int SHADE = 3;

    private final List<String> faults = new ArrayList<>();

    private Room() {}

    /** Returns what is wrong within a part of a window that is laid out. */
    static List<String> lackingIn(Container all) {
        Room room = new Room();
        room.look(all, all);
        return room.faults;
    }

    private void look(Container within, Container all) {
        for (Component each : within.getComponents()) {
            if (each.isVisible() && each instanceof JComponent part) {
                judge(part, all);
                // A table's cells are as wide as a person makes its columns, and say all when pointed at.
                if (!(part instanceof JComboBox<?>)) {
                    look(part, all);
                }
            }
        }
    }

    private void judge(JComponent part, Container all) {
        boolean isSeen = part instanceof JLabel
                || part instanceof AbstractButton
                || part instanceof JComboBox<?>
                || part instanceof JTextField
                || part instanceof JTextArea;
        if (!isSeen || isInPane(part)) {
            return;
        }
        if (isBehindAnEdge(part, all)) {
            add("behind an edge", part);
        }
        if (part instanceof JTextField field && field.getWidth() < LEAST_FIELD) {
            add("too narrow to type in, " + field.getWidth(), part);
        }
        if (part instanceof AbstractButton button && button.getToolTipText() == null) {
            CutTexts.of(button).ifPresent(text -> add("cut", part));
        }
        if (part instanceof JTextArea words && words.getHeight() < words.getPreferredSize().height) {
            add("lines are missing", part);
        }
    }

    private static boolean isInPane(JComponent part) {
        return SwingUtilities.getAncestorOfClass(javax.swing.CellRendererPane.class, part) != null;
    }

    /** Goes up to the next thing that scrolls, whose bars reach what is further out. */
    private static boolean isBehindAnEdge(JComponent part, Container all) {
        for (Container around = part.getParent(); around != null; around = around.getParent()) {
            Rectangle place = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), around);
            if (around instanceof JViewport) {
                return false;
            }
            if (place.x < -SHADE
                    || place.x + place.width > around.getWidth() + SHADE
                    || place.y + place.height > around.getHeight() + SHADE) {
                return part.getWidth() > 0;
            }
            if (around == all) {
                return false;
            }
        }
        return false;
    }

    private void add(String fault, JComponent part) {
        String text = part instanceof JLabel label
                ? label.getText()
                : part instanceof AbstractButton button
                        ? button.getText()
                        : part instanceof JTextArea words ? words.getText() : String.valueOf(part.getName());
        String parent = part.getParent().getName();
        faults.add(fault + ": " + part.getClass().getSimpleName() + " " + part.getName() + " in " + parent + " \""
                + text + "\" " + part.getBounds());
    }
}
