package porebench.exchange.text;

import java.util.Optional;

/** What is wrong with the bytes of a file as a whole, before any line of it is looked at. */
public final class RawFile {
    /** A larger file, in bytes, is refused unread: 100 MB. */
    public static final int LARGEST = 100_000_000;

    private static final int LOOKED_AT = 1000;

    private RawFile() {}

    /** Returns the code of the message that refuses the whole file, if it is refused. */
    public static Optional<String> refusal(byte[] bytes) {
        if (bytes.length > LARGEST) {
            return Optional.of("csv.file-too-large");
        }
        return isSixteenBit(bytes) ? Optional.of("csv.utf-16") : Optional.empty();
    }

    /** Text of 16 bits a letter begins with a mark, or every other byte of plain letters is zero. */
    private static boolean isSixteenBit(byte[] bytes) {
        if (bytes.length >= 2 && (bytes[0] & 0xFF) + (bytes[1] & 0xFF) == 0xFF + 0xFE && (bytes[0] & 0xFF) >= 0xFE) {
            return true;
        }
        int looked = Math.min(bytes.length, LOOKED_AT);
        int zeros = 0;
        for (int i = 0; i < looked; i++) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return looked >= 4 && zeros * 3 >= looked;
    }
}
