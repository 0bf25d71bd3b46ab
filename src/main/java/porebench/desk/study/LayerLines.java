package porebench.desk.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import porebench.chart.study.ComponentShares;
import porebench.method.Texts;
import porebench.statistics.variance.VarianceInterval;

/** The layers of a study with what each makes up of the whole, and the words for it. */
final class LayerLines {
    private final List<Line> lines;
    private final double total;
    private final Source source;
    private final Texts texts;
    private final StudyFigures figures;

    /**
     * One layer, or what is left within or besides the layers.
     *
     * @param variance empty where it is not estimated
     * @param interval of the variance
     * @param why it is not estimated, or at its bound; empty where nothing is doubtful
     */
    record Line(String name, OptionalDouble variance, Optional<VarianceInterval> interval, Optional<String> why) {}

    /**
     * Where the readings are from.
     *
     * @param isBook whether from the lab book, so that they are in % air and the same name is the same thing
     * @param isSimulated whether nothing of them was measured
     * @param division a division of the scale, in their unit
     */
    record Source(boolean isBook, boolean isSimulated, double division) {}

    /**
     * Takes the lines of a study.
     *
     * @param lines the last one being what is left
     * @param total of all variances
     */
    LayerLines(List<Line> lines, double total, Source source, Texts texts, StudyFigures figures) {
        this.lines = List.copyOf(lines);
        this.total = total;
        this.source = source;
        this.texts = texts;
        this.figures = figures;
    }

    private OptionalDouble share(Line line) {
        return line.variance().isPresent()
                ? OptionalDouble.of(line.variance().getAsDouble() / total)
                : OptionalDouble.empty();
    }

    Line left() {
        return lines.get(lines.size() - 1);
    }

    StudyShown.Table table() {
        return figures.components(
                unit(),
                lines.stream()
                        .map(line -> figures.componentRow(line.name(), line.variance(), line.interval(), share(line)))
                        .toList());
    }

    /** Says which line makes up most, and how much that is. */
    String most(String key, Line line) {
        Optional<VarianceInterval> roots = line.interval().map(VarianceInterval::ofRoots);
        return texts.get(
                key,
                line.name(),
                figures.percent(share(line).orElse(0)),
                inUnit(figures.root(line.variance())),
                roots.map(known -> figures.number(known.low())).orElse(texts.get("none")),
                roots.map(known -> figures.number(known.high())).orElse(texts.get("none")));
    }

    /** Returns a verdict with the notice that nothing was measured, where that is so. */
    String noticed(String verdict) {
        return source.isSimulated() ? texts.get("layers.simulated", verdict) : verdict;
    }

    /** Says the mean with its standard uncertainty. */
    String mean(double mean, double variance, int count) {
        return texts.get(
                "layers.mean",
                figures.number(mean),
                figures.number(Math.sqrt(variance)),
                unit(),
                Integer.toString(count));
    }

    List<String> doubts() {
        return lines.stream().flatMap(line -> line.why().stream()).toList();
    }

    /** Says that what is left is less than a division gives by itself, where that is so. */
    Optional<String> withinDivision() {
        double division = source.division();
        return left().variance().orElse(Double.MAX_VALUE) < division * division / 12
                ? Optional.of(texts.get("remark.within-division", figures.number(division)))
                : Optional.empty();
    }

    ComponentShares shares() {
        return new ComponentShares(lines.stream().map(this::shown).toList(), source.isSimulated());
    }

    private ComponentShares.Share shown(Line line) {
        OptionalDouble share = share(line);
        OptionalDouble variance = line.variance();
        return new ComponentShares.Share(
                line.name(),
                share.isPresent() ? OptionalDouble.of(100 * share.getAsDouble()) : share,
                variance.isPresent() ? OptionalDouble.of(Math.sqrt(variance.getAsDouble())) : variance,
                line.why().orElseGet(() -> texts.get("share.deviation", figures.root(variance))));
    }

    private String inUnit(String number) {
        return source.isBook() ? texts.get("value.air", number) : number;
    }

    private String unit() {
        return texts.get(source.isBook() ? "unit.air" : "unit.file");
    }
}
