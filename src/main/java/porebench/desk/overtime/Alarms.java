package porebench.desk.overtime;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.record.id.MixId;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.DrawnPoints;
import porebench.statistics.control.FalseAlarms;
import porebench.statistics.control.PhasedChart;

/**
 * What has to be known of a chart to draw charts like it, and so to say how often it signals by chance.
 *
 * @param process what its points are like
 * @param starts where its phases begin
 * @param kind what is charted
 * @param base where its limits come from
 * @param newestBase how many points the limits of the newest phase come from
 * @param terms width, rules and division
 */
record Alarms(
        DrawnPoints.Process process,
        List<Integer> starts,
        PhasedChart.Kind kind,
        PhasedChart.Base base,
        int newestBase,
        ChartTerms terms) {
    /** Returns what has to be known; empty where the newest phase has no limits. */
    static Optional<Alarms> of(Series series, ChartChoice wishes, PhasedChart chart, ChartTerms terms) {
        List<PhasedChart.Phase> phases = chart.phases();
        List<Integer> starts =
                phases.stream().skip(1).map(PhasedChart.Phase::first).toList();
        PhasedChart.Base base = Charted.base(series, wishes);
        return phases.get(phases.size() - 1).chart().meaningful().map(limited -> {
            DrawnPoints.Process process = new DrawnPoints.Process(
                            series.points().stream()
                                    .map(point -> point.values().size())
                                    .toList(),
                            series.lots(),
                            kinds(series),
                            limited.spreads().between(),
                            limited.spreads().within(),
                            series.divisionPercent(),
                            base)
                    .noQuieterThanItsDivision();
            return new Alarms(process, starts, wishes.kind(), base, limited.base(), terms);
        });
    }

    private static List<Integer> kinds(Series series) {
        Map<MixId, Integer> known = new HashMap<>();
        return series.points().stream()
                .map(point -> series.isDifference()
                        ? known.computeIfAbsent(point.first().trial().mixId(), any -> known.size())
                        : 0)
                .toList();
    }

    /** Draws the charts; takes up to a second. */
    FalseAlarms simulated() {
        return FalseAlarms.simulated(
                process,
                drawn -> chart(drawn, starts, base).signalling(),
                newestBase,
                drawn -> chart(drawn, List.of(), new PhasedChart.Base(0, newestBase, true))
                        .signalling(),
                FalseAlarms.usualCharts(process, newestBase),
                FalseAlarms.USUAL_SEED);
    }

    private PhasedChart chart(DrawnPoints drawn, List<Integer> phases, PhasedChart.Base limits) {
        return kind == PhasedChart.Kind.TRIALS
                ? PhasedChart.ofTrials(drawn.single(), drawn.lots(), phases, limits, terms)
                : PhasedChart.of(drawn.groups(), phases, kind, Charted.weight(kind), limits, terms);
    }
}
