package porebench.method.trial;

import java.util.Optional;
import java.util.stream.Stream;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.variance.OtherSets;

/**
 * How trials scatter elsewhere in the laboratory: within the other determinations of a mix, and within those of other mixes.
 *
 * @param sameMix the scatter within the other determinations of this mix; empty when none has two trials
 * @param otherMixes the scatter within the determinations of each other mix that has any with two trials
 */
public record ScatterElsewhere(Optional<PooledDeviation> sameMix, OtherSets otherMixes) {
    /** Nothing is known. */
    public static final ScatterElsewhere NONE = new ScatterElsewhere(Optional.empty(), OtherSets.NONE);

    /** Returns the scatter of all of them together, whatever the mix; empty when nothing is known. */
    public Optional<PooledDeviation> pooled() {
        return Stream.concat(sameMix.stream(), otherMixes.list().stream()).reduce(PooledDeviation::with);
    }
}
