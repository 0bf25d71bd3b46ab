package porebench.statistics;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import porebench.statistics.NestedValues.Layer;

/**
 * The restricted likelihood of variances of groups within groups.
 *
 * <p>Since groups are nested, V never needs to be built: each group passes on its precision s = 1'
 * V^-1 1, its mean and its residue; a variance v added to all values of a group turns s into s / (1 + v s), adds ln(1 + v
 * s) to the determinant and leaves mean and residue. No two large numbers are subtracted anywhere.
 *
 * <p>Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971), restricted likelihood; the passing on is the matrix
 * identity of Sherman and Morrison (1950); recalled. Differences from the source: none.
 */
final class NestedLikelihood implements RestrictedLikelihood {
    private final NestedValues values;

    NestedLikelihood(NestedValues values) {
        this.values = values;
    }

    /** What some groups pass on to the group around them. */
    private record Passed(Jet determinant, Jet precision, Jet mean, Jet residue) {}

    @Override
    public At at(double... variances) {
        int count = variances.length;
        Jet[] known = new Jet[count];
        for (int i = 0; i < count; i++) {
            known[i] = Jet.variable(variances[i], i, count);
        }
        Passed[] passed = innermost(known[count - 1]);
        for (int i = values.depth(); i > 0; i--) {
            Layer layer = values.layers().get(i);
            if (i == values.depth()) {
                widenInnermost(passed, layer, known[i - 1]);
            } else {
                for (int group = 0; group < passed.length; group++) {
                    passed[group] = withVariance(passed[group], known[i - 1]);
                }
            }
            passed = together(passed, layer, values.layers().get(i - 1).groups(), count);
        }
        Passed all = passed[0];
        Jet sum = all.determinant().plus(all.precision().log()).plus(all.residue());
        return new At(sum, all.mean().value(), 1 / all.precision().value());
    }

    private Passed[] innermost(Jet ofValues) {
        Jet inverse = ofValues.inverse();
        Jet log = ofValues.log();
        Layer layer = values.innermost();
        int variables = values.depth() + 1;
        Passed[] passed = new Passed[layer.groups()];
        for (int group = 0; group < passed.length; group++) {
            int size = layer.sizes()[group];
            passed[group] = new Passed(
                    log.times(size),
                    inverse.times(size),
                    Jet.constant(layer.means()[group], variables),
                    inverse.times(values.within()[group]));
        }
        return passed;
    }

    /** Groups of one size have one precision, which is found once. */
    private static void widenInnermost(Passed[] groups, Layer layer, Jet variance) {
        Map<Integer, Growth> bySize = new HashMap<>();
        for (int group = 0; group < groups.length; group++) {
            Jet precision = groups[group].precision();
            Growth growth = bySize.computeIfAbsent(layer.sizes()[group], size -> growth(precision, variance));
            groups[group] = widened(groups[group], growth);
        }
    }

    private static Passed withVariance(Passed group, Jet variance) {
        return widened(group, growth(group.precision(), variance));
    }

    /** What a variance added to all values of a group does to its determinant and its precision. */
    private record Growth(Jet log, Jet precision) {}

    private static Growth growth(Jet precision, Jet variance) {
        Jet growth = variance.times(precision).plus(1);
        return new Growth(growth.log(), precision.times(growth.inverse()));
    }

    private static Passed widened(Passed group, Growth growth) {
        return new Passed(group.determinant().plus(growth.log()), growth.precision(), group.mean(), group.residue());
    }

    private static Passed[] together(Passed[] inner, Layer layer, int outer, int variables) {
        @Nullable Jet[] precision = new Jet[outer];
        @Nullable Jet[] weighted = new Jet[outer];
        for (int group = 0; group < inner.length; group++) {
            int parent = layer.parents()[group];
            Jet moment = inner[group].precision().times(inner[group].mean());
            precision[parent] = sum(precision[parent], inner[group].precision());
            weighted[parent] = sum(weighted[parent], moment);
        }
        Passed[] passed = new Passed[outer];
        for (int parent = 0; parent < outer; parent++) {
            Jet all = sum(precision[parent], Jet.constant(0, variables));
            passed[parent] = new Passed(
                    Jet.constant(0, variables),
                    all,
                    sum(weighted[parent], Jet.constant(0, variables)).times(all.inverse()),
                    Jet.constant(0, variables));
        }
        for (int group = 0; group < inner.length; group++) {
            Passed parent = passed[layer.parents()[group]];
            Jet away = inner[group].mean().minus(parent.mean());
            Jet apart = inner[group].precision().times(away.times(away));
            passed[layer.parents()[group]] = new Passed(
                    parent.determinant().plus(inner[group].determinant()),
                    parent.precision(),
                    parent.mean(),
                    parent.residue().plus(inner[group].residue()).plus(apart));
        }
        return passed;
    }

    private static Jet sum(@Nullable Jet before, Jet next) {
        return before == null ? next : before.plus(next);
    }
}
