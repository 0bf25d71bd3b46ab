package porebench.desk.frame.rail;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.RenderingHints;
import javax.swing.Icon;
import javax.swing.JLabel;
import javax.swing.JToggleButton;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;

/** One step in the row of steps: its number in a disc, its title, and under it how far it is. */
final class StepButton extends JToggleButton {
    private static final long serialVersionUID = 1L;

    private final JLabel caption = new JLabel();
    private final JLabel heading = new JLabel();
    private final String title;
    private final int number;
    private boolean next;

    StepButton(int number, String title) {
        this.title = title;
        this.number = number;
        setLayout(new MigLayout("insets 7 6 7 2, fillx, novisualpadding", "[]6[grow,fill]", "[]0[]"));
        putClientProperty("FlatLaf.styleClass", "step");
        setMargin(new Insets(0, 0, 0, 0));
        getAccessibleContext().setAccessibleName(number + " " + title);
        add(new JLabel(new Disc(number)), "spany 2");
        heading.setText(title);
        heading.putClientProperty("FlatLaf.style", "font: $semibold.font");
        add(heading, "wrap");
        caption.putClientProperty("FlatLaf.styleClass", "quiet");
        // The title never gives way; the caption does where the row has not the room for all.
        add(caption, "wmin 0, growx");
    }

    /** Shows how far the step is, and whether it is the next one to do. */
    void show(String words, boolean isNext) {
        caption.setText(words);
        caption.putClientProperty("FlatLaf.styleClass", isNext ? "good" : "quiet");
        getAccessibleContext().setAccessibleDescription(words);
        next = isNext;
        repaint();
    }

    /** Marks that something is typed on the step and not saved; blank words take the mark away. */
    void mark(String words) {
        heading.setText(words.isBlank() ? title : title + " \u2022");
        getAccessibleContext()
                .setAccessibleName(words.isBlank() ? number + " " + title : number + " " + title + ", " + words);
    }

    @Override
    public Dimension getPreferredSize() {
        return getLayout().preferredLayoutSize(this);
    }

    @Override
    public Dimension getMinimumSize() {
        return getLayout().minimumLayoutSize(this);
    }

    /** The number in a disc; filled in the accent colour when the step is next. */
    private final class Disc implements Icon {
        private static final int SIDE = 24;
        private final int number;

        Disc(int number) {
            this.number = number;
        }

        @Override
        public int getIconWidth() {
            return UIScale.scale(SIDE);
        }

        @Override
        public int getIconHeight() {
            return UIScale.scale(SIDE);
        }

        @Override
        public void paintIcon(Component over, Graphics graphics, int x, int y) {
            Graphics2D pen = (Graphics2D) graphics.create();
            pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_LCD_HRGB);
            int side = getIconWidth();
            pen.setColor(UIManager.getColor(
                    !isEnabled() ? "Component.borderColor" : next ? "Porebench.step.discDone" : "Porebench.step.disc"));
            pen.fillOval(x, y, side, side);
            Font font = UIManager.getFont("semibold.font");
            pen.setFont(font);
            pen.setColor(UIManager.getColor("Porebench.step.discText"));
            FontMetrics metrics = pen.getFontMetrics();
            String digits = Integer.toString(number);
            pen.drawString(
                    digits,
                    x + (side - metrics.stringWidth(digits)) / 2,
                    y + (side - metrics.getHeight()) / 2 + metrics.getAscent());
            pen.dispose();
        }
    }
}
