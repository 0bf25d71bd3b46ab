package porebench.statistics.control;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import porebench.quantity.Require;
import porebench.statistics.Judged;

/**
 * A control chart of determinations, or of their trials, that changes of source, instrument or method break into phases.
 *
 * <p>A determination is one point: its trials share its sample, day and operator, and are no points of their own. How far its
 * mean spreads comes from the moving ranges of the means, and is never taken to be less than its trials spread within it.
 *
 * <p>Every phase is a chart of its own: no moving range, no run of points, no average and no sum reaches over a break. The
 * limits come from one base period and are kept through all phases, or they are found anew from the first points of each.
 *
 * <p>Source: the charts are those of {@link ShewhartChart}, {@link EwmaChart} and {@link CusumChart}, of means taken as
 * single values where subgroups differ by themselves (ASTM E2587, recalled); that a chart begins
 * anew where the process is known to have changed is common practice, ASTM E2587 (recalled).
 *
 * @param phases the phases in order, at least one, which together hold every point
 */
public record PhasedChart(List<Phase> phases) {
    public PhasedChart {
        phases = List.copyOf(phases);
        Require.atLeast("count of phases", phases.size(), 1);
    }

    /** What is charted. */
    public enum Kind {
        /** Means of determinations, and beside them their moving ranges. */
        MEANS,
        /** Means of determinations, and beside them the ranges within each. */
        MEAN_RANGE,
        /** Means of determinations, and beside them the standard deviations within each. */
        MEAN_DEVIATION,
        /** Exponentially weighted moving averages of the means of determinations. */
        EWMA,
        /** Cumulative sums of the means of determinations, one in each direction. */
        CUSUM,
        /** Single trials, and beside them their moving ranges within a determination. */
        TRIALS;

        /** Returns whether a point is a determination, and not a single trial. */
        public boolean isOfDeterminations() {
            return this != TRIALS;
        }

        /**
         * Returns whether run rules are asked: averages and sums follow one another by themselves, and the trials of a
         * determination share what is its own.
         */
        public boolean hasRunRules() {
            return this == MEANS || this == MEAN_RANGE || this == MEAN_DEVIATION;
        }

        /** Returns whether a chart of the spread stands beside. */
        public boolean hasSpread() {
            return this != EWMA && this != CUSUM;
        }
    }

    /**
     * A phase.
     *
     * @param first its first point in the whole series, from 0
     * @param count how many points it has, at least 1
     * @param chart its limits and points, or why it has none
     */
    public record Phase(int first, int count, Judged<Limited> chart) {
        public Phase {
            Require.atLeast("first", first, 0);
            Require.atLeast("count", count, 1);
        }
    }

    /**
     * How far values spread by chance, as the base shows it.
     *
     * @param between the standard deviation of what is a determination's own, in the unit of the values
     * @param within the standard deviation of trials within a determination, in the unit of the values
     * @param isBetweenKnown whether the base has determinations to compare; else only the spread within one is known
     */
    public record Spread(double between, double within, boolean isBetweenKnown) {
        public Spread {
            Require.atLeastZero("between", between);
            Require.atLeastZero("within", within);
        }
    }

    /**
     * The limits and points of a phase.
     *
     * @param centre the centre of the values, in their unit
     * @param sigma the standard deviation of a point of usual size, in the unit of the values
     * @param isSigmaOfDivision whether sigma is the division's own, the base having shown less
     * @param spreads what sigma is made of
     * @param base how many points the limits come from
     * @param level the points, their indices counted in the whole series; of sums the larger
     * @param spread the points of the chart beside it; none for averages and sums
     * @param cusum both sums with slack and interval; only of {@link Kind#CUSUM}, their indices counted in the phase
     */
    public record Limited(
            double centre,
            double sigma,
            boolean isSigmaOfDivision,
            Spread spreads,
            int base,
            List<ChartPoint> level,
            List<ChartPoint> spread,
            Optional<CusumChart> cusum) {
        public Limited {
            level = List.copyOf(level);
            spread = List.copyOf(spread);
        }
    }

    /**
     * Where limits come from.
     *
     * @param first the first base point of the whole series, from 0
     * @param count how many points follow it in the base, itself among them, at least 1
     * @param isKept whether its limits hold in all phases; else those of each phase come from its own first points, as many
     */
    public record Base(int first, int count, boolean isKept) {
        public Base {
            Require.atLeast("first", first, 0);
            Require.atLeast("count", count, 1);
        }
    }

    /**
     * Charts determinations.
     *
     * @param groups their values, at least one determination, each of at least one value; of charts with the spread within at
     *     least two
     * @param starts the first point of every phase but the first, in rising order, each above 0
     * @param kind what is charted, any but {@link Kind#TRIALS}
     * @param weight of {@link Kind#EWMA} the weight of the newest point, of {@link Kind#CUSUM} the slack; else not asked
     * @param base where the limits come from
     * @param terms width of the limits, rules and division; its count of base points and known figures are not asked
     * @throws IllegalArgumentException if there is no point, or a group is not of the size the kind needs
     */
    public static PhasedChart of(
            List<double[]> groups, List<Integer> starts, Kind kind, double weight, Base base, ChartTerms terms) {
        Require.atLeast("count of groups", groups.size(), 1);
        int least = kind == Kind.MEAN_RANGE || kind == Kind.MEAN_DEVIATION ? 2 : 1;
        if (kind == Kind.TRIALS) {
            throw new IllegalArgumentException("kind must be of determinations, but is TRIALS");
        }
        groups.forEach(group -> Require.atLeast("count of values in a group", group.length, least));
        List<Integer> lots = IntStream.range(0, groups.size()).boxed().toList();
        return new PhasedCharting(groups, lots, bounds(starts, groups.size()), kind, weight, base, terms).chart();
    }

    /**
     * Charts single trials. Trials of one determination share what is its own, so that limits are widened by the spread
     * between determinations, no rule but the limits is asked, and no moving range reaches from one determination to another.
     *
     * @param values the trials, at least one, in order
     * @param lots the determination of each, by any number
     * @param starts the first point of every phase but the first, in rising order, each above 0
     * @param base where the limits come from
     * @param terms width of the limits and division; its rules, count of base points and known figures are not asked
     * @throws IllegalArgumentException if there is no trial, or not as many determinations as trials
     */
    public static PhasedChart ofTrials(
            double[] values, List<Integer> lots, List<Integer> starts, Base base, ChartTerms terms) {
        Require.atLeast("count of values", values.length, 1);
        Require.within("count of lots", lots.size(), values.length, values.length);
        return new PhasedCharting(
                        Arrays.stream(values)
                                .mapToObj(value -> new double[] {value})
                                .toList(),
                        lots,
                        bounds(starts, values.length),
                        Kind.TRIALS,
                        0,
                        base,
                        terms.withRules(Set.of(RunRule.BEYOND_LIMITS)))
                .chart();
    }

    /** Returns for each point whether it signals, by itself or by its spread. */
    public boolean[] signalling() {
        Phase last = phases.get(phases.size() - 1);
        boolean[] signalling = new boolean[last.first() + last.count()];
        for (Phase phase : phases) {
            phase.chart().meaningful().ifPresent(limited -> {
                mark(signalling, limited.level());
                mark(signalling, limited.spread());
            });
        }
        return signalling;
    }

    private static void mark(boolean[] signalling, List<ChartPoint> points) {
        for (ChartPoint point : points) {
            signalling[point.index()] |= !point.signals().isEmpty();
        }
    }

    private static List<int[]> bounds(List<Integer> starts, int count) {
        List<int[]> bounds = new ArrayList<>();
        int from = 0;
        for (int start : starts) {
            Require.within("start of a phase", start, from + 1, count - 1);
            bounds.add(new int[] {from, start});
            from = start;
        }
        bounds.add(new int[] {from, count});
        return bounds;
    }
}
