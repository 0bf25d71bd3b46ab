package porebench.desk.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/** Gives columns of a table their width, whatever the language makes of their headings. */
public final class HeadingWidth {
    private HeadingWidth() {}

    /**
     * Sets the preferred width of a column, widened where its heading would be cut off.
     *
     * @param widthPixels the width at 100 %
     */
    public static void set(JTable table, int index, int widthPixels) {
        TableColumn column = table.getColumnModel().getColumn(index);
        Component heading = table.getTableHeader()
                .getDefaultRenderer()
                .getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, index);
        column.setPreferredWidth(Math.max(UIScale.scale(widthPixels), heading.getPreferredSize().width));
    }
}
