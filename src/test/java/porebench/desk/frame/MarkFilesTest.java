package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;

/** The files are read back as their formats are written down (ICO and ICNS: common practice, recalled). */
class MarkFilesTest {
    @RegisterExtension
    final EventThread events = new EventThread();

    @TempDir
    private Path folder;

    @BeforeEach
    void writeThem() throws Exception {
        EventThread.call(() -> {
            MarkFiles.write(folder.resolve("marks"));
            return folder;
        });
    }

    @Test
    void thePngIsAStoneOnNothing() throws Exception {
        BufferedImage mark = ImageIO.read(folder.resolve("marks/porebench.png").toFile());
        assertThat(mark.getWidth()).isEqualTo(256);
        assertThat(mark.getHeight()).isEqualTo(256);
        assertThat(alpha(mark, 0, 0)).as("corner").isZero();
        assertThat(alpha(mark, 128, 128)).as("stone").isEqualTo(255);
    }

    @Test
    void theIcoHoldsEachSizeWhereItsListSays() throws Exception {
        ByteBuffer file = read("porebench.ico").order(ByteOrder.LITTLE_ENDIAN);
        assertThat(file.getShort(0)).isZero();
        assertThat(file.getShort(2)).as("a picture, not a pointer").isEqualTo((short) 1);
        List<Integer> sides = new ArrayList<>();
        int end = 6 + 16 * file.getShort(4);
        for (int entry = 6; entry < 6 + 16 * file.getShort(4); entry += 16) {
            int side = file.get(entry) == 0 ? 256 : Byte.toUnsignedInt(file.get(entry));
            int place = file.getInt(entry + 12);
            assertThat(place).isEqualTo(end);
            BufferedImage picture = picture(file, place, file.getInt(entry + 8));
            assertThat(picture.getWidth()).isEqualTo(side);
            assertThat(file.get(entry + 1)).isEqualTo(file.get(entry));
            sides.add(side);
            end = place + file.getInt(entry + 8);
        }
        assertThat(sides).containsExactly(16, 24, 32, 48, 64, 128, 256);
        assertThat(end).isEqualTo(file.capacity());
    }

    @Test
    void theIcnsHoldsEachSizeUnderItsType() throws Exception {
        ByteBuffer file = read("porebench.icns");
        assertThat(text(file, 0)).isEqualTo("icns");
        assertThat(file.getInt(4)).isEqualTo(file.capacity());
        List<String> held = new ArrayList<>();
        int place = 8;
        while (place < file.capacity()) {
            int length = file.getInt(place + 4);
            held.add(text(file, place) + " "
                    + picture(file, place + 8, length - 8).getWidth());
            place += length;
        }
        assertThat(held).containsExactly("icp4 16", "icp5 32", "icp6 64", "ic07 128", "ic08 256", "ic09 512");
    }

    private ByteBuffer read(String name) throws IOException {
        return ByteBuffer.wrap(Files.readAllBytes(folder.resolve("marks").resolve(name)));
    }

    private static String text(ByteBuffer file, int place) {
        return new String(file.array(), place, 4, StandardCharsets.US_ASCII);
    }

    private static BufferedImage picture(ByteBuffer file, int place, int length) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(file.array(), place, length));
    }

    private static int alpha(BufferedImage picture, int x, int y) {
        return picture.getRGB(x, y) >>> 24;
    }
}
