package porebench.statistics.control;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.quantity.Require;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

/**
 * Centre and spread of a chart's points, from its base period.
 *
 * @param centre the centre, in the unit of the values
 * @param sigma the standard deviation of a single value within its subgroup, in the unit of the values
 * @param between the standard deviation of the subgroups' own means, in the unit of the values; 0 where limits come from the
 *     spread within subgroups alone
 * @param division the smallest step of the scale, in the unit of the values; 0 for none
 * @param isOfDivision whether the spread is the division's own, the base having shown less
 */
record BaseEstimate(double centre, double sigma, double between, double division, boolean isOfDivision) {
    /** What the standard deviation is estimated from. */
    enum From {
        MOVING_RANGE,
        RANGE,
        DEVIATION
    }

    static Judged<BaseEstimate> of(List<Summary> groups, From from, ChartTerms terms) {
        Require.atLeast("count of groups", groups.size(), 1);
        List<Summary> base = groups.subList(0, Math.min(groups.size(), terms.baseCount()));
        double centre = terms.knownCentre().orElseGet(() -> weightedMean(base));
        if (terms.knownSigma().isPresent()) {
            return new Judged.Meaningful<>(
                    new BaseEstimate(centre, terms.knownSigma().getAsDouble(), 0, terms.division(), false));
        }
        OptionalDouble estimate = switch (from) {
            case MOVING_RANGE -> movingRange(List.of(base));
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
        double ofDivision = ofDivision(terms.division());
        double sigma = Math.max(estimate.getAsDouble(), ofDivision);
        return sigma > 0
                ? new Judged.Meaningful<>(
                        new BaseEstimate(centre, sigma, 0, terms.division(), estimate.getAsDouble() < ofDivision))
                : Judged.withheld(Judged.Reason.NO_SPREAD);
    }

    /**
     * Estimates how far the means of subgroups spread: by what they differ from one to the next, and no less than their
     * values spread within them. No moving range reaches from one run of subgroups to the next, as something changed there.
     *
     * <p>With s the pooled standard deviation within, m the mean moving range of the means over d2 and h the mean of 1 / n, the
     * variance between is m^2 - h s^2, or 0. The centre is the mean of the means.
     *
     * @param runs the runs, at least one subgroup in all
     * @return the estimate, or why there is none: no two subgroups follow each other, or there is neither spread nor division
     */
    static Judged<BaseEstimate> ofMeans(List<List<Summary>> runs, ChartTerms terms) {
        List<Summary> base = runs.stream().flatMap(List::stream).toList();
        Require.atLeast("count of base groups", base.size(), 1);
        OptionalDouble moving = movingRange(runs);
        if (moving.isEmpty()) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double centre = terms.knownCentre()
                .orElseGet(() -> Summary.of(
                                base.stream().mapToDouble(Summary::mean).toArray())
                        .mean());
        double within = pooled(base);
        double share = base.stream()
                .mapToDouble(group -> 1.0 / group.count())
                .average()
                .orElseThrow();
        double between = Math.sqrt(Math.max(0, moving.getAsDouble() * moving.getAsDouble() - share * within * within));
        double ofPoint = Math.sqrt(between * between + share * within * within);
        return ofPoint > 0 || terms.division() > 0
                ? new Judged.Meaningful<>(new BaseEstimate(
                        centre, within, between, terms.division(), ofPoint < ofDivision(terms.division())))
                : Judged.withheld(Judged.Reason.NO_SPREAD);
    }

    /** Estimates from the values of one subgroup, where there is no other: how subgroups differ is not known. */
    static Judged<BaseEstimate> ofOne(Summary group, ChartTerms terms) {
        if (group.count() < 2) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        double within = group.standardDeviation().orElseThrow();
        return within > 0 || terms.division() > 0
                ? new Judged.Meaningful<>(new BaseEstimate(
                        group.mean(), within, 0, terms.division(), within < ofDivision(terms.division())))
                : Judged.withheld(Judged.Reason.NO_SPREAD);
    }

    /** Returns the standard deviation that rounding to a division gives by itself. */
    static double ofDivision(double division) {
        return division / Math.sqrt(12);
    }

    /** Returns the standard deviation of the mean of a subgroup; readings share one rounding error, so it is never below that. */
    double ofMean(double count) {
        return Math.max(Math.sqrt(between * between + sigma * sigma / count), ofDivision(division));
    }

    /** Returns the standard deviation of values within a subgroup, never below what rounding gives. */
    double within() {
        return Math.max(sigma, ofDivision(division));
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

    private static double pooled(List<Summary> base) {
        double squares = 0;
        int degrees = 0;
        for (Summary group : base) {
            double deviation = group.standardDeviation().orElse(0);
            squares += (group.count() - 1) * deviation * deviation;
            degrees += group.count() - 1;
        }
        return degrees == 0 ? 0 : Math.sqrt(squares / degrees);
    }

    /** Estimates from the mean difference of neighbours, which a slow drift does not widen. */
    private static OptionalDouble movingRange(List<List<Summary>> runs) {
        double sum = 0;
        int count = 0;
        for (List<Summary> run : runs) {
            for (int i = 1; i < run.size(); i++) {
                sum += Math.abs(run.get(i).mean() - run.get(i - 1).mean());
                count++;
            }
        }
        return count == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(sum / count / ChartConstants.of(2).d2());
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
