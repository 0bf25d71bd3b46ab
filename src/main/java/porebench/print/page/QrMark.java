package porebench.print.page;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.nio.charset.StandardCharsets;

/** A QR code, drawn as black squares with the white edge that readers need around it. */
public final class QrMark {
    /** White squares on every side, by ISO/IEC 18004 (recalled). */
    private static final int EDGE = 4;
    /** 0.33 mm, the side of a square that phones read from a hand's breadth (common practice, no source). */
    private static final double COMFORTABLE = 0.33 * 72 / 25.4;

    private QrMark() {}

    /**
     * Draws a text as a code.
     *
     * @param side how long a side is with its white edge, in points
     * @throws IllegalArgumentException if the text is too long for any code
     */
    public static void draw(Pen pen, String text, double left, double top, double side) {
        draw(pen, SquareCode.of(text, ErrorCorrectionLevel.M), left, top, side);
    }

    /**
     * Draws a text as a code with as much to spare for dirt and scratches as its size allows.
     *
     * @return the side of one square, in points
     * @throws IllegalArgumentException if the text is too long for any code
     */
    public static double drawFine(Pen pen, String text, double left, double top, double side) {
        boolean isRoomy = side / (width(text, ErrorCorrectionLevel.M) + 2 * EDGE) >= COMFORTABLE;
        SquareCode used = SquareCode.of(text, isRoomy ? ErrorCorrectionLevel.M : ErrorCorrectionLevel.L);
        draw(pen, used, left, top, side);
        return side / (used.side() + 2 * EDGE);
    }

    /**
     * Returns how long the side of one square is where {@link #drawFine} draws a text, in points; almost 0 where no code takes the text.
     *
     * @param side how long a side of the code is with its white edge, in points
     */
    public static double square(String text, double side) {
        double roomy = side / (width(text, ErrorCorrectionLevel.M) + 2 * EDGE);
        return roomy >= COMFORTABLE ? roomy : side / (width(text, ErrorCorrectionLevel.L) + 2 * EDGE);
    }

    /** Returns how many squares wide a text would be, without laying them out; more than any code has where it is too long. */
    static int width(String text, ErrorCorrectionLevel level) {
        int bytes = text.getBytes(StandardCharsets.UTF_8).length;
        return SquareLayout.forBytes(bytes, bytes > text.length(), level)
                .map(SquareLayout::side)
                .orElse(Integer.MAX_VALUE / 2);
    }

    private static void draw(Pen pen, SquareCode code, double left, double top, double side) {
        double each = side / (code.side() + 2 * EDGE);
        pen.squares(code.light(), code.side(), left + EDGE * each, top + EDGE * each, code.side() * each);
    }
}
