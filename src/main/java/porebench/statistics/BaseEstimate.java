package porebench.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;

/**
 * Centre and standard deviation of a single value, from the base period of a chart.
 *
 * @param centre the mean of all base values, in their unit
 * @param sigma the standard deviation of a single value, in the unit of the values
 * @param isOfDivision whether sigma is the division's own, the base having shown less
 */
record BaseEstimate(double centre, double sigma, boolean isOfDivision) {
    /** What the standard deviation is estimated from. */
    enum From {
        MOVING_RANGE,
        RANGE,
        DEVIATION
    }

    static Judged<BaseEstimate> of(List<Summary> groups, From from, ChartTerms terms) {
        Require.atLeast("count of groups", groups.size(), 1);
        return ofRuns(List.of(groups.subList(0, Math.min(groups.size(), terms.baseCount()))), from, terms);
    }

    /**
     * Estimates from all groups of some runs, between which something changed: no moving range reaches from one to the next.
     *
     * @param runs the runs, at least one group in all
     */
    static Judged<BaseEstimate> ofRuns(List<List<Summary>> runs, From from, ChartTerms terms) {
        List<Summary> base = runs.stream().flatMap(List::stream).toList();
        Require.atLeast("count of base groups", base.size(), 1);
        double centre = terms.knownCentre().orElseGet(() -> weightedMean(base));
        if (terms.knownSigma().isPresent()) {
            return new Judged.Meaningful<>(
                    new BaseEstimate(centre, terms.knownSigma().getAsDouble(), false));
        }
        OptionalDouble estimate = switch (from) {
            case MOVING_RANGE -> movingRange(runs);
            case RANGE -> mean(base, group -> group.range() / constants(group).d2());
            case DEVIATION ->
                mean(
                        base,
                        group -> group.standardDeviation().orElseThrow()
                                / constants(group).c4());
        };
        if (estimate.isEmpty()) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double ofDivision = terms.division() / Math.sqrt(12);
        double sigma = Math.max(estimate.getAsDouble(), ofDivision);
        return sigma > 0
                ? new Judged.Meaningful<>(new BaseEstimate(centre, sigma, estimate.getAsDouble() < ofDivision))
                : Judged.withheld(Judged.Reason.NO_SPREAD);
    }

    /** Returns groups as summaries; every group must have some values. */
    static List<Summary> summaries(List<double[]> groups) {
        return groups.stream().map(Summary::of).toList();
    }

    static ChartConstants constants(Summary group) {
        return ChartConstants.of(group.count());
    }

    private static double weightedMean(List<Summary> base) {
        double origin = base.get(0).mean();
        double sum = 0;
        double count = 0;
        for (Summary group : base) {
            sum += group.count() * (group.mean() - origin);
            count += group.count();
        }
        return origin + sum / count;
    }

    /** Estimates from the mean difference of neighbours, which a slow drift does not widen. */
    private static OptionalDouble movingRange(List<List<Summary>> runs) {
        List<Double> ranges = new ArrayList<>();
        for (List<Summary> run : runs) {
            for (int i = 1; i < run.size(); i++) {
                ranges.add(Math.abs(run.get(i).mean() - run.get(i - 1).mean()));
            }
        }
        return ranges.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(ranges.stream()
                                .mapToDouble(Double::doubleValue)
                                .average()
                                .orElseThrow()
                        / ChartConstants.of(2).d2());
    }

    private static OptionalDouble mean(List<Summary> base, ToDoubleFunction<Summary> estimate) {
        return base.stream()
                .filter(group -> group.count() > 1)
                .mapToDouble(estimate)
                .average();
    }

    /** Returns the spread a chart of subgroup means takes: within them, or from mean to mean when all are single. */
    static From forMeans(List<Summary> groups, ChartTerms terms) {
        boolean single = groups.stream().limit(terms.baseCount()).allMatch(group -> group.count() == 1);
        return single ? From.MOVING_RANGE : From.DEVIATION;
    }
}
