package porebench.print.code;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.EncodeHintType;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.method.Answer;
import porebench.method.Problem;

/** Codes read from pictures as cameras make them: turned, tilted, dim, blurred, several in one. */
class CodePictureTest {
    private static final String TEXT =
            "Mezcla TW-214 \u2013 reste G 0.3 % de aire. Se\u00f1al \u2212\n[TW-214/r3] K7QM-4XPA";

    @TempDir
    Path folder;

    private static void draw(Graphics2D pen, String text, double left, double top, double side) throws Exception {
        ByteMatrix squares = Encoder.encode(text, ErrorCorrectionLevel.M, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                .getMatrix();
        double each = side / squares.getWidth();
        for (int row = 0; row < squares.getHeight(); row++) {
            for (int column = 0; column < squares.getWidth(); column++) {
                if (squares.get(column, row) == 1) {
                    int x = (int) Math.round(left + column * each);
                    int y = (int) Math.round(top + row * each);
                    pen.fillRect(
                            x,
                            y,
                            (int) Math.round(left + (column + 1) * each) - x,
                            (int) Math.round(top + (row + 1) * each) - y);
                }
            }
        }
    }

    /** A code on a grey table, turned by an angle and tilted away. */
    private static BufferedImage photo(double degrees, double tilt, int width) throws Exception {
        BufferedImage photo = new BufferedImage(width, width * 3 / 4, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = photo.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setColor(new Color(120, 110, 100));
        pen.fillRect(0, 0, width, width);
        pen.translate(width / 2.0, width * 3 / 8.0);
        pen.shear(tilt, 0);
        pen.rotate(Math.toRadians(degrees));
        double side = width * 0.35;
        pen.setColor(new Color(215, 212, 200));
        pen.fillRect((int) (-side * 0.65), (int) (-side * 0.65), (int) (side * 1.3), (int) (side * 1.3));
        pen.setColor(new Color(40, 38, 36));
        draw(pen, TEXT, -side / 2, -side / 2, side);
        pen.dispose();
        return photo;
    }

    private Path save(BufferedImage picture, String name) throws IOException {
        Path file = folder.resolve(name);
        ImageIO.write(picture, name.substring(name.lastIndexOf('.') + 1), file.toFile());
        return file;
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 1000", "90, 0, 1000", "180, 0, 1000", "17, 0.1, 1600", "33, 0.15, 3000", "-48, 0.2, 1400"})
    void aPhotoTurnedAndTiltedIsRead(double degrees, double tilt, int width) throws Exception {
        for (String name : List.of("photo.png", "photo.jpg")) {
            Answer<List<String>> read = CodePicture.read(save(photo(degrees, tilt, width), name));
            assertThat(read.value()).as(name + read.problems()).contains(List.of(TEXT));
        }
    }

    @Test
    void aBlurredAndGrainyPhotoIsRead() throws Exception {
        BufferedImage photo = photo(12, 0.05, 1600);
        float[] even = new float[25];
        Arrays.fill(even, 1f / 25);
        BufferedImage blurred = new ConvolveOp(new Kernel(5, 5, even)).filter(photo, null);
        Random random = new Random(7);
        for (int i = 0; i < 60_000; i++) {
            int grey = random.nextInt(256);
            blurred.setRGB(random.nextInt(1600), random.nextInt(1200), new Color(grey, grey, grey).getRGB());
        }
        assertThat(CodePicture.texts(blurred)).containsExactly(TEXT);
    }

    @Test
    void severalCodesInOnePictureAreAllRead() throws Exception {
        BufferedImage page = new BufferedImage(1400, 700, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = page.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, 1400, 700);
        pen.setColor(Color.BLACK);
        draw(pen, "first", 100, 100, 400);
        draw(pen, "second", 800, 150, 400);
        pen.dispose();
        assertThat(CodePicture.texts(page)).containsExactlyInAnyOrder("first", "second");
    }

    private void refuses(Path file, String code) {
        Answer<List<String>> read = CodePicture.read(file);
        assertThat(read.value()).isEmpty();
        assertThat(read.problems()).extracting(Problem::code).containsExactly(code);
    }

    @Test
    void whatShowsNoCodeIsRefusedWithTheReason() throws Exception {
        BufferedImage blank = new BufferedImage(300, 200, BufferedImage.TYPE_INT_RGB);
        refuses(save(blank, "blank.png"), "code.none-found");
        refuses(folder.resolve("none.png"), "csv.file-missing");
        refuses(folder, "csv.file-unreadable");
        refuses(Files.writeString(folder.resolve("text.png"), "no picture"), "photo.not-a-picture");
        byte[] whole = Files.readAllBytes(save(blank, "cut.png"));
        refuses(Files.write(folder.resolve("cut.png"), Arrays.copyOf(whole, 60)), "code.picture-damaged");
    }

    @Test
    void aPictureOfMoreDotsThanAnyCameraHasIsNotUnpacked() throws Exception {
        BufferedImage small = new BufferedImage(10, 10, BufferedImage.TYPE_BYTE_GRAY);
        byte[] png = Files.readAllBytes(save(small, "bomb.png"));
        // Width and height stand in the header behind the signature (PNG, ISO/IEC 15948), each in four bytes.
        for (int at : new int[] {16, 20}) {
            png[at + 1] = 1;
        }
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        for (int i = 0; i < 4; i++) {
            png[29 + i] = (byte) (sum.getValue() >>> 24 - 8 * i);
        }
        refuses(Files.write(folder.resolve("bomb.png"), png), "code.picture-damaged");
    }
}
