package porebench.print.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import com.google.zxing.qrcode.encoder.QRCode;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Masks of codes of squares, held against those of the library that lays the codes out. */
class SquareMasksTest {
    private static final String LETTERS = "abcdefghij klmnopqrstuvwxyz.,:%-0123456789ABCDEF\n";

    private static String text(Random chance, int length) {
        StringBuilder text = new StringBuilder("a");
        while (text.length() < length) {
            text.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
        }
        return text.toString();
    }

    private static QRCode code(String text, ErrorCorrectionLevel level, Optional<Integer> mask) {
        Map<EncodeHintType, Object> hints = new EnumMap<>(EncodeHintType.class);
        mask.ifPresent(number -> hints.put(EncodeHintType.QR_MASK_PATTERN, number));
        try {
            return Encoder.encode(text, level, hints);
        } catch (WriterException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** Lengths from 1 to 900 letters, which are codes of 21 to 125 squares and more. */
    @ParameterizedTest
    @EnumSource(ErrorCorrectionLevel.class)
    void anotherMaskPutInPlaceIsTheCodeOfTheLibrary(ErrorCorrectionLevel level) {
        Random chance = new Random(20261129);
        for (int length : new int[] {1, 12, 40, 90, 160, 250, 330, 480, 600}) {
            String text = text(chance, length);
            for (int mask = 0; mask < SquareMasks.COUNT; mask++) {
                ByteMatrix turned = code(text, level, Optional.of(0)).getMatrix();
                turn(turned, mask, level);
                assertThat(turned.getArray())
                        .as("%d letters, mask %d", length, mask)
                        .isDeepEqualTo(
                                code(text, level, Optional.of(mask)).getMatrix().getArray());
            }
        }
    }

    /** In each of a hundred texts. */
    @Test
    void theBestMaskIsTheLibrarys() {
        Random chance = new Random(20261129);
        int same = 0;
        for (int round = 0; round < 100; round++) {
            String text = text(chance, 20 + 4 * round);
            QRCode chosen = code(text, ErrorCorrectionLevel.L, Optional.empty());
            ByteMatrix plain =
                    code(text, ErrorCorrectionLevel.L, Optional.of(0)).getMatrix();
            same += best(plain, ErrorCorrectionLevel.L) == chosen.getMaskPattern() ? 1 : 0;
        }
        assertThat(same).isEqualTo(100);
    }

    /** Texts that were sought for it: in each another mask is best where a look-alike may stand one square more, or less, to the edge. */
    @ParameterizedTest
    @ValueSource(strings = {"axes9wka", "aAowm3Ag.d\ny5t r", "aA4w3rlg", "a.3usi8z"})
    void aLookAlikeAtTheEdgeCountsAsTheLibraryCountsIt(String text) {
        ByteMatrix plain = code(text, ErrorCorrectionLevel.L, Optional.of(0)).getMatrix();
        assertThat(best(plain, ErrorCorrectionLevel.L))
                .isEqualTo(code(text, ErrorCorrectionLevel.L, Optional.empty()).getMaskPattern());
    }

    @Test
    void aCodeOfMoreThan128SquaresIsLeftToTheLibrary() {
        String text = text(new Random(1), 1800);
        QRCode large = code(text, ErrorCorrectionLevel.M, Optional.empty());
        assertThat(large.getMatrix().getWidth()).isGreaterThan(128);
        assertThat(squares(SquareCode.of(text, ErrorCorrectionLevel.M)))
                .isDeepEqualTo(large.getMatrix().getArray());
    }

    private static byte[][] squares(SquareCode code) {
        int bytes = (code.side() + 7) / 8;
        byte[][] squares = new byte[code.side()][code.side()];
        for (int row = 0; row < code.side(); row++) {
            for (int column = 0; column < code.side(); column++) {
                squares[row][column] = (byte) (~code.light()[row * bytes + column / 8] >>> (7 - column % 8) & 1);
            }
        }
        return squares;
    }

    private static int best(ByteMatrix squares, ErrorCorrectionLevel level) {
        int side = squares.getWidth();
        return SquareMasks.of(side, level).best(rows(squares, false), rows(squares, true));
    }

    private static void turn(ByteMatrix squares, int mask, ErrorCorrectionLevel level) {
        long[] rows = rows(squares, false);
        SquareMasks.of(squares.getWidth(), level).turn(rows, mask);
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                squares.set(column, row, (int) (rows[2 * row + column / 64] >>> column % 64 & 1));
            }
        }
    }

    private static long[] rows(ByteMatrix squares, boolean isColumns) {
        long[] lines = new long[2 * squares.getWidth()];
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 1) {
                    SquareMasks.set(lines, isColumns ? column : row, isColumns ? row : column);
                }
            }
        }
        return lines;
    }

    /** Each length up to 120 letters, then every seventh: all sizes up to 125 squares and all their kinds of blocks. */
    @ParameterizedTest
    @EnumSource(ErrorCorrectionLevel.class)
    void aCodeIsSquareBySquareTheLibrarys(ErrorCorrectionLevel level) {
        Random chance = new Random(20261130);
        for (int length = 1; length < 640; length += length < 120 ? 1 : 7) {
            String text = text(chance, length);
            assertThat(squares(SquareCode.of(text, level)))
                    .as("%d letters", length)
                    .isDeepEqualTo(
                            code(text, level, Optional.empty()).getMatrix().getArray());
        }
    }

    /** Umlauts, which take two bytes and an announcement of UTF-8; and texts that need no bytes at all. */
    @ParameterizedTest
    @ValueSource(strings = {"L\u00fcftporen \u2212", "PBMIX:MX-0001 $%", "0123456789", ""})
    void soIsOneOfOtherLetters(String words) {
        for (int times = 1; times < 30; times++) {
            String text = words.repeat(times) + (words.isEmpty() ? "x" : "");
            ByteMatrix made = SquareCode.library(text, ErrorCorrectionLevel.M, Map.of());
            assertThat(squares(SquareCode.of(text, ErrorCorrectionLevel.M)))
                    .as(text)
                    .isDeepEqualTo(made.getArray());
        }
    }

    @Test
    void aTextTooLongForAnyCodeIsNamed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SquareCode.of("x".repeat(3000), ErrorCorrectionLevel.L))
                .withMessageContaining("text must fit into a code");
    }

    @Test
    void moreThan32CorrectionWordsAreNotMade() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CorrectionWords.of(33))
                .withMessage("count must be at most 32, but is 33");
    }

    @ParameterizedTest
    @EnumSource(
            value = ErrorCorrectionLevel.class,
            names = {"L", "M"})
    void theWidthIsKnownBeforehand(ErrorCorrectionLevel level) {
        Random chance = new Random(20261129);
        for (int length = 1; length <= 700; length += 3) {
            String plain = text(chance, length);
            assertThat(QrMark.width(plain, level))
                    .isEqualTo(code(plain, level, Optional.empty()).getMatrix().getWidth());
        }
        assertThat(QrMark.width("a".repeat(5000), level)).isGreaterThan(1000);
    }

    /** Of a text with letters beyond ASCII, in UTF-8. */
    @Test
    void theWidthOfATextWithAccentsIsKnownBeforehand() throws WriterException {
        for (int length = 1; length <= 500; length += 7) {
            String text = "\u00d1 hormig\u00f3n " + "x".repeat(length);
            ByteMatrix made = Encoder.encode(
                            text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
            assertThat(QrMark.width(text, ErrorCorrectionLevel.M)).isEqualTo(made.getWidth());
        }
    }
}
