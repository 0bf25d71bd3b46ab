package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import porebench.statistics.summary.PooledDeviation;

/**
 * All sets of a family, or all but one: how each scatters, and what their variances have in common. The family is summed up once, so
 * that asking it for each of its sets in turn takes hardly longer than asking once.
 */
public final class OtherSets {
    /** No sets. */
    public static final OtherSets NONE = of(List.of());

    private final Family family;
    private final int left;

    private OtherSets(Family family, int left) {
        this.family = family;
        this.left = left;
    }

    /** The sets, and their sums for each floor that was asked for. */
    private record Family(List<PooledDeviation> sets, Map<Double, LogVariances> sums) {}

    /** Returns all of some sets. */
    public static OtherSets of(List<PooledDeviation> sets) {
        return new OtherSets(new Family(List.copyOf(sets), new ConcurrentHashMap<>()), sets.size());
    }

    /** Returns the sets of the family but the one at a place. */
    public OtherSets without(int place) {
        return new OtherSets(family, Objects.checkIndex(place, family.sets.size()));
    }

    /** Returns how many sets there are. */
    public int count() {
        return family.sets.size() - (left < family.sets.size() ? 1 : 0);
    }

    /** Returns the sets. */
    public List<PooledDeviation> list() {
        List<PooledDeviation> others = new ArrayList<>(family.sets);
        if (left < family.sets.size()) {
            others.remove(left);
        }
        return others;
    }

    /**
     * Estimates what their variances have in common.
     *
     * @param floor the least variance that can be seen, in the squared unit of the values, greater than 0
     * @return the estimate; empty when there are fewer than two sets
     */
    public Optional<VariancePrior> prior(double floor) {
        return family.sums
                .computeIfAbsent(floor, any -> new LogVariances(family.sets, any))
                .without(left);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof OtherSets sets && list().equals(sets.list());
    }

    @Override
    public int hashCode() {
        return list().hashCode();
    }
}
