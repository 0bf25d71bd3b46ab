package porebench.command.study;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.DrawnPoints;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;

/**
 * How often a chart of some subgroups signals by chance: charts like it are drawn, their subgroups differing by themselves as
 * much as those of the base do.
 *
 * @param groups what is charted
 * @param terms what it is charted by
 * @param base how many subgroups the limits come from
 * @param signals finds the signals of drawn subgroups by limits of the same kind
 */
record ChartAlarms(Subgroups groups, ChartTerms terms, int base, Function<List<double[]>, boolean[]> signals) {
    /** Of more subgroups it would take too long, and nobody looks at so long a chart at once. */
    private static final int LONGEST = 2000;

    /** Returns what was found; empty where the chart is too long. */
    Optional<FalseAlarms> found() {
        if (groups.names().size() > LONGEST) {
            return Optional.empty();
        }
        FalseAlarms.Signals drawn = points -> signals.apply(points.groups());
        DrawnPoints.Process process = process();
        return Optional.of(FalseAlarms.simulated(
                process, drawn, base, drawn, FalseAlarms.usualCharts(process, base), FalseAlarms.USUAL_SEED));
    }

    private DrawnPoints.Process process() {
        List<Integer> sizes =
                groups.values().stream().map(group -> group.length).toList();
        PhasedChart.Spread spread = terms.knownSigma().isPresent()
                ? new PhasedChart.Spread(0, terms.knownSigma().getAsDouble(), true)
                : spread();
        DrawnPoints.Process drawn =
                DrawnPoints.Process.plain(sizes, spread.between(), spread.within(), terms.division());
        DrawnPoints.Process believed = terms.knownSigma().isPresent() ? drawn : drawn.noQuieterThanItsDivision();
        return terms.knownCentre().isPresent()
                ? believed.about(terms.knownCentre().getAsDouble())
                : believed;
    }

    /** Returns how far subgroups spread; of a single one, only within. */
    private PhasedChart.Spread spread() {
        List<double[]> ofBase = groups.values().subList(0, base);
        PhasedChart chart = ofBase.size() > 1
                ? PhasedChart.of(ofBase, List.of(), PhasedChart.Kind.MEANS, 0, all(), terms)
                : PhasedChart.ofTrials(
                        ofBase.get(0),
                        Arrays.stream(ofBase.get(0)).mapToObj(value -> 0).toList(),
                        List.of(),
                        all(),
                        terms);
        return chart.phases()
                .get(0)
                .chart()
                .meaningful()
                .map(PhasedChart.Limited::spreads)
                .orElseGet(() -> new PhasedChart.Spread(0, 0, false));
    }

    private static PhasedChart.Base all() {
        return new PhasedChart.Base(0, Integer.MAX_VALUE, true);
    }
}
