package porebench.chart.study;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What share of a variance each of its components has.
 *
 * @param shares the components in the order of the study
 * @param isSimulated whether nothing of it was measured, as in a book for training
 */
public record ComponentShares(List<Share> shares, boolean isSimulated) {
    public ComponentShares {
        shares = List.copyOf(shares);
    }

    /**
     * One component.
     *
     * @param name what varies
     * @param sharePercent its share of the total variance, in %; empty where it is not estimated
     * @param standardDeviation the root of its variance, in the unit of the readings; empty where it is not estimated
     * @param words what is known of it, or why it is not estimated
     */
    public record Share(String name, OptionalDouble sharePercent, OptionalDouble standardDeviation, String words) {}
}
