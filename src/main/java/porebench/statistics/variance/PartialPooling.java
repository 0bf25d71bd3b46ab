package porebench.statistics.variance;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.quantity.Require;

/**
 * What groups within groups say of one of them: the mean of the smallest groups, each drawn towards what its neighbours have in
 * common, as much as their variances say.
 *
 * <p>The variances are taken as known. Each group is what its own group is, and a deviation of that layer's variance; outside
 * all groups stands one mean of which nothing is known beforehand. Since groups are nested, each passes on its mean and how
 * surely it is known, and nothing has to be solved.
 *
 * <p>Source: C. R. Henderson, Biometrics 31 (1975), best linear unbiased prediction (recalled), as R's lme4 gives it.
 * Differences from the source: the mean of each smallest group may be known with a variance of its own.
 */
public final class PartialPooling {
    private final List<Group> groups;
    private final double[] variances;

    /**
     * One of the smallest groups.
     *
     * @param path its names from the outermost, one a layer
     * @param mean of its values, finite
     * @param variance of that mean by the scatter of its values alone, greater than 0
     */
    public record Group(List<String> path, double mean, double variance) {
        public Group {
            path = List.copyOf(path);
            Require.finite("mean", mean);
            Require.positive("variance", variance);
        }
    }

    /**
     * What is known of a value.
     *
     * @param mean where it lies
     * @param variance how surely, greater than 0
     */
    public record Known(double mean, double variance) {
        private static Optional<Known> together(List<Known> parts) {
            if (parts.isEmpty()) {
                return Optional.empty();
            }
            double precision = 0;
            double sum = 0;
            for (Known part : parts) {
                precision += 1 / part.variance;
                sum += part.mean / part.variance;
            }
            return Optional.of(new Known(sum / precision, 1 / precision));
        }

        private Known wider(double by) {
            return new Known(mean, variance + by);
        }
    }

    /**
     * Puts groups together.
     *
     * @param groups the smallest groups, all with a path of the same length, at least one
     * @param variances of each layer, from the outermost, each at least 0; as many as a path has names
     * @throws IllegalArgumentException if a path does not fit the variances
     */
    public PartialPooling(List<Group> groups, double... variances) {
        this.groups = List.copyOf(groups);
        this.variances = variances.clone();
        Require.atLeast("groups", groups.size(), 1);
        Require.atLeast("variances", variances.length, 1);
        for (double variance : variances) {
            Require.atLeastZero("variance", variance);
        }
        for (Group group : groups) {
            if (group.path.size() != variances.length) {
                throw new IllegalArgumentException(
                        "path must have " + variances.length + " names but is " + group.path);
            }
        }
    }

    /**
     * Returns what is known of the value around which one of the smallest groups deviates, its own values left out.
     *
     * @param path of the group, which need not be among them
     * @return empty when there is no other group
     */
    public Optional<Known> around(List<String> path) {
        List<Group> others =
                groups.stream().filter(group -> !group.path.equals(path)).toList();
        return inside(others, path, 0, Optional.empty());
    }

    /**
     * Returns what is known of a further group beside one of the smallest groups, in the same group as that: around which value
     * it would deviate, and by how much, its own values' scatter not counted.
     *
     * @param path of a group, whose own values count too
     */
    Optional<Known> next(List<String> path) {
        return inside(groups, path, 0, Optional.empty()).map(known -> known.wider(variances[variances.length - 1]));
    }

    /**
     * Returns what is known of one of the smallest groups from its own values and all others.
     *
     * @param path of the group
     * @return its own mean as it is when there is no other group
     * @throws IllegalArgumentException if it is not among the groups
     */
    public Known of(List<String> path) {
        Known own = groups.stream()
                .filter(group -> group.path.equals(path))
                .findFirst()
                .map(group -> new Known(group.mean, group.variance))
                .orElseThrow(() -> new IllegalArgumentException("path must be that of a group but is " + path));
        return around(path)
                .map(known -> known.wider(variances[variances.length - 1]))
                .flatMap(known -> Known.together(List.of(own, known)))
                .orElse(own);
    }

    /** Goes inwards along a path: what is known from outside, and from the groups beside. */
    private Optional<Known> inside(List<Group> among, List<String> path, int layer, Optional<Known> outside) {
        boolean isLast = layer == variances.length - 1;
        List<Known> parts = among.stream()
                .filter(group -> isLast || !group.path.get(layer).equals(path.get(layer)))
                .collect(Collectors.groupingBy(group -> group.path.get(layer)))
                .values()
                .stream()
                .map(group -> passedOn(group, layer))
                .collect(Collectors.toList());
        outside.ifPresent(parts::add);
        Optional<Known> here = Known.together(parts);
        if (isLast) {
            return here;
        }
        List<Group> inner = among.stream()
                .filter(group -> Objects.equals(group.path.get(layer), path.get(layer)))
                .toList();
        return inside(inner, path, layer + 1, here.map(known -> known.wider(variances[layer])));
    }

    /** Returns what one group of a layer says of the value around which it deviates. */
    private Known passedOn(List<Group> group, int layer) {
        if (layer == variances.length - 1) {
            Group one = group.get(0);
            return new Known(one.mean, one.variance + variances[layer]);
        }
        List<Known> parts =
                group.stream().collect(Collectors.groupingBy(one -> one.path.get(layer + 1))).values().stream()
                        .map(inner -> passedOn(inner, layer + 1))
                        .toList();
        return Known.together(parts).orElseThrow().wider(variances[layer]);
    }
}
