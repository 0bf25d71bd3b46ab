package porebench.desk.overtime;

import java.util.ArrayList;
import java.util.List;
import porebench.desk.form.Numbers;
import porebench.method.Texts;
import porebench.statistics.control.PhasedChart;

/** Says each phase of a chart: when, how many points, what began it, and its limits. */
final class PhaseWords {
    private static final int DECIMALS = 2;

    private final Charted outcome;
    private final Texts texts;
    private final Numbers numbers;

    PhaseWords(Charted outcome, Texts texts, Numbers numbers) {
        this.outcome = outcome;
        this.texts = texts;
        this.numbers = numbers;
    }

    List<String> all() {
        List<String> said = new ArrayList<>();
        for (PhasedChart.Phase phase : outcome.phases()) {
            List<Series.Point> points = outcome.series().points().subList(phase.first(), phase.first() + phase.count());
            String begun = said.isEmpty()
                    ? texts.get("phase.first")
                    : texts.get(
                            "phase.begun",
                            new ChangeWords(texts).of(points.get(0).changes()));
            said.add(texts.get(
                    "phase.said",
                    said.size() + 1,
                    points.get(0).day().toString(),
                    points.get(points.size() - 1).day().toString(),
                    phase.count(),
                    begun,
                    phase.chart().meaningful().map(this::limits).orElseGet(() -> texts.get("phase.no-limits"))));
        }
        return said;
    }

    private String limits(PhasedChart.Limited limited) {
        return texts.get(
                "phase.limits",
                numbers.show(limited.centre(), DECIMALS),
                numbers.show(limited.sigma(), DECIMALS + 1),
                limited.base());
    }
}
