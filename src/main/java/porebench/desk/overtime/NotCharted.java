package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import porebench.chart.control.ControlPlot;
import porebench.desk.TrialPoints;
import porebench.evidence.FactorHistory.Made;
import porebench.method.ProblemText;
import porebench.record.id.DeterminationId;
import porebench.statistics.control.PhasedChart;

/** The struck and void trials of an outcome, and where they stand in its plot: beside their determination, or in between. */
final class NotCharted {
    /** How far beside the point of its determination a trial stands, of the way to the next. */
    private static final double BESIDE = 0.25;

    private final Charted outcome;
    private final TrialPoints shown;

    NotCharted(Charted outcome, ProblemText problems) {
        this.outcome = outcome;
        this.shown = new TrialPoints(problems);
    }

    /** Returns them, the earliest first; none where sums are plotted, which have no place for a factor. */
    List<ControlPlot.NotCounted> all() {
        if (outcome.wishes().kind() == PhasedChart.Kind.CUSUM) {
            return List.of();
        }
        Map<DeterminationId, Integer> places = new HashMap<>();
        List<Series.Point> points = outcome.series().points();
        for (int i = 0; i < points.size() && outcome.wishes().kind().isOfDeterminations(); i++) {
            places.put(points.get(i).first().determination(), i);
        }
        List<ControlPlot.NotCounted> all = new ArrayList<>();
        for (Made made : outcome.series().notCounted()) {
            Integer place = places.get(made.determination());
            all.add(new ControlPlot.NotCounted(
                    place == null ? inBetween(made) : place + 1 + BESIDE, value(made), shown.point(made.judged())));
        }
        return all;
    }

    /** Returns the place between the points before and after a trial. */
    private double inBetween(Made made) {
        return 0.5
                + outcome.series().points().stream()
                        .filter(point -> !point.first()
                                .trial()
                                .testedAt()
                                .isAfter(made.trial().testedAt()))
                        .count();
    }

    private OptionalDouble value(Made made) {
        OptionalDouble factor = made.judged().factorPercent();
        if (factor.isEmpty() || !outcome.series().isDifference()) {
            return factor;
        }
        Double reference = outcome.series().references().get(made.trial().mixId());
        return reference == null ? OptionalDouble.empty() : OptionalDouble.of(factor.getAsDouble() - reference);
    }
}
