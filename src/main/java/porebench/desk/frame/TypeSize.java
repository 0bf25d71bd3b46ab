package porebench.desk.frame;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Window;
import java.util.Arrays;
import java.util.Map;
import javax.swing.JSplitPane;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/** How large the type of the window is, beside what the system says of it; lists, plots and the manual have the same. */
enum TypeSize {
    SMALL(90),
    USUAL(100),
    SOMEWHAT_LARGER(115),
    LARGER(130),
    LARGE(150),
    VERY_LARGE(175),
    DOUBLE(200);

    private final int percent;

    TypeSize(int percent) {
        this.percent = percent;
    }

    /** Returns the size in % of the system's own. */
    int percent() {
        return percent;
    }

    /** Returns the word by which settings know the size. */
    String symbol() {
        return Integer.toString(percent);
    }

    /** Returns the size with a symbol; the usual one for any other word. */
    static TypeSize ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(size -> size.symbol().equals(symbol))
                .findFirst()
                .orElse(USUAL);
    }

    /** Returns the size that the theme on view has. */
    static TypeSize inUse() {
        Map<String, String> extra = FlatLaf.getGlobalExtraDefaults();
        return extra == null
                ? USUAL
                : ofSymbol(extra.getOrDefault("defaultFont", "").replace("%", ""));
    }

    /** Lets every theme that is applied from now on have this size. */
    void use() {
        FlatLaf.setGlobalExtraDefaults(this == USUAL ? null : Map.of("defaultFont", percent + "%"));
    }

    /** Shows every open window in this size at once. */
    void show(WorkbenchFrame window) {
        TypeSize before = window.memory().typeSize();
        double scaleBefore = UIScale.getUserScaleFactor();
        window.memory().remember(this);
        use();
        window.show(window.memory().theme());
        double type = (double) percent / before.percent;
        double room = UIScale.getUserScaleFactor() / scaleBefore;
        for (Window each : Window.getWindows()) {
            fit(each, type, room);
            each.validate();
        }
    }

    /** Widens what was made as wide as the type took: columns, edges that can be moved, and rooms that were stated. */
    private static void fit(Container within, double type, double room) {
        for (Component each : within.getComponents()) {
            if (each instanceof JTable table) {
                for (int at = 0; at < table.getColumnCount(); at++) {
                    TableColumn column = table.getColumnModel().getColumn(at);
                    column.setPreferredWidth((int) Math.round(column.getPreferredWidth() * type));
                }
            }
            if (each instanceof JSplitPane split) {
                stated(split.getLeftComponent(), room);
                stated(split.getRightComponent(), room);
                int wanted = (int) Math.round(split.getDividerLocation() * room);
                split.setDividerLocation(WindowPlace.rail(split.getWidth(), wanted));
            }
            if (each instanceof Container inner) {
                fit(inner, type, room);
            }
        }
    }

    private static void stated(Component part, double room) {
        if (part != null && part.isMinimumSizeSet()) {
            Dimension least = part.getMinimumSize();
            part.setMinimumSize(new Dimension((int) (least.width * room), (int) (least.height * room)));
        }
    }
}
