package porebench.statistics.control;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.statistics.Judged;
import porebench.statistics.summary.Summary;

/**
 * How a {@link PhasedChart} comes about.
 *
 * @param groups the points in order: determinations, or single trials
 * @param lots the determination of each point
 * @param bounds first and end of each phase
 * @param kind what is charted
 * @param weight of averages the weight, of sums the slack
 * @param base where limits come from
 * @param terms width, rules and division
 */
record PhasedCharting(
        List<double[]> groups,
        List<Integer> lots,
        List<int[]> bounds,
        PhasedChart.Kind kind,
        double weight,
        PhasedChart.Base base,
        ChartTerms terms) {
    /** What a base gives, of how many points, and whether it has determinations to compare. */
    private record Found(BaseEstimate estimate, int points, boolean isBetweenKnown, double usualSize) {}

    PhasedChart chart() {
        Judged<Found> kept = base.isKept() ? kept() : Judged.withheld(Judged.Reason.TOO_FEW);
        List<PhasedChart.Phase> phases = new ArrayList<>();
        for (int[] bound : bounds) {
            Judged<Found> found = base.isKept()
                    ? kept
                    : found(List.of(new int[] {bound[0], Math.min(bound[1], bound[0] + base.count())}));
            phases.add(
                    new PhasedChart.Phase(bound[0], bound[1] - bound[0], found.map(limits -> limited(bound, limits))));
        }
        return new PhasedChart(phases);
    }

    private Judged<Found> kept() {
        int end = Math.min(groups.size(), base.first() + base.count());
        List<int[]> runs = new ArrayList<>();
        for (int[] bound : bounds) {
            runs.add(new int[] {Math.max(bound[0], base.first()), Math.min(bound[1], end)});
        }
        return found(runs);
    }

    private Judged<Found> found(List<int[]> parts) {
        int points = 0;
        List<List<Summary>> runs = new ArrayList<>();
        for (int[] part : parts) {
            points += Math.max(0, part[1] - part[0]);
            runs.add(determinations(part[0], part[1]));
        }
        List<Summary> all = runs.stream().flatMap(List::stream).toList();
        if (all.isEmpty()) {
            return Judged.withheld(Judged.Reason.TOO_FEW);
        }
        int counted = points;
        double usual = all.size()
                / all.stream().mapToDouble(group -> 1.0 / group.count()).sum();
        if (kind == PhasedChart.Kind.TRIALS && runs.stream().allMatch(run -> run.size() < 2)) {
            return all.size() > 1
                    ? Judged.withheld(Judged.Reason.TOO_FEW)
                    : BaseEstimate.ofOne(all.get(0), terms).map(estimate -> new Found(estimate, counted, false, 1));
        }
        double size = kind == PhasedChart.Kind.TRIALS ? 1 : usual;
        return BaseEstimate.ofMeans(runs, terms).map(estimate -> new Found(estimate, counted, true, size));
    }

    /** Returns the determinations of some points: each point, or those trials together that are of one. */
    private List<Summary> determinations(int from, int to) {
        Map<Integer, List<Double>> values = new LinkedHashMap<>();
        for (int i = from; i < to; i++) {
            List<Double> of = values.computeIfAbsent(lots.get(i), any -> new ArrayList<>());
            for (double value : groups.get(i)) {
                of.add(value);
            }
        }
        return values.values().stream()
                .map(of ->
                        Summary.of(of.stream().mapToDouble(Double::doubleValue).toArray()))
                .toList();
    }

    private PhasedChart.Limited limited(int[] bound, Found found) {
        List<Summary> own = BaseEstimate.summaries(groups.subList(bound[0], bound[1]));
        BaseEstimate estimate = found.estimate();
        Optional<CusumChart> cusum = kind == PhasedChart.Kind.CUSUM
                ? Optional.of(CusumChart.of(own, estimate, weight, terms.width()))
                : Optional.empty();
        List<ChartPoint> level = switch (kind) {
            case EWMA -> EwmaChart.of(own, estimate, weight, terms.width()).points();
            case CUSUM -> cusum.orElseThrow().larger();
            case MEANS, MEAN_RANGE, MEAN_DEVIATION, TRIALS -> ShewhartChart.level(estimate, own, terms);
        };
        return new PhasedChart.Limited(
                estimate.centre(),
                estimate.ofMean(found.usualSize()),
                estimate.isOfDivision(),
                new PhasedChart.Spread(estimate.between(), estimate.sigma(), found.isBetweenKnown()),
                found.points(),
                moved(level, bound[0]),
                moved(ShewhartChart.spread(spread(own, bound[0], found), terms), bound[0]),
                cusum);
    }

    private List<ShewhartChart.Plotted> spread(List<Summary> own, int first, Found found) {
        BaseEstimate estimate = found.estimate();
        return switch (kind) {
            case MEANS -> ShewhartChart.movingRanges(own, estimate.ofMean(found.usualSize()));
            case MEAN_RANGE -> ShewhartChart.ranges(own, estimate);
            case MEAN_DEVIATION -> ShewhartChart.deviations(own, estimate);
            case TRIALS ->
                ShewhartChart.movingRanges(own, estimate.within()).stream()
                        .filter(range -> lots.get(first + range.index()).equals(lots.get(first + range.index() - 1)))
                        .toList();
            case EWMA, CUSUM -> List.of();
        };
    }

    private static List<ChartPoint> moved(List<ChartPoint> points, int by) {
        return by == 0
                ? points
                : points.stream()
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
