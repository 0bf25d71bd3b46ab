package porebench.statistics.variance;

import java.util.Arrays;
import java.util.List;

/**
 * The restricted likelihood of variances of groups within groups.
 *
 * <p>Since groups are nested, V never needs to be built: each group passes on its precision s = 1'
 * V^-1 1, its mean and its residue; a variance v added to all values of a group turns s into s / (1 + v s), adds ln(1 + v
 * s) to the determinant and leaves mean and residue. No two large numbers are subtracted anywhere. Groups that are alike in
 * what they hold have one precision; what they add is worked out once ({@link AlikeGroups}).
 *
 * <p>Source: H. D. Patterson and R. Thompson, Biometrika 58 (1971), restricted likelihood; the passing on is the matrix
 * identity of Sherman and Morrison (1950); recalled. Differences from the source: none.
 */
final class NestedLikelihood implements RestrictedLikelihood {
    private final List<AlikeGroups> layers;
    private final double mean;
    private final double squaresWithin;

    NestedLikelihood(NestedValues values) {
        layers = AlikeGroups.of(values);
        mean = values.layers().get(0).means()[0];
        squaresWithin = Arrays.stream(values.within()).sum();
    }

    /** What the groups of one layer have found: the precision of each form, and what each mixed group passes on. */
    private record Found(Jet[] precisions, Passed[] mixed) {}

    /** What a mixed group passes on besides its determinant and residue, which go to the sum. */
    private record Passed(Jet precision, Jet mean) {}

    /** Determinant and residue of all groups together. */
    private static final class Sum {
        private Jet jet;

        Sum(Jet first) {
            jet = first;
        }

        void add(double times, Jet next) {
            jet = jet.plusTimes(times, next);
        }
    }

    @Override
    public At at(double... variances) {
        int count = variances.length;
        Jet[] known = new Jet[count];
        for (int i = 0; i < count; i++) {
            known[i] = Jet.variable(variances[i], i, count);
        }
        Jet inverse = known[count - 1].inverse();
        Sum sum = new Sum(inverse.times(squaresWithin));
        Found found = innermost(known[count - 1], inverse, sum);
        for (int i = count - 1; i > 0; i--) {
            found = around(widened(found, layers.get(i), known[i - 1], sum), layers.get(i - 1), count, sum);
        }
        Passed all = found.mixed().length > 0
                ? found.mixed()[0]
                : new Passed(found.precisions()[0], Jet.constant(mean, count));
        sum.add(1, all.precision().log());
        return new At(sum.jet, all.mean().value(), 1 / all.precision().value());
    }

    private Found innermost(Jet ofValues, Jet inverse, Sum sum) {
        Jet log = ofValues.log();
        List<AlikeGroups.Form> forms = layers.get(layers.size() - 1).forms();
        Jet[] precisions = new Jet[forms.size()];
        for (int i = 0; i < precisions.length; i++) {
            AlikeGroups.Form form = forms.get(i);
            precisions[i] = inverse.times(form.parts());
            sum.add((double) form.count() * form.parts(), log);
        }
        return new Found(precisions, new Passed[0]);
    }

    /** Adds a variance to all values of every group of a layer. */
    private static Found widened(Found found, AlikeGroups groups, Jet variance, Sum sum) {
        Jet[] precisions = new Jet[found.precisions().length];
        for (int i = 0; i < precisions.length; i++) {
            AlikeGroups.Form form = groups.forms().get(i);
            Jet growth = variance.times(found.precisions()[i]).plus(1);
            precisions[i] = found.precisions()[i].times(growth.inverse());
            sum.add(form.count(), growth.log());
            sum.add(form.squares(), precisions[i]);
        }
        Passed[] mixed = new Passed[found.mixed().length];
        for (int i = 0; i < mixed.length; i++) {
            Passed group = found.mixed()[i];
            Jet growth = variance.times(group.precision()).plus(1);
            mixed[i] = new Passed(group.precision().times(growth.inverse()), group.mean());
            sum.add(1, growth.log());
        }
        return new Found(precisions, mixed);
    }

    /** Passes what was found on to the groups of the layer around. */
    private static Found around(Found inner, AlikeGroups outer, int variables, Sum sum) {
        Jet[] precisions = new Jet[outer.forms().size()];
        for (int i = 0; i < precisions.length; i++) {
            AlikeGroups.Form form = outer.forms().get(i);
            precisions[i] = inner.precisions()[form.inner()].times(form.parts());
        }
        Passed[] mixed = new Passed[outer.mixed().size()];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = together(inner, outer.mixed().get(i), variables, sum);
        }
        return new Found(precisions, mixed);
    }

    private static Passed together(Found inner, AlikeGroups.Mixed group, int variables, Sum sum) {
        Jet precision = Jet.constant(0, variables);
        Jet weighted = Jet.constant(0, variables);
        for (AlikeGroups.Bunch bunch : group.bunches()) {
            Jet each = inner.precisions()[bunch.form()];
            precision = precision.plusTimes(bunch.count(), each);
            weighted = weighted.plusTimes(bunch.count() * bunch.mean(), each);
        }
        for (int place : group.mixed()) {
            Passed each = inner.mixed()[place];
            precision = precision.plus(each.precision());
            weighted = weighted.plus(each.precision().times(each.mean()));
        }
        Jet mean = weighted.times(precision.inverse());
        for (AlikeGroups.Bunch bunch : group.bunches()) {
            Jet away = mean.plus(-bunch.mean());
            sum.add(bunch.count(), inner.precisions()[bunch.form()].times(away.times(away)));
        }
        for (int place : group.mixed()) {
            Passed each = inner.mixed()[place];
            Jet away = each.mean().minus(mean);
            sum.add(1, each.precision().times(away.times(away)));
        }
        return new Passed(precision, mean);
    }
}
