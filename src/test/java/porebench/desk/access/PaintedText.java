package porebench.desk.access;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/**
 * Finds texts of a window that stand too little apart from what is behind them, on the dots as they are painted.
 *
 * <p>What is behind a text is the colour that most dots of its place have; the text is the dot that stands most apart from it, and for
 * labels and texts the colour that they state as well, because a shape beside a text may stand further apart than the text does.
 * It is painted twice as large, so that no stroke is only the edge of one. What cannot be worked with at the
 * moment is left out, as the guideline leaves it out.
 */
public final class PaintedText {
    private static final int LARGER = 2;
    private static final int MOST_ROWS = 12;

    private final List<String> faults = new ArrayList<>();
    private int looked;

    /** Looks at everything that is on view in a window. */
    public PaintedText in(Component root) {
        BufferedImage picture = painted(root);
        walk(root, root, picture, String.valueOf(root.getName()));
        return this;
    }

    public List<String> faults() {
        return faults.stream().distinct().toList();
    }

    /** Returns how many texts were looked at. */
    public int looked() {
        return looked;
    }

    private static BufferedImage painted(Component component) {
        BufferedImage picture = new BufferedImage(
                Math.max(1, component.getWidth()) * LARGER,
                Math.max(1, component.getHeight()) * LARGER,
                BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.scale(LARGER, LARGER);
        component.paint(pen);
        pen.dispose();
        return picture;
    }

    private void walk(Component component, Component root, BufferedImage picture, String path) {
        if (!component.isVisible() || component.getWidth() == 0 || component.getHeight() == 0) {
            return;
        }
        String place = component.getName() == null ? path : path + " > " + component.getName();
        if (component instanceof JTable table) {
            cells(table, place);
            return;
        }
        if (component instanceof JList<?> list) {
            cells(list, place);
            return;
        }
        text(component).filter(words -> component.isEnabled()).ifPresent(words -> {
            Rectangle seen = seen(component, root);
            // What is scrolled away in part would be judged by what is left of its letters.
            if (seen.height * 10 >= component.getHeight() * 9 && seen.width * 2 >= component.getWidth()) {
                judge(component, picture, seen, place + " \"" + words + "\"");
            }
        });
        if (component instanceof Container container && !(component instanceof JComboBox)) {
            for (Component child : container.getComponents()) {
                walk(child, root, picture, place);
            }
        }
    }

    /** Returns the part of a component that nothing around it cuts off, in dots of the root. */
    private static Rectangle seen(Component component, Component root) {
        Rectangle seen = new Rectangle(component.getSize());
        for (Component each = component; each != root && each != null; each = each.getParent()) {
            Container around = each.getParent();
            seen.translate(each.getX(), each.getY());
            seen = seen.intersection(new Rectangle(around.getSize()));
        }
        return seen;
    }

    private static Optional<String> text(Component component) {
        String words = component instanceof JLabel label
                ? label.getText()
                : component instanceof AbstractButton button
                        ? button.getText()
                        : component instanceof JTextComponent text
                                ? text.getText()
                                : component instanceof JComboBox<?> box ? String.valueOf(box.getSelectedItem()) : "";
        return Optional.ofNullable(words).filter(any -> !any.isBlank());
    }

    private void judge(Component component, BufferedImage picture, Rectangle seen, String place) {
        Color behind = mostCommon(picture, seen);
        double painted = furthest(picture, seen, behind);
        boolean isStated = component instanceof JLabel || component instanceof JTextComponent;
        double stated = isStated && component.isEnabled() ? Contrast.of(component.getForeground(), behind) : 21;
        double ratio = Math.min(painted, stated);
        looked++;
        Font font = component.getFont();
        if (ratio < Contrast.least(font)) {
            faults.add(String.format(
                    Locale.ROOT,
                    "%.2f %s (#%06x on #%06x)",
                    ratio,
                    place,
                    component.getForeground().getRGB() & 0xFFFFFF,
                    behind.getRGB() & 0xFFFFFF));
        }
    }

    private static Color mostCommon(BufferedImage picture, Rectangle seen) {
        int[] dots = dots(picture, seen);
        Arrays.sort(dots);
        int best = dots[0];
        int most = 0;
        int from = 0;
        for (int at = 1; at <= dots.length; at++) {
            if (at == dots.length || dots[at] != dots[from]) {
                best = at - from > most ? dots[from] : best;
                most = Math.max(most, at - from);
                from = at;
            }
        }
        return new Color(best);
    }

    private static double furthest(BufferedImage picture, Rectangle seen, Color behind) {
        return Arrays.stream(dots(picture, seen))
                .distinct()
                .mapToDouble(dot -> Contrast.of(new Color(dot), behind))
                .max()
                .orElse(1);
    }

    /** Returns the dots of a place but for its outermost ones: an edge stands apart further than a text may. */
    private static int[] dots(BufferedImage picture, Rectangle seen) {
        Rectangle place = new Rectangle(seen);
        if (seen.width > 20 && seen.height > 12) {
            place.grow(-2, -2);
        }
        Rectangle larger = new Rectangle(
                        place.x * LARGER, place.y * LARGER, place.width * LARGER, place.height * LARGER)
                .intersection(new Rectangle(picture.getWidth(), picture.getHeight()));
        int[] dots = picture.getRGB(larger.x, larger.y, larger.width, larger.height, null, 0, larger.width);
        return Arrays.stream(dots).map(dot -> dot & 0xFFFFFF).toArray();
    }

    private void cells(JTable table, String place) {
        if (!table.isEnabled()) {
            return;
        }
        for (int column = 0; column < table.getColumnCount(); column++) {
            Component heading = table.getTableHeader() == null
                    ? null
                    : table.getColumnModel()
                            .getColumn(column)
                            .getHeaderRenderer()
                            .getTableCellRendererComponent(
                                    table, table.getColumnName(column), false, false, -1, column);
            if (heading != null) {
                cell(heading, table.getTableHeader().getBackground(), table, place + " heading " + column);
            }
            for (int row = 0; row < Math.min(MOST_ROWS, table.getRowCount()); row++) {
                for (boolean isSelected : new boolean[] {false, true}) {
                    Component cell = table.getCellRenderer(row, column)
                            .getTableCellRendererComponent(
                                    table, table.getValueAt(row, column), isSelected, isSelected, row, column);
                    cell(cell, table.getBackground(), table, place + " cell" + new Point(column, row) + isSelected);
                }
            }
        }
    }

    private <T> void cells(JList<T> list, String place) {
        ListCellRenderer<? super T> renderer = list.getCellRenderer();
        for (int row = 0; row < list.getModel().getSize(); row++) {
            for (boolean isSelected : new boolean[] {false, true}) {
                T value = list.getModel().getElementAt(row);
                Component cell = renderer.getListCellRendererComponent(list, value, row, isSelected, isSelected);
                cell(cell, list.getBackground(), list, place + " row " + row + isSelected);
            }
        }
    }

    /** Paints a cell alone on what is behind it in its table or list. */
    private void cell(Component cell, Color behind, Component around, String place) {
        JPanel stand = new JPanel(null);
        stand.setBackground(behind);
        stand.setOpaque(true);
        stand.add(cell);
        int width = Math.max(cell.getPreferredSize().width, 120);
        int height = Math.max(cell.getPreferredSize().height, 20);
        stand.setSize(width, height);
        cell.setBounds(0, 0, width, height);
        layOut(cell);
        BufferedImage picture = painted(stand);
        if (cell instanceof Container container && container.getComponentCount() > 0) {
            for (Component child : container.getComponents()) {
                walk(child, stand, picture, place);
            }
        } else {
            text(cell)
                    .ifPresent(words ->
                            judge(cell, picture, SwingUtilities.getLocalBounds(cell), place + " \"" + words + "\""));
        }
        stand.remove(cell);
        if (around instanceof JTable table) {
            table.repaint();
        }
    }

    private static void layOut(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }
}
