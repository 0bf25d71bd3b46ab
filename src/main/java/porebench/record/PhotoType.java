package porebench.record;

import java.util.Arrays;
import java.util.Optional;
import porebench.quantity.Symbolic;

/** The kinds of picture that are kept as the photo of a sheet, each known by how its bytes begin. */
public enum PhotoType implements Symbolic {
    /** Source: ITU-T T.81 (1992), clause B.1.1.3: a picture begins with the marker SOI, and a marker follows (recalled). */
    JPEG("jpg", 0xFF, 0xD8, 0xFF),
    /** Source: ISO/IEC 15948:2004, clause 5.2: the eight bytes of the signature (recalled). */
    PNG("png", 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n');

    private final String extension;
    private final int[] beginning;

    PhotoType(String extension, int... beginning) {
        this.extension = extension;
        this.beginning = beginning;
    }

    /** Returns what the name of such a file ends in, without the dot. */
    public String extension() {
        return extension;
    }

    /** Returns the kind of picture that some bytes say they are, whatever their file is called; empty when none. */
    public static Optional<PhotoType> of(byte[] bytes) {
        return Arrays.stream(values()).filter(type -> type.begins(bytes)).findFirst();
    }

    private boolean begins(byte[] bytes) {
        for (int i = 0; i < beginning.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != beginning[i]) {
                return false;
            }
        }
        return true;
    }
}
