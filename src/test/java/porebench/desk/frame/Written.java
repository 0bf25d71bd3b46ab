package porebench.desk.frame;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;

/** All that a part of a window has written on it where it is visible. */
final class Written {
    private Written() {}

    static List<String> on(Container all) {
        List<String> texts = new ArrayList<>();
        collect(all, texts);
        return texts;
    }

    private static void collect(Container within, List<String> texts) {
        for (Component part : within.getComponents()) {
            if (!part.isVisible()) {
                continue;
            }
            if (part instanceof JLabel label) {
                texts.add(String.valueOf(label.getText()));
            } else if (part instanceof AbstractButton button) {
                texts.add(String.valueOf(button.getText()));
            } else if (part instanceof JTextComponent text) {
                texts.add(text.getText());
            } else if (part instanceof JComboBox<?> box) {
                texts.add(String.valueOf(box.getSelectedItem()));
            } else if (part instanceof JTable table) {
                cells(table, texts);
            }
            if (part instanceof Container inner) {
                collect(inner, texts);
            }
        }
    }

    private static void cells(JTable table, List<String> texts) {
        for (int row = 0; row < table.getRowCount(); row++) {
            for (int column = 0; column < table.getColumnCount(); column++) {
                Component cell = table.prepareRenderer(table.getCellRenderer(row, column), row, column);
                texts.add(cell instanceof JLabel label ? String.valueOf(label.getText()) : "");
            }
        }
        for (int column = 0; column < table.getColumnCount(); column++) {
            texts.add(String.valueOf(table.getColumnName(column)));
        }
    }
}
