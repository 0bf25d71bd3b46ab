package porebench.print.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The squares of a code by ISO/IEC 18004 (recalled); the same that the library lays out, in a fraction of its time where it is text in
 * bytes of at most {@value SquareMasks#MOST} squares a side.
 *
 * @param side how many squares a side has
 * @param light a bit a square, 1 where it is white, each row begun on a byte
 */
record SquareCode(int side, byte[] light) {
    /** What the library writes shorter than in bytes. */
    private static final Pattern SHORTER = Pattern.compile("[0-9A-Z $%*+\\-./:]*");

    /**
     * Lays out a text.
     *
     * @throws IllegalArgumentException if the text is too long for any code
     */
    static SquareCode of(String text, ErrorCorrectionLevel level) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        boolean saysUtf8 = bytes.length > text.length();
        Optional<SquareLayout> layout = SHORTER.matcher(text).matches()
                ? Optional.empty()
                : SquareLayout.forBytes(bytes.length, saysUtf8, level).filter(one -> one.side() <= SquareMasks.MOST);
        return layout.isPresent()
                ? new SquareCode(layout.get().side(), layout.get().light(bytes, saysUtf8))
                : ofLibrary(library(text, level, Map.of()));
    }

    /** Has the library lay out a text, with wishes of ours. */
    static ByteMatrix library(String text, ErrorCorrectionLevel level, Map<EncodeHintType, Integer> wishes) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        hints.putAll(wishes);
        if (text.chars().anyMatch(letter -> letter >= 128)) {
            hints.put(EncodeHintType.CHARACTER_SET, "UTF-8");
        }
        try {
            return Encoder.encode(text, level, hints).getMatrix();
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("text must fit into a code, but is " + text, tooLong);
        }
    }

    private static SquareCode ofLibrary(ByteMatrix squares) {
        int bytes = (squares.getWidth() + 7) / 8;
        byte[] light = new byte[bytes * squares.getHeight()];
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 0) {
                    light[row * bytes + column / 8] |= (byte) (0x80 >> column % 8);
                }
            }
        }
        return new SquareCode(squares.getWidth(), light);
    }
}
