package porebench.print.page;

import com.google.zxing.EncodeHintType;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Codes of squares of one size and level by ISO/IEC 18004 (recalled): what is the same in all of them, worked out once, and where the
 * bits of a text and its correction words go.
 */
final class SquareLayout {
    private static final int LARGEST = 40;
    private static final Map<Integer, SquareLayout> KNOWN = new ConcurrentHashMap<>();
    private static final Map<SquareLayout, Base> BASES = new ConcurrentHashMap<>();

    private final Version version;
    private final ErrorCorrectionLevel level;
    private final int side;
    private final List<Integer> blocks = new ArrayList<>();
    private final int corrections;
    private final int room;

    private SquareLayout(Version version, ErrorCorrectionLevel level) {
        this.version = version;
        this.level = level;
        this.side = version.getDimensionForVersion();
        Version.ECBlocks blocksOfLevel = version.getECBlocksForLevel(level);
        for (Version.ECB some : blocksOfLevel.getECBlocks()) {
            for (int block = 0; block < some.getCount(); block++) {
                blocks.add(some.getDataCodewords());
            }
        }
        this.corrections = blocksOfLevel.getECCodewordsPerBlock();
        this.room = blocks.stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * Returns the smallest code that takes so many bytes; empty where none does.
     *
     * @param saysUtf8 whether it says that they are UTF-8
     */
    static Optional<SquareLayout> forBytes(int bytes, boolean saysUtf8, ErrorCorrectionLevel level) {
        for (int number = 1; number <= LARGEST; number++) {
            SquareLayout layout = of(number, level);
            if (8 * layout.room >= (saysUtf8 ? 16 : 4) + layout.lengthBits() + 8 * bytes) {
                return Optional.of(layout);
            }
        }
        return Optional.empty();
    }

    private static SquareLayout of(int number, ErrorCorrectionLevel level) {
        return KNOWN.computeIfAbsent(
                4 * number + level.ordinal(), key -> new SquareLayout(Version.getVersionForNumber(number), level));
    }

    int side() {
        return side;
    }

    private int lengthBits() {
        return version.getVersionNumber() < 10 ? 8 : 16;
    }

    /** Returns the code of some bytes, a bit a square, 1 where it is white, each row begun on a byte. */
    byte[] light(byte[] bytes, boolean saysUtf8) {
        Base base = base();
        byte[] words = words(data(bytes, saysUtf8));
        long[] rows = base.rows.clone();
        int[] places = base.places;
        for (int word = 0; word < words.length; word++) {
            int eight = words[word];
            for (int bit = 0; bit < 8; bit++) {
                int place = places[8 * word + bit];
                rows[place >> 6] ^= (eight >>> (7 - bit) & 1L) << place;
            }
        }
        long[] columns = turnedOver(rows);
        SquareMasks masks = SquareMasks.of(side, level);
        masks.turn(rows, masks.best(rows, columns));
        return light(rows);
    }

    /** Returns the columns of a code from its rows: squares of 64 by 64 are turned over their diagonal, by halves of halves. */
    private long[] turnedOver(long[] rows) {
        long[] columns = new long[2 * side];
        long[] some = new long[64];
        for (int block = 0; block < 4; block++) {
            int right = block & 1;
            int down = block >> 1;
            for (int row = 0; row < 64; row++) {
                some[row] = 64 * down + row < side ? rows[2 * (64 * down + row) + right] : 0;
            }
            turnOver(some);
            for (int column = 0; column < 64 && 64 * right + column < side; column++) {
                columns[2 * (64 * right + column) + down] = some[column];
            }
        }
        return columns;
    }

    private static void turnOver(long[] rows) {
        long mask = 0xFFFFFFFFL;
        for (int half = 32; half > 0; half >>= 1) {
            for (int row = 0; row < 64; row = (row + half + 1) & ~half) {
                long swapped = (rows[row] >>> half ^ rows[row + half]) & mask;
                rows[row] ^= swapped << half;
                rows[row + half] ^= swapped;
            }
            mask ^= mask << (half >> 1);
        }
    }

    private byte[] light(long[] rows) {
        int width = (side + 7) / 8;
        byte[] light = new byte[width * side];
        for (int row = 0; row < side; row++) {
            for (int place = 0; place < width; place++) {
                int eight = (int) (rows[2 * row + place / 8] >>> 8 * (place % 8)) & 0xff;
                int used = Math.min(8, side - 8 * place);
                light[row * width + place] = (byte) (Integer.reverse(~eight) >>> 24 & -1 << (8 - used));
            }
        }
        return light;
    }

    /** Returns the data words: what kind they are, how many, the bytes, and what fills the rest. */
    private byte[] data(byte[] bytes, boolean saysUtf8) {
        byte[] data = new byte[room];
        int at = saysUtf8 ? put(data, 0, 0x71A, 12) : 0;
        at = put(data, at, 4, 4);
        at = put(data, at, bytes.length, lengthBits());
        for (byte one : bytes) {
            at = put(data, at, one & 0xff, 8);
        }
        int filled = Math.min(room, (at + 4 + 7) / 8);
        for (int word = filled; word < room; word++) {
            data[word] = (byte) ((word - filled) % 2 == 0 ? 0xEC : 0x11);
        }
        return data;
    }

    private static int put(byte[] data, int at, int value, int bits) {
        int left = bits;
        while (left > 0) {
            int place = at + bits - left;
            int free = 8 - place % 8;
            int some = Math.min(free, left);
            int part = value >>> (left - some) & ((1 << some) - 1);
            data[place / 8] |= (byte) (part << (free - some));
            left -= some;
        }
        return at + bits;
    }

    /** Returns data and correction words in the order in which they are laid out: the first of each block, the second of each, and so on. */
    private byte[] words(byte[] data) {
        CorrectionWords guard = CorrectionWords.of(corrections);
        byte[] words = new byte[data.length + corrections * blocks.size()];
        int from = 0;
        int shortest = blocks.get(0);
        for (int block = 0; block < blocks.size(); block++) {
            int length = blocks.get(block);
            for (int word = 0; word < length; word++) {
                // Longer blocks come last; only they have a word behind the last of the shortest.
                int place = word < shortest ? word * blocks.size() + block : data.length - blocks.size() + block;
                words[place] = data[from + word];
            }
            byte[] more = guard.of(data, from, length);
            for (int word = 0; word < corrections; word++) {
                words[data.length + word * blocks.size() + block] = more[word];
            }
            from += length;
        }
        return words;
    }

    /**
     * What is the same in all codes of this size and level, with mask 0 and no data.
     *
     * @param rows rows of squares as {@link SquareMasks} takes them
     * @param places where each bit goes, 128 for a row and 1 for a column
     */
    private record Base(long[] rows, int[] places) {}

    private Base base() {
        return BASES.computeIfAbsent(this, key -> newBase());
    }

    private Base newBase() {
        ByteMatrix empty = SquareCode.library(
                "a",
                level,
                Map.of(EncodeHintType.QR_VERSION, version.getVersionNumber(), EncodeHintType.QR_MASK_PATTERN, 0));
        boolean[][] fixed = SquareMasks.fixed(side);
        long[] rows = new long[2 * side];
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                boolean isDark =
                        fixed[row][column] ? empty.get(column, row) == 1 : SquareMasks.isTurned(0, row, column);
                if (isDark) {
                    SquareMasks.set(rows, row, column);
                }
            }
        }
        return new Base(rows, places(fixed));
    }

    /** Two columns at a time from the right, up and down in turn, around what is fixed; the sixth column is left out. */
    private int[] places(boolean[][] fixed) {
        int[] places = new int[side * side];
        int count = 0;
        boolean isUp = true;
        for (int right = side - 1; right > 0; right -= 2) {
            right -= right == 6 ? 1 : 0;
            for (int step = 0; step < side; step++) {
                int row = isUp ? side - 1 - step : step;
                for (int column = right; column > right - 2; column--) {
                    if (!fixed[row][column]) {
                        places[count++] = 128 * row + column;
                    }
                }
            }
            isUp = !isUp;
        }
        return Arrays.copyOf(places, count);
    }
}
