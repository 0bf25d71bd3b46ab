package porebench.statistics.control;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

/**
 * A control chart of single values or of subgroups, and beside it the chart of their spread.
 *
 * <p>Limits come from a base period and stand for all points: width standard deviations from the centre. The standard
 * deviation is the mean over the base of moving range / d2(2), of range / d2(n) or of s / c4(n), each subgroup by the
 * constants of its own size, so that subgroups may differ in size; of equal ones it is the mean range over d2 of the
 * books. The lower limit of a spread is at least 0.
 *
 * <p>On the chart of the spread only its limits are a signal: neighbouring moving ranges share a value, and make runs of
 * their own accord. A chart must not run over a gap or a change of the instrument: start another one there.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.1 and 6.3.2.2 (seen); ASTM E2587 (recalled).
 * Differences from the source: exact constants, where the handbook rounds d2 to 1.128; a standard deviation below that of
 * the scale's division is raised to it, also that of a mean, as readings share one rounding error; and limits are never closer
 * to the centre than one division, so that a difference of one division is never a signal.
 *
 * @param centre the centre line, in the unit of the values
 * @param sigma the standard deviation of a single value, in the unit of the values
 * @param isSigmaOfDivision whether sigma is the division's own, division / sqrt(12), the base having shown less
 * @param meanSpread the base's mean moving range, range or standard deviation as sigma gives it, in the unit of the values
 * @param level the points of the values or means
 * @param spread the points of the moving ranges, of which the first value has none, the ranges or standard deviations
 */
public record ShewhartChart(
        double centre,
        double sigma,
        boolean isSigmaOfDivision,
        double meanSpread,
        List<ChartPoint> level,
        List<ChartPoint> spread) {
    private static final double ZONES = 3;
    private static final Set<RunRule> ONLY_LIMITS = EnumSet.of(RunRule.BEYOND_LIMITS);

    public ShewhartChart {
        Require.finite("centre", centre);
        Require.positive("sigma", sigma);
        Require.atLeastZero("meanSpread", meanSpread);
        level = List.copyOf(level);
        spread = List.copyOf(spread);
    }

    /**
     * Charts single values and their moving ranges.
     *
     * @param values at least one, each finite, in order
     * @return the chart, or why there is none: fewer than two base values, or a base without spread or division
     * @throws IllegalArgumentException if there is no value or one is not finite
     */
    public static Judged<ShewhartChart> individuals(double[] values, ChartTerms terms) {
        List<Summary> singles = new ArrayList<>();
        for (double value : values) {
            singles.add(Summary.of(value));
        }
        return BaseEstimate.of(singles, BaseEstimate.From.MOVING_RANGE, terms)
                .map(base -> of(base, singles, movingRanges(singles, base.within()), pairs().d2(), terms));
    }

    /**
     * Charts means of subgroups and their ranges.
     *
     * @param groups at least one, each of at least two finite values, in order
     * @return the chart, or why there is none: a base without spread or division
     * @throws IllegalArgumentException if there is no group, or one has fewer than two values
     */
    public static Judged<ShewhartChart> meanRange(List<double[]> groups, ChartTerms terms) {
        List<Summary> summaries = pairsAtLeast(groups);
        return BaseEstimate.of(summaries, BaseEstimate.From.RANGE, terms)
                .map(base -> of(
                        base,
                        summaries,
                        ranges(summaries, base),
                        firstOf(summaries).d2(),
                        terms));
    }

    /**
     * Charts means of subgroups and their standard deviations.
     *
     * @param groups at least one, each of at least two finite values, in order
     * @return the chart, or why there is none: a base without spread or division
     * @throws IllegalArgumentException if there is no group, or one has fewer than two values
     */
    public static Judged<ShewhartChart> meanDeviation(List<double[]> groups, ChartTerms terms) {
        List<Summary> summaries = pairsAtLeast(groups);
        return BaseEstimate.of(summaries, BaseEstimate.From.DEVIATION, terms)
                .map(base -> of(
                        base,
                        summaries,
                        deviations(summaries, base),
                        firstOf(summaries).c4(),
                        terms));
    }

    /** A value to plot, with the mean and standard deviation it has by chance. */
    record Plotted(int index, double value, double mean, double deviation) {}

    /**
     * Returns how far each value lies from the one before.
     *
     * @param sigma the standard deviation of a value, in the unit of the values
     */
    static List<Plotted> movingRanges(List<Summary> groups, double sigma) {
        List<Plotted> ranges = new ArrayList<>();
        for (int i = 1; i < groups.size(); i++) {
            double range = Math.abs(groups.get(i).mean() - groups.get(i - 1).mean());
            ranges.add(new Plotted(i, range, pairs().d2() * sigma, pairs().d3() * sigma));
        }
        return ranges;
    }

    static List<Plotted> ranges(List<Summary> groups, BaseEstimate base) {
        List<Plotted> ranges = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            ChartConstants constants = BaseEstimate.constants(groups.get(i));
            ranges.add(new Plotted(
                    i, groups.get(i).range(), constants.d2() * base.within(), constants.d3() * base.within()));
        }
        return ranges;
    }

    static List<Plotted> deviations(List<Summary> groups, BaseEstimate base) {
        List<Plotted> deviations = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            ChartConstants constants = BaseEstimate.constants(groups.get(i));
            deviations.add(new Plotted(
                    i,
                    groups.get(i).standardDeviation().orElseThrow(),
                    constants.c4() * base.within(),
                    constants.c5() * base.within()));
        }
        return deviations;
    }

    private static ChartConstants pairs() {
        return ChartConstants.of(2);
    }

    private static ChartConstants firstOf(List<Summary> groups) {
        return BaseEstimate.constants(groups.get(0));
    }

    private static List<Summary> pairsAtLeast(List<double[]> groups) {
        groups.forEach(group -> Require.atLeast("count of values in a group", group.length, 2));
        return BaseEstimate.summaries(groups);
    }

    private static ShewhartChart of(
            BaseEstimate base, List<Summary> groups, List<Plotted> spread, double perSigma, ChartTerms terms) {
        return new ShewhartChart(
                base.centre(),
                base.ofMean(1),
                base.isOfDivision(),
                perSigma * base.within(),
                level(base, groups, terms),
                spread(spread, terms));
    }

    /** Returns the points of the means, with the rules of the terms. */
    static List<ChartPoint> level(BaseEstimate base, List<Summary> groups, ChartTerms terms) {
        List<Plotted> level = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            Summary group = groups.get(i);
            level.add(new Plotted(i, group.mean(), base.centre(), base.ofMean(group.count())));
        }
        return points(level, terms, terms.rules(), Double.NEGATIVE_INFINITY);
    }

    /** Returns the points of a spread, of which only those beyond the limits are signals. */
    static List<ChartPoint> spread(List<Plotted> spread, ChartTerms terms) {
        return points(spread, terms, ONLY_LIMITS, 0);
    }

    private static List<ChartPoint> points(List<Plotted> plotted, ChartTerms terms, Set<RunRule> rules, double lowest) {
        double[] z = new double[plotted.size()];
        double[] divisions = new double[plotted.size()];
        for (int i = 0; i < plotted.size(); i++) {
            Plotted point = plotted.get(i);
            double third = point.deviation() * terms.width() / ZONES;
            z[i] = (point.value() - point.mean()) / third;
            divisions[i] = terms.division() / third;
        }
        List<List<RunRule>> signals = RunRule.signals(z, divisions, rules);
        List<ChartPoint> points = new ArrayList<>();
        for (int i = 0; i < plotted.size(); i++) {
            Plotted point = plotted.get(i);
            double reach = Math.max(terms.width() * point.deviation(), terms.division());
            points.add(new ChartPoint(
                    point.index(),
                    point.value(),
                    point.mean(),
                    Math.max(lowest, point.mean() - reach),
                    point.mean() + reach,
                    signals.get(i)));
        }
        return points;
    }
}
