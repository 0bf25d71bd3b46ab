package porebench.statistics.control;

import java.util.ArrayList;
import java.util.List;
import porebench.quantity.Require;
import porebench.quantity.Slack;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

/**
 * A chart of exponentially weighted moving averages, which sees small lasting shifts that single points hide.
 *
 * <p>z(t) = lambda x(t) + (1 - lambda) z(t-1) from z(0) = centre, x(t) being the mean of subgroup t. Limits are width
 * standard deviations of z(t) out, which start narrow: its variance is lambda^2 sigma^2 / n(t) + (1 - lambda)^2 times the
 * one before, of equal subgroups sigma^2 / n lambda / (2 - lambda) (1 - (1 - lambda)^(2t)). Only the limits are a signal,
 * as the averages follow one another by themselves.
 *
 * <p>Source: NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.4; seen. Differences from the source: the limits are
 * those of each point, not the final ones, and never closer to the centre than one division.
 *
 * @param centre the centre line, in the unit of the values
 * @param sigma the standard deviation of a single value, in the unit of the values
 * @param isSigmaOfDivision whether sigma is the division's own, division / sqrt(12), the base having shown less
 * @param lambda the weight of the newest point, above 0 and up to 1
 * @param points the averages with their limits
 */
public record EwmaChart(
        double centre, double sigma, boolean isSigmaOfDivision, double lambda, List<ChartPoint> points) {
    /** The weight of the newest point unless another is asked for. Source: common practice, no source. */
    public static final double USUAL_WEIGHT = 0.2;

    /** How far the limits are out unless another width is asked for, in standard deviations. Source: common practice. */
    public static final double USUAL_WIDTH = 3;

    public EwmaChart {
        Require.finite("centre", centre);
        Require.positive("sigma", sigma);
        requireWeight(lambda);
        points = List.copyOf(points);
    }

    /**
     * Charts subgroups, which may be single values; the rules of the terms are not asked.
     *
     * @param groups at least one, each of at least one finite value, in order
     * @param lambda the weight of the newest point, above 0 and up to 1
     * @return the chart, or why there is none: fewer than two base values, or a base without spread or division
     * @throws IllegalArgumentException if there is no group, one is empty, or lambda is outside its bounds
     */
    public static Judged<EwmaChart> of(List<double[]> groups, double lambda, ChartTerms terms) {
        requireWeight(lambda);
        List<Summary> summaries = BaseEstimate.summaries(groups);
        return BaseEstimate.of(summaries, BaseEstimate.forMeans(summaries, terms), terms)
                .map(base -> of(summaries, base, lambda, terms.width()));
    }

    static EwmaChart of(List<Summary> groups, BaseEstimate base, double lambda, double width) {
        return new EwmaChart(
                base.centre(), base.ofMean(1), base.isOfDivision(), lambda, points(groups, base, lambda, width));
    }

    private static List<ChartPoint> points(List<Summary> groups, BaseEstimate base, double lambda, double width) {
        List<ChartPoint> points = new ArrayList<>();
        double z = base.centre();
        double variance = 0;
        for (int i = 0; i < groups.size(); i++) {
            Summary group = groups.get(i);
            z = lambda * group.mean() + (1 - lambda) * z;
            double ofMean = base.ofMean(group.count());
            variance = lambda * lambda * ofMean * ofMean + (1 - lambda) * (1 - lambda) * variance;
            double reach = Math.max(width * Math.sqrt(variance), base.division());
            boolean isBeyond = Math.abs(z - base.centre()) > Slack.over(reach);
            points.add(new ChartPoint(
                    i,
                    z,
                    base.centre(),
                    base.centre() - reach,
                    base.centre() + reach,
                    isBeyond ? List.of(RunRule.BEYOND_LIMITS) : List.of()));
        }
        return points;
    }

    private static void requireWeight(double lambda) {
        Require.positive("lambda", lambda);
        Require.within("lambda", lambda, 0, 1);
    }
}
