package porebench.statistics;

import java.util.ArrayList;
import java.util.List;
import porebench.quantity.Require;

/**
 * A control chart of a series that changes of source, instrument or method break into phases.
 *
 * <p>Every phase is a chart of its own: no moving range, no run of points, no average and no sum reaches over a break. The
 * limits come from one base period and are kept through all phases, or they are found anew from the first points of each.
 *
 * <p>Source: the charts are those of {@link ShewhartChart}, {@link EwmaChart} and {@link CusumChart}; that a chart begins
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
        /** Single values, and beside them their moving ranges. */
        INDIVIDUALS,
        /** Means of subgroups, and beside them their ranges. */
        MEAN_RANGE,
        /** Means of subgroups, and beside them their standard deviations. */
        MEAN_DEVIATION,
        /** Exponentially weighted moving averages of single values. */
        EWMA,
        /** Cumulative sums of single values, the larger of both directions. */
        CUSUM;

        /** Returns whether subgroups of at least two are charted, and not single values. */
        public boolean isOfSubgroups() {
            return this == MEAN_RANGE || this == MEAN_DEVIATION;
        }

        /** Returns whether run rules are asked; averages and sums follow one another by themselves. */
        public boolean hasRunRules() {
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
     * The limits and points of a phase.
     *
     * @param centre the centre of the values, in their unit
     * @param sigma the standard deviation of a single value, in the unit of the values
     * @param isSigmaOfDivision whether sigma is the division's own, the base having shown less
     * @param base how many points the limits come from
     * @param level the points, their indices counted in the whole series
     * @param spread the points of the chart beside it; none for averages and sums
     */
    public record Limited(
            double centre,
            double sigma,
            boolean isSigmaOfDivision,
            int base,
            List<ChartPoint> level,
            List<ChartPoint> spread) {
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
     * Charts a series.
     *
     * @param groups its points, at least one; single values, or subgroups of at least two
     * @param starts the first point of every phase but the first, in rising order, each above 0
     * @param kind what is charted
     * @param weight of {@link Kind#EWMA} the weight of the newest point, of {@link Kind#CUSUM} the slack; else not asked
     * @param base where the limits come from
     * @param terms width of the limits, rules and division; its count of base points and known figures are not asked
     * @throws IllegalArgumentException if there is no point, or a group is not of the size the kind needs
     */
    public static PhasedChart of(
            List<double[]> groups, List<Integer> starts, Kind kind, double weight, Base base, ChartTerms terms) {
        Require.atLeast("count of groups", groups.size(), 1);
        for (double[] group : groups) {
            if (kind.isOfSubgroups() ? group.length < 2 : group.length != 1) {
                throw new IllegalArgumentException("size of groups must fit " + kind + ", but is " + group.length);
            }
        }
        return new Charting(groups, bounds(starts, groups.size()), kind, weight, base, terms).chart();
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

    private record Charting(
            List<double[]> groups, List<int[]> bounds, Kind kind, double weight, Base base, ChartTerms terms) {
        /** What a base gives, and of how many points. */
        private record Found(BaseEstimate estimate, int points) {}

        PhasedChart chart() {
            Judged<Found> kept = base.isKept() ? kept() : Judged.withheld(Judged.Reason.TOO_FEW);
            List<Phase> phases = new ArrayList<>();
            for (int[] bound : bounds) {
                Judged<Found> found = base.isKept()
                        ? kept
                        : found(List.of(part(bound[0], Math.min(bound[1], bound[0] + base.count()))));
                phases.add(new Phase(bound[0], bound[1] - bound[0], found.map(limits -> limited(bound, limits))));
            }
            return new PhasedChart(phases);
        }

        private Judged<Found> kept() {
            int end = Math.min(groups.size(), base.first() + base.count());
            List<List<Summary>> runs = new ArrayList<>();
            for (int[] bound : bounds) {
                runs.add(part(Math.max(bound[0], base.first()), Math.min(bound[1], end)));
            }
            return found(runs);
        }

        private List<Summary> part(int from, int to) {
            return from < to ? BaseEstimate.summaries(groups.subList(from, to)) : List.of();
        }

        private Judged<Found> found(List<List<Summary>> runs) {
            int points = runs.stream().mapToInt(List::size).sum();
            if (points == 0) {
                return Judged.withheld(Judged.Reason.TOO_FEW);
            }
            BaseEstimate.From from = switch (kind) {
                case MEAN_RANGE -> BaseEstimate.From.RANGE;
                case MEAN_DEVIATION -> BaseEstimate.From.DEVIATION;
                case INDIVIDUALS, EWMA, CUSUM -> BaseEstimate.From.MOVING_RANGE;
            };
            return BaseEstimate.ofRuns(runs, from, terms).map(estimate -> new Found(estimate, points));
        }

        private Limited limited(int[] bound, Found found) {
            ChartTerms known = terms.withKnownCentre(found.estimate().centre())
                    .withKnownSigma(found.estimate().sigma());
            List<double[]> own = groups.subList(bound[0], bound[1]);
            Plain plain = switch (kind) {
                case INDIVIDUALS ->
                    Plain.of(ShewhartChart.individuals(
                            own.stream().mapToDouble(group -> group[0]).toArray(), known));
                case MEAN_RANGE -> Plain.of(ShewhartChart.meanRange(own, known));
                case MEAN_DEVIATION -> Plain.of(ShewhartChart.meanDeviation(own, known));
                case EWMA ->
                    new Plain(
                            EwmaChart.of(own, weight, known)
                                    .meaningful()
                                    .orElseThrow()
                                    .points(),
                            List.of());
                case CUSUM ->
                    new Plain(
                            sums(CusumChart.of(own, weight, known).meaningful().orElseThrow()), List.of());
            };
            return new Limited(
                    found.estimate().centre(),
                    found.estimate().sigma(),
                    found.estimate().isOfDivision(),
                    found.points(),
                    moved(plain.level(), bound[0]),
                    moved(plain.spread(), bound[0]));
        }

        private static List<ChartPoint> sums(CusumChart chart) {
            return chart.points().stream()
                    .map(sums -> new ChartPoint(
                            sums.index(),
                            sums.larger(),
                            0,
                            -chart.interval(),
                            chart.interval(),
                            sums.isSignal() ? List.of(RunRule.BEYOND_LIMITS) : List.of()))
                    .toList();
        }

        private static List<ChartPoint> moved(List<ChartPoint> points, int by) {
            return points.stream()
                    .map(point -> new ChartPoint(
                            point.index() + by,
                            point.value(),
                            point.centre(),
                            point.low(),
                            point.high(),
                            point.signals()))
                    .toList();
        }
    }

    /** Points with those beside them; a chart whose centre and spread are known always has them. */
    private record Plain(List<ChartPoint> level, List<ChartPoint> spread) {
        static Plain of(Judged<ShewhartChart> chart) {
            ShewhartChart known = chart.meaningful().orElseThrow();
            return new Plain(known.level(), known.spread());
        }
    }
}
