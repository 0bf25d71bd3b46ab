package porebench.print.page;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The words by which a reader of a code mends what it misreads: a Reed-Solomon code over 256 elements by ISO/IEC 18004 (recalled), with
 * x^8 + x^4 + x^3 + x^2 + 1 and a polynomial whose roots are the first powers of 2. All words are held in four machine words, and what one
 * data word changes in them is looked up.
 */
final class CorrectionWords {
    private static final int FIELD = 0x11D;
    private static final int MOST = 32;
    private static final Map<Integer, CorrectionWords> KNOWN = new ConcurrentHashMap<>();

    private final int count;
    /** Four machine words for each value that leads: what it adds to the words, the first in the highest byte. */
    private final long[] changes = new long[256 * 4];

    private CorrectionWords(int count) {
        this.count = count;
        int[] polynomial = polynomial(count);
        for (int leading = 0; leading < 256; leading++) {
            for (int word = 0; word < count; word++) {
                long product = times(leading, polynomial[word]);
                changes[4 * leading + word / 8] |= product << 56 - 8 * (word % 8);
            }
        }
    }

    /** Returns how so many words are worked out, at most {@value #MOST}. */
    static CorrectionWords of(int count) {
        if (count > MOST) {
            throw new IllegalArgumentException("count must be at most " + MOST + ", but is " + count);
        }
        return KNOWN.computeIfAbsent(count, CorrectionWords::new);
    }

    /** Returns the coefficients below the first, which is 1, of the product of x - 2^i for i from 0 to count - 1. */
    private static int[] polynomial(int count) {
        int[] whole = new int[count + 1];
        whole[0] = 1;
        int root = 1;
        for (int degree = 0; degree < count; degree++) {
            for (int place = degree + 1; place > 0; place--) {
                whole[place] ^= times(whole[place - 1], root);
            }
            root = times(root, 2);
        }
        int[] below = new int[count];
        System.arraycopy(whole, 1, below, 0, count);
        return below;
    }

    private static int times(int one, int other) {
        int product = 0;
        for (int bit = 7; bit >= 0; bit--) {
            product <<= 1;
            product ^= product > 0xff ? FIELD : 0;
            product ^= (other >>> bit & 1) == 1 ? one : 0;
        }
        return product;
    }

    /** Returns the words that guard some data words. */
    byte[] of(byte[] data, int from, int length) {
        long first = 0;
        long second = 0;
        long third = 0;
        long fourth = 0;
        for (int place = from; place < from + length; place++) {
            int change = 4 * ((int) (first >>> 56) ^ data[place] & 0xff);
            first = (first << 8 | second >>> 56) ^ changes[change];
            second = (second << 8 | third >>> 56) ^ changes[change + 1];
            third = (third << 8 | fourth >>> 56) ^ changes[change + 2];
            fourth = fourth << 8 ^ changes[change + 3];
        }
        long[] all = {first, second, third, fourth};
        byte[] words = new byte[count];
        for (int word = 0; word < count; word++) {
            words[word] = (byte) (all[word / 8] >>> 56 - 8 * (word % 8));
        }
        return words;
    }
}
