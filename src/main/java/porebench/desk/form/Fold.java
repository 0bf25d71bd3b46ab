package porebench.desk.form;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Polygon;
import java.awt.RenderingHints;
import javax.swing.Icon;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;

/** A part of a page that is put away until it is asked for: a button that opens it, a few words about it, and the part. */
public final class Fold {
    private final JPanel panel =
            new JPanel(new MigLayout("insets 0, fillx, hidemode 3", "[]10[grow,fill,0::]", "[]6[]"));
    private final JToggleButton opener = new JToggleButton(new Arrow());
    private final WrappedText about;
    private final JComponent part;

    /**
     * Makes a part that is put away.
     *
     * @param name the name of the button; that of the words has {@code .about} behind it
     * @param words what the button says, the mnemonic after an ampersand
     * @param part what it opens
     */
    public Fold(String name, String words, JComponent part) {
        this.part = part;
        about = new WrappedText(name + ".about", "quiet");
        opener.setName(name);
        Commands.say(opener, words);
        opener.putClientProperty("FlatLaf.styleClass", "fold");
        opener.addItemListener(event -> show());
        panel.setOpaque(false);
        panel.add(opener);
        panel.add(about, "wmin 0, aligny center, wrap");
        panel.add(part, "span 2, growx, wmin 0");
        show();
    }

    public JComponent component() {
        return panel;
    }

    /** Says what stands in it, beside the button, for those who leave it away. */
    public void say(String words) {
        about.setText(words);
        opener.getAccessibleContext().setAccessibleName(opener.getText() + ": " + words);
    }

    /** Opens it; it is put away by a person only. */
    public void open() {
        opener.setSelected(true);
    }

    public boolean isOpen() {
        return opener.isSelected();
    }

    private void show() {
        part.setVisible(opener.isSelected());
        panel.revalidate();
    }

    /** Points to the right, and down once the part is open. */
    private static final class Arrow implements Icon {
        private static final int SIZE = 10;

        @Override
        public void paintIcon(Component component, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setColor(component.getForeground());
            g.translate(x, y);
            boolean isOpen = component instanceof JToggleButton button && button.isSelected();
            int end = UIScale.scale(SIZE);
            int low = UIScale.scale(2);
            int[] along = {low, low, end - low};
            int[] across = {0, end, end / 2};
            g.fill(isOpen ? new Polygon(across, along, 3) : new Polygon(along, across, 3));
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(SIZE);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(SIZE);
        }
    }
}
