package porebench.statistics.control;

import java.util.ArrayList;
import java.util.List;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

/**
 * A chart of cumulative sums of deviations, one for each direction, which sees small lasting shifts soon.
 *
 * <p>With x(t) the mean of subgroup t: high(t) = max(0, high(t-1) + x(t) - centre - slack), low(t) = max(0, low(t-1) +
 * centre - slack - x(t)), both from 0. A sum above the interval is a signal; it is not set back.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3; seen. Differences from the source: slack
 * and interval are never less than one division of the scale, so that differences of one division never add up; of subgroups
 * of several sizes both are those of the harmonic mean of the sizes.
 *
 * @param centre the target, in the unit of the values
 * @param sigma the standard deviation of a single value, in the unit of the values
 * @param isSigmaOfDivision whether sigma is the division's own, division / sqrt(12), the base having shown less
 * @param slack k, what a deviation may be without adding up, in the unit of the values
 * @param interval h, what a sum may reach, in the unit of the values
 * @param points the sums
 */
public record CusumChart(
        double centre, double sigma, boolean isSigmaOfDivision, double slack, double interval, List<Sums> points) {
    /** The slack k unless another is asked for, in standard deviations of a point. Source: common practice, no source. */
    public static final double USUAL_SLACK = 0.5;

    /** The interval h unless another is asked for, in standard deviations of a point. Source: common practice, no source. */
    public static final double USUAL_INTERVAL = 5;

    /**
     * Both sums after a subgroup.
     *
     * @param index which subgroup, from 0
     * @param mean its mean
     * @param high the sum upwards, at least 0
     * @param low the sum downwards, at least 0
     * @param isSignal whether one of them is above the interval
     */
    public record Sums(int index, double mean, double high, double low, boolean isSignal) {
        public Sums {
            Require.atLeast("index", index, 0);
            Require.finite("mean", mean);
            Require.atLeastZero("high", high);
            Require.atLeastZero("low", low);
        }

        /** Returns the larger sum, the one downwards with a minus, as it is drawn on one axis. */
        public double larger() {
            return high >= low ? high : -low;
        }
    }

    public CusumChart {
        Require.finite("centre", centre);
        Require.positive("sigma", sigma);
        Require.atLeastZero("slack", slack);
        Require.positive("interval", interval);
        points = List.copyOf(points);
    }

    /**
     * Charts subgroups, which may be single values; the width of the terms is the interval, their rules are not asked.
     *
     * @param groups at least one, each of at least one finite value, in order
     * @param slack in standard deviations of a subgroup's mean, at least 0; half the shift to be seen, usually 0.5
     * @return the chart, or why there is none: fewer than two base values, or a base without spread or division
     * @throws IllegalArgumentException if there is no group, one is empty, or the slack is negative
     */
    public static Judged<CusumChart> of(List<double[]> groups, double slack, ChartTerms terms) {
        Require.atLeastZero("slack", slack);
        List<Summary> summaries = BaseEstimate.summaries(groups);
        return BaseEstimate.of(summaries, BaseEstimate.forMeans(summaries, terms), terms)
                .map(base -> of(summaries, base, slack, terms.width()));
    }

    static CusumChart of(List<Summary> groups, BaseEstimate base, double slack, double width) {
        double share = groups.stream()
                .mapToDouble(group -> 1.0 / group.count())
                .average()
                .orElseThrow();
        double ofMean = base.ofMean(1 / share);
        double allowed = Math.max(slack * ofMean, base.division());
        double interval = Math.max(width * ofMean, base.division());
        return new CusumChart(
                base.centre(),
                base.ofMean(1),
                base.isOfDivision(),
                allowed,
                interval,
                sums(groups, base.centre(), allowed, interval));
    }

    /** Returns the larger sums as points about 0, those downwards with a minus. */
    public List<ChartPoint> larger() {
        return points.stream()
                .map(sums -> new ChartPoint(
                        sums.index(),
                        sums.larger(),
                        0,
                        -interval,
                        interval,
                        sums.isSignal() ? List.of(RunRule.BEYOND_LIMITS) : List.of()))
                .toList();
    }

    private static List<Sums> sums(List<Summary> groups, double centre, double slack, double interval) {
        List<Sums> sums = new ArrayList<>();
        double high = 0;
        double low = 0;
        for (int i = 0; i < groups.size(); i++) {
            double deviation = groups.get(i).mean() - centre;
            high = Math.max(0, high + deviation - slack);
            low = Math.max(0, low - deviation - slack);
            boolean isSignal = Math.max(high, low) > Slack.over(interval);
            sums.add(new Sums(i, groups.get(i).mean(), high, low, isSignal));
        }
        return sums;
    }
}
