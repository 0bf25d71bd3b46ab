package porebench.method.trial;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * How trials scatter elsewhere in the laboratory: within the other determinations of a mix, and within those of other mixes.
 *
 * @param sameMix the scatter within the other determinations of this mix; empty when none has two trials
 * @param otherMixes the scatter within the determinations of each other mix that has any with two trials
 */
public record ScatterElsewhere(Optional<PooledDeviation> sameMix, List<PooledDeviation> otherMixes) {
    /** Nothing is known. */
    public static final ScatterElsewhere NONE = new ScatterElsewhere(Optional.empty(), List.of());

    public ScatterElsewhere {
        otherMixes = List.copyOf(otherMixes);
    }

    /**
     * Sums up other determinations.
     *
     * @param sameMix those of the same mix, each summed up
     * @param otherMixes those of each other mix, each summed up
     */
    public static ScatterElsewhere of(
            Collection<Summary> sameMix, Collection<? extends Collection<Summary>> otherMixes) {
        return new ScatterElsewhere(
                PooledDeviation.of(sameMix),
                otherMixes.stream()
                        .flatMap(mix -> PooledDeviation.of(mix).stream())
                        .toList());
    }

    /** Returns the scatter of all of them together, whatever the mix; empty when nothing is known. */
    public Optional<PooledDeviation> pooled() {
        return Stream.concat(sameMix.stream(), otherMixes.stream()).reduce(PooledDeviation::with);
    }
}
