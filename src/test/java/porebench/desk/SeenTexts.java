package porebench.desk;

import java.awt.Component;
import java.awt.Container;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;

/** The texts that are in sight in a window: labels, buttons, fields, and the rows of tables and lists on view. */
public final class SeenTexts {
    private final List<String> texts = new ArrayList<>();

    private SeenTexts() {}

    /** Returns the texts in sight, in the order of the components; on the event thread. */
    public static List<String> in(Container window) {
        SeenTexts seen = new SeenTexts();
        seen.look(window, true);
        return seen.texts;
    }

    private void look(Component component, boolean mustShow) {
        boolean isSeen = !mustShow
                || component.isShowing()
                        && (!(component instanceof JComponent shown)
                                || !shown.getVisibleRect().isEmpty());
        if (!isSeen || !component.isVisible()) {
            return;
        }
        if (component instanceof JLabel label) {
            say(label.getText());
        } else if (component instanceof AbstractButton button) {
            say(button.getText());
        } else if (component instanceof JTextComponent text) {
            say(text.getText());
        } else if (component instanceof JTable table) {
            say(table);
            return;
        } else if (component instanceof JList<?> list) {
            say(list);
            return;
        }
        if (component instanceof Container around) {
            for (Component each : around.getComponents()) {
                look(each, mustShow);
            }
        }
    }

    private void say(JTable table) {
        for (int column = 0; column < table.getColumnCount(); column++) {
            say(table.getColumnName(column));
        }
        Rectangle view = table.getVisibleRect();
        for (int row = 0; row < table.getRowCount(); row++) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                if (view.intersects(table.getCellRect(row, column, false))) {
                    look(table.prepareRenderer(table.getCellRenderer(row, column), row, column), false);
                }
            }
        }
    }

    private <T> void say(JList<T> list) {
        for (int index = list.getFirstVisibleIndex(); index >= 0 && index <= list.getLastVisibleIndex(); index++) {
            T value = list.getModel().getElementAt(index);
            look(list.getCellRenderer().getListCellRendererComponent(list, value, index, false, false), false);
        }
    }

    private void say(String text) {
        if (text != null && !text.isBlank()) {
            texts.add(text.strip().replaceAll("\\s+", " "));
        }
    }
}
