package porebench.desk.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.HierarchyBoundsListener;
import java.awt.event.HierarchyEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JRootPane;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/**
 * What is said of a field, on the line under it that is kept for that: nothing moves when it comes or goes.
 *
 * <p>Words that are too long for the line begin further left, as far as the row goes, and end in dots after that. They are said
 * whole when pointed at, and over what is below while the field has the keyboard; a click there goes to what is below.
 */
final class MessageLine extends JTextArea {
    private static final long serialVersionUID = 1L;
    /** Of the size of a font: how high its highest letters are. */
    private static final float ABOVE_BASELINE = 0.88f;

    private final JComponent field;
    private final WrappedText whole;
    private final JPanel over = new Seen();
    private final JPanel room = new Room();

    MessageLine(JComponent field) {
        this.field = field;
        setName(field.getName() + ".message");
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setVisible(false);
        whole = new WrappedText(getName() + ".whole", "");
        over.putClientProperty("FlatLaf.styleClass", "messageBox");
        over.add(whole);
        room.setOpaque(false);
        room.add(this);
        field.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                sayWhole();
            }

            @Override
            public void focusLost(FocusEvent event) {
                sayWhole();
            }
        });
        addHierarchyListener(event -> sayWhole());
        addHierarchyBoundsListener(new HierarchyBoundsListener() {
            @Override
            public void ancestorMoved(HierarchyEvent event) {
                sayWhole();
            }

            @Override
            public void ancestorResized(HierarchyEvent event) {
                sayWhole();
            }
        });
    }

    /** Returns the place that is kept for it. */
    JComponent room() {
        return room;
    }

    /** Says something; empty words say nothing. */
    void say(String words, boolean isError) {
        for (JComponent each : new JComponent[] {this, whole}) {
            each.putClientProperty("FlatLaf.styleClass", isError ? "messageError" : "messageWarning");
        }
        setText(words);
        whole.setText(words);
        setToolTipText(words.isEmpty() ? null : words);
        setVisible(!words.isEmpty());
        sayWhole();
        repaint();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setBorder(BorderFactory.createEmptyBorder());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        FontMetrics metrics = getFontMetrics(getFont());
        String line = line();
        int start = Math.max(0, Math.min(field.getX() - room.getX(), getWidth() - metrics.stringWidth(line)));
        String seen = BasicGraphicsUtils.getClippedString(this, metrics, line, getWidth() - start);
        graphics.setColor(getForeground());
        graphics.setFont(getFont());
        BasicGraphicsUtils.drawString(this, (Graphics2D) graphics, seen, start, getHeight() - metrics.getDescent());
    }

    private String line() {
        return getText().replace("\n", "   ");
    }

    private boolean isCut() {
        return getFontMetrics(getFont()).stringWidth(line()) > getWidth();
    }

    /** Lays the whole words over what is below, or takes them away. */
    private void sayWhole() {
        JRootPane root = SwingUtilities.getRootPane(this);
        boolean isWanted =
                root != null && isShowing() && field.isFocusOwner() && isCut() && getVisibleRect().height > 0;
        if (!isWanted) {
            takeAway();
            return;
        }
        JLayeredPane layers = root.getLayeredPane();
        if (over.getParent() != layers) {
            takeAway();
            layers.add(over, JLayeredPane.PALETTE_LAYER);
        }
        Rectangle place = SwingUtilities.convertRectangle(room, getBounds(), layers);
        whole.setSize(place.width, Short.MAX_VALUE);
        over.setBounds(place.x, place.y, place.width, over.getPreferredSize().height);
        over.validate();
        over.repaint();
    }

    private void takeAway() {
        if (over.getParent() instanceof JComponent layers) {
            layers.remove(over);
            layers.repaint(over.getBounds());
        }
    }

    /** One line high, whatever is said there. */
    private final class Room extends JPanel {
        private static final long serialVersionUID = 1L;

        Room() {
            super(new BorderLayout());
        }

        @Override
        public Dimension getPreferredSize() {
            Font font = MessageLine.this.getFont();
            // As much as letters need, without the room that a font leaves between lines.
            return new Dimension(
                    0,
                    MessageLine.this.getFontMetrics(font).getDescent() + Math.round(font.getSize() * ABOVE_BASELINE));
        }

        @Override
        public Dimension getMinimumSize() {
            return getPreferredSize();
        }
    }

    /** Only to be looked at: what is clicked is what lies below. */
    private static final class Seen extends JPanel {
        private static final long serialVersionUID = 1L;

        Seen() {
            super(new BorderLayout());
        }

        @Override
        public boolean contains(int x, int y) {
            return false;
        }
    }
}
