package porebench.desk.form;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.Insets;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.SwingUtilities;

/** Says what stands in a label, a button, a choice or a field in full when it is pointed at and the room is too small for it. */
public final class CutTexts {
    private static final String OURS = "porebench.cut";

    /** Buttons and fields are laid out so that the shade around them may stand over an edge. */
    private static final int SHADE = 3;

    private CutTexts() {}

    /** Follows the pointer, in dialogs too, as long as a window is open. */
    public static void in(Window window) {
        Toolkit toolkit = Toolkit.getDefaultToolkit();
        AWTEventListener follower = CutTexts::follow;
        toolkit.addAWTEventListener(follower, AWTEvent.MOUSE_MOTION_EVENT_MASK);
        window.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                toolkit.removeAWTEventListener(follower);
            }
        });
    }

    private static void follow(AWTEvent event) {
        if (event instanceof MouseEvent mouse && mouse.getID() == MouseEvent.MOUSE_MOVED) {
            Point place = mouse.getPoint();
            Component over = SwingUtilities.getDeepestComponentAt(mouse.getComponent(), place.x, place.y);
            if (over instanceof JComponent part) {
                tell(part);
            }
        }
    }

    /** A part that says something of its own when it is pointed at goes on with that. */
    private static void tell(JComponent part) {
        JComponent whole = part.getParent() instanceof JComboBox<?> box ? box : part;
        boolean isOurs = whole.getClientProperty(OURS) != null;
        if (whole.getToolTipText() == null || isOurs) {
            Optional<String> cut = of(whole);
            whole.putClientProperty(OURS, cut.isPresent() ? Boolean.TRUE : null);
            if (cut.isPresent() || isOurs) {
                whole.setToolTipText(cut.orElse(null));
            }
        }
    }

    /** Returns the text of a part that shows only some of it; empty where all of it is seen. */
    public static Optional<String> of(JComponent part) {
        if (part instanceof JLabel label) {
            return cut(label, label.getText(), label.getPreferredSize().width);
        }
        if (part instanceof AbstractButton button) {
            return cut(button, button.getText(), button.getPreferredSize().width);
        }
        if (part instanceof JTextField field) {
            Insets around = field.getInsets();
            int needed =
                    field.getFontMetrics(field.getFont()).stringWidth(field.getText()) + around.left + around.right;
            return cut(field, field.getText(), needed);
        }
        return part instanceof JComboBox<?> box ? ofChoice(box) : Optional.empty();
    }

    private static <E> Optional<String> ofChoice(JComboBox<E> box) {
        E chosen = box.getItemAt(box.getSelectedIndex());
        ListCellRenderer<? super E> renderer = box.getRenderer();
        if (chosen == null || renderer == null) {
            return Optional.empty();
        }
        Component shown = renderer.getListCellRendererComponent(new JList<>(), chosen, -1, false, false);
        if (!(shown instanceof JLabel label)) {
            return Optional.empty();
        }
        int arrow = box.getHeight();
        return cut(box, label.getText(), label.getPreferredSize().width + arrow);
    }

    private static Optional<String> cut(JComponent part, String text, int needed) {
        boolean isPlain = text != null && !text.isBlank() && !text.startsWith("<html");
        return isPlain && (needed > part.getWidth() || isClipped(part)) ? Optional.of(text) : Optional.empty();
    }

    /** Returns whether the right end of a part is outside what holds it. */
    private static boolean isClipped(JComponent part) {
        Container around = part.getParent();
        Rectangle bounds = part.getBounds();
        return around != null && bounds.x + bounds.width > around.getWidth() + SHADE;
    }
}
