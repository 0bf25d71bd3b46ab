package porebench.desk.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import porebench.chart.study.MandelPlot;
import porebench.evidence.study.LaboratoryLevels;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.statistics.Judged;
import porebench.statistics.comparison.LaboratoryBias;
import porebench.statistics.comparison.LaboratoryComparison;
import porebench.statistics.comparison.Mandel;
import porebench.statistics.outlier.Suspicion;
import porebench.statistics.variance.VarianceInterval;

/** Says and plots how far laboratories agree that tested the same material. */
final class LaboratoriesStudy {
    private static final double STRAGGLING = 0.05;
    private static final double CONFIDENCE = 0.95;

    private final LaboratoryLevels levels;
    private final Judged<List<LaboratoryBias>> biases;
    private final List<Problem> doubts;
    private final Texts texts;
    private final StudyFigures figures;
    private final ProblemText problemText;
    private final boolean isTraining;
    private final List<String> standingOut = new ArrayList<>();
    private final List<List<String>> laboratories = new ArrayList<>();
    private int mandels;

    LaboratoriesStudy(
            LaboratoryLevels levels,
            Judged<List<LaboratoryBias>> biases,
            List<Problem> doubts,
            Texts texts,
            StudyFigures figures,
            ProblemText problemText,
            boolean isTraining) {
        this.levels = levels;
        this.biases = biases;
        this.doubts = List.copyOf(doubts);
        this.texts = texts;
        this.figures = figures;
        this.problemText = problemText;
        this.isTraining = isTraining;
        levels.levels().forEach(this::look);
    }

    StudyShown shown() {
        List<String> remarks = new ArrayList<>(standingOut);
        levels.levels().forEach(level -> withheld(level, remarks));
        biases.whyWithheld().ifPresent(reason -> remarks.add(texts.get("laboratories.no-bias", figures.why(reason))));
        doubts.stream().map(problemText::say).forEach(remarks::add);
        if (mandels > 0) {
            remarks.add(texts.get(
                    "laboratories.by-chance", Integer.toString(mandels), figures.expected(mandels * STRAGGLING)));
        }
        remarks.add(texts.get("laboratories.kept"));
        List<StudyShown.Table> tables = new ArrayList<>(List.of(precision(), intervals()));
        biases.meaningful().map(this::biases).ifPresent(tables::add);
        tables.add(consistency());
        return new StudyShown(
                verdict(), remarks, Optional.empty(), Optional.empty(), Optional.of(h()), Optional.of(k()), tables);
    }

    private String verdict() {
        String out = standingOut.isEmpty()
                ? texts.get("laboratories.none-out")
                : texts.get("laboratories.some-out", Integer.toString(standingOut.size()));
        if (levels.levels().size() > 1) {
            return texts.get(
                    "laboratories.verdict-levels",
                    Integer.toString(levels.laboratories().size()),
                    Integer.toString(levels.levels().size()),
                    out);
        }
        LaboratoryComparison only = levels.levels().get(0).comparison();
        return texts.get(
                "laboratories.verdict",
                figures.number(number(only.repeatabilityLimit())),
                figures.number(number(only.reproducibilityLimit())),
                out);
    }

    private static OptionalDouble number(Judged<Double> figure) {
        return figure.meaningful().map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** Fills the rows of one level, and notes what stands out in it. */
    private void look(LaboratoryLevels.Level level) {
        LaboratoryComparison comparison = level.comparison();
        for (int i = 0; i < comparison.cells().size(); i++) {
            int place = i;
            LaboratoryComparison.Cell cell = comparison.cells().get(i);
            Optional<Mandel> h = comparison.h().meaningful().map(all -> all.get(place));
            Optional<Mandel> k = comparison.k().meaningful().flatMap(all -> all.get(place));
            laboratories.add(List.of(
                    level.name(),
                    cell.laboratory(),
                    Integer.toString(cell.results().count()),
                    figures.number(cell.results().mean()),
                    figures.number(cell.results().standardDeviation()),
                    figures.number(statistic(h)),
                    flag(h),
                    figures.number(statistic(k)),
                    flag(k)));
            mandels += (h.isPresent() ? 1 : 0) + (k.isPresent() ? 1 : 0);
            h.ifPresent(one -> note(one.suspicion(), "laboratories.h-out", cell.laboratory(), level.name()));
            k.ifPresent(one -> note(one.suspicion(), "laboratories.k-out", cell.laboratory(), level.name()));
        }
        comparison
                .cochran()
                .meaningful()
                .ifPresent(test -> note(
                        test.suspicion(),
                        "laboratories.cochran-out",
                        comparison.cells().get(test.index()).laboratory(),
                        level.name()));
        comparison
                .grubbs()
                .meaningful()
                .ifPresent(test -> note(
                        Suspicion.ofProbability(test.p()),
                        "laboratories.grubbs-out",
                        comparison.cells().get(test.index()).laboratory(),
                        level.name()));
        comparison.grubbsTwo().meaningful().ifPresent(test -> {
            Suspicion suspicion = Suspicion.ofProbability(test.p());
            if (suspicion != Suspicion.NONE) {
                standingOut.add(texts.get(
                        test.isHigh() ? "laboratories.two-high-out" : "laboratories.two-low-out",
                        level.name(),
                        say(suspicion)));
            }
        });
    }

    private void note(Suspicion suspicion, String key, String laboratory, String level) {
        if (suspicion != Suspicion.NONE) {
            standingOut.add(texts.get(key, laboratory, level, say(suspicion)));
        }
    }

    private String say(Suspicion suspicion) {
        return texts.get(suspicion == Suspicion.OUTLIER ? "laboratories.outlier" : "laboratories.straggler");
    }

    private static OptionalDouble statistic(Optional<Mandel> mandel) {
        return mandel.map(one -> OptionalDouble.of(one.statistic())).orElse(OptionalDouble.empty());
    }

    private String flag(Optional<Mandel> mandel) {
        return mandel.map(Mandel::suspicion)
                .map(suspicion -> switch (suspicion) {
                    case NONE -> "";
                    case STRAGGLER -> texts.get("flag.straggler");
                    case OUTLIER -> texts.get("flag.outlier");
                })
                .orElse("");
    }

    private void withheld(LaboratoryLevels.Level level, List<String> remarks) {
        LaboratoryComparison comparison = level.comparison();
        withheld("laboratories.no-h", level, comparison.h(), remarks);
        withheld("laboratories.no-k", level, comparison.k(), remarks);
        withheld("laboratories.no-cochran", level, comparison.cochran(), remarks);
    }

    private void withheld(String key, LaboratoryLevels.Level level, Judged<?> judged, List<String> remarks) {
        judged.whyWithheld().ifPresent(why -> remarks.add(texts.get(key, level.name(), figures.why(why))));
    }

    private StudyShown.Table precision() {
        List<List<String>> rows = levels.levels().stream()
                .map(level -> List.of(
                        level.name(),
                        Integer.toString(level.comparison().cells().size()),
                        Integer.toString(level.comparison().count()),
                        figures.number(level.comparison().mean()),
                        figures.number(number(level.comparison().repeatability())),
                        figures.number(number(level.comparison().reproducibility())),
                        figures.number(number(level.comparison().repeatabilityLimit())),
                        figures.number(number(level.comparison().reproducibilityLimit()))))
                .toList();
        return table("precision", rows, "level", "laboratories", "results", "mean", "sr", "s-r", "r", "r-r");
    }

    private StudyShown.Table intervals() {
        List<List<String>> rows = levels.levels().stream()
                .map(level -> {
                    Optional<VarianceInterval> within = level.comparison().repeatabilityInterval(CONFIDENCE);
                    Optional<VarianceInterval> between = level.comparison().reproducibilityInterval(CONFIDENCE);
                    return List.of(
                            level.name(),
                            figures.number(end(within, VarianceInterval::low)),
                            figures.number(end(within, VarianceInterval::high)),
                            figures.number(end(between, VarianceInterval::low)),
                            figures.number(end(between, VarianceInterval::high)));
                })
                .toList();
        return table("intervals", rows, "level", "sr-low", "high", "s-r-low", "high");
    }

    private static OptionalDouble end(Optional<VarianceInterval> interval, ToDoubleFunction<VarianceInterval> end) {
        return interval.map(known -> OptionalDouble.of(end.applyAsDouble(known)))
                .orElse(OptionalDouble.empty());
    }

    private StudyShown.Table biases(List<LaboratoryBias> all) {
        List<List<String>> rows = all.stream()
                .map(bias -> List.of(
                        bias.laboratory(),
                        Integer.toString(bias.levels()),
                        figures.number(bias.bias()),
                        figures.number(bias.expanded()),
                        bias.isSeen() ? texts.get("laboratories.bias-seen") : ""))
                .toList();
        return table("bias", rows, "laboratory", "levels", "bias", "u", "");
    }

    private StudyShown.Table consistency() {
        return table("consistency", laboratories, "level", "laboratory", "results", "mean", "s", "h", "", "k", "");
    }

    private StudyShown.Table table(String name, List<List<String>> rows, String... columns) {
        return figures.table(name, texts.get("unit.file"), rows, columns);
    }

    // The plots: what a laboratory has at a level, or why there is nothing to say.

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
