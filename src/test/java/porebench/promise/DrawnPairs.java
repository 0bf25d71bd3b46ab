package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import porebench.method.hold.AirPair;
import porebench.method.hold.Hold;

/**
 * Pairs of a crew whose meter reads in divisions.
 *
 * @param scatter standard deviation of their differences, in % air
 * @param division what the differences are rounded to, in % air; 0 for none
 * @param follows how much a pair is like the one before it, from 0 to below 1
 * @param before how many come before a shift
 * @param shift the shift, in standard deviations
 */
record DrawnPairs(double scatter, double division, double follows, int before, double shift) {
    private static final int[] LOOKS = {400, 1200, 6000};
    private static final double HALF_STEP = 0.05;

    static DrawnPairs quiet(double scatter, double division, double follows) {
        return new DrawnPairs(scatter, division, follows, Integer.MAX_VALUE, 0);
    }

    List<AirPair> draw(int count, SplittableRandom random) {
        List<AirPair> pairs = new ArrayList<>();
        double last = random.nextGaussian();
        for (int i = 0; i < count; i++) {
            last = i == 0 ? last : follows * last + Math.sqrt(1 - follows * follows) * random.nextGaussian();
            double difference = 0.3 + scatter * (last + (i >= before ? shift : 0));
            double read = division == 0 ? difference : Math.round(difference / division) * division;
            pairs.add(new AirPair("R-" + i, 5 + read, 5));
        }
        return pairs;
    }

    static Hold hold(List<AirPair> pairs, int count) {
        return Hold.of(pairs.subList(0, Math.min(count, pairs.size())), HALF_STEP);
    }

    /** Returns how many pairs there are up to the first signal, all of them where there is none. */
    static int toSignal(List<AirPair> pairs) {
        for (int look : LOOKS) {
            Hold hold = hold(pairs, look);
            for (int i = 0; i < hold.points().size(); i++) {
                if (hold.points().get(i).isSignal()) {
                    return i + 1;
                }
            }
        }
        return pairs.size();
    }

    /** Returns the pairs up to the first signal of some runs, when nothing changes. */
    double[] runLengths(int runs, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] lengths = new double[runs];
        for (int run = 0; run < runs; run++) {
            lengths[run] = toSignal(draw(LOOKS[LOOKS.length - 1], random));
        }
        return lengths;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "scatter %s, division %s", scatter, division);
    }
}
