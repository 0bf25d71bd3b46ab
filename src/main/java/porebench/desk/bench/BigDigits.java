package porebench.desk.bench;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import javax.swing.JPanel;
import javax.swing.UIManager;

/** The number of the step, as large as was asked for; only where it would not fit, as large as it can be. */
final class BigDigits extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final float UNIT_SHARE = 0.3f;

    /** Digits in the middle of the line and below them as much as a unit hangs down, as a part of the font's size. */
    private static final double HEIGHT_OF_LINE = 0.94;

    private static final String QUIET = "Porebench.quiet";

    private String digits = "";
    private String unit = "";
    private boolean isTyped;

    BigDigits() {
        setOpaque(false);
    }

    /** Shows a number with its unit. */
    void show(String number, String unitWords, boolean typed) {
        digits = number;
        unit = unitWords;
        isTyped = typed;
        getAccessibleContext().setAccessibleName((number + " " + unitWords).strip());
        repaint();
    }

    String text() {
        return digits;
    }

    /** Returns how high the digits are as they are painted, in the window's dots. */
    double digitHeight() {
        return fitting()
                .createGlyphVector(new FontRenderContext(null, true, true), "0")
                .getVisualBounds()
                .getHeight();
    }

    private Font fitting() {
        Font font = getFont();
        double share = Math.min(
                Math.max(1, getWidth()) / width(font), Math.max(1, getHeight()) / (HEIGHT_OF_LINE * font.getSize2D()));
        return share >= 1 ? font : font.deriveFont((float) (font.getSize2D() * share));
    }

    private double width(Font font) {
        FontMetrics large = getFontMetrics(font);
        FontMetrics small = getFontMetrics(font.deriveFont(font.getSize2D() * UNIT_SHARE));
        return large.stringWidth(digits) + (unit.isEmpty() ? 0 : small.stringWidth("  " + unit));
    }

    @Override
    public Dimension getPreferredSize() {
        // The digits and a little air above and below: they have no descenders.
        return new Dimension(10, (int) (getFont().getSize2D() * 0.95));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        Font font = fitting();
        pen.setFont(font);
        pen.setColor(isTyped ? getForeground() : UIManager.getColor(QUIET));
        int baseline = (int) (getHeight() / 2.0 + digitHeight() / 2);
        pen.drawString(digits, 0, baseline);
        int after = pen.getFontMetrics().stringWidth(digits);
        pen.setFont(font.deriveFont(font.getSize2D() * UNIT_SHARE));
        pen.setColor(UIManager.getColor(QUIET));
        pen.drawString("  " + unit, after, baseline);
        pen.dispose();
    }
}
