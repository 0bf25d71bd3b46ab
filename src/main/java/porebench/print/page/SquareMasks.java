package porebench.print.page;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Chooses which of the eight masks a code of squares has: that with the fewest marks against it by ISO/IEC 18004 (recalled), for long
 * runs, blocks of four, look-alikes of the corners, and more dark than light. A line is held as 128 bits, so that a mask takes
 * microseconds.
 */
final class SquareMasks {
    /** How many masks there are. */
    static final int COUNT = 8;

    /** The most squares of a side that a line has bits for. */
    static final int MOST = 128;

    private static final Map<Integer, SquareMasks> KNOWN = new ConcurrentHashMap<>();

    private final int side;
    /** What turns mask 0 into another, line by line: two words a line, the squares that are no data left as they are. */
    private final long[][] across = new long[COUNT][];

    private final long[][] down = new long[COUNT][];

    private SquareMasks(int side, ErrorCorrectionLevel level) {
        this.side = side;
        boolean[][] fixed = fixed(side);
        for (int mask = 0; mask < COUNT; mask++) {
            across[mask] = new long[2 * side];
            down[mask] = new long[2 * side];
            for (int row = 0; row < side; row++) {
                for (int column = 0; column < side; column++) {
                    if (!fixed[row][column] && isTurned(mask, row, column) != isTurned(0, row, column)) {
                        turnSquare(mask, row, column);
                    }
                }
            }
            turnWhatIsSaid(mask, level);
        }
    }

    /** Returns the masks of codes of a size, at most {@value #MOST} squares. */
    static SquareMasks of(int side, ErrorCorrectionLevel level) {
        return KNOWN.computeIfAbsent(4 * side + level.ordinal(), key -> new SquareMasks(side, level));
    }

    /**
     * Returns the best mask for a code that has mask 0.
     *
     * @param rows its rows, two words each, 1 for dark, the leftmost square in the lowest bit
     * @param columns its columns likewise, the uppermost square in the lowest bit
     */
    int best(long[] rows, long[] columns) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int mask = 0; mask < COUNT; mask++) {
            int against = marks(rows, across[mask], true, least);
            against += against >= least ? 0 : marks(columns, down[mask], false, least - against);
            if (against < least) {
                least = against;
                best = mask;
            }
        }
        return best;
    }

    /** Puts another mask in the place of mask 0, and says in the code which it is. */
    void turn(long[] rows, int mask) {
        for (int word = 0; word < rows.length; word++) {
            rows[word] ^= across[mask][word];
        }
    }

    /** Turns the squares that say which mask it is, each bit in two places, where it is not that of mask 0. */
    private void turnWhatIsSaid(int mask, ErrorCorrectionLevel level) {
        int changed = said(level, mask) ^ said(level, 0);
        for (int bit = 0; bit < 15; bit++) {
            if ((changed >>> bit & 1) == 1) {
                if (bit < 8) {
                    turnSquare(mask, bit < 6 ? bit : bit + 1, 8);
                    turnSquare(mask, 8, side - 1 - bit);
                } else {
                    turnSquare(mask, 8, bit == 8 ? 7 : 14 - bit);
                    turnSquare(mask, side - 15 + bit, 8);
                }
            }
        }
    }

    private void turnSquare(int mask, int row, int column) {
        set(across[mask], row, column);
        set(down[mask], column, row);
    }

    /** The 15 bits that say level and mask: five, ten that guard them, turned by a fixed pattern (ISO/IEC 18004, recalled). */
    private static int said(ErrorCorrectionLevel level, int mask) {
        int value = level.getBits() << 3 | mask;
        int rest = value << 10;
        for (int bit = 14; bit >= 10; bit--) {
            if ((rest >>> bit & 1) == 1) {
                rest ^= 0x537 << (bit - 10);
            }
        }
        return (value << 10 | rest) ^ 0x5412;
    }

    /**
     * Returns the marks against a code by its lines: runs and look-alikes, and with {@code whole} also blocks and darkness. Where they
     * reach {@code enough}, it stops counting.
     */
    private int marks(long[] lines, long[] by, boolean whole, int enough) {
        int marks = 0;
        int dark = 0;
        long pairsLow = low(side - 1);
        long pairsHigh = high(side - 1);
        long equalBeforeLow = 0;
        long equalBeforeHigh = 0;
        long lowBefore = 0;
        long highBefore = 0;
        for (int line = 0; line < side && marks < enough; line++) {
            long low = lines[2 * line] ^ by[2 * line];
            long high = lines[2 * line + 1] ^ by[2 * line + 1];
            dark += Long.bitCount(low) + Long.bitCount(high);
            long equalLow = ~(low ^ right(low, high, 1)) & pairsLow;
            long equalHigh = ~(high ^ high >>> 1) & pairsHigh;
            marks += runs(equalLow, equalHigh) + lookAlikes(low, high);
            if (whole && line > 0) {
                long sameLow = equalLow & equalBeforeLow & ~(low ^ lowBefore);
                long sameHigh = equalHigh & equalBeforeHigh & ~(high ^ highBefore);
                marks += 3 * (Long.bitCount(sameLow) + Long.bitCount(sameHigh));
            }
            equalBeforeLow = equalLow;
            equalBeforeHigh = equalHigh;
            lowBefore = low;
            highBefore = high;
        }
        int all = side * side;
        return whole ? marks + Math.abs(2 * dark - all) * 10 / all * 10 : marks;
    }

    /** A run of n equal squares, n at least 5, counts n - 2. */
    private static int runs(long equalLow, long equalHigh) {
        long twoLow = equalLow & right(equalLow, equalHigh, 1);
        long twoHigh = equalHigh & equalHigh >>> 1;
        long fourLow = twoLow & right(twoLow, twoHigh, 2);
        long fourHigh = twoHigh & twoHigh >>> 2;
        long beginLow = fourLow & ~(fourLow << 1);
        long beginHigh = fourHigh & ~left(fourLow, fourHigh, 1);
        return Long.bitCount(fourLow)
                + Long.bitCount(fourHigh)
                + 2 * (Long.bitCount(beginLow) + Long.bitCount(beginHigh));
    }

    /** Dark, light, three dark, light, dark with four light before or after within the code, counts 40. */
    private int lookAlikes(long low, long high) {
        long seenLow = low
                & ~right(low, high, 1)
                & right(low, high, 2)
                & right(low, high, 3)
                & right(low, high, 4)
                & ~right(low, high, 5)
                & right(low, high, 6);
        long seenHigh = high & ~(high >>> 1) & high >>> 2 & high >>> 3 & high >>> 4 & ~(high >>> 5) & high >>> 6;
        if ((seenLow | seenHigh) == 0) {
            return 0;
        }
        long afterLow = right(low, high, 7) | right(low, high, 8) | right(low, high, 9) | right(low, high, 10);
        long afterHigh = high >>> 7 | high >>> 8 | high >>> 9 | high >>> 10;
        long beforeLow = low << 1 | low << 2 | low << 3 | low << 4;
        long beforeHigh = left(low, high, 1) | left(low, high, 2) | left(low, high, 3) | left(low, high, 4);
        long isAfterLow = ~afterLow & low(side - 10);
        long isAfterHigh = ~afterHigh & high(side - 10);
        long isBeforeLow = ~beforeLow & ~low(4);
        long isBeforeHigh = ~beforeHigh;
        return 40
                * (Long.bitCount(seenLow & (isAfterLow | isBeforeLow))
                        + Long.bitCount(seenHigh & (isAfterHigh | isBeforeHigh)));
    }

    private static long right(long low, long high, int by) {
        return low >>> by | high << (64 - by);
    }

    private static long left(long low, long high, int by) {
        return high << by | low >>> (64 - by);
    }

    /** The low word of so many ones. */
    private static long low(int ones) {
        return ones >= 64 ? -1L : (1L << ones) - 1;
    }

    private static long high(int ones) {
        return ones <= 64 ? 0 : low(ones - 64);
    }

    static void set(long[] lines, int line, int place) {
        lines[2 * line + place / 64] |= 1L << place % 64;
    }

    /** Returns which squares are no data: corners, the lines between them, the small targets, and what says the version. */
    static boolean[][] fixed(int side) {
        boolean[][] fixed = new boolean[side][side];
        int version = (side - 17) / 4;
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                boolean isCorner = row < 9 && (column < 9 || column >= side - 8) || row >= side - 8 && column < 9;
                boolean saysVersion =
                        version >= 7 && (row < 6 && column >= side - 11 || column < 6 && row >= side - 11);
                fixed[row][column] = isCorner || row == 6 || column == 6 || saysVersion;
            }
        }
        int[] centres = centres(version);
        for (int row : centres) {
            for (int column : centres) {
                boolean isInCorner = row < 9 && (column < 9 || column > side - 9) || row > side - 9 && column < 9;
                for (int square = 0; !isInCorner && square < 25; square++) {
                    fixed[row - 2 + square / 5][column - 2 + square % 5] = true;
                }
            }
        }
        return fixed;
    }

    private static int[] centres(int version) {
        return Version.getVersionForNumber(version).getAlignmentPatternCenters();
    }

    /** Returns whether a mask turns a square of data, by ISO/IEC 18004, table of masks (recalled). */
    static boolean isTurned(int mask, int row, int column) {
        int product = row * column;
        return switch (mask) {
            case 0 -> (row + column) % 2 == 0;
            case 1 -> row % 2 == 0;
            case 2 -> column % 3 == 0;
            case 3 -> (row + column) % 3 == 0;
            case 4 -> (row / 2 + column / 3) % 2 == 0;
            case 5 -> product % 2 + product % 3 == 0;
            case 6 -> (product % 2 + product % 3) % 2 == 0;
            default -> ((row + column) % 2 + product % 3) % 2 == 0;
        };
    }
}
