package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import porebench.evidence.FactorHistory;
import porebench.evidence.FactorHistory.Made;
import porebench.record.id.MixId;
import porebench.statistics.summary.Summary;

/**
 * From what the differences of several mixes are taken: of each mix the mean of its trials in the base period, or, where it
 * has no two there, of its first determination of at least two trials.
 *
 * @param means the references in % air, by mix; none where only one mix is charted
 * @param late mixes whose reference is not of the base period
 * @param unreferenced mixes that have no two trials to take a reference from; of a chart of means also those with only one
 *     determination of two, as its difference from itself would be 0
 */
record References(Map<MixId, Double> means, List<MixId> late, List<MixId> unreferenced) {
    static References of(FactorHistory counted, ChartChoice wishes) {
        Set<MixId> mixes = new TreeSet<>();
        counted.made().forEach(made -> mixes.add(made.trial().mixId()));
        if (mixes.size() < 2) {
            return new References(Map.of(), List.of(), List.of());
        }
        Set<MixId> unreferenced = new TreeSet<>();
        while (true) {
            FactorHistory left =
                    counted.where(made -> !unreferenced.contains(made.trial().mixId()));
            References found = of(left, base(left, wishes), wishes);
            if (found.unreferenced.isEmpty()) {
                // One mix by itself needs no reference.
                return found.means.size() < 2
                        ? new References(Map.of(), List.of(), List.copyOf(unreferenced))
                        : new References(found.means, found.late, List.copyOf(unreferenced));
            }
            // Without them the base may reach further, so it is looked at again.
            unreferenced.addAll(found.unreferenced);
        }
    }

    private static References of(FactorHistory left, Set<Made> base, ChartChoice wishes) {
        Map<MixId, Double> means = new HashMap<>();
        Set<MixId> late = new TreeSet<>();
        Set<MixId> without = new TreeSet<>();
        for (Made made : left.made()) {
            MixId mix = made.trial().mixId();
            if (means.containsKey(mix) || without.contains(mix)) {
                continue;
            }
            FactorHistory own = left.where(each -> each.trial().mixId().equals(mix));
            if (wishes.kind().isOfDeterminations() && hasOneGroup(own)) {
                without.add(mix);
                continue;
            }
            OptionalDouble ofBase =
                    mean(own.made().stream().filter(base::contains).toList());
            OptionalDouble reference = ofBase.isPresent() ? ofBase : ofFirstDetermination(own);
            if (reference.isEmpty()) {
                without.add(mix);
            } else {
                means.put(mix, reference.getAsDouble());
                if (ofBase.isEmpty()) {
                    late.add(mix);
                }
            }
        }
        return new References(means, List.copyOf(late), List.copyOf(without));
    }

    /** Returns whether the difference of a mean from its own mix would be 0 by itself: there is no other. */
    private static boolean hasOneGroup(FactorHistory own) {
        return Series.groupsOf(own).stream().filter(group -> group.size() > 1).count() < 2;
    }

    private static OptionalDouble ofFirstDetermination(FactorHistory own) {
        return Series.groupsOf(own).stream()
                .map(References::mean)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    private static OptionalDouble mean(List<Made> made) {
        return made.size() < 2
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        Summary.of(made.stream().mapToDouble(References::factor).toArray())
                                .mean());
    }

    /** Returns the trials of the base period. */
    private static Set<Made> base(FactorHistory left, ChartChoice wishes) {
        if (wishes.base() instanceof BaseChoice.Between days) {
            return new HashSet<>(left.made().stream()
                    .filter(made -> days.holds(made.trial().testedAt().toLocalDate()))
                    .toList());
        }
        int count = ((BaseChoice.First) wishes.base()).count();
        if (!wishes.kind().isOfDeterminations()) {
            return new HashSet<>(left.made().stream().limit(count).toList());
        }
        List<Made> base = new ArrayList<>();
        Series.groupsOf(left).stream()
                .filter(group -> group.size() > 1)
                .limit(count)
                .forEach(base::addAll);
        return new HashSet<>(base);
    }

    private static double factor(Made made) {
        return made.judged().factorPercent().orElseThrow();
    }

    /** Returns what is charted of a trial: its factor, or how far it lies from the reference of its mix, in % air. */
    double valueOf(Made made) {
        Double reference = means.get(made.trial().mixId());
        return reference == null ? factor(made) : factor(made) - reference;
    }
}
