package porebench.print.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.io.IOException;
import java.util.Map;

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
    public static void draw(Pen pen, String text, double left, double top, double side) throws IOException {
        draw(pen, squares(text, ErrorCorrectionLevel.M), left, top, side);
    }

    /**
     * Draws a text as a code with as much to spare for dirt and scratches as its size allows.
     *
     * @return the side of one square, in points
     * @throws IllegalArgumentException if the text is too long for any code
     */
    public static double drawFine(Pen pen, String text, double left, double top, double side) throws IOException {
        ByteMatrix safe = squares(text, ErrorCorrectionLevel.M);
        ByteMatrix used =
                side / (safe.getWidth() + 2 * EDGE) >= COMFORTABLE ? safe : squares(text, ErrorCorrectionLevel.L);
        draw(pen, used, left, top, side);
        return side / (used.getWidth() + 2 * EDGE);
    }

    private static void draw(Pen pen, ByteMatrix squares, double left, double top, double side) throws IOException {
        double each = side / (squares.getWidth() + 2 * EDGE);
        for (int row = 0; row < squares.getHeight(); row++) {
            int from = 0;
            while (from < squares.getWidth()) {
                int to = from;
                while (to < squares.getWidth() && squares.get(to, row) == 1) {
                    to++;
                }
                if (to > from) {
                    // A row of black squares is one, so that no hairline shows between them.
                    pen.shade(left + (EDGE + from) * each, top + (EDGE + row) * each, (to - from) * each, each, 0);
                }
                from = to + 1;
            }
        }
    }

    private static ByteMatrix squares(String text, ErrorCorrectionLevel level) {
        boolean plain = text.chars().allMatch(letter -> letter < 128);
        try {
            return plain
                    ? Encoder.encode(text, level).getMatrix()
                    : Encoder.encode(text, level, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                            .getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("text must fit into a code, but is " + text, tooLong);
        }
    }
}
