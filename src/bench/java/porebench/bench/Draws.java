package porebench.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;

/** 100,000 determinations of 10 trials each, read to a division of 0.1 % air, from a fixed seed. */
final class Draws {
    static final int SETS = 100_000;
    static final int TRIALS = 10;

    private static final long SEED = 20_261_125L;
    private static final double FACTOR_PERCENT = 0.4;
    private static final double SCATTER_PERCENT = 0.12;

    private Draws() {}

    static double[] values() {
        SplittableRandom luck = new SplittableRandom(SEED);
        double[] values = new double[SETS * TRIALS];
        for (int i = 0; i < values.length; i++) {
            values[i] = Math.rint((FACTOR_PERCENT + SCATTER_PERCENT * luck.nextGaussian()) * 10) / 10;
        }
        return values;
    }

    static int[] ends() {
        int[] ends = new int[SETS];
        for (int i = 0; i < SETS; i++) {
            ends[i] = (i + 1) * TRIALS;
        }
        return ends;
    }

    /** Writes the values as little-endian doubles to the file named, so that other programs do the same work. */
    public static void main(String[] args) throws IOException {
        double[] values = values();
        ByteBuffer bytes = ByteBuffer.allocate(values.length * Double.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asDoubleBuffer().put(values);
        Files.write(Path.of(args[0]), bytes.array());
    }
}
