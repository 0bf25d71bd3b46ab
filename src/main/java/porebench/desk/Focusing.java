package porebench.desk;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import porebench.desk.form.TallPanel;

/** Where the keyboard goes on a page that is turned to. */
public final class Focusing {
    /** The property of a field that only seeks in the table below it. */
    public static final String SEEKS = "porebench.seeks";

    private Focusing() {}

    /** Gives the keyboard to what {@link #find} finds; returns whether there is anything. */
    public static boolean first(Container page) {
        return find(page).map(Component::requestFocusInWindow).orElse(false);
    }

    /**
     * Returns the first field to type in, or the first table, where the page is scrolled to. A field that only seeks in a table gives
     * way to the table. Where none is in sight, a button or a list there does it, and otherwise
     * the page itself, lest it run away from where it was read.
     */
    public static Optional<Component> find(Container page) {
        List<Component> parts = new ArrayList<>();
        collect(page, parts);
        boolean isOutOfSight = parts.stream().noneMatch(Focusing::isInSight);
        List<Component> fields = parts.stream().filter(Focusing::isTypedIn).toList();
        return fields.stream()
                .filter(Focusing::isInSight)
                .filter(Focusing::letsThePageStand)
                .findFirst()
                .or(() -> fields.isEmpty()
                        ? Optional.empty()
                        : parts.stream().filter(Focusing::isInSight).findFirst())
                .or(() -> isOutOfSight ? tall(page) : parts.stream().findFirst());
    }

    private static Optional<Component> tall(Container in) {
        for (Component each : in.getComponents()) {
            Optional<Component> found = each instanceof TallPanel
                    ? Optional.of(each)
                    : each.isVisible() && each instanceof Container inner ? tall(inner) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static boolean isTypedIn(Component part) {
        boolean isSeeking = part instanceof JComponent field && Boolean.TRUE.equals(field.getClientProperty(SEEKS));
        return part instanceof JTable || part instanceof JTextComponent text && text.isEditable() && !isSeeking;
    }

    private static boolean isInSight(Component part) {
        return part instanceof JComponent seen && !seen.getVisibleRect().isEmpty();
    }

    /** The page runs to what is seen in part only; to what is higher than the page it does not. */
    private static boolean letsThePageStand(Component part) {
        Container page = SwingUtilities.getAncestorOfClass(TallPanel.class, part);
        if (page == null || !(part instanceof JTable)) {
            return true;
        }
        Container scroll = SwingUtilities.getAncestorOfClass(JScrollPane.class, part);
        JComponent seen = scroll != null && page.isAncestorOf(scroll) ? (JComponent) scroll : (JComponent) part;
        return seen.getVisibleRect().height == seen.getHeight()
                || seen.getHeight() > ((JComponent) page).getVisibleRect().height;
    }

    private static void collect(Container in, List<Component> parts) {
        for (Component each : in.getComponents()) {
            if (each.isVisible() && each.isEnabled() && each.isFocusable() && isForKeys(each)) {
                parts.add(each);
            }
            if (each.isVisible() && each instanceof Container container) {
                collect(container, parts);
            }
        }
    }

    /** Returns whether the keyboard is of use on something; panels and words have it only on paper. */
    private static boolean isForKeys(Component part) {
        return part instanceof JTable
                || part instanceof JTextComponent text && text.isEditable()
                || part instanceof AbstractButton
                || part instanceof JComboBox<?>;
    }
}
