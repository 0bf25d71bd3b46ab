package porebench.promise;

import java.util.SplittableRandom;
import porebench.method.MeterType;
import porebench.quantity.Require;

/**
 * Faultless trials read on a divided scale: factors that scatter about a true one as normal values do, each reading rounded to
 * the nearest division.
 *
 * @param type the type of meter; Type A reads twice, and the scatter is shared by both readings
 * @param division of the scale, in % air
 */
record Dial(MeterType type, double division) {
    Dial {
        Require.positive("division", division);
    }

    /** Draws where in a division a true value lies: anywhere. */
    double anyFactor(SplittableRandom random) {
        return 0.4 + division * random.nextDouble();
    }

    /**
     * Reads some trials of one sample.
     *
     * @param factor the true factor, in % air
     * @param sigma the standard deviation of a trial before it is rounded, in % air
     */
    double[] read(double factor, double sigma, int count, SplittableRandom random) {
        double first = division * random.nextDouble();
        double[] read = new double[count];
        for (int i = 0; i < count; i++) {
            read[i] = type == MeterType.B
                    ? rounded(factor + sigma * random.nextGaussian())
                    : rounded(first + factor + sigma / Math.sqrt(2) * random.nextGaussian())
                            - rounded(first + sigma / Math.sqrt(2) * random.nextGaussian());
        }
        return read;
    }

    private double rounded(double value) {
        return Math.rint(value / division) * division;
    }
}
