package porebench.desk.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import porebench.record.PhotoFile;
import porebench.record.SamplePhotos;

/** Pictures made of photos: no larger than wanted, turned to the right, and none of bytes that only begin like one. */
class DrawnPhotoTest {
    private static final int RED = 0xFFFF0000;

    private static PhotoFile photo(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, RED);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(ImageIO.write(image, format, bytes)).isTrue();
        return SamplePhotos.file(bytes.toByteArray());
    }

    private static String size(Optional<BufferedImage> picture) {
        return picture.map(one -> one.getWidth() + " x " + one.getHeight()).orElse("none");
    }

    @Test
    void aPictureThatIsNotTooLargeIsDrawnDotForDot() throws IOException {
        assertThat(size(DrawnPhoto.of(photo(300, 200, "png"), 300))).isEqualTo("300 x 200");
        assertThat(size(DrawnPhoto.of(photo(300, 200, "jpg"), 300))).isEqualTo("300 x 200");
    }

    @Test
    void ofALargerOneEverySecondOrThirdDotIsTaken() throws IOException {
        assertThat(size(DrawnPhoto.of(photo(301, 200, "png"), 300))).isEqualTo("151 x 100");
        assertThat(size(DrawnPhoto.of(photo(200, 900, "jpg"), 300))).isEqualTo("67 x 300");
    }

    @Test
    void bytesThatAreNoPictureOrEndTooSoonAreNotDrawn() throws IOException {
        assertThat(DrawnPhoto.of(SamplePhotos.file(SamplePhotos.jpeg(5000, 1)), 300))
                .isEmpty();
        assertThat(DrawnPhoto.of(SamplePhotos.file(SamplePhotos.png(5000, 1)), 300))
                .isEmpty();
        byte[] whole = photo(300, 200, "png").bytes();
        assertThat(DrawnPhoto.of(SamplePhotos.file(Arrays.copyOf(whole, 40)), 300))
                .isEmpty();
    }

    /** A telephone held upright: the picture lies, 300 x 200, until it is turned. */
    @Test
    void aPhotoStandsAsTheCameraWasHeld() throws IOException {
        byte[] lying = photo(300, 200, "jpg").bytes();
        byte[] said = HowHeldTest.photo(ByteOrder.BIG_ENDIAN, 6);
        byte[] upright = Arrays.copyOf(said, said.length + lying.length - 2);
        System.arraycopy(lying, 2, upright, said.length, lying.length - 2);
        assertThat(size(DrawnPhoto.of(SamplePhotos.file(upright), 300))).isEqualTo("200 x 300");
    }

    @Test
    void aTurnedPictureHasItsFirstDotOnTheRight() throws IOException {
        BufferedImage turned =
                DrawnPhoto.turned(DrawnPhoto.of(photo(30, 20, "png"), 300).orElseThrow());
        assertThat(size(Optional.of(turned))).isEqualTo("20 x 30");
        assertThat(turned.getRGB(19, 0)).isEqualTo(RED);
        assertThat(turned.getRGB(0, 0)).isNotEqualTo(RED);
    }
}
