package porebench.statistics.outlier;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.distribution.StudentT;
import porebench.statistics.summary.Summary;

/**
 * Cochran's test of whether the largest of several variances is an outlier.
 *
 * <p>The statistic C is the largest variance over the sum of all. The test is made for groups of one size; groups of
 * different sizes are tested as if all had the most common one, the smaller of two equally common. It looks at large
 * variances only: a small one can be as wrong.
 *
 * <p>{@link #judge} is for readings of a divided scale. Equal readings make C large by themselves: of two honest groups of two
 * every second comparison had a C above its 1 % value. Each variance but the largest therefore counts as at least
 * half the largest that readings which are seen as equal may have. In simulations of 2 to 10 groups of 2 to 4 readings, with standard
 * deviations of 0.2 to 15 divisions, C was then above its 5 % value in at most 5 % of honest comparisons, and above its 1 %
 * value in at most 1 %. Where the pooled standard deviation is below half a division nothing could be found, and none is judged.
 *
 * <p>Source: ISO 5725-2:1994, 7.3.3, with the critical value 1 / (1 + (p - 1) / F) and F at the significance over p;
 * recalled. Differences from the source: critical values and p are computed; p is the bound that gives the critical value.
 *
 * @param groups how many variances were compared, at least 2
 * @param size the values of a group for which the critical values hold, at least 2
 * @param isSizeShared whether every group has that size
 * @param statistic C, at most 1
 * @param p the bound, at most 1, on the probability of so large a C when all variances are equal
 * @param index the position, from 0, of the group with the largest variance, among all groups given
 * @param critical5 what C exceeds with a probability of 5 %
 * @param critical1 what C exceeds with a probability of 1 %
 */
public record CochranTest(
        int groups,
        int size,
        boolean isSizeShared,
        double statistic,
        double p,
        int index,
        double critical5,
        double critical1) {
    /** The least pooled standard deviation, in divisions. */
    static final double LEAST_DIVISIONS = 0.5;

    public CochranTest {
        Require.atLeast("groups", groups, 2);
        Require.atLeast("size", size, 2);
        Require.within("statistic", statistic, 0, 1);
        Require.within("p", p, 0, 1);
        Require.atLeast("index", index, 0);
        Require.within("critical5", critical5, 0, 1);
        Require.within("critical1", critical1, critical5, 1);
    }

    /**
     * Tests the variances of groups read on a divided scale; a group of one value has none and is left out.
     *
     * @param division the smallest step of the scale, in the unit of the values; 0 for none
     * @param groups the groups
     * @return the result, or why it would mean nothing: fewer than two groups with a variance, equal values in all of them,
     *     or a spread of less than half a division
     * @throws IllegalArgumentException if the division is negative
     */
    public static Judged<CochranTest> judge(double division, List<Summary> groups) {
        Require.atLeastZero("division", division);
        List<Summary> repeated =
                groups.stream().filter(group -> group.count() > 1).toList();
        if (repeated.size() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        if (sumOfVariances(repeated) == 0) {
            return Judged.withheld(Judged.Reason.NO_SPREAD);
        }
        CochranTest test = of(division, groups, repeated);
        return isTooCoarse(division, repeated)
                ? Judged.withheld(Judged.Reason.SCALE_TOO_COARSE, test.statistic)
                : new Judged.Meaningful<>(test);
    }

    private static CochranTest of(double division, List<Summary> groups, List<Summary> repeated) {
        int largest = 0;
        for (int i = 1; i < groups.size(); i++) {
            if (variance(groups.get(i)) > variance(groups.get(largest))) {
                largest = i;
            }
        }
        double statistic = Math.min(1, share(division, groups.get(largest), repeated));
        int size = mostCommonCount(repeated);
        int p = repeated.size();
        return new CochranTest(
                p,
                size,
                repeated.stream().allMatch(group -> group.count() == size),
                statistic,
                Math.min(1, p * new VarianceShare(p, size).upperTail(statistic)),
                largest,
                critical(p, size, Suspicion.STRAGGLING),
                critical(p, size, Suspicion.OUTLYING));
    }

    /**
     * Returns the value that C of equal variances exceeds with at most the given probability.
     *
     * @param groups at least 2
     * @param size values of each group, at least 2
     * @param significance greater than 0 and less than 1
     * @throws IllegalArgumentException if an argument is outside these bounds
     */
    public static double critical(int groups, int size, double significance) {
        StudentT.requireProbability("significance", significance);
        return new VarianceShare(groups, size).upperPoint(significance / groups);
    }

    /** Returns what the largest variance is to be called. */
    public Suspicion suspicion() {
        return Suspicion.of(statistic, critical5, critical1);
    }

    /** Returns whether the readings of groups spread too little beside the division for their variances to be compared. */
    public static boolean isTooCoarse(double division, List<Summary> repeated) {
        // Readings of a decimal scale do not differ by exactly one division in binary.
        return Math.sqrt(sumOfVariances(repeated) / repeated.size()) < Slack.under(LEAST_DIVISIONS * division);
    }

    /** Returns the share of one group's variance, all others counting as at least what the division may hide. */
    public static double share(double division, Summary group, List<Summary> repeated) {
        double own = variance(group);
        double counted = repeated.stream()
                .mapToDouble(other -> Math.max(variance(other), hidden(division, other.count())))
                .sum();
        return own / (counted - Math.max(own, hidden(division, group.count())) + own);
    }

    /** Returns half the largest variance of readings that all round to the same mark: some at its one end, some at the other. */
    private static double hidden(double division, int count) {
        int low = count / 2;
        return division * division * low * (count - low) / (2.0 * count * (count - 1));
    }

    public static double sumOfVariances(List<Summary> groups) {
        return groups.stream().mapToDouble(CochranTest::variance).sum();
    }

    public static double variance(Summary group) {
        double s = group.standardDeviation().orElse(0);
        return s * s;
    }

    private static int mostCommonCount(List<Summary> groups) {
        Map<Integer, Long> byCount = groups.stream()
                .map(Summary::count)
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
        int best = 0;
        long most = 0;
        for (Map.Entry<Integer, Long> entry : byCount.entrySet()) {
            if (entry.getValue() > most) {
                best = entry.getKey();
                most = entry.getValue();
            }
        }
        return best;
    }
}
