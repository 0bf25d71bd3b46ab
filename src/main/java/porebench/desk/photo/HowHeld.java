package porebench.desk.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Optional;

/**
 * How a camera was held when it took a photo: a telephone held upright writes its picture lying, and how it is to be turned beside it.
 *
 * <p>Source: JEITA CP-3451 (Exif 2.2), clauses 4.5.4 and 4.6.4, tag 274, and the TIFF 6.0 layout it rests on (recalled). Differences
 * from the source: mirrored pictures, which no camera takes, count as not turned.
 */
final class HowHeld {
    private static final int SEGMENT = 0xFF;
    private static final int SCAN = 0xDA;
    private static final int APPLICATION_1 = 0xE1;
    private static final int EXIF_HEAD = 6;
    private static final int ENTRY = 12;
    private static final int ORIENTATION = 274;

    private HowHeld() {}

    /** Returns by how many quarters a picture is to be turned to the right to stand upright; 0 when it does not say. */
    static int quarterTurns(byte[] photo) {
        try {
            return exif(photo).map(HowHeld::turns).orElse(0);
        } catch (IndexOutOfBoundsException | IllegalArgumentException damaged) {
            return 0;
        }
    }

    /** Returns what the camera wrote beside the picture, a small TIFF file. */
    private static Optional<ByteBuffer> exif(byte[] photo) {
        int at = 2;
        while (at + 4 <= photo.length && (photo[at] & 0xFF) == SEGMENT && (photo[at + 1] & 0xFF) != SCAN) {
            int length = (photo[at + 2] & 0xFF) << 8 | photo[at + 3] & 0xFF;
            int content = at + 4;
            if ((photo[at + 1] & 0xFF) == APPLICATION_1 && photo[content] == 'E' && photo[content + 1] == 'x') {
                return Optional.of(ByteBuffer.wrap(photo, content + EXIF_HEAD, length - 2 - EXIF_HEAD)
                        .slice());
            }
            at += 2 + Math.max(2, length);
        }
        return Optional.empty();
    }

    private static int turns(ByteBuffer tiff) {
        tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + i * ENTRY;
            if ((tiff.getShort(entry) & 0xFFFF) == ORIENTATION) {
                return switch (tiff.getShort(entry + 8)) {
                    case 6 -> 1;
                    case 3 -> 2;
                    case 8 -> 3;
                    default -> 0;
                };
            }
        }
        return 0;
    }
}
