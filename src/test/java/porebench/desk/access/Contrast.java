package porebench.desk.access;

import java.awt.Color;
import java.awt.Font;

/**
 * How far two colours stand apart.
 *
 * <p>Source: W3C, Web Content Accessibility Guidelines 2.2, the definitions of contrast ratio and relative luminance, and
 * success criteria 1.4.3 and 1.4.11 (recalled).
 */
public final class Contrast {
    /** The least for text. */
    public static final double TEXT = 4.5;

    /** The least for large text, for the edges of controls, for the ring around what has the keyboard and for lines of charts. */
    public static final double LARGE_OR_SHAPE = 3;

    /** Large is 18 points, or 14 points in bold; a point is 4/3 of a pixel at 100 %. */
    private static final double LARGE_PIXELS = 18 * 4 / 3.0;

    private static final double LARGE_BOLD_PIXELS = 14 * 4 / 3.0;

    private Contrast() {}

    /** Returns the ratio of two opaque colours, from 1 to 21. */
    public static double of(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    /** Returns the least ratio for a text in a font, at 100 %. */
    public static double least(Font font) {
        boolean isLarge = font.getSize2D() >= LARGE_PIXELS || font.isBold() && font.getSize2D() >= LARGE_BOLD_PIXELS;
        return isLarge ? LARGE_OR_SHAPE : TEXT;
    }

    /** Returns what is seen of a colour, which may let through what is behind it, over an opaque one. */
    public static Color over(Color front, Color behind) {
        double share = front.getAlpha() / 255.0;
        return new Color(
                mixed(front.getRed(), behind.getRed(), share),
                mixed(front.getGreen(), behind.getGreen(), share),
                mixed(front.getBlue(), behind.getBlue(), share));
    }

    private static int mixed(int front, int behind, double share) {
        return (int) Math.round(front * share + behind * (1 - share));
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
