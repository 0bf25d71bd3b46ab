package porebench.desk.frame;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import porebench.port.OutputFile;

/**
 * The mark of the program as the files that an installed program shows on a desktop: a PNG, and pictures of several sizes in one
 * ICO (Windows) and one ICNS (macOS). Both hold PNG as it is, which their readers have known since Windows Vista and macOS 10.7.
 */
public final class MarkFiles {
    /** The name of the files without what follows the dot. */
    public static final String NAME = "porebench";

    private static final List<Integer> ICO_SIDES = List.of(16, 24, 32, 48, 64, 128, 256);
    private static final int ICO_HEAD = 6;
    private static final int ICO_ENTRY = 16;
    private static final int ICO_LARGEST_NAMED = 255;
    private static final short BITS = 32;

    private static final int ICNS_HEAD = 8;
    private static final int PNG_SIDE = 256;

    /** The types of ICNS entries that hold a PNG of one picture element a point. */
    private enum Element {
        ICP4(16),
        ICP5(32),
        ICP6(64),
        IC07(128),
        IC08(256),
        IC09(512);

        private final int side;

        Element(int side) {
            this.side = side;
        }

        byte[] type() {
            return name().toLowerCase(Locale.ROOT).getBytes(StandardCharsets.US_ASCII);
        }
    }

    private MarkFiles() {}

    /**
     * Writes the three files, in the light theme's colours.
     *
     * @param folder where to; made when it is not there
     * @throws IOException when a file cannot be written
     */
    public static void write(Path folder) throws IOException {
        Theme.LIGHT.apply();
        Files.createDirectories(folder);
        write(folder.resolve(NAME + ".png"), png(PNG_SIDE));
        write(folder.resolve(NAME + ".ico"), ico());
        write(folder.resolve(NAME + ".icns"), icns());
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        OutputFile.replacing(file).write(to -> to.write(bytes));
    }

    private static byte[] png(int side) throws IOException {
        BufferedImage picture = AppMark.picture(side);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }

    private static byte[] ico() throws IOException {
        List<byte[]> pictures = all(ICO_SIDES.stream());
        int places = ICO_HEAD + ICO_ENTRY * pictures.size();
        ByteBuffer file = ByteBuffer.allocate(places + length(pictures)).order(ByteOrder.LITTLE_ENDIAN);
        file.putShort((short) 0).putShort((short) 1).putShort((short) pictures.size());
        int place = places;
        for (int i = 0; i < pictures.size(); i++) {
            int side = ICO_SIDES.get(i);
            // A side of 256 is written as 0.
            byte named = (byte) (side > ICO_LARGEST_NAMED ? 0 : side);
            file.put(named).put(named).put((byte) 0).put((byte) 0);
            file.putShort((short) 1)
                    .putShort(BITS)
                    .putInt(pictures.get(i).length)
                    .putInt(place);
            place += pictures.get(i).length;
        }
        pictures.forEach(file::put);
        return file.array();
    }

    private static byte[] icns() throws IOException {
        List<byte[]> pictures = all(Stream.of(Element.values()).map(element -> element.side));
        int length = ICNS_HEAD + pictures.size() * ICNS_HEAD + length(pictures);
        ByteBuffer file = ByteBuffer.allocate(length);
        file.put("icns".getBytes(StandardCharsets.US_ASCII)).putInt(length);
        for (Element element : Element.values()) {
            byte[] picture = pictures.get(element.ordinal());
            file.put(element.type()).putInt(ICNS_HEAD + picture.length).put(picture);
        }
        return file.array();
    }

    private static List<byte[]> all(Stream<Integer> sides) throws IOException {
        List<byte[]> pictures = new ArrayList<>();
        for (int side : sides.toList()) {
            pictures.add(png(side));
        }
        return pictures;
    }

    private static int length(List<byte[]> pictures) {
        return pictures.stream().mapToInt(picture -> picture.length).sum();
    }
}
