package porebench.bench.waits;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.EventQueue;
import javax.swing.JFrame;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.WindowConstants;

/** The smallest window of the same look: one table with ten rows. */
final class SmallestWindow {
    private SmallestWindow() {}

    public static void main(String[] arguments) {
        Usable.watch();
        EventQueue.invokeLater(() -> {
            FlatLightLaf.setup();
            JTable table = new JTable(10, 4);
            for (int row = 0; row < 10; row++) {
                for (int column = 0; column < 4; column++) {
                    table.setValueAt("HG-" + (100 * column + row), row, column);
                }
            }
            JFrame frame = new JFrame("Table");
            frame.setDefaultCloseOperation(WindowConstants.EXIT_ON_CLOSE);
            frame.add(new JScrollPane(table));
            frame.setSize(1280, 800);
            frame.setVisible(true);
        });
    }
}
