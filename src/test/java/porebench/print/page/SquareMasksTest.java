package porebench.print.page;

import static org.assertj.core.api.Assertions.assertThat;

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
                SquareMasks.turn(turned, mask, level);
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
            same += SquareMasks.best(plain, ErrorCorrectionLevel.L).orElseThrow() == chosen.getMaskPattern() ? 1 : 0;
        }
        assertThat(same).isEqualTo(100);
    }

    @Test
    void aCodeOfMoreThan128SquaresIsLeftToTheLibrary() {
        ByteMatrix large = code(text(new Random(1), 1800), ErrorCorrectionLevel.M, Optional.of(0))
                .getMatrix();
        assertThat(large.getWidth()).isGreaterThan(128);
        assertThat(SquareMasks.best(large, ErrorCorrectionLevel.M)).isEmpty();
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
