package porebench.print.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

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
        boolean isRoomy = side / (width(text, ErrorCorrectionLevel.M) + 2 * EDGE) >= COMFORTABLE;
        ByteMatrix used = squares(text, isRoomy ? ErrorCorrectionLevel.M : ErrorCorrectionLevel.L);
        draw(pen, used, left, top, side);
        return side / (used.getWidth() + 2 * EDGE);
    }

    /** Returns how many squares wide a text would be, without laying them out; more than any code has where it is too long. */
    static int width(String text, ErrorCorrectionLevel level) {
        int bytes = text.getBytes(StandardCharsets.UTF_8).length;
        // What says that it is UTF-8 takes 12 bits, and is there only where a letter needs it.
        int said = bytes == text.length() ? 4 : 16;
        for (int number = 1; number <= 40; number++) {
            Version version = Version.getVersionForNumber(number);
            int room = version.getTotalCodewords()
                    - version.getECBlocksForLevel(level).getTotalECCodewords();
            if (8 * room >= said + (number < 10 ? 8 : 16) + 8 * bytes) {
                return version.getDimensionForVersion();
            }
        }
        return Integer.MAX_VALUE / 2;
    }

    private static void draw(Pen pen, ByteMatrix squares, double left, double top, double side) throws IOException {
        double each = side / (squares.getWidth() + 2 * EDGE);
        int bytes = (squares.getWidth() + 7) / 8;
        byte[] light = new byte[bytes * squares.getHeight()];
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 0) {
                    light[row * bytes + column / 8] |= (byte) (0x80 >> column % 8);
                }
            }
        }
        pen.squares(light, squares.getWidth(), left + EDGE * each, top + EDGE * each, squares.getWidth() * each);
    }

    private static ByteMatrix squares(String text, ErrorCorrectionLevel level) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        if (text.chars().anyMatch(letter -> letter >= 128)) {
            hints.put(EncodeHintType.CHARACTER_SET, "UTF-8");
        }
        try {
            // Choosing a mask takes the library most of the time, so it is told which, and the best one is put in its
            // place.
            hints.put(EncodeHintType.QR_MASK_PATTERN, 0);
            ByteMatrix plain = Encoder.encode(text, level, hints).getMatrix();
            Optional<Integer> best = SquareMasks.best(plain, level);
            if (best.isPresent()) {
                SquareMasks.turn(plain, best.get(), level);
                return plain;
            }
            hints.remove(EncodeHintType.QR_MASK_PATTERN);
            return Encoder.encode(text, level, hints).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("text must fit into a code, but is " + text, tooLong);
        }
    }
}
