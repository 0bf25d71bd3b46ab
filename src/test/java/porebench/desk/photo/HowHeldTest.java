package porebench.desk.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.record.SamplePhotos;

/** The turn that a camera wrote beside its picture, in either order of bytes, and that no bytes make reading it fail. */
class HowHeldTest {
    /** Returns a JPEG file that holds a comment and then one Exif entry, and no picture. */
    static byte[] photo(ByteOrder order, int orientation) {
        ByteBuffer file = ByteBuffer.allocate(60);
        file.put(new byte[] {(byte) 0xFF, (byte) 0xD8});
        file.put(new byte[] {(byte) 0xFF, (byte) 0xFE, 0, 6, 'n', 'o', 't', 'e'});
        file.put(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, 34});
        file.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        file.order(order);
        file.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        file.putShort((short) 42).putInt(8).putShort((short) 1);
        file.putShort((short) 274)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        file.putInt(0);
        return Arrays.copyOf(file.array(), file.position());
    }

    @ParameterizedTest
    @CsvSource({"1, 0", "6, 1", "3, 2", "8, 3", "2, 0", "0, 0", "99, 0"})
    void theTurnFollowsFromTheEntry(int orientation, int turns) {
        assertThat(HowHeld.quarterTurns(photo(ByteOrder.LITTLE_ENDIAN, orientation)))
                .isEqualTo(turns);
        assertThat(HowHeld.quarterTurns(photo(ByteOrder.BIG_ENDIAN, orientation)))
                .isEqualTo(turns);
    }

    @Test
    void aPhotoThatDoesNotSayIsNotTurned() {
        assertThat(HowHeld.quarterTurns(SamplePhotos.png(500, 1))).isZero();
        assertThat(HowHeld.quarterTurns(SamplePhotos.jpeg(500, 1))).isZero();
        assertThat(HowHeld.quarterTurns(new byte[0])).isZero();
    }

    @Test
    void noCutAndNoChangedByteMakesItFail() {
        byte[] whole = photo(ByteOrder.BIG_ENDIAN, 6);
        Random random = new Random(5);
        for (int length = 0; length < whole.length; length++) {
            assertThat(HowHeld.quarterTurns(Arrays.copyOf(whole, length))).isBetween(0, 3);
        }
        for (int round = 0; round < 3000; round++) {
            byte[] changed = whole.clone();
            changed[2 + random.nextInt(whole.length - 2)] = (byte) random.nextInt();
            assertThat(HowHeld.quarterTurns(changed)).isBetween(0, 3);
        }
    }
}
