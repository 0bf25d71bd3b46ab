package porebench.desk.factor;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import porebench.desk.form.WrappedText;
import porebench.port.Paper;

/** The card on the screen, pixel for pixel what the printer gets, fitted into the room there is. */
final class CardPreview extends JComponent {
    private static final long serialVersionUID = 1L;
    private static final double MILLIMETRES_PER_INCH = 25.4;
    /** Screen dots for an inch of paper at 100 %. */
    private static final double DOTS_PER_INCH = 96;

    private transient Optional<BufferedImage> image = Optional.empty();
    private Paper paper = Paper.A6;
    private Dimension most = new Dimension(Integer.MAX_VALUE, Integer.MAX_VALUE);
    private final WrappedText instead = new WrappedText("card.instead", "quiet");

    CardPreview() {
        setLayout(new MigLayout("fill, insets 16", "[grow,fill,0::]"));
        add(instead, "wmin 0, aligny center");
        instead.setVisible(false);
    }

    /** Shows a picture of the card. */
    void show(BufferedImage picture, Paper size) {
        image = Optional.of(picture);
        instead.setVisible(false);
        paper = size;
        revalidate();
        repaint();
    }

    /** Shows words where there is no card. */
    void showInstead(String words) {
        image = Optional.empty();
        instead.say(words);
        repaint();
    }

    /** Draws the card no larger than some pixels, so that it is seen whole beside a form also where there is little room. */
    void setMost(Dimension pixels) {
        if (!most.equals(pixels)) {
            most = pixels;
            revalidate();
            repaint();
        }
    }

    @Override
    public Dimension getPreferredSize() {
        double full = uiScale() * DOTS_PER_INCH / MILLIMETRES_PER_INCH;
        double fit = Math.min((most.width - 2) / widthMillimetres(), (most.height - 2) / paper.heightMillimetres());
        double scale = Math.min(full, fit);
        return new Dimension(
                (int) Math.round(widthMillimetres() * scale) + 2,
                (int) Math.round(paper.heightMillimetres() * scale) + 2);
    }

    /** A card that is folded lies open here: its page is wider than the card. */
    private double widthMillimetres() {
        return image.map(picture -> paper.heightMillimetres() * picture.getWidth() / picture.getHeight())
                .orElse(paper.widthMillimetres());
    }

    private static double uiScale() {
        return UIScale.getUserScaleFactor();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            if (image.isPresent()) {
                paintCard(g, image.get());
            } else {
                paintFrame(g);
            }
        } finally {
            g.dispose();
        }
    }

    private void paintCard(Graphics2D g, BufferedImage picture) {
        double fit = Math.min((getWidth() - 2.0) / picture.getWidth(), (getHeight() - 2.0) / picture.getHeight());
        int width = (int) Math.round(picture.getWidth() * fit);
        int height = (int) Math.round(picture.getHeight() * fit);
        int x = (getWidth() - width) / 2;
        g.drawImage(picture, x, 1, width, height, null);
        g.setColor(UIManager.getColor("Porebench.line"));
        g.drawRect(x - 1, 0, width + 1, height + 1);
    }

    private void paintFrame(Graphics2D g) {
        g.setColor(UIManager.getColor("Porebench.line"));
        g.drawRoundRect(0, 0, getWidth() - 1, getHeight() - 1, 12, 12);
    }
}
