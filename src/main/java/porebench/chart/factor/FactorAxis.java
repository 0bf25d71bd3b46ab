package porebench.chart.factor;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import porebench.chart.look.TrialPoint;

/**
 * The part of the factor scale that a plot shows, in % air.
 *
 * <p>It holds every value with some air around it, spans at least 0.4 % air so that one point or equal points do not look
 * like scatter, and begins at 0 rather than below it when nothing is negative. An interval of few trials can be very wide;
 * it widens the scale by no more than 0.5 % air on either side and is then cut off at the edge.
 */
record FactorAxis(double low, double high) {
    private static final double LEAST_SPAN = 0.4;
    private static final double MOST_FOR_INTERVAL = 0.5;
    private static final double AIR = 0.12;
    private static final double FOOT = 0.035;

    static FactorAxis of(FactorByTrial data) {
        List<Double> values = values(data.trials());
        data.meanPercent().ifPresent(values::add);
        data.reportedPercent().ifPresent(values::add);
        if (!values.isEmpty() && data.interval().isPresent()) {
            double low = lowest(values) - MOST_FOR_INTERVAL;
            double high = highest(values) + MOST_FOR_INTERVAL;
            values.add(Math.max(low, data.interval().get().lowPercent()));
            values.add(Math.min(high, data.interval().get().highPercent()));
        }
        return around(values);
    }

    static FactorAxis of(FactorOverTime data) {
        List<Double> values = values(data.trials());
        data.steps().forEach(step -> step.factorPercent().ifPresent(values::add));
        return around(values);
    }

    /** Returns where a trial without a value is marked. */
    double foot() {
        return low + FOOT * (high - low);
    }

    private static List<Double> values(List<TrialPoint> trials) {
        List<Double> values = new ArrayList<>();
        trials.stream()
                .map(TrialPoint::factorPercent)
                .filter(OptionalDouble::isPresent)
                .forEach(value -> values.add(value.getAsDouble()));
        return values;
    }

    private static FactorAxis around(List<Double> values) {
        if (values.isEmpty()) {
            return new FactorAxis(0, 1);
        }
        double low = lowest(values);
        double high = highest(values);
        double missing = Math.max(0, LEAST_SPAN - (high - low)) / 2;
        double air = AIR * (high - low + 2 * missing);
        double begin = low - missing - air;
        double end = high + missing + air;
        return low >= 0 && begin < 0 ? new FactorAxis(0, Math.max(end, LEAST_SPAN)) : new FactorAxis(begin, end);
    }

    private static double lowest(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }

    private static double highest(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }
}
