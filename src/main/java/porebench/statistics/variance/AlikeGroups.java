package porebench.statistics.variance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import porebench.statistics.variance.NestedValues.Layer;

/**
 * The groups of one layer by what is within them. Groups alike in that have one precision, whatever the variances are, so
 * that a likelihood need only be worked out once for all of them.
 *
 * <p>A group is of a form when it holds so many values, or so many groups of one form of the layer within. One that holds
 * groups of several forms is mixed, and so is every group around it.
 *
 * @param forms the forms
 * @param mixed the mixed groups, each with what is in it
 * @param formOf the form of each group; less than 0 for a mixed one, -1 for the first
 */
record AlikeGroups(List<Form> forms, List<Mixed> mixed, int[] formOf) {
    /**
     * What groups have in common.
     *
     * @param inner the form of the groups of the layer within; 0 in the innermost layer
     * @param parts how many of those, or how many values, each group holds
     * @param count how many groups are of this form
     * @param squares the squared distances of their means from the mean of those of this form in the same group around them
     */
    record Form(int inner, int parts, int count, double squares) {}

    /**
     * A group with several forms in it.
     *
     * @param bunches its groups that are of a form
     * @param mixed its groups that are mixed themselves
     */
    record Mixed(List<Bunch> bunches, List<Integer> mixed) {}

    /**
     * Groups of one form in one group around them.
     *
     * @param form their form
     * @param count how many they are
     * @param mean the mean of their means
     */
    record Bunch(int form, int count, double mean) {}

    /** Returns the groups of every layer by what is within them, layer 0 first. */
    static List<AlikeGroups> of(NestedValues values) {
        List<AlikeGroups> all = new ArrayList<>();
        AlikeGroups inner = innermost(values.innermost());
        for (int i = values.depth(); i > 0; i--) {
            Layer layer = values.layers().get(i);
            Map<Long, Bunch> bunches = inner.bunches(layer);
            all.add(0, inner.withSquares(layer, bunches));
            inner = inner.around(layer, values.layers().get(i - 1).groups(), bunches);
        }
        all.add(0, inner);
        return List.copyOf(all);
    }

    private static AlikeGroups innermost(Layer layer) {
        Map<Integer, Integer> bySize = new LinkedHashMap<>();
        int[] formOf = Arrays.stream(layer.sizes())
                .map(size -> bySize.computeIfAbsent(size, any -> bySize.size()))
                .toArray();
        List<Form> forms = new ArrayList<>();
        bySize.forEach((size, form) -> forms.add(new Form(0, size, count(formOf, form), 0)));
        return new AlikeGroups(forms, List.of(), formOf);
    }

    private static int count(int[] formOf, int sought) {
        return (int) Arrays.stream(formOf).filter(form -> form == sought).count();
    }

    private static long key(int parent, int form) {
        return (long) parent << Integer.SIZE | form;
    }

    /** Puts the groups of one form in one group around them together. */
    private Map<Long, Bunch> bunches(Layer layer) {
        Map<Long, double[]> sums = new LinkedHashMap<>();
        for (int group = 0; group < formOf.length; group++) {
            if (formOf[group] >= 0) {
                double[] sum = sums.computeIfAbsent(key(layer.parents()[group], formOf[group]), any -> new double[2]);
                sum[0]++;
                sum[1] += layer.means()[group];
            }
        }
        Map<Long, Bunch> bunches = new LinkedHashMap<>();
        sums.forEach((key, sum) -> bunches.put(key, new Bunch(key.intValue(), (int) sum[0], sum[1] / sum[0])));
        return bunches;
    }

    private AlikeGroups withSquares(Layer layer, Map<Long, Bunch> bunches) {
        double[] squares = new double[forms.size()];
        for (int group = 0; group < formOf.length; group++) {
            if (formOf[group] >= 0) {
                Bunch bunch = bunches.get(key(layer.parents()[group], formOf[group]));
                double away = layer.means()[group] - (bunch == null ? 0 : bunch.mean());
                squares[formOf[group]] += away * away;
            }
        }
        List<Form> summed = new ArrayList<>();
        for (int i = 0; i < squares.length; i++) {
            Form form = forms.get(i);
            summed.add(new Form(form.inner(), form.parts(), form.count(), squares[i]));
        }
        return new AlikeGroups(summed, mixed, formOf);
    }

    private AlikeGroups around(Layer layer, int outer, Map<Long, Bunch> bunches) {
        List<Mixed> held = new ArrayList<>();
        for (int parent = 0; parent < outer; parent++) {
            held.add(new Mixed(new ArrayList<>(), new ArrayList<>()));
        }
        bunches.forEach(
                (key, bunch) -> held.get((int) (key >> Integer.SIZE)).bunches().add(bunch));
        for (int group = 0; group < formOf.length; group++) {
            if (formOf[group] < 0) {
                held.get(layer.parents()[group]).mixed().add(-1 - formOf[group]);
            }
        }
        Map<List<Integer>, Integer> known = new HashMap<>();
        List<Form> shapes = new ArrayList<>();
        List<Mixed> stillMixed = new ArrayList<>();
        int[] outerForms = new int[outer];
        for (int parent = 0; parent < outer; parent++) {
            Mixed within = held.get(parent);
            if (within.mixed().isEmpty() && within.bunches().size() == 1) {
                Bunch only = within.bunches().get(0);
                outerForms[parent] = known.computeIfAbsent(List.of(only.form(), only.count()), any -> {
                    shapes.add(new Form(only.form(), only.count(), 0, 0));
                    return shapes.size() - 1;
                });
            } else {
                stillMixed.add(within);
                outerForms[parent] = -stillMixed.size();
            }
        }
        List<Form> counted = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            counted.add(new Form(shapes.get(i).inner(), shapes.get(i).parts(), count(outerForms, i), 0));
        }
        return new AlikeGroups(counted, stillMixed, outerForms);
    }
}
