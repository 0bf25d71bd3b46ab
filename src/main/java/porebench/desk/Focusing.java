package porebench.desk;

import java.awt.Component;
import java.awt.Container;
import java.util.Optional;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;

/** Where the keyboard goes on a page that is turned to. */
public final class Focusing {
    private Focusing() {}

    /** Gives the keyboard to the first field to type in, or the first table; returns whether there is one. */
    public static boolean first(Container page) {
        return find(page).map(Component::requestFocusInWindow).orElse(false);
    }

    /** Returns the first field to type in, or the first table, that is in sight. */
    public static Optional<Component> find(Container in) {
        for (Component each : in.getComponents()) {
            boolean isOpen = each.isVisible() && each.isEnabled() && each.isFocusable();
            boolean isField = each instanceof JTable || each instanceof JTextComponent text && text.isEditable();
            if (isOpen && isField) {
                return Optional.of(each);
            }
            Optional<Component> inside =
                    each.isVisible() && each instanceof Container container ? find(container) : Optional.empty();
            if (inside.isPresent()) {
                return inside;
            }
        }
        return Optional.empty();
    }
}
