package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.chart.study.MandelPlot;
import porebench.evidence.study.LaboratoryLevels;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryComparison;
import porebench.statistics.comparison.Mandel;

/** The plots of Mandel's h and k: what a laboratory has at a level, or why there is nothing to say. */
final class MandelPlots {
    private final LaboratoryLevels levels;
    private final Texts texts;
    private final StudyFigures figures;
    private final boolean isTraining;

    MandelPlots(LaboratoryLevels levels, Texts texts, StudyFigures figures, boolean isTraining) {
        this.levels = levels;
        this.texts = texts;
        this.figures = figures;
        this.isTraining = isTraining;
    }

    /** Says what h or k of the laboratories of one level is. */
    private interface Found {
        Judged<List<Optional<Mandel>>> of(LaboratoryComparison comparison);
    }

    MandelPlot h() {
        return plot(
                MandelPlot.Statistic.H,
                comparison ->
                        comparison.h().map(all -> all.stream().map(Optional::of).toList()));
    }

    MandelPlot k() {
        return plot(MandelPlot.Statistic.K, LaboratoryComparison::k);
    }

    private MandelPlot plot(MandelPlot.Statistic statistic, Found found) {
        List<MandelPlot.Value> values = new ArrayList<>();
        for (int level = 0; level < levels.levels().size(); level++) {
            LaboratoryComparison comparison = levels.levels().get(level).comparison();
            Judged<List<Optional<Mandel>>> judged = found.of(comparison);
            for (int i = 0; i < comparison.cells().size(); i++) {
                int place = i;
                LaboratoryComparison.Cell cell = comparison.cells().get(i);
                Optional<Mandel> own = judged.meaningful().flatMap(all -> all.get(place));
                String whyNot = own.isPresent()
                        ? ""
                        : judged.whyWithheld().map(figures::why).orElseGet(() -> texts.get("reason.single-result"));
                values.add(new MandelPlot.Value(
                        levels.laboratories().indexOf(cell.laboratory()),
                        level,
                        cell.results().count(),
                        own,
                        whyNot));
            }
        }
        return new MandelPlot(
                statistic,
                levels.laboratories(),
                levels.levels().stream().map(LaboratoryLevels.Level::name).toList(),
                values,
                isTraining);
    }
}
