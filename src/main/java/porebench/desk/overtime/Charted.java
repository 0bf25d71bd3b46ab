package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import porebench.evidence.FactorHistory;
import porebench.statistics.control.ChartPoint;
import porebench.statistics.control.ChartTerms;
import porebench.statistics.control.CusumChart;
import porebench.statistics.control.EwmaChart;
import porebench.statistics.control.PhasedChart;

/**
 * What became of a person's wishes: the points, their chart and its signals.
 *
 * @param wishes what was wanted
 * @param series the points
 * @param determinations the same by determinations, which they are unless single trials are charted
 * @param chart the chart; empty while there is no point
 * @param signals the signals, the earliest first
 * @param alarms what has to be known to say how often it signals by chance; empty where there are no limits
 */
record Charted(
        ChartChoice wishes,
        Series series,
        Series determinations,
        Optional<PhasedChart> chart,
        List<Signal> signals,
        Optional<Alarms> alarms) {
    private static final double WIDTH = 3;

    Charted {
        signals = List.copyOf(signals);
    }

    /**
     * A point that signals.
     *
     * @param index which, from 0
     * @param phase in which phase, from 0
     * @param isOfSpread whether it is the spread that signals
     * @param point the point with its limits and rules
     */
    record Signal(int index, int phase, boolean isOfSpread, ChartPoint point) {}

    /**
     * Signals of the same kind, on the same side, at points that follow each other.
     *
     * @param first the first
     * @param last the last, which may be the first
     */
    record Spell(Signal first, Signal last) {
        boolean goesOnWith(Signal next) {
            return next.index() == last.index() + 1
                    && next.phase() == last.phase()
                    && next.isOfSpread() == last.isOfSpread()
                    && next.point().signals().equals(last.point().signals())
                    && isAbove(next) == isAbove(last);
        }

        private static boolean isAbove(Signal signal) {
            return signal.point().value() >= signal.point().centre();
        }
    }

    static Charted of(FactorHistory history, ChartChoice wishes) {
        Series series = Series.of(history, wishes);
        Series determinations = wishes.kind().isOfDeterminations()
                ? series
                : Series.of(history, wishes.withKind(PhasedChart.Kind.MEANS));
        if (series.points().isEmpty()) {
            return new Charted(wishes, series, determinations, Optional.empty(), List.of(), Optional.empty());
        }
        List<Integer> starts = starts(series, wishes.splits());
        PhasedChart chart = wishes.kind() == PhasedChart.Kind.TRIALS
                ? PhasedChart.ofTrials(
                        series.single(), series.lots(), starts, base(series, wishes), terms(series, wishes))
                : PhasedChart.of(
                        series.points().stream().map(Series.Point::array).toList(),
                        starts,
                        wishes.kind(),
                        weight(wishes.kind()),
                        base(series, wishes),
                        terms(series, wishes));
        return new Charted(
                wishes,
                series,
                determinations,
                Optional.of(chart),
                signals(chart),
                Alarms.of(series, wishes, chart, terms(series, wishes)));
    }

    static double weight(PhasedChart.Kind kind) {
        return kind == PhasedChart.Kind.CUSUM ? CusumChart.USUAL_SLACK : EwmaChart.USUAL_WEIGHT;
    }

    static List<Integer> starts(Series series, Set<Split> splits) {
        List<Integer> starts = new ArrayList<>();
        for (int i = 1; i < series.points().size(); i++) {
            if (series.points().get(i).changes().stream().map(Split::of).anyMatch(splits::contains)) {
                starts.add(i);
            }
        }
        return starts;
    }

    /** Returns which points the limits come from. */
    static PhasedChart.Base base(Series series, ChartChoice wishes) {
        if (wishes.base() instanceof BaseChoice.First first) {
            return new PhasedChart.Base(0, first.count(), wishes.isKept());
        }
        if (!wishes.isKept()) {
            return new PhasedChart.Base(0, ChartTerms.FEWEST_FOR_LASTING_LIMITS, false);
        }
        BaseChoice.Between days = (BaseChoice.Between) wishes.base();
        int before = (int) series.points().stream()
                .filter(point -> point.day().isBefore(days.from()))
                .count();
        int within = (int) series.points().stream()
                .filter(point -> days.holds(point.day()))
                .count();
        // A base without a point gives no limits, as it should.
        return within == 0
                ? new PhasedChart.Base(series.points().size(), 1, true)
                : new PhasedChart.Base(before, within, true);
    }

    private static ChartTerms terms(Series series, ChartChoice wishes) {
        double width = switch (wishes.kind()) {
            case EWMA -> EwmaChart.USUAL_WIDTH;
            case CUSUM -> CusumChart.USUAL_INTERVAL;
            case MEANS, MEAN_RANGE, MEAN_DEVIATION, TRIALS -> WIDTH;
        };
        return ChartTerms.usual().withWidth(width).withRules(wishes.rules()).withDivision(series.divisionPercent());
    }

    private static List<Signal> signals(PhasedChart chart) {
        List<Signal> signals = new ArrayList<>();
        for (int phase = 0; phase < chart.phases().size(); phase++) {
            int number = phase;
            chart.phases().get(phase).chart().meaningful().ifPresent(limited -> {
                List<Signal> here = new ArrayList<>();
                add(here, limited.level(), number, false);
                add(here, limited.spread(), number, true);
                here.sort(Comparator.comparingInt(Signal::index));
                signals.addAll(here);
            });
        }
        return signals;
    }

    private static void add(List<Signal> signals, List<ChartPoint> points, int phase, boolean isOfSpread) {
        points.stream()
                .filter(point -> !point.signals().isEmpty())
                .forEach(point -> signals.add(new Signal(point.index(), phase, isOfSpread, point)));
    }

    /** Returns the signals in spells, the earliest first. */
    List<Spell> spells() {
        List<Spell> spells = new ArrayList<>();
        for (Signal signal : signals) {
            int going = -1;
            for (int i = 0; i < spells.size(); i++) {
                going = spells.get(i).goesOnWith(signal) ? i : going;
            }
            if (going < 0) {
                spells.add(new Spell(signal, signal));
            } else {
                spells.set(going, new Spell(spells.get(going).first(), signal));
            }
        }
        return spells;
    }

    /** Returns the phases; none while there is no point. */
    List<PhasedChart.Phase> phases() {
        return chart.map(PhasedChart::phases).orElse(List.of());
    }

    /** Returns the limits of the phases that have some. */
    List<PhasedChart.Limited> limited() {
        return phases().stream()
                .flatMap(phase -> phase.chart().meaningful().stream())
                .toList();
    }

    /** Returns from how few points limits come; 0 where there are none. */
    int fewestInBase() {
        return limited().stream().mapToInt(PhasedChart.Limited::base).min().orElse(0);
    }

    /** Returns how many points signal. */
    int signalling() {
        return (int) signals.stream().map(Signal::index).distinct().count();
    }
}
