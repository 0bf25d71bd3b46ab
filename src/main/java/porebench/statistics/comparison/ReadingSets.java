package porebench.statistics.comparison;

import java.util.Arrays;
import java.util.List;
import porebench.quantity.Require;
import porebench.statistics.summary.Summary;

/**
 * Readings of one thing by the determination in which each was made. What changes from one determination to the next, such as sample,
 * day and operator, all readings of one have in common, so that of several determinations the means are what counts one by one.
 */
public final class ReadingSets {
    private final List<Summary> sets;
    private final Summary readings;

    private ReadingSets(List<Summary> sets, Summary readings) {
        this.sets = sets;
        this.readings = readings;
    }

    /**
     * Takes readings by their determination.
     *
     * @param sets the readings of each determination, in one unit; at least one determination, each with at least one reading
     * @throws IllegalArgumentException if there is none, or a reading is not finite
     */
    public static ReadingSets of(List<double[]> sets) {
        Require.atLeast("count of sets", sets.size(), 1);
        return new ReadingSets(
                sets.stream().map(Summary::of).toList(),
                Summary.of(sets.stream().flatMapToDouble(Arrays::stream).toArray()));
    }

    /** Returns how many determinations there are. */
    public int sets() {
        return sets.size();
    }

    /** Returns how many readings there are in all. */
    public int readings() {
        return readings.count();
    }

    /** Returns the mean of the means of the determinations, in the unit of the readings; each counts alike. */
    public double mean() {
        return means().mean();
    }

    /** Returns the means of the determinations, summed up. */
    Summary means() {
        return Summary.of(sets.stream().mapToDouble(Summary::mean).toArray());
    }

    /** Returns the readings, summed up whatever their determination. */
    Summary all() {
        return readings;
    }

    /** Returns the mean of 1 / n over the determinations: what of the variance of a reading is left in that of a mean. */
    double shareInMeans() {
        return sets.stream().mapToDouble(set -> 1.0 / set.count()).average().orElseThrow();
    }
}
