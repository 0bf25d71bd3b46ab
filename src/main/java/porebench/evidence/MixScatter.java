package porebench.evidence;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import porebench.method.MeterType;
import porebench.record.id.DeterminationId;
import porebench.statistics.summary.PooledDeviation;
import porebench.statistics.summary.Summary;

/**
 * How the trials of one mix scatter within its determinations, on each type of meter. A determination counts that has at least two
 * trials which count, all on one type.
 *
 * @param byType the pooled scatter on each type; a type on which no determination counts is left out
 */
public record MixScatter(Map<MeterType, PooledDeviation> byType) {
    public MixScatter {
        byType = Map.copyOf(byType);
    }

    /** Returns that of a mix's determinations. */
    public static MixScatter of(List<CountedTrials> determinations) {
        Map<MeterType, PooledDeviation> byType = new EnumMap<>(MeterType.class);
        for (MeterType type : MeterType.values()) {
            pooled(on(determinations, type)).ifPresent(pooled -> byType.put(type, pooled));
        }
        return new MixScatter(byType);
    }

    /** Returns the pooled scatter on a type; empty when no determination counts. */
    public Optional<PooledDeviation> on(MeterType type) {
        return Optional.ofNullable(byType.get(type));
    }

    /** Returns the pooled scatter of all determinations of a mix but one, on a type of meter. */
    static Optional<PooledDeviation> pooled(
            List<CountedTrials> determinations, MeterType type, DeterminationId except) {
        return pooled(on(determinations, type).filter(one -> !one.id().equals(except)));
    }

    private static Stream<CountedTrials> on(List<CountedTrials> determinations, MeterType type) {
        return determinations.stream().filter(one -> one.isOfOneType() && one.type() == type);
    }

    /** A determination of one trial has no scatter and is left out by the pooling. */
    private static Optional<PooledDeviation> pooled(Stream<CountedTrials> determinations) {
        List<Summary> sets = determinations.map(CountedTrials::summary).toList();
        return PooledDeviation.of(sets);
    }
}
