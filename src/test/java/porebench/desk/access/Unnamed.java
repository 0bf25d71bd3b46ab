package porebench.desk.access;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JSplitPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.LayoutFocusTraversalPolicy;
import javax.swing.table.TableCellEditor;
import javax.swing.text.JTextComponent;

/**
 * Finds what a person can come to or work with in a window and what says no name, no role or nothing of a cell to somebody who hears
 * the window read.
 */
public final class Unnamed {
    private static final Reach REACH = new Reach();
    private static final int ROWS = 3;

    private final List<String> faults = new ArrayList<>();
    private int looked;

    /** Asks what the keyboard can be brought to. */
    private static final class Reach extends LayoutFocusTraversalPolicy {
        private static final long serialVersionUID = 1L;

        boolean comesTo(Component component) {
            return accept(component);
        }
    }

    /** Looks at a component and everything within it that is on view. */
    public Unnamed in(Component root) {
        walk(root, String.valueOf(root.getName()));
        return this;
    }

    /** Returns what is without a name, each once: where it stands and of which class it is. */
    public List<String> faults() {
        return faults.stream().distinct().toList();
    }

    /** Returns how many components were asked. */
    public int looked() {
        return looked;
    }

    private void walk(Component component, String path) {
        if (!component.isVisible()) {
            return;
        }
        String place = component.getName() == null ? path : path + " > " + component.getName();
        if (isForPeople(component)) {
            looked++;
            ask(component, place);
        }
        if (component instanceof JTable table) {
            cells(table, place);
            return;
        }
        if (component instanceof JComboBox<?> box) {
            list(box, place);
            return;
        }
        if (component instanceof JMenu menu) {
            for (Component item : menu.getMenuComponents()) {
                walk(item, place);
            }
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                walk(child, place);
            }
        }
    }

    private static boolean isForPeople(Component component) {
        if (component instanceof JScrollBar || component instanceof JScrollPane || component instanceof JMenuBar) {
            return false;
        }
        return component instanceof AbstractButton && !isPartOfAnother(component)
                || component instanceof JTextComponent text && (text.isFocusable() || text.isEditable())
                || component instanceof JComboBox
                || component instanceof JList
                || component instanceof JTable
                || component instanceof JTree
                || component instanceof JSlider
                || component instanceof JSpinner
                || component instanceof JTabbedPane
                || component instanceof JSplitPane
                || component instanceof JComponent && REACH.comesTo(component);
    }

    /** The arrows of scroll bars and of the chooser's boxes are never come to, and what they belong to is named. */
    private static boolean isPartOfAnother(Component component) {
        return component.getParent() instanceof JScrollBar || component.getParent() instanceof JComboBox;
    }

    private void ask(Component component, String place) {
        AccessibleContext context = component.getAccessibleContext();
        String what = place + " (" + kind(component) + ")";
        if (context == null) {
            faults.add(what + ": nothing is said of it");
            return;
        }
        if (isBlank(context.getAccessibleName())) {
            faults.add(what + ": no name");
        }
        AccessibleRole role = context.getAccessibleRole();
        if (role == null || role == AccessibleRole.UNKNOWN || role == AccessibleRole.SWING_COMPONENT) {
            faults.add(what + ": no role");
        }
        if (role == AccessibleRole.CANVAS && isBlank(context.getAccessibleDescription())) {
            faults.add(what + ": a plot that is not said in words");
        }
    }

    private void list(JComboBox<?> box, String place) {
        box.firePopupMenuWillBecomeVisible();
        if (box.isEditable()
                && isBlank(box.getEditor()
                        .getEditorComponent()
                        .getAccessibleContext()
                        .getAccessibleName())) {
            faults.add(place + " (what is typed in it): no name");
        }
        Accessible popup = box.getUI().getAccessibleChild(box, 0);
        if (popup == null) {
            return;
        }
        for (int i = 0; i < popup.getAccessibleContext().getAccessibleChildrenCount(); i++) {
            Accessible child = popup.getAccessibleContext().getAccessibleChild(i);
            AccessibleContext list = child.getAccessibleContext();
            find(list, place);
        }
    }

    private void find(AccessibleContext context, String place) {
        if (context.getAccessibleRole() == AccessibleRole.LIST) {
            looked++;
            if (isBlank(context.getAccessibleName())) {
                faults.add(place + " (its open list): no name");
            }
            return;
        }
        for (int i = 0; i < context.getAccessibleChildrenCount(); i++) {
            find(context.getAccessibleChild(i).getAccessibleContext(), place);
        }
    }

    private void cells(JTable table, String place) {
        int columns = table.getColumnCount();
        if (table.getTableHeader() != null) {
            AccessibleContext header = table.getTableHeader().getAccessibleContext();
            if (isBlank(header.getAccessibleName())) {
                faults.add(place + " (its headings): no name");
            }
            for (int column = 0; column < columns; column++) {
                looked++;
                AccessibleContext heading = header.getAccessibleChild(column).getAccessibleContext();
                if (isBlank(heading.getAccessibleName())) {
                    faults.add(place + " (heading " + column + "): no name");
                }
            }
        }
        for (int row = 0; row < Math.min(ROWS, table.getRowCount()); row++) {
            for (int column = 0; column < columns; column++) {
                looked++;
                AccessibleContext cell = table.getAccessibleContext()
                        .getAccessibleChild(row * columns + column)
                        .getAccessibleContext();
                String heading = table.getColumnName(column);
                if (isBlank(cell.getAccessibleName())) {
                    faults.add(place + " (cell in column " + heading + "): no name");
                }
                String about = cell.getAccessibleDescription();
                if (about == null || !about.startsWith(heading)) {
                    faults.add(place + " (cell in column " + heading + "): does not say its heading");
                }
                if (row == 0 && table.isCellEditable(row, column)) {
                    editor(table, row, column, place);
                }
            }
        }
    }

    private void editor(JTable table, int row, int column, String place) {
        TableCellEditor editor = table.getCellEditor(row, column);
        Component typed = table.prepareEditor(editor, row, column);
        if (isBlank(typed.getAccessibleContext().getAccessibleName())) {
            faults.add(place + " (typing in column " + table.getColumnName(column) + "): no name");
        }
    }

    private static String kind(Component component) {
        Class<?> type = component.getClass();
        return (type.getSimpleName().isEmpty() ? type.getSuperclass().getSimpleName() : type.getSimpleName())
                .toLowerCase(Locale.ROOT);
    }

    private static boolean isBlank(@org.jspecify.annotations.Nullable String name) {
        return name == null || name.isBlank();
    }
}
