package porebench.statistics.variance;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.special.Gamma;
import porebench.quantity.Require;
import porebench.statistics.summary.PooledDeviation;

/**
 * The sums over some sets that {@link VariancePrior} is estimated from, of all of them and with each left out. What is left out is
 * never taken off a sum: the sums before it and behind it are added, so that a set far from the others costs no digits.
 */
final class LogVariances {
    private final int count;
    private final double[] degrees;
    private final double[] variances;
    private final double[] trigammas;
    private final double centre;
    private final double[] deviations;
    private final double[] squares;

    LogVariances(List<PooledDeviation> sets, double floor) {
        Require.positive("floor", floor);
        count = sets.size();
        double[] seen = each(sets, set -> Math.max(floor, set.standardDeviation() * set.standardDeviation()));
        double[] halves = each(sets, set -> set.degreesOfFreedom() / 2.0);
        double[] logs = new double[count];
        Arrays.setAll(logs, i -> Math.log(seen[i]) - Gamma.digamma(halves[i]) + Math.log(halves[i]));
        centre = Arrays.stream(logs).average().orElse(0);
        degrees = allBut(each(sets, PooledDeviation::degreesOfFreedom));
        variances = allBut(seen);
        trigammas = allBut(Arrays.stream(halves).map(Gamma::trigamma).toArray());
        deviations = allBut(Arrays.stream(logs).map(log -> log - centre).toArray());
        squares = allBut(
                Arrays.stream(logs).map(log -> (log - centre) * (log - centre)).toArray());
    }

    private static double[] each(List<PooledDeviation> sets, ToDoubleFunction<PooledDeviation> figure) {
        return sets.stream().mapToDouble(figure).toArray();
    }

    /** Returns the sum of all values but the one at each place, and at the end the sum of all. */
    private static double[] allBut(double[] values) {
        double[] sums = new double[values.length + 1];
        double before = 0;
        for (int i = 0; i < values.length; i++) {
            sums[i] = before;
            before += values[i];
        }
        sums[values.length] = before;
        double behind = 0;
        for (int i = values.length - 1; i >= 0; i--) {
            sums[i] += behind;
            behind += values[i];
        }
        return sums;
    }

    /** Returns the estimate without the set at a place, or of all with the place behind the last; empty for fewer than two sets. */
    Optional<VariancePrior> without(int place) {
        int others = place < count ? count - 1 : count;
        if (others < 2) {
            return Optional.empty();
        }
        double mean = deviations[place] / others;
        double seen = Math.max(0, squares[place] - deviations[place] * mean) / (others - 1);
        return Optional.of(VariancePrior.of(
                others,
                (int) degrees[place],
                variances[place] / others,
                centre + mean,
                seen - trigammas[place] / others));
    }
}
