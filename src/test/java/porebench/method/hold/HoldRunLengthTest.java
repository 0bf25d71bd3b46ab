package porebench.method.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * What is said of false alarms and of single pairs, by drawing; {@code -Dporebench.promises=20} draws twenty times as many.
 */
class HoldRunLengthTest {
    private static final int TIMES = Integer.getInteger("porebench.promises", 1);
    private static final int LONGEST = 6000;

    /** Draws differences of a standard deviation of 0.4 that follow one another by phi, shifted from some pair on. */
    private record Drawn(double phi, int before, double shift) {
        double[] of(int count, SplittableRandom random) {
            double[] values = new double[count];
            double last = random.nextGaussian();
            for (int i = 0; i < count; i++) {
                last = i == 0 ? last : phi * last + Math.sqrt(1 - phi * phi) * random.nextGaussian();
                values[i] = 0.3 + 0.4 * (last + (i >= before ? shift : 0));
            }
            return values;
        }

        /** Returns the average number of scored pairs, after the shift if there is one, to the first signal. */
        double runLength(int runs, long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            double total = 0;
            for (int run = 0; run < runs; run++) {
                total += signalAt(of(LONGEST, random)) - Math.max(before, 2);
            }
            return total / runs;
        }
    }

    private static int signalAt(double[] differences) {
        HoldScores scores = new HoldScores(0.01);
        double high = 0;
        double low = 0;
        for (int i = 0; i < differences.length; i++) {
            double score = scores.add(differences[i]).orElse(0);
            high = i < 2 ? 0 : Math.max(0, high + score - Hold.SLACK);
            low = i < 2 ? 0 : Math.max(0, low - score - Hold.SLACK);
            if (i + 1 >= Hold.LEAST_PAIRS && Math.max(high, low) > Hold.INTERVAL) {
                return i + 1;
            }
        }
        return differences.length;
    }

    /** The stated length, though mean and scatter are learned from the same pairs: within four standard errors and 3 %. */
    @Test
    void falseSignalsAreAsRareAsStated() {
        int runs = 400 * TIMES;
        double seen = new Drawn(0, 0, 0).runLength(runs, 12);
        assertThat(seen).isCloseTo(Hold.runLength(), withinPercentage(3 + 400 / Math.sqrt(runs)));
    }

    /** The lengths that docs/holds.md gives for pairs that are like the one before: 258, 152 and 64, each within 12 % and the draw. */
    @Test
    void pairsLikeTheOneBeforeSignalMoreOften() {
        int runs = 250 * TIMES;
        double[][] cases = {{0.1, 258}, {0.2, 152}, {0.4, 64}};
        for (double[] one : cases) {
            double seen = new Drawn(one[0], 0, 0).runLength(runs, 21);
            assertThat(seen)
                    .as("correlation %s", one[0])
                    .isCloseTo(one[1], withinPercentage(3 + 400 / Math.sqrt(runs)));
        }
    }

    /** However far out one pair is and wherever it stands among quiet ones, it raises no signal, nor do those after it. */
    @Test
    void aSinglePairNeverRaisesOne() {
        for (double far : new double[] {-1e9, -100, -2, 2, 100, 1e9}) {
            for (int place = 0; place < 30; place++) {
                List<AirPair> pairs = new ArrayList<>();
                for (int i = 0; i < 30; i++) {
                    double difference = i == place ? far : 0.1 * (i % 2);
                    pairs.add(new AirPair("R-" + i, 5 + difference, 5));
                }
                Hold hold = Hold.of(pairs, 0.05);
                assertThat(hold.signals()).as("%s at %s", far, place).isEmpty();
                assertThat(hold.shift()).isEmpty();
            }
        }
    }

    /** Whatever the pairs, a sum that signals was raised by three of them at least. */
    @Test
    void aSignalRestsOnThreePairs() {
        SplittableRandom random = new SplittableRandom(5);
        int signals = 0;
        for (int run = 0; run < 400; run++) {
            List<AirPair> pairs = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                double heavy = random.nextGaussian() / Math.max(Math.abs(random.nextGaussian()), 1e-6);
                pairs.add(new AirPair("R-" + i, 5 + 0.4 * heavy, 5));
            }
            int up = 0;
            int down = 0;
            for (HoldPoint point : Hold.of(pairs, 0.05).points()) {
                double score = point.score().orElse(0);
                up = point.high() == 0 ? 0 : up + (score > Hold.SLACK ? 1 : 0);
                down = point.low() == 0 ? 0 : down + (score < -Hold.SLACK ? 1 : 0);
                if (point.isSignal()) {
                    signals++;
                    assertThat(Math.max(up, down)).isGreaterThanOrEqualTo(3);
                }
            }
        }
        assertThat(signals).isPositive();
    }
}
