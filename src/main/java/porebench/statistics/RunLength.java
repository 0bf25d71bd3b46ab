package porebench.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import porebench.quantity.Require;

/**
 * How many points pass, on average, until some rule signals although nothing has changed.
 *
 * <p>Points are simulated: independent, normal, by limits that are known and not estimated. Readings that are rounded,
 * depend on each other, or are judged by limits from few points signal more often.
 *
 * <p>Source: definition; for the rules of Western Electric the exact lengths are those of C. W. Champ and W. H. Woodall,
 * Technometrics 29 (1987) (recalled). Differences from the source: simulated, within the standard error.
 *
 * @param mean the average number of points up to the signal, the signal among them
 * @param standardError how well it is known
 */
public record RunLength(double mean, double standardError) {
    private static final int FIRST_POINTS = 256;
    private static final Map<Set<RunRule>, Double> EXACT = Map.of(
            Set.of(RunRule.BEYOND_LIMITS), 370.40,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.TWO_OF_THREE), 225.44,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.FOUR_OF_FIVE), 166.05,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.EIGHT_ON_ONE_SIDE), 152.73,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.TWO_OF_THREE, RunRule.FOUR_OF_FIVE), 132.89,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.TWO_OF_THREE, RunRule.EIGHT_ON_ONE_SIDE), 122.05,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.FOUR_OF_FIVE, RunRule.EIGHT_ON_ONE_SIDE), 105.78,
            Set.copyOf(RunRule.westernElectric()), 91.75,
            Set.of(RunRule.BEYOND_LIMITS, RunRule.NINE_ON_ONE_SIDE), 216.70);

    public RunLength {
        Require.positive("mean", mean);
        Require.atLeastZero("standardError", standardError);
    }

    /**
     * Simulates one signal after another, each from a new start, until enough points have been drawn.
     *
     * @param rules the rules, at least one
     * @param points how many points are drawn at least, at least 1; more until at least two signals were seen
     * @param seed the seed of the random numbers
     */
    public static RunLength simulated(Set<RunRule> rules, int points, long seed) {
        Require.atLeast("count of rules", rules.size(), 1);
        Require.atLeast("points", points, 1);
        Random random = new Random(seed);
        List<Double> lengths = new ArrayList<>();
        double[] drawn = new double[FIRST_POINTS];
        int total = 0;
        while (total < points || lengths.size() < 2) {
            int length = 0;
            boolean signals = false;
            while (!signals) {
                drawn = length < drawn.length ? drawn : Arrays.copyOf(drawn, 2 * length);
                drawn[length] = random.nextGaussian();
                signals = firesAt(rules, drawn, length);
                length++;
            }
            lengths.add((double) length);
            total += length;
        }
        Summary summary =
                Summary.of(lengths.stream().mapToDouble(Double::doubleValue).toArray());
        return new RunLength(summary.mean(), summary.standardError().orElseThrow());
    }

    /**
     * Returns the exact average run length, with nothing changed, of choices it was worked out for: the limits alone, and
     * with them any of the other rules of Western Electric, or nine on one side.
     *
     * <p>Source: C. W. Champ and W. H. Woodall, Technometrics 29 (1987), 370.40 to 91.75; recalled, and reproduced by exact
     * Markov chains, as is that of nine on one side. Differences from the source: none.
     */
    public static OptionalDouble exact(Set<RunRule> rules) {
        Double known = EXACT.get(rules);
        return known == null ? OptionalDouble.empty() : OptionalDouble.of(known);
    }

    private static boolean firesAt(Set<RunRule> rules, double[] points, int last) {
        for (RunRule rule : rules) {
            if (rule.firesAt(points, last)) {
                return true;
            }
        }
        return false;
    }
}
